"""A draft as the page sends it, and what the page is told of it."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any

from auditor.auditing import audit_on
from auditor.intake import money
from auditor.knowledge.shelf import Shelf
from auditor.reading import read
from auditor.reports.drafting import advise
from auditor.reports.page.detail import detail, points_data
from auditor.values import Listing, Verdict
from auditor.weighing import weigh


class BadDraft(ValueError):
    """What came is no draft; the message says what was expected."""


@dataclass(frozen=True, slots=True)
class Draft:
    """``book`` is the stem of the point set that the seller picked, empty to let it be found."""

    text: str
    title: str
    asking: str
    book: str

    @classmethod
    def of(cls, body: bytes) -> Draft:
        try:
            given = json.loads(body)
        except (ValueError, RecursionError):
            raise BadDraft("expected a draft as JSON") from None
        names = ("text", "title", "asking", "book")
        if not isinstance(given, dict) or not all(isinstance(given.get(name, ""), str) for name in names):
            raise BadDraft("expected text, title, asking and book, each a string")
        return cls(**{name: given.get(name, "").encode("utf-8", "replace").decode("utf-8") for name in names})


def checked(shelf: Shelf, draft: Draft) -> dict[str, Any]:
    """The draft's detail as in a report, its points, and the advice; ``price`` tells an asking price that can't be read."""
    price = money.asking(draft.asking) if draft.asking.strip() else None
    listing = Listing("draft", draft.text, draft.title or None, price)
    verdict = _verdict(shelf, draft, price)
    work = shelf.sets[verdict.work] if verdict.work else None
    advice = advise(listing, verdict)
    return {
        "detail": detail(listing, verdict, work),
        "points": points_data(work) if work else {},
        "price": "no single clear amount: expected something like 45.00 USD" if draft.asking.strip() and not price else "",
        "facts": advice.facts,
        "missed": advice.missed,
        "shown": advice.shown,
        "avoid": advice.avoid,
        "grades": advice.grades,
        "disagree": advice.disagree,
    }


def _verdict(shelf: Shelf, draft: Draft, price: str | None) -> Verdict:
    work = shelf.sets.get(draft.book)
    if work is None:
        return audit_on(shelf, draft.text, draft.title or None, price)
    title_claims = read(draft.title, work) if draft.title else ()
    return weigh(read(draft.text, work), work, asking=price, title_claims=title_claims)
