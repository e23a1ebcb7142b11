"""A point set's guide as a page: one file that works offline and prints well. The desk shows the same under its own head."""

from __future__ import annotations

from typing import Any

from auditor.knowledge.points import Point, PointSet
from auditor.reports.guide import copies_in_words, copy_in_words, guide, price_in_words
from auditor.reports.page import assets
from auditor.reports.page.bars import axis_data, places
from auditor.reports.page.detail import link
from auditor.reports.page.island import island
from auditor.reports.ruler import axis


def page(work: PointSet) -> str:
    """The whole page."""
    template = assets.templates().get_template("guide.html")
    return template.render(**assets.frame(assets.GUIDE, assets.GUIDE_STYLES), **content(work))


def content(work: PointSet) -> dict[str, Any]:
    """What ``guide_body.html`` shows: the set, its guide, and for each point a ruler drawn from data."""
    marks = axis(work, [])
    axis_of = axis_data(marks, work)

    def ruler(point: Point) -> str:
        bars = [[reading.value, places(marks, reading.copies)] for reading in point.readings if reading.copies]
        empty: dict[str, Any] = {"claimed": [], "book": None, "jacket": None, "book_bars": [], "jacket_bars": []}
        return island({**axis_of, **empty, f"{point.part}_bars": bars})

    return {
        "work": work,
        "guide": guide(work),
        "parts": [(part, [point for point in work.points if point.part == part]) for part in ("book", "jacket")],
        "ruler": ruler,
        "copies": lambda ranges: copies_in_words(ranges, work),
        "price": price_in_words,
        "copy": copy_in_words,
        "link": link,
    }
