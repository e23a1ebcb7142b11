"""Faults and marks in plain speech, found by form: "lost its corner", "gone a bit pink", "stuck back in with tape".

A form is a word or phrase, fillers, and another word or phrase; lexicon/plainly.toml holds them. Whether it is denied or doubted
the words around it tell, as for any other draft.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from operator import itemgetter

from pydantic import BaseModel, ConfigDict

from auditor.knowledge import lexicon
from auditor.reading.nouns import noun_of
from auditor.reading.phrases import spellings
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.starts import Start
from auditor.values import Part

Spelling = tuple[str, ...]
_CLOSE = 3  # words before the opening in which a word of ``after`` stands


class Form(BaseModel):
    """One form of lexicon/plainly.toml. ``widest`` is the number of words between at most, one of which is of ``needs`` if that
    names any, and one of ``after`` stands close before; one of ``not_behind`` right behind or of ``not_after`` right before
    makes it another thing."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    id: str
    feature: str
    value: str
    part: Part | None = None
    after: frozenset[str] = frozenset()
    first: tuple[str, ...]
    then: tuple[str, ...]
    between: frozenset[str] = frozenset()
    needs: frozenset[str] = frozenset()
    not_behind: frozenset[str] = frozenset()
    not_after: frozenset[str] = frozenset()
    widest: int


@cache
def _forms() -> dict[str, Form]:
    return {table["id"]: Form.model_validate(table) for table in lexicon.table("plainly")["form"]}


@cache
def _openings() -> dict[str, list[tuple[Spelling, Form]]]:
    """Each form under the first word of each of its openings, the longest first."""
    found: dict[str, list[tuple[Spelling, Form]]] = {}
    for form in _forms().values():
        for phrase in form.first:
            for spelling in spellings(phrase):
                found.setdefault(spelling[0], []).append((spelling, form))
    for entries in found.values():
        entries.sort(key=lambda entry: -len(entry[0]))
    return found


@cache
def _endings(form_id: str) -> dict[str, list[Spelling]]:
    found: dict[str, list[Spelling]] = {}
    for phrase in _forms()[form_id].then:
        for spelling in spellings(phrase):
            found.setdefault(spelling[0], []).append(spelling)
    for entries in found.values():
        entries.sort(key=len, reverse=True)
    return found


@cache
def _words(name: str) -> frozenset[str]:
    return frozenset(lexicon.table("plainly")[name])


_START = Start(lambda word: _bare(word) in _openings())


def read_plainly(scene: Scene) -> Iterator[Draft]:
    """Drafts of all forms; of two of one form that overlap the first."""
    openings, norm, taken = _openings(), scene.norm, dict[str, int]()
    for index in scene.starting(_START):
        for spelling, form in openings[_bare(norm[index])]:
            if taken.get(form.id, 0) > index or not _stands(scene, form, index, spelling) or _inside_term(scene, index):
                continue
            ending = _end(scene, form, index + len(spelling))
            if ending is not None:
                taken[form.id] = ending[1]
                yield _draft(scene, form, index, *ending)


def _inside_term(scene: Scene, index: int) -> bool:
    """Whether a term of the lexicon goes on over a word: its row reads it."""
    before = scene.content[: bisect_left(scene.content, index, key=itemgetter(1))][-1:]
    return any(phrase.last > index and phrase.row.kind == "term" for phrase in before)


def _bare(word: str) -> str:
    return word.removesuffix("'s")


def _stands(scene: Scene, form: Form, index: int, spelling: Spelling) -> bool:
    """Whether the opening stands here, with what must stand before it."""
    if tuple(_bare(word) for word in scene.norm[index : index + len(spelling)]) != spelling:
        return False
    before = scene.norm[max(scene.clause(index).first, index - _CLOSE) : index]
    return not form.not_after & set(before[-1:]) and (not form.after or bool(form.after & set(before)))


def _end(scene: Scene, form: Form, index: int) -> tuple[int, int] | None:
    """The form's ending, (first, last), if fillers alone stand before it."""
    norm, endings, fillers = scene.norm, _endings(form.id), _words("fillers")
    last, met = min(scene.clause(index - 1).last, index + form.widest + 1), not form.needs
    for at in range(index, last):
        for spelling in endings.get(norm[at], ()) if met else ():
            behind = at + len(spelling)
            if tuple(norm[at:behind]) == spelling and (behind >= len(norm) or norm[behind] not in form.not_behind):
                return at, behind
        if norm[at] not in fillers and norm[at] not in form.between:
            return None
        met = met or norm[at] in form.needs
    return None


def _draft(scene: Scene, form: Form, first: int, ending: int, last: int) -> Draft:
    """The form's draft: a denial between its opening and its ending turns it; a lack in its own words ("lacks", "absent") denies
    nothing. Paper that has gone brown is tanned, by the contract, and not faded."""
    draft = Draft(form.feature, form.value, first, last, form.id, part=form.part)
    lack = any(cue.row.kind == "denial" and (cue.first == first or ending <= cue.first < last) for cue in scene.cues)
    draft = replace(draft, denied=bool(_words("turns") & set(scene.norm[first + 1 : ending])), negative=lack)
    noun = noun_of(scene, draft, "asserted") if form.value == "fading" else None
    paper = noun is not None and bool(roles()["paper"] & set(scene.norm[noun.first : noun.last]))
    return replace(draft, value="tanning") if paper else draft
