"""A price of the set in everyday words: "seven and six", "eighteen bob", "fourteen ninety-nine", "a guinea", "295/295".

The money reader knows the prices that a listing gives by sign and figures; here each price of a point is looked for in the other
ways in which it may be said. Sums without a coin's name count only beside the jacket, the flap or talk of a price.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache

from auditor.reading.points.lexis import Token, tokens
from auditor.reading.points.model import Told
from auditor.reading.points.table import lexis
from auditor.reading.readers.money import amount_of
from auditor.reading.scene import Draft
from auditor.reading.words import words

_SHILLINGS = re.compile(r"(\d+)s(?:\.? ?(\d+)d)?\b|(\d+)/(\d+|-)")
_DECIMAL = re.compile(r"[$£€](\d+)\.(\d\d)")
_CENTS = re.compile(r"(\d+) ?(?:c|¢|cents?)\b")
_SHORT = 5  # words of a clause that says nothing but the sum
_GUINEA = ("21", "0")
_PENCE = {"3": "threepence", "6": "sixpence", "9": "ninepence"}

Form = tuple[str, ...]


def in_words(told: Told, line: Sequence[Token], drafts: Sequence[Draft]) -> Iterator[Draft]:
    """Drafts of the point, and of the price itself, where no other reader has read these words."""
    for value, first, last in sums(told, line):
        if any(draft.first < last and first < draft.last for draft in drafts if draft.feature in ("point", "jacket_price")):
            continue
        row = f"point {told.point.id}"
        yield Draft("point", f"{told.point.id}={value}", first, last, row, told.point.part)
        amount = amount_of(value)
        if told.point.part == "jacket" and amount is not None:
            yield Draft("jacket_price", amount, first, last, row, "jacket")


def sums(told: Told, line: Sequence[Token]) -> Iterator[tuple[str, int, int]]:
    """The readings of a point of price that the line states so, with the first word and the one behind the last."""
    said = [(at, "and" if one == "&" else one) for at, one in line if one != "-"]
    stems = [one for _, one in said]
    beside = not (lexis()["price_words"] | told.place).isdisjoint(stems)
    for reading in told.point.readings:
        for form in spoken(reading.value):
            for number in _places(stems, form):
                told_so = beside or len(stems) <= _SHORT or stems[max(0, number - 1)] == "no"
                if told_so and _apart(stems, number, number + len(form)):
                    yield reading.value, said[number][0], said[number + len(form) - 1][0] + 1


def _places(stems: Sequence[str], form: Form) -> Iterator[int]:
    for number, one in enumerate(stems):
        if one == form[0] and tuple(stems[number : number + len(form)]) == form:
            yield number


def _apart(stems: Sequence[str], first: int, last: int) -> bool:
    """Whether the sum is no part of a longer figure, and none that stands in the listing's asking price."""
    around = [*stems[max(0, first - 1) : first], *stems[last : last + 1]]
    return not any(one[0].isdecimal() or one in ("/", "$", "£", "page", "no.") for one in around)


@lru_cache(maxsize=10_000)
def spoken(value: str) -> tuple[Form, ...]:
    """Forms of a price as stems."""
    found: list[Form] = []
    if (match := re.fullmatch(r"(\d{3})/(\d{3})", value)) is not None:
        first, second = match.groups()
        return (first, "/", second), (first[0], first[1:])
    if (match := _DECIMAL.search(value)) is not None:
        whole, part = match.groups()
        unit = "dollar" if "$" in value else "pound"
        found = [(whole, part)] if part != "00" else [(whole, unit)]
        found += [(whole, unit, part), (whole, unit, "and", part)]
    elif (match := _CENTS.search(value)) is not None:
        found = [(match[1], "cent"), (match[1], "¢")]
    elif (match := _SHILLINGS.search(value)) is not None:
        shillings, pence = match[1] or match[3], (match[2] or match[4] or "0").replace("-", "0")
        if pence == "0":
            found = [(shillings, coin) for coin in ("shilling", "bob")]
            found += [("guinea",)] if (shillings, pence) == _GUINEA else []
        else:
            coins = _stems(f"{pence} pence"), _stems(f"{_PENCE.get(pence, pence)}")
            found = [(shillings, "and", *coin) for coin in coins]
            found += [(shillings, "shilling", "and", *coin) for coin in coins]
            found += [(shillings, "and", pence), (shillings, "/", pence)]
    return tuple(found)


def _stems(text: str) -> Form:
    norm = words(text).norm
    return tuple(one for _, one in tokens(norm, 0, len(norm)) if one != "-")
