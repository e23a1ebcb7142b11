"""Sentences that tell of people and not of the copy: "Mr Fox chips in", "the critics called it good", "he wore a torn jacket".

A person is the subject of a verb of action, or something is said by somebody in quotation marks, and no thing of a book is named.
"""

from __future__ import annotations

from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.scene import Scene
from auditor.reading.starts import Start

_OURSELVES = frozenset({"i", "we"})
_OURS = frozenset({"my", "me", "mine"})
_ON = {";", "—", "-", "..."}
_NEAR = 4  # words from a verb of saying to who says it
_SUBJECT, _FAR = 3, 9  # words at a sentence's head that hold its subject, and from there to its verb
_GOODS_BEHIND = 3  # words from a term to the goods that it describes


@cache
def tale_words(name: str) -> frozenset[str]:
    """A list of lexicon/tales.toml."""
    return frozenset(lexicon.table("tales")[name])


_DOING = Start(lambda word: word in tale_words("acts") or word in tale_words("speech"))
_HOW = Start(lambda word: word == "how")


def sentence(scene: Scene, index: int) -> tuple[int, int]:
    """The words of the clause around a word and of those that a dash or a semicolon joins to it."""
    number = scene.clause_of[index]
    low = high = number
    while low > 0 and scene.clauses[low - 1].end in _ON:
        low -= 1
    while high + 1 < len(scene.clauses) and scene.clauses[high].end in _ON:
        high += 1
    return scene.clauses[low].first, scene.clauses[high].last


def in_tale(scene: Scene, index: int) -> bool:
    """Whether a word stands in a sentence that tells of people, or of how something is done."""
    return any(first <= index < last for first, last in scene.once(_tales))


def _tales(scene: Scene) -> list[tuple[int, int]]:
    found = []
    for at in scene.starting(_DOING):
        first, last = sentence(scene, at)
        inside = set(scene.norm[first:last])
        if _spoken(scene, at, first, last) or (_done(scene, at, first) and not inside & _OURS):
            if not inside & (tale_words("of_copy") | tale_words("deeds")) and not _of_this_copy(scene, first, last):
                found.append((first, last))
            elif (quoted := _quotation(scene, at, first, last)) is not None:
                found.append(quoted)
    for at in scene.starting(_HOW):
        if scene.norm[at + 1 : at + 2] == ["to"]:
            found.append((at, scene.clause(at).last))
    return found


def _of_this_copy(scene: Scene, first: int, last: int) -> bool:
    """ "The cat tore the jacket", "jacket shows a boy who runs", "kids let loose in it": a jacket of the copy, or the copy."""
    norm = scene.norm
    for at in range(first, last):
        if norm[at] in ("jacket", "jackets") and (at == first or norm[at - 1] in ("the", "its", "this", "dust", "-")):
            return True
        if norm[at] == "it" and at > first and norm[at - 1] in ("in", "on", "inside", "over", "with"):
            return True
    return False


def _done(scene: Scene, at: int, first: int) -> bool:
    """Whether a person does it: "Mr Fox chips", "our hero ran", "Inspector Dray slowly leans"."""
    people, norm = tale_words("people"), scene.norm
    before = norm[max(first, at - 3) : at]
    if not before or norm[at] not in tale_words("acts"):
        return False
    if before[-1] in people - (_OURSELVES if norm[at] in tale_words("speech") else set()) or (
        len(before) > 1 and before[-1].endswith("ly") and before[-2] in people
    ):
        return True
    opening = scene.norm[first : min(first + _SUBJECT, at)]
    if set(opening) & (people - _OURSELVES) and at - first <= _FAR and "on" not in scene.norm[first:at]:
        return True  # "the girl in the torn jacket runs"
    named = scene.words.text[scene.words.start[at - 1]].isupper()
    return named and bool(people - _OURSELVES & set(before[:-1]))


def _spoken(scene: Scene, at: int, first: int, last: int) -> bool:
    """Whether somebody else says it: "said my mother", "the critics called it", "raved the Evening Post"."""
    if scene.norm[at] not in tale_words("speech"):
        return False
    speakers = set(scene.norm[max(first, at - _NEAR) : at])
    if scene.norm[at - 1 : at] in ([","], ['"']):
        speakers.update(scene.norm[at + 1 : min(last, at + 1 + _NEAR)])
    return bool(speakers & (tale_words("people") - _OURSELVES))


def _quotation(scene: Scene, at: int, first: int, last: int) -> tuple[int, int] | None:
    """What stands in quotation marks beside a verb of saying, where the rest of its sentence may tell of the copy."""
    marks = [index for index in range(first, last) if scene.norm[index] == '"']
    return (marks[0], marks[-1]) if len(marks) > 1 and (at > marks[-1] or at < marks[0]) else None


def of_goods(scene: Scene, last: int) -> bool:
    """Whether a term that ends before word ``last`` describes goods of the kitchen, the road or the shop: "a rare steak"."""
    norm, books = scene.norm, {"book", "books", "title", "guide", "manual", "copy"}
    for at in range(last, min(last + _GOODS_BEHIND, scene.segment(max(last - 1, 0))[1])):
        if norm[at] in tale_words("goods"):
            return not books & set(norm[at + 1 : at + 3])
        if (
            norm[at] in tale_words("of_copy")
            or not norm[at][0].isalpha()
            or norm[at] in ("on", "in", "to", "at", "from", "with", "like", "and", "by")
        ):
            return False
    return False
