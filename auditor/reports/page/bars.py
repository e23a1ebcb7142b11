"""The ruler as data: places along the axis, and for each claim and each part which of them it leaves open."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby
from typing import Any, Literal

from auditor.knowledge.points import Copies, PointSet
from auditor.reports.ruler import Mark, axis
from auditor.reports.told import parsed, told
from auditor.values import Verdict

_MOST_BARS = 8


def ruler_data(verdict: Verdict, work: PointSet | None) -> dict[str, Any] | None:
    """What the page draws the ruler from; None where nothing was weighed.

    ``editions`` is [name, places]; ``labels`` name the places; ``claimed``, ``book``, ``jacket`` and each bar are lists of the
    numbers of the places that stay open (``book`` and ``jacket`` None where nothing was weighed).
    """
    if work is None or (verdict.book is None and verdict.jacket is None):
        return None
    statements = told(verdict, work)
    left = [*parsed(verdict.book), *parsed(verdict.jacket), *parsed(verdict.claimed)]
    marks = axis(work, [*left, *(copies for part in statements.values() for one in part for copies in one.shows)])

    def bars(part: Literal["book", "jacket"]) -> list[list[Any]]:
        bars = [[one.words, places(marks, one.leaves)] for one in statements[part]]
        return [bar for bar in bars if len(bar[1]) < len(marks)][:_MOST_BARS]

    return {
        **axis_data(marks, work),
        "claimed": places(marks, parsed(verdict.claimed)),
        "book": None if verdict.book is None else places(marks, parsed(verdict.book)),
        "jacket": None if verdict.jacket is None else places(marks, parsed(verdict.jacket)),
        "book_bars": bars("book"),
        "jacket_bars": bars("jacket"),
    }


def axis_data(marks: Sequence[Mark], work: PointSet) -> dict[str, Any]:
    """The axis: editions with the number of their places, and every place's label."""
    editions = [[work.edition(name).name, len(list(run))] for name, run in groupby(marks, key=lambda mark: mark.edition)]
    return {"editions": editions, "labels": [mark.label for mark in marks]}


def places(marks: Sequence[Mark], ranges: Iterable[Copies]) -> list[int]:
    """The numbers of the places that the ranges reach."""
    ranges = list(ranges)
    return [number for number, mark in enumerate(marks) if mark.within(ranges)]
