"""Walks the spoken forms of lexicon/forms over the words: from an opener over what may stand between to a target.

One walker serves them all. Forms are found by the first word of their openers, so a text without one costs a look-up a word.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from operator import attrgetter

from auditor.reading.forms import CUE_KINDS, Form, Rows, form_rows
from auditor.reading.phrases import Phrase
from auditor.reading.ready import CLASSES, MARKS, Phrases, Ready, Spelling, ready, spelled
from auditor.reading.rows import Row
from auditor.reading.scene import Clause, Scene
from auditor.reading.starts import Start, forget

_CLOSE = 3  # words before the opener in which a word of ``after`` stands
_SHORT = 4  # words of a question that names what the answer is about


@dataclass(frozen=True, slots=True)
class Found:
    """A form at words ``first`` up to and without ``last``; its target begins at ``target`` and ends at ``behind``."""

    form: Form
    first: int
    opened: int
    target: int
    behind: int
    last: int


Openings = dict[str, list[tuple[Spelling, Ready, int]]]  # by first word, the longest first; with the form's bit


class Walker:
    """All forms, ready to be walked."""

    def __init__(self, rows: Rows) -> None:
        self.forms, self.lists = rows
        self._left_out: str | None = None
        self._whole: dict[str, Ready] = {}  # each form ready, with all lists
        self._prepare()

    def _prepare(self) -> None:
        self._words = {name: spelled(() if name == self._left_out else row.words, {}) for name, row in self.lists.items()}
        self._plain = {name: frozenset(" ".join(spelling) for spelling in found) for name, found in self._words.items()}
        self._openings: dict[bool, Openings] = {True: {}, False: {}}
        self._opened: dict[bool, dict[str, int]] = {True: {}, False: {}}  # by first word of an opener its forms
        self._aims: dict[str, int] = {}  # by first word of a target the forms that have it, a bit each
        self._aimless = 0  # the forms without a target
        for number, form in enumerate(self.forms.values()):
            if form.id == self._left_out:
                continue
            one, bit = self._made(form), 1 << number
            found = self._openings[form.kind in CUE_KINDS]
            for word, phrases in one.openers.items():
                found.setdefault(word, []).extend((phrase, one, bit) for phrase in phrases)
                self._opened[form.kind in CUE_KINDS][word] = self._opened[form.kind in CUE_KINDS].get(word, 0) | bit
            for word in one.targets:
                self._aims[word] = self._aims.get(word, 0) | bit
            self._aimless |= 0 if one.targets else bit
        for found in self._openings.values():
            for entries in found.values():
                entries.sort(key=lambda entry: -len(entry[0]))

    def _made(self, form: Form) -> Ready:
        """The form ready; only those that name the list left out are spelled out again."""
        if self._left_out in self.lists and f"@{self._left_out}" in form.model_dump_json():
            return ready(form, self._words)
        if form.id not in self._whole:
            self._whole[form.id] = ready(form, self._words)
        return self._whole[form.id]

    @contextmanager
    def without(self, row_id: str) -> Iterator[None]:
        """Leaves one form, or the words of one list, out for a while, to see what it does."""
        self._left_out = row_id
        self._prepare()
        forget()
        try:
            yield
        finally:
            self._left_out = None
            self._prepare()
            forget()

    def words(self, name: str) -> frozenset[str]:
        """The words of a list, by its id."""
        return self._plain[name]

    def cues(self, scene: Scene, places: Iterable[int]) -> list[Phrase]:
        """Cues of every kind that begin at these places: of those that overlap the leftmost, then the longest."""
        found: list[Phrase] = []
        behind = 0
        for index in self._may_open(scene, places, cue=True):
            if index < behind:
                continue
            best: tuple[Found, Row] | None = None
            for one, made in self._from(scene, index, self._openings[True]):
                if best is None or one.last > best[0].last:
                    best = one, made.row
            if best is not None:
                found.append(Phrase(best[1], index, best[0].last))
                behind = best[0].last
        return found

    def claims(self, scene: Scene, places: Iterable[int]) -> Iterator[Found]:
        """Forms that claim and begin at these places; of two of one form that overlap the first."""
        taken: dict[str, int] = {}
        for index in self._may_open(scene, places, cue=False):
            for one, made in self._from(scene, index, self._openings[False]):
                if taken.get(made.form.id, 0) <= index and not _inside_term(scene, index):
                    taken[made.form.id] = one.last
                    yield one

    def opens(self, word: str, *, cue: bool) -> bool:
        """Whether a cue form, or one that claims, may open with a word."""
        openings = self._openings[cue]
        return word in openings or _bare(word) in openings or (word[0].isdecimal() and "#amount" in openings)

    def _open_to(self, scene: Scene) -> list[int]:
        """For each clause the forms whose target may begin in it. Most clauses hold openers ("not", "a") and few hold targets, so
        this spares most walks."""
        forms = [self._aimless] * len(scene.clauses)
        amounts = self._aims.get("#amount", 0)
        for word, number in zip(scene.norm, scene.clause_of, strict=True):
            if word in self._aims:
                forms[number] |= self._aims[word]
            if word[0].isdecimal():
                forms[number] |= amounts
        return forms

    def _may_open(self, scene: Scene, places: Iterable[int], *, cue: bool) -> Iterator[int]:
        """The places with a form whose target may begin in their clause."""
        opened, open_to, norm, clause_of = self._opened[cue], scene.once(self._open_to), scene.norm, scene.clause_of
        amounts = opened.get("#amount", 0)
        for index in places:
            word = norm[index]
            forms = opened.get(word, 0) | (amounts if word[0].isdecimal() else 0)
            if word[-2:] == "'s":
                forms |= opened.get(word[:-2], 0)
            if forms & open_to[clause_of[index]]:
                yield index

    def _from(self, scene: Scene, index: int, openings: Openings) -> Iterator[tuple[Found, Ready]]:
        """Forms that open at a word."""
        word = scene.norm[index]
        entries = openings.get(word, ())
        if word[0].isdecimal():
            entries = [*entries, *openings.get("#amount", ())]
        elif word.endswith("'s"):
            entries = [*entries, *openings.get(_bare(word), ())]
        open_to = scene.once(self._open_to)[scene.clause_of[index]]
        for spelling, made, bit in entries:
            if bit & open_to and _spelled_at(scene.norm, index, spelling, bare=True):
                found = _walk(scene, scene.clause(index), made, index, index + len(spelling))
                if found is not None and _stands(scene, made, found):
                    yield found, made


@cache
def walker() -> Walker:
    """The walker over lexicon/forms."""
    return Walker(form_rows())


_CUE = Start(lambda word: walker().opens(word, cue=True))
_CLAIM = Start(lambda word: walker().opens(word, cue=False))


def spoken_cues(scene: Scene) -> list[Phrase]:
    """The cues that the lexicon's forms find in a text."""
    return walker().cues(scene, scene.starting(_CUE))


