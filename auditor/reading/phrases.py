"""One pass over the words finds every phrase of the lexicon: terms, nouns, cues and signs alike.

All phrases stand in one automaton over words, built from their notation without spelling every combination out: the lexicon's
few thousand lines stand for some hundred thousand phrases, which spaCy's PhraseMatcher would take four seconds and a Doc for
each text to hold; this takes some milliseconds and works on the words as they are.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass

from auditor.reading.rows import Row, chunks
from auditor.reading.words import words

CUES = frozenset({"denial", "hedge", "unchecked", "elsewhere", "exception", "contrast", "this copy"})
_HYPHENS = ("-", " ", "")


@dataclass(frozen=True, slots=True)
class Phrase:
    """A row's phrase at words ``first`` up to and without ``last``."""

    row: Row
    first: int
    last: int


def spellings(piece: str) -> set[tuple[str, ...]]:
    """A piece of a phrase as words: with hyphen, blank and nothing where it has a hyphen, with and without apostrophes."""
    forms = {piece.replace("-", hyphen) for hyphen in (_HYPHENS if "-" in piece.strip("-") else ("-",))}
    forms |= {form.replace("'", "") for form in forms if "'" in form}
    return {tuple(words(form).norm) for form in forms}


class PhraseFinder:
    """Finds the phrases of all rows. Overlaps are settled here, once: the longest phrase wins, then the leftmost, then the row
    that stands first."""

    def __init__(self, rows: Iterable[Row]) -> None:
        self.rows = tuple(rows)
        self._next: list[dict[str, list[int]]] = [{}]  # state -> word -> states; state 0 begins every phrase
        self._ends: dict[int, list[int]] = {}  # state -> places of the rows whose phrase ends there
        self._left_out: str | None = None
        for place, row in enumerate(self.rows):
            for phrase in row.phrases:
                self._add(phrase, place)

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

    def _hits(self, norm: list[str]) -> Iterator[tuple[int, int, int]]:
        """(place of row, first, last) of every phrase in the words."""
        following, ends = self._next, self._ends
        begin = following[0]
        size = len(norm)
        for first in range(size):
            states = begin.get(norm[first])
            if states is None:
                continue
            last = first + 1
            while states:
                for state in states:
                    for place in ends.get(state, ()):
                        yield place, first, last
                if last == size:
                    break
                word = norm[last]
                states = [target for state in states for target in following[state].get(word, ())]
                last += 1

    def find(self, norm: list[str]) -> list[Phrase]:
        """Phrases in order of place. Cues overlap no other cue and the rest no other of the rest; a cue inside a longer
        phrase of the rest ("no" in "no jacket", "but" in a false friend) is part of that phrase and no cue."""
        taken = {True: bytearray(len(norm)), False: bytearray(len(norm))}
        found: list[Phrase] = []
        for place, first, last in sorted(set(self._hits(norm)), key=lambda hit: (hit[1] - hit[2], hit[1], hit[0])):
            row = self.rows[place]
            cue = row.kind in CUES
            plane = taken[cue]
            if row.id == self._left_out or any(plane[first:last]):
                continue
            if cue and all(taken[False][first:last]) and _within(found, first, last):
                continue
            plane[first:last] = b"\1" * (last - first)
            found.append(Phrase(row, first, last))
        found.sort(key=lambda phrase: phrase.first)
        return found


def _within(found: list[Phrase], first: int, last: int) -> bool:
    """Whether a longer phrase that is no cue holds these words."""
    longer = (other for other in found if other.row.kind not in CUES and other.last - other.first > last - first)
    return any(other.first <= first and last <= other.last for other in longer)
