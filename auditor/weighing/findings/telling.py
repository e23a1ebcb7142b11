"""Sentences that the findings share."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from auditor.values import Claim
from auditor.weighing.evidence import Evidence
from auditor.weighing.practice import say


def quote(claims: Sequence[Claim]) -> str:
    """The claims in one list, each once: ``edition “1” and printing “1”``."""
    said = list(dict.fromkeys(say(claim) for claim in claims))
    return " and ".join([", ".join(said[:-1]), said[-1]] if len(said) > 1 else said)


def reasons(items: Iterable[Evidence]) -> str:
    """What the set says of each item of evidence: ``number line “to 3”: …; “gray cloth” (boards) is a mark of …``."""
    return "; ".join(item.bearing.why if _names_itself(item) else f"{say(item.claims[0])}: {item.bearing.why}" for item in items)


def _names_itself(item: Evidence) -> bool:
    return item.claims[0].feature == "point" and item.asserted


def claims_of(items: Iterable[Evidence]) -> tuple[Claim, ...]:
    return tuple(claim for item in items for claim in item.claims)


def points_of(items: Iterable[Evidence]) -> tuple[str, ...]:
    """The ids of the points that the items rest on, each once."""
    return tuple(dict.fromkeys(item.bearing.point for item in items if item.bearing.point))
