"""Doubts that no fixed phrase catches, found by form: "nobody here could swear to", "we'd hazard", "never got round to counting".

A negation, some fillers and a verb of knowing say that the seller did not look or does not know; a subject, some fillers and a
verb of believing put something forward without certainty. The words stand in lexicon/doubts.toml.
"""

from __future__ import annotations

from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.phrases import Phrase
from auditor.reading.rows import Row
from auditor.reading.scene import Clause, Scene

_UNCHECKED = Row(
    id="not known, by form",
    kind="unchecked",
    phrases=("never got round to counting",),
    reason="a negation and a verb of knowing",
    direction="both",
)
_BELIEVED = Row(
    id="believed, by form", kind="hedge", phrases=("we'd hazard",), reason="a subject and a verb of believing", direction="both"
)
_FILLERS = 6  # words between the negation or the subject and its verb


@cache
def doubt_words() -> dict[str, frozenset[str]]:
    """lexicon/doubts.toml."""
    return {name: frozenset(words) for name, words in lexicon.table("doubts").items()}


def doubts(scene: Scene) -> list[Phrase]:
    """Cues of kind ``unchecked`` and ``hedge``, from the negation or subject to the verb."""
    words = doubt_words()
    negations, openers = words["negations"], words["negations"] | words["subjects"]
    found: list[Phrase] = []
    behind = 0
    for index in [index for index, word in enumerate(scene.norm) if word in openers]:
        if index < behind:
            continue
        clause = scene.clause(index)
        cue = (_not_known if scene.norm[index] in negations else _believed)(scene, clause, index)
        if cue is not None:
            found.append(cue)
            behind = cue.last
    return found


def _not_known(scene: Scene, clause: Clause, first: int) -> Phrase | None:
    words, norm = doubt_words(), scene.norm
    able = norm[first] in words["able"]
    for at in range(first + 1, min(first + 2 + _FILLERS, clause.last)):
        word = norm[at]
        following = norm[at + 1] if at + 1 < clause.last else ""
        if word in words["knowing"]:
            return Phrase(_UNCHECKED, first, _tail(scene, clause, at + 1))
        if able and word in words["telling"]:
            if word == "see" and following not in words["see_needs"]:
                return None
            if (
                norm[first] == "not"
                and word in ("say", "state", "tell", "give")
                and norm[first - 1 : first] in (["does"], ["do"], ["did"], ["is"])
            ):
                return None
            return Phrase(_UNCHECKED, first, _tail(scene, clause, at + 1))
        if word not in words["fillers"]:
            return None
    return None


def _tail(scene: Scene, clause: Clause, last: int) -> int:
    """The word behind "can't decide *which*", "I'd bet *money on it*" where that ends the statement, else ``last``."""
    at = last
    while scene.norm[last - 1] != "knew" and at < clause.last and scene.norm[at] in doubt_words()["tails"]:
        at += 1
    return at if at == clause.last or not scene.norm[at][0].isalnum() else last


def _believed(scene: Scene, clause: Clause, first: int) -> Phrase | None:
    words, norm = doubt_words(), scene.norm
    inside = {norm[first]}
    for at in range(first + 1, min(first + 2 + _FILLERS, clause.last)):
        word = norm[at]
        if word in words["believing"]:
            if word in words["needs_would"] and not inside & words["would"]:
                return None
            if word in words["needs_other"] and norm[first] in words["own_subjects"]:
                return None
            if word in words["needs_passive"] and not inside & words["passive"]:
                return None
            return Phrase(_BELIEVED, first, _tail(scene, clause, at + 1))
        if word not in words["belief_fillers"]:
            return None
        inside.add(word)
    return None
