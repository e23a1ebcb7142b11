"""Short ways to write claims and invented point sets in tests."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, get_args

from auditor.knowledge.points import PointSet
from auditor.knowledge.shelf import Shelf
from auditor.values import Claim, Degree, FindingKind, Verdict
from auditor.weighing import weigh

_STANCES = {"~": "denied", "?": "hedged", "…": "unchecked", "^": "elsewhere"}
_JACKET = ("jacket", "jacket_price", "price_clipped")
_COPY = ("book_club", "ex_library", "lapse")
KINDS = get_args(FindingKind)

SHELF = Shelf.open()


def said(*words: str, work: PointSet | None = None) -> tuple[Claim, ...]:
    """Claims from ``"feature=value"``, before it ``~`` (denied), ``?`` (hedged), ``^`` (elsewhere), behind it ``@jacket``.

    A fault's degree stands in front: ``"heavy defect=foxing"``.

    Points take their part from ``work``. Each claim gets a span of its own, in order.
    """
    claims = []
    for number, text in enumerate(words):
        stance = _STANCES.get(text[0], "asserted")
        text = text.lstrip("".join(_STANCES))
        text, _, part = text.partition("@")
        degree, text = text.split(" ", 1) if text.startswith(get_args(Degree)) else (None, text)
        feature, _, value = text.partition("=")
        if not part:
            part = "jacket" if feature in _JACKET else "copy" if feature in _COPY else "book"
            if feature == "point" and work is not None:
                part = work.point(value.partition("=")[0]).part
        claims.append(Claim(feature, value, part, stance, 10 * number, 10 * number + 9, degree=degree))
    return tuple(claims)


def verdict(work: PointSet | None, *words: str, **options: Any) -> Verdict:
    return weigh(said(*words, work=work), work, **options)


def kinds(verdict: Verdict, *severities: str) -> set[str]:
    """The kinds of finding told, of these severities (of weight, unless named: grave and weighty)."""
    return {finding.kind for finding in verdict.findings if finding.severity in (severities or ("grave", "weighty"))}


def make_set(
    editions: Sequence[dict[str, Any]], points: Sequence[dict[str, Any]], values: Sequence[dict[str, Any]] = ()
) -> PointSet:
    """An invented set; what a test doesn't care for is filled in."""
    full_editions = [{"name": f"the {e['id']} edition", "kind": "trade", **e} for e in editions]
    full_points = [
        {
            "part": "book",
            "place": p["id"],
            "feature": "other",
            "source": "invented",
            **p,
            "readings": [{"value": value, "copies": copies} for value, copies in p["readings"].items()],
        }
        for p in points
    ]
    full_values = [{"source": "invented", "currency": "USD", "as_of": "1998", **v} for v in values]
    work = {"title": "The Copper Tide", "author": "Ida Venn"}
    return PointSet.model_validate(
        {"stem": "copper-tide", "work": work, "editions": full_editions, "points": full_points, "values": full_values}
    )


VALUES = [
    {"edition": "trade", "printing": "1", "with_jacket": True, "low": 60, "high": 120},
    {"edition": "trade", "printing": "1", "with_jacket": False, "low": 20, "high": 30},
    {"edition": "trade", "printing": "2-3", "with_jacket": True, "low": 5, "high": 12},
]


def book(note: str | None = None) -> PointSet:
    """Three printings, a club edition from the first plates, and a jacket that changes with the third printing."""
    points = [
        {"id": "line", "place": "copyright page", "feature": "number line",
         "readings": {"1 2 3": ["trade:1", "bce:1"], "2 3": ["trade:2"], "3": ["trade:3"]}},
        {"id": "words", "place": "copyright page", "feature": "statement",
         "readings": {"First Edition stated": ["trade:1-3"], "club notice": ["bce:1"]}},
        {"id": "slip", "place": "page 61, line 8", "feature": "misprint",
         "readings": {"mater": ["trade:1"], "master": ["trade:2-3", "bce:1"]}},
        {"id": "boards", "place": "boards", "feature": "binding colour",
         "readings": {"gray cloth": ["trade:1-3"], "paper": ["bce:1"]}},
        {"id": "price", "part": "jacket", "place": "front flap", "feature": "price", "note": note,
         "readings": {"$8.95": ["trade:1-2"], "$9.95": ["trade:3"], "no price": ["bce:1"]}},
    ]  # fmt: skip
    editions = [
        {"id": "trade", "printings": 3, "year": 1979, "print_runs": {"1": 500, "2": 1500, "3": 3000}},
        {"id": "bce", "printings": 1, "kind": "book club", "year": 1979, "print_runs": {"1": 5000}},
    ]
    return make_set(editions, points, VALUES)


WORK = book()
