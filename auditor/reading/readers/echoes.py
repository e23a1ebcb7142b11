"""Faults told of one part and said of the other as well: "foxed, the jacket likewise", "spine sunned, as is the jacket's".

The words stand in lexicon/echoes.toml. An echo repeats the faults of its own clause, or of the one before where it opens one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.nouns import GOVERNED, named
from auditor.reading.phrases import Phrase
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start
from auditor.values import Part

_NEAR = 5  # words between an echoing word and the part


@cache
def _words(name: str) -> frozenset[str]:
    return frozenset(lexicon.table("echoes")[name])


_START = Start(lambda word: word in _words("behind") | _words("before"))


def read_echoes(scene: Scene, drafts: Iterable[Draft]) -> Iterator[Draft]:
    """A draft for each fault that is said of a second part, with the words that told it of the first."""
    starts = scene.starting(_START)
    told = [draft for draft in drafts if draft.feature in GOVERNED and draft.part is None] if starts else []
    for index in starts if told else ():
        found = _echo(scene, index)
        if found is None:
            continue
        opening, part = found
        clause = scene.clause(opening)
        same = [draft for draft in told if clause.first <= draft.first < opening]
        if not same and all(word in _words("openers") for word in scene.norm[clause.first : opening]):
            number = max(scene.clause_of[opening] - 1, 0)
            same = [draft for draft in told if scene.clause_of[draft.first] == number]
        yield from (replace(draft, part=part) for draft in same)


def _echo(scene: Scene, index: int) -> tuple[int, Part] | None:
    """The first word and the part of an echo at an echoing word: "the jacket [likewise]", "[as] is the jacket"."""
    norm, clause = scene.norm, scene.clause(index)
    if norm[index] in _words("behind"):
        at = index
        while at > clause.first and norm[at - 1] in _words("between"):
            at -= 1
        noun = next((phrase for phrase in scene.between(max(clause.first, at - _NEAR), at) if phrase.last == at), None)
        closed = index + 1 >= clause.last or norm[index + 1] in _words("closers")
        return (noun.first, part) if noun is not None and closed and (part := _part(noun)) is not None else None
    if norm[index + 1 : index + 2] and norm[index + 1] not in _words("verbs"):
        return None
    at = index + 2
    while at < clause.last and norm[at] in _words("between") and at not in scene.at:
        at += 1
    noun = scene.at.get(at)
    closed = noun is not None and (noun.last >= clause.last or norm[noun.last] in _words("closers"))
    return (index, part) if noun is not None and closed and (part := _part(noun)) is not None else None


def _part(noun: Phrase) -> Part | None:
    """The part that a noun names; only a noun and a jacket that is there echo anything."""
    return named(noun) if noun.row.kind == "noun" or noun.row.feature == "jacket" else None
