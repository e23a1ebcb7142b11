"""Terms of the trade in an everyday sense: "a clipped, dry style", "our book club loved it", "proof, if proof were needed"."""

from __future__ import annotations

from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.phrases import Phrase
from auditor.reading.scene import Scene

_BEHIND = 4  # words behind a term that tell its sense


@cache
def _sense(feature: str) -> dict[str, frozenset[str]] | None:
    """The lists of lexicon/senses.toml for a feature."""
    found = lexicon.table("senses").get(feature)
    return {name: frozenset(words) for name, words in found.items()} if found else None


def everyday(scene: Scene, phrase: Phrase) -> bool:
    """Whether a term has its everyday sense by the words beside it."""
    sense = _sense(phrase.row.feature or "")
    if sense is None or " ".join(scene.norm[phrase.first : phrase.last]) not in sense["terms"]:
        return False
    clause = scene.clause(phrase.first)
    behind = scene.norm[phrase.last : min(phrase.last + _BEHIND, clause.last)]
    if behind[:1] and behind[0] in sense["trade"]:
        return False
    before = scene.norm[max(clause.first, phrase.first - 1) : phrase.first]
    inside = scene.norm[clause.first : clause.last]
    return bool(sense["before"] & set(before) or sense["behind"] & set(behind) or sense["anywhere"] & set(inside))
