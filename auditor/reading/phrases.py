"""One pass over the words finds every phrase of the lexicon: terms, nouns, cues and signs alike.

All phrases stand in one automaton over words, built from their notation without spelling every combination out: the lexicon's
few thousand lines stand for some hundred thousand phrases, which spaCy's PhraseMatcher would take four seconds and a Doc for
each text to hold; this takes some milliseconds and works on the words as they are.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from functools import lru_cache
from operator import itemgetter
from typing import NamedTuple

from auditor.reading.rows import Row, chunks
from auditor.reading.words import words

CUES = frozenset({"denial", "hedge", "unchecked", "elsewhere", "exception", "contrast", "this copy"})
_HYPHENS = ("-", " ", "")


class Phrase(NamedTuple):
    """A row's phrase at words ``first`` up to and without ``last``."""

    row: Row
    first: int
    last: int


class _Step(NamedTuple):
    """All the states that the same words lead to: the words that go on from there, None until one was followed, and the places
    of the rows whose phrase ends there."""

    states: frozenset[int]
    following: dict[str, _Step | None]
    ends: tuple[int, ...]


@lru_cache(maxsize=50_000)
def spellings(piece: str) -> frozenset[tuple[str, ...]]:
    """A piece of a phrase as words: with hyphen, blank and nothing where it has a hyphen, with and without apostrophes."""
    if piece.isascii() and piece.isalpha():
        return frozenset({(piece.lower(),)})
    forms = {piece.replace("-", hyphen) for hyphen in (_HYPHENS if "-" in piece.strip("-") else ("-",))}
    forms |= {form.replace("'", "") for form in forms if "'" in form}
    return frozenset(tuple(words(form).norm) for form in forms)


class PhraseFinder:
    """Finds the phrases of all rows. Overlaps are settled here, once: the longest phrase wins, then the leftmost, then the row
    that stands first."""

    def __init__(self, rows: Iterable[Row]) -> None:
        self.rows = tuple(rows)
        self._next: list[dict[str, list[int]]] = [{}]  # state -> word -> states; state 0 begins every phrase
        self._ends: dict[int, list[int]] = {}  # state -> places of the rows whose phrase ends there
        self._steps: dict[frozenset[int], _Step] = {}
        self._left_out: str | None = None
        for place, row in enumerate(self.rows):
            for phrase in row.phrases:
                self._add(phrase, place)
        self._cue = [row.kind in CUES for row in self.rows]
        self._begin = self._step(frozenset({0}))

    def _add(self, phrase: str, place: int) -> None:
        reached = {0}
        for alternatives in chunks(phrase):
            behind: set[int] = set()
            joint: int | None = None  # where all alternatives meet again
            for piece in alternatives:
                for form in spellings(piece) if piece else {()}:
                    if not form:
                        behind |= reached
                        continue
                    if joint is None:
                        joint = self._state()
                    self._chain(reached, form, joint)
                    behind.add(joint)
            reached = behind
        for state in reached - {0}:
            self._ends.setdefault(state, []).append(place)

    def _state(self) -> int:
        self._next.append({})
        return len(self._next) - 1

    def _chain(self, states: set[int], form: tuple[str, ...], joint: int) -> None:
        for word in form[:-1]:
            step = self._state()
            for state in states:
                self._next[state].setdefault(word, []).append(step)
            states = {step}
        for state in states:
            self._next[state].setdefault(form[-1], []).append(joint)

    @contextmanager
    def without(self, row_id: str) -> Iterator[None]:
        """Leaves one row out for a while, to see what it does."""
        self._left_out = row_id
        try:
            yield
        finally:
            self._left_out = None

    def _step(self, states: frozenset[int]) -> _Step:
        """The states as one step. A step is worked out when a text first gets there: few of all that there could be are."""
        step = self._steps.get(states)
        if step is None:
            places = {place for state in states for place in self._ends.get(state, ())}
            words = {word for state in states for word in self._next[state]}
            step = self._steps[states] = _Step(states, dict.fromkeys(words), tuple(sorted(places)))
        return step

    def _follow(self, step: _Step, word: str) -> _Step:
        following = step.following[word] = self._step(
            frozenset(target for state in step.states for target in self._next[state].get(word, ()))
        )
        return following

    def _hits(self, norm: list[str]) -> list[tuple[int, int, int]]:
        """(length with a minus, first, place of row) of every phrase in the words."""
        hits: list[tuple[int, int, int]] = []
        begin, size = self._begin.following, len(norm)
        for first, word in enumerate(norm):
            if word not in begin:
                continue
            step = begin[word] or self._follow(self._begin, word)
            last = first + 1
            while True:
                for place in step.ends:
                    hits.append((first - last, first, place))
                if last == size or norm[last] not in step.following:
                    break
                step = step.following[norm[last]] or self._follow(step, norm[last])
                last += 1
        return hits

    def find(self, norm: list[str]) -> list[Phrase]:
        """Phrases in order of place. Cues overlap no other cue and the rest no other of the rest; a cue inside a longer
        phrase of the rest ("no" in "no jacket", "but" in a false friend) is part of that phrase and no cue."""
        cued = bytearray(len(norm))  # the words taken by cues
        holder: list[Phrase | None] = [None] * len(norm)  # the phrase of the rest that has taken a word
        found: list[Phrase] = []
        for shorter, first, place in sorted(self._hits(norm)):
            row, last = self.rows[place], first - shorter
            if row.id == self._left_out:
                continue
            if self._cue[place]:
                other = holder[first]
                longer = other is not None and other.first <= first and last <= other.last and other.last - other.first > -shorter
                if longer or any(cued[first:last]):
                    continue
                cued[first:last] = b"\1" * -shorter
                found.append(Phrase(row, first, last))
            elif not any(holder[first:last]):
                phrase = Phrase(row, first, last)
                holder[first:last] = [phrase] * -shorter
                found.append(phrase)
        found.sort(key=itemgetter(1))
        return found
