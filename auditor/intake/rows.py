"""A row of a table or an object of a JSON file, made into a listing."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from numbers import Integral
from typing import Any, NamedTuple

from auditor.intake import money
from auditor.intake.item import Item, Note
from auditor.values import Listing, Reject


class Place(NamedTuple):
    """Where a row stands: its file, the place in words for people, and the id it gets when it brings none."""

    file: str
    words: str
    id: str


def listing(cells: Mapping[str, Any], heads: Mapping[str, str], place: Place) -> Iterator[Item]:
    """One listing, with a note where its price can't be read; a reject where it holds no words. ``heads``: field -> key."""
    told = {field: plain(cells.get(head)) for field, head in heads.items()}
    text, title = told.get("text"), told.get("title")
    if not (text or "").strip() and not (title or "").strip():
        yield Reject(place.file, place.words, "neither text nor title")
        return
    value = cells.get(heads.get("asking", ""))
    currency = told.get("currency")
    if isinstance(value, Mapping):  # {"amount": 45, "currency": "USD"}, as shops' exports write a price
        named = {str(name).casefold(): plain(part) for name, part in value.items()}
        currency = named.get("currency") or named.get("pricecurrency") or named.get("currencycode") or currency
        price = named.get("amount") or named.get("value") or named.get("price")
    else:
        price = price_words(value)
    asking = money.asking(price, currency or _currency_in(heads.get("asking", ""))) if price and price.strip() else None
    if price and price.strip() and asking is None:
        yield Note(place.file, f"{place.words}: {money.unclear(price)}")
    yield Listing(
        id=(told.get("id") or "").strip() or place.id,
        text=text or "",
        title=(title or "").strip() or None,
        asking=asking,
        seller=(told.get("seller") or "").strip() or None,
        url=(told.get("url") or "").strip() or None,
        source=f"{place.file}, {place.words}",
    )


def price_words(value: object) -> str | None:
    """A price cell as words; a binary fraction is rounded to hundredths, which is all that it meant."""
    return f"{value:.2f}" if isinstance(value, float) else plain(value)


def plain(value: object) -> str | None:
    """A cell as words: text as it is, a number as written, the name inside an object; None for anything else.

    Lone surrogates are no characters and can't be written again: each becomes U+FFFD, so that offsets stay.
    """
    if isinstance(value, str):
        return re.sub("[\ud800-\udfff]", "\N{REPLACEMENT CHARACTER}", value)
    if isinstance(value, bool) or value is None:
        return None
    if isinstance(value, Integral | float):
        return str(int(value) if isinstance(value, float) and value.is_integer() else value)
    if isinstance(value, Mapping):
        return plain(value.get("name", value.get("username")))
    return None


def _currency_in(head: str) -> str | None:
    """The currency that a price column names in its head: "Price (GBP)"."""
    return next(
        (word for word in re.findall(r"[A-Za-z]{3}", head.replace("_", " ")) if word.upper() in ("USD", "GBP", "EUR")), None
    )
