"""The imprint: publisher and year."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.knowledge.points import PointSet
from auditor.reading.readers.publishers import read_publishers
from auditor.reading.readers.years import read_years
from auditor.reading.scene import Draft, Scene


def read_imprints(scene: Scene, work: PointSet | None = None) -> Iterator[Draft]:
    """Drafts of ``publisher`` and ``year``."""
    found = list(read_publishers(scene, work))
    yield from found
    yield from read_years(scene, found)
