"""The list of works whose points are known."""

from __future__ import annotations

from auditor.knowledge.points import PointSet
from auditor.knowledge.shelf import Shelf


def listed(shelf: Shelf) -> list[tuple[str, PointSet]]:
    """(stem, set) by author and title."""
    return sorted(shelf.sets.items(), key=lambda item: (_last_name(item[1]), item[1].work.title.casefold()))


def _last_name(work: PointSet) -> str:
    return work.work.author.split()[-1].casefold() if work.work.author.split() else ""
