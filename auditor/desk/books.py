"""Point sets as pages: the list of works, and a guide page for each."""

from __future__ import annotations

from typing import Any

from auditor.knowledge.points import Point, PointSet, Reading
from auditor.knowledge.shelf import Shelf
from auditor.reports.page.bars import axis_data, places
from auditor.reports.page.detail import link
from auditor.reports.page.island import island
from auditor.reports.ruler import axis
from auditor.reports.words import in_words


def listed(shelf: Shelf) -> list[tuple[str, PointSet]]:
    """(stem, set) by author and title."""
    return sorted(shelf.sets.items(), key=lambda item: (_last_name(item[1]), item[1].work.title.casefold()))


def guide(work: PointSet) -> dict[str, Any]:
    """What a guide page shows beside the set itself: points by part, their copies in words, a ruler for each point."""
    marks = axis(work, [])
    axis_of = axis_data(marks, work)

    def ruler(point: Point) -> str:
        bars = [[reading.value, places(marks, reading.copies)] for reading in point.readings if reading.copies]
        empty: dict[str, Any] = {"claimed": [], "book": None, "jacket": None, "book_bars": [], "jacket_bars": []}
        return island({**axis_of, **empty, f"{point.part}_bars": bars})

    def copies(reading: Reading) -> str:
        return in_words([str(each) for each in reading.copies], work) or "no printing named"

    return {
        "parts": [(part, [point for point in work.points if point.part == part]) for part in ("book", "jacket")],
        "ruler": ruler,
        "copies": copies,
        "link": link,
    }


def _last_name(work: PointSet) -> str:
    return work.work.author.split()[-1].casefold() if work.work.author.split() else ""
