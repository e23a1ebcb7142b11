"""The trade's scale of condition, and what a fault leaves of a grade. The words and rules stand in lexicon/grades.toml."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from auditor.knowledge import lexicon

_SHADE = 1 / 3  # "+" lies above the grade and below the next one up, "-" likewise below (IOBA, Condition Definitions)


@dataclass(frozen=True, slots=True)
class GradeRule:
    """A copy with one of ``values`` of ``feature`` told of ``part`` can't carry a grade better than ``best_allowed``.

    ``degrees`` are the degrees of a fault that the rule holds for; ``plain`` is one told without a degree.
    """

    id: str
    best_allowed: str
    part: Literal["book", "jacket", "either"]
    feature: str
    values: tuple[str, ...]
    reason: str
    source: str
    degrees: tuple[Literal["slight", "plain", "heavy"], ...] = ("slight", "plain", "heavy")


def rank(grade: str) -> float | None:
    """The grade's place on the scale, as new 1.0 down to poor 7.0; "+" is a third better, "-" a third worse. None if unknown."""
    name = grade.strip().lower()
    shade = {"+": -_SHADE, "-": _SHADE}.get(name[-1:], 0.0)
    place = _scale().get(name.rstrip("+-").strip() if shade else name)
    return None if place is None else place + shade


@cache
def rules() -> tuple[GradeRule, ...]:
    """Every bound that a fault sets, as lexicon/grades.toml gives them."""
    listed = ("values", "degrees")
    return tuple(
        GradeRule(**row | {name: tuple(row[name]) for name in listed if name in row}) for row in lexicon.table("grades")["rules"]
    )


@cache
def _scale() -> dict[str, float]:
    return {name: float(row["rank"]) for row in lexicon.table("grades")["scale"] for name in (row["name"], *row.get("also", ()))}
