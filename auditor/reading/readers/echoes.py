"""Faults said once for two places: "foxed, the jacket likewise", "no wear except to the corners".

The words stand in lexicon/echoes.toml. An echo repeats the faults of its own clause, or of the one before where it opens one; an
exception asserts the one fault that its clause denies, of the place that it names.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.nouns import GOVERNED, is_noun, named
from auditor.reading.parts import last_spoken
from auditor.reading.phrases import Phrase
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.starts import Start
from auditor.values import Part

_NEAR = 5  # words between an echoing word and the part


@cache
def _words(name: str) -> frozenset[str]:
    return frozenset(lexicon.table("echoes")[name])


_START = Start(lambda word: word in _words("behind") | _words("before"))


def read_echoes(scene: Scene, drafts: Iterable[Draft]) -> Iterator[Draft]:
    """A draft for each fault that is said of a second part, with the words that told it of the first."""
    starts, exceptions = scene.starting(_START), [cue for cue in scene.cues if cue.row.kind == "exception"]
    told = [draft for draft in drafts if draft.feature in GOVERNED] if starts or exceptions else []
    for cue in exceptions if told else ():
        yield from _excepted(scene, cue, told)
    told = [draft for draft in told if draft.part is None]
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


def _excepted(scene: Scene, cue: Phrase, told: list[Draft]) -> Iterator[Draft]:
    """ "No foxing except on the endpapers": the fault denied before an exception, where only a place follows it."""
    clause, norm = scene.clause(cue.first), scene.norm
    denied = [draft for draft in told if clause.first <= draft.first < cue.first]
    denials = any(other.row.kind == "denial" for other in scene.cues_between(clause.first, cue.first))
    at = cue.last
    passed = _words("before_place") | roles()["linkers"] | roles()["determiners"] | roles()["degrees"]
    while at < clause.last and at not in scene.at and norm[at] in passed:
        at += 1
    noun = scene.at.get(at)
    if len(denied) != 1 or not denials or noun is None or not is_noun(noun):
        return
    beside = scene.between(noun.last, scene.segment(at)[1])
    linked = bool(roles()["linkers"] & set(norm[cue.last : at])) or noun.row.kind == "noun"
    if linked and all(is_noun(other) for other in beside):
        part = named(noun) or last_spoken(scene, clause.first, noun.first, "book")
        yield replace(denied[0], part=part, stance="asserted", first=noun.first, last=noun.last, denied=False)


def _echo(scene: Scene, index: int) -> tuple[int, Part] | None:
    """The first word and the part of an echo at an echoing word: "the jacket [likewise]", "[as] is the jacket"."""
    norm, clause = scene.norm, scene.clause(index)
    if norm[index] in _words("behind"):
        if norm[index + 1 : index + 2] == [","] and norm[index - 1 : index] == [","] and _goes_on(scene, index + 2):
            return None  # "its jacket, too, is chipped" tells a fault of its own
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


def _goes_on(scene: Scene, index: int) -> bool:
    return scene.norm[index : index + 1] != [] and scene.norm[index] in _words("verbs")


def _part(noun: Phrase) -> Part | None:
    """The part that a noun names; only a noun and a jacket that is there echo anything."""
    return named(noun) if noun.row.kind == "noun" or noun.row.feature == "jacket" else None