def spoken_claims(scene: Scene) -> Iterator[Found]:
    """The forms of the lexicon that claim in a text."""
    return walker().claims(scene, scene.starting(_CLAIM))


def _inside_term(scene: Scene, index: int) -> bool:
    """Whether a term of the lexicon goes on over a word: its row reads it."""
    before = scene.content[: bisect_left(scene.content, index, key=attrgetter("first"))][-1:]
    return any(phrase.last > index and phrase.row.kind == "term" for phrase in before)


def _bare(word: str) -> str:
    return word.removesuffix("'s")


def _spelled_at(norm: Sequence[str], index: int, spelling: Spelling, *, bare: bool = False) -> bool:
    if index + len(spelling) > len(norm):
        return False
    for at, part in enumerate(spelling, index):
        if part in CLASSES:
            if not CLASSES[part](norm, at):
                return False
        elif norm[at] != part and not (bare and _bare(norm[at]) == part):
            return False
    return True


def _walk(scene: Scene, clause: Clause, made: Ready, first: int, opened: int) -> Found | None:
    """The form that opens at ``first`` with its opener's words up to ``opened``, if fillers alone stand before its target."""
    norm, lists = scene.norm, made.lists
    met = not made.form.needs or not lists["needs"].isdisjoint(norm[first:opened])
    if not made.form.target:
        return _closed(scene, clause, made, Found(made.form, first, opened, opened, opened, opened)) if met else None
    for at in range(opened, min(clause.last, opened + made.form.widest + 1)):
        word = norm[at]
        for spelling in _at(made.targets, word) if met else ():
            behind = at + len(spelling)
            if _spelled_at(norm, at, spelling):
                found = _closed(scene, clause, made, Found(made.form, first, opened, at, behind, behind))
                if found is not None:
                    return found
        if word in lists["barred"] or not (word in made.between or any(CLASSES[name](norm, at) for name in made.classes)):
            return None
        met = met or word in lists["needs"]
    return None


