"""What a report may tell beside its results: the point sets at hand, and what could not be read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from auditor.knowledge.points import PointSet
from auditor.values import Listing, Reject, Verdict

Result = tuple[Listing, Verdict]


@dataclass(frozen=True)
class Run:
    """One scan. ``rejects`` grows while it goes on; a report looks at it when it ends."""

    sets: Mapping[str, PointSet] = field(default_factory=dict)
    rejects: list[Reject] = field(default_factory=list)
