"""Whether a claim is clearly of this copy: its sentence may talk of others, of what isn't so, or of what somebody else said.

The stance is settled word by word; where a sentence mixes this copy with others, that is right more often than not, and still too
often wrong to accuse a text of contradicting itself. The words stand in lexicon/clarity.toml.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.othercopies import is_lot
from auditor.reading.scene import Draft, Scene
from auditor.reading.stance import QUESTION, Layers

_SENTENCE_ENDS = frozenset({".", "!", "?", "\n", "¶", ""})


def mixed_clauses(scene: Scene, drafts: Sequence[Draft], laid: Layers) -> frozenset[int]:
    """The numbers of the clauses of which a claim may be of another copy, or of none.

    In a lot every clause may be of another copy. Words that a point's claim is made of don't count as talk of others: "no later
    printing listed" is said of this copy.
    """
    if is_lot(scene):
        return frozenset(range(len(scene.clauses)))
    own = bytearray(len(scene.words))
    for draft in drafts:
        if draft.feature == "point" and laid.elsewhere[draft.first] is None:
            own[draft.first : draft.last] = b"\1" * (draft.last - draft.first)
    return frozenset(number for sentence in _sentences(scene) if _mixes(scene, laid, own, sentence) for number in sentence)


def _sentences(scene: Scene) -> Iterator[list[int]]:
    sentence: list[int] = []
    for number, clause in enumerate(scene.clauses):
        sentence.append(number)
        if clause.end in _SENTENCE_ENDS:
            yield sentence
            sentence = []
    if sentence:
        yield sentence


def _mixes(scene: Scene, laid: Layers, own: bytearray, sentence: list[int]) -> bool:
    others, denied = _words()
    for index in range(scene.clauses[sentence[0]].first, scene.clauses[sentence[-1]].last):
        cue = laid.elsewhere[index]
        word = scene.norm[index]
        if (cue is not None and cue.row is not QUESTION) or word in denied or (word in others and not own[index]):
            return True
    return False


@cache
def _words() -> tuple[frozenset[str], frozenset[str]]:
    table = lexicon.table("clarity")
    return frozenset(table["others"]), frozenset(table["denied"])