def _at(phrases: Phrases, word: str) -> Sequence[Spelling]:
    """Phrases that may begin with a word."""
    found = phrases.get(word, ())
    return [*found, *phrases.get("#amount", ())] if word[0].isdecimal() else found


def _closed(scene: Scene, clause: Clause, made: Ready, found: Found) -> Found | None:
    """With the words that close it, if what stands right behind lets it be."""
    norm, lists, at = scene.norm, made.lists, found.last
    following = norm[at] if at < len(norm) else ""
    if following in lists["not_behind"] or (found.form.behind and following not in lists["behind"]):
        return None
    closer = lists["closer"]
    while at < clause.last and (norm[at] in closer or ("#word" in closer and norm[at] not in MARKS)):
        at += 1
    ended = at == clause.last or not norm[at][0].isalnum()
    return Found(found.form, found.first, found.opened, found.target, found.behind, at) if ended else found


def _stands(scene: Scene, made: Ready, found: Found) -> bool:
    """Whether what must stand before and around the form does."""
    norm, lists, form = scene.norm, made.lists, made.form
    clause = scene.clause(found.first)
    before = norm[max(clause.first, found.first - _CLOSE) : found.first]
    if before[-1:] and before[-1] in lists["not_after"]:
        return False
    if form.after and lists["after"].isdisjoint(before):
        return False
    if form.ahead and lists["ahead"].isdisjoint(norm[clause.first : found.first]):
        return False
    if form.place is not None and (form.place == "opening") != all(
        word in lists["openings"] for word in norm[clause.first : found.first]
    ):
        return False
    number = scene.clause_of[found.first]
    if form.about or form.not_about:
        around = norm[scene.clauses[max(0, number - 1)].first : clause.last]
        if (form.about and lists["about"].isdisjoint(around)) or not lists["not_about"].isdisjoint(around):
            return False
    if form.asked and not _asked(scene, number, lists["asked"]):
        return False
    return not (form.unread and _read(scene, *carriers(found)))


def _asked(scene: Scene, number: int, things: frozenset[str]) -> bool:
    """Whether a short question right before names one of these: "Price? Cut away.", "Jacket price? A. Cut."."""
    before = number - 1
    if before > 0 and scene.norm[scene.clauses[before].first : scene.clauses[before].last] == ["a", "."]:
        before -= 1
    if before < 0:
        return False
    asked = scene.clauses[before]
    return asked.end == "?" and asked.last - asked.first <= _SHORT and not things.isdisjoint(scene.norm[asked.first : asked.last])


def carriers(found: Found) -> tuple[int, int]:
    """The words that a form's claim stands on."""
    if found.form.carried_by == "opener":
        return found.first, found.opened
    return (found.target, found.behind) if found.form.carried_by == "target" else (found.first, found.last)


def _read(scene: Scene, first: int, last: int) -> bool:
    near = scene.between(first - _CLOSE - 1, last)
    return any(other.row.feature is not None and other.last >= last for other in near)
