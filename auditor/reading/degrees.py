"""How much of a fault is told: "a hint of rubbing", "heavy foxing". The words stand in lexicon/degrees.toml."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from typing import NamedTuple

from auditor.knowledge import lexicon
from auditor.reading.scene import Draft, Scene
from auditor.values import Degree


class _Lexis(NamedTuple):
    degree: dict[str, Degree]
    passed: frozenset[str]
    stops: frozenset[str]
    reach: int


@cache
def _lexis() -> _Lexis:
    table = lexicon.table("degrees")
    degree: dict[str, Degree] = {word: row["id"] for row in table["degree"] for word in row["words"]}
    return _Lexis(degree, frozenset(table["passed"]), frozenset(table["stops"]), table["reach"])


def degree_of(scene: Scene, draft: Draft) -> Degree | None:
    """The degree told of a fault, within its comma segment; the nearest word counts, what stands before goes first."""
    if draft.feature != "defect":
        return None
    first, last = scene.segment(draft.first)
    reach = _lexis().reach
    before = range(draft.last - 1, max(first, draft.first - reach) - 1, -1)
    behind = range(draft.last, min(last, draft.last + reach))
    return _nearest(scene, draft, before) or _nearest(scene, draft, behind)


def _nearest(scene: Scene, draft: Draft, indices: Iterable[int]) -> Degree | None:
    """The first degree word on the way; only passing words and other faults may stand between ("light rubbing and foxing")."""
    lexis = _lexis()
    faults = _fault_words(scene, draft)
    for index in indices:
        word = scene.norm[index]
        if word in lexis.degree:
            if index and scene.norm[index - 1] in lexis.stops:
                return None  # "foxing, not heavy"
            return lexis.degree[word]
        if word in lexis.stops or not (word in lexis.passed or index in faults):
            return None
    return None


def _fault_words(scene: Scene, draft: Draft) -> set[int]:
    first, last = scene.segment(draft.first)
    faults = {
        index
        for phrase in scene.between(first, last)
        if phrase.row.feature == "defect"
        for index in range(phrase.first, phrase.last)
    }
    return faults | set(range(draft.first, draft.last))
