"""All that the readers look at: the words, the phrases found in them, and the clauses and segments they stand in."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cache
from operator import attrgetter
from typing import Any, TypeVar
from unicodedata import category

from auditor.knowledge import lexicon
from auditor.reading.phrases import CUES, Phrase
from auditor.reading.starts import Start, starts_in
from auditor.reading.words import Words
from auditor.values import Part, Stance

_HARD = {"\n", ";", "!", "?", "•", "|", "—", "*", "~", "...", "=", "¶", ">"}
_SOFT = {",", "(", ")", "[", "]"}
_LONGEST = 120  # words of a clause; the longest of some 19,000 that sellers wrote has 69, and readers look all through a clause
_STOPPING = _HARD | {"-", "."}
_SYMBOLS = "\u2190"  # arrows, check marks and emoji stand from here on

Fact = TypeVar("Fact")


@cache
def roles() -> dict[str, Any]:
    """The word lists of lexicon/words.toml: lists as frozensets, tables as dicts."""
    return {name: frozenset(value) if isinstance(value, list) else value for name, value in lexicon.table("words").items()}


_first = attrgetter("first")


def is_symbol(word: str) -> bool:
    """Whether a word is a check mark, an arrow or an emoji: sellers part statements by them."""
    return word > _SYMBOLS and category(word[0]) in ("So", "Sk")


@dataclass(frozen=True, slots=True)
class Clause:
    """Words ``first`` up to and without ``last``; ``end`` is the mark that closed it ("" at the text's end)."""

    first: int
    last: int
    end: str


@dataclass(frozen=True, slots=True)
class Draft:
    """A claim on its way: ``part`` and ``stance`` are None where the surroundings still have to settle them.

    ``denied`` turns the stance ("unclipped"); ``negative`` says that the value itself is a lack ("no price"), so that the
    denial in its own words isn't counted again.
    """

    feature: str
    value: str
    first: int
    last: int
    row: str
    part: Part | None = None
    stance: Stance | None = None
    denied: bool = False
    negative: bool = False


@dataclass(frozen=True, slots=True)
class Scene:
    """One text, ready to be read."""

    words: Words
    norm: list[str]  # the words' plain forms
    content: list[Phrase]
    cues: list[Phrase]
    clauses: list[Clause]
    clause_of: list[int]
    segment_of: list[int]
    bounds: list[int]  # where each segment begins, and where the last one ends
    at: dict[int, Phrase]
    begins: list[int]  # where each of the content phrases begins
    starts: dict[Start, list[int]]
    known: dict[Callable[[Scene], Any], Any] = field(default_factory=dict, repr=False)

    def starting(self, start: Start) -> Sequence[int]:
        """The words that a reader starts from, in order."""
        return self.starts.get(start, ())

    def once(self, fact: Callable[[Scene], Fact]) -> Fact:
        """A fact of the whole text, worked out when it is first asked for: ``scene.once(is_lot)``."""
        if fact not in self.known:
            self.known[fact] = fact(self)
        value: Fact = self.known[fact]
        return value

    def clause(self, index: int) -> Clause:
        return self.clauses[self.clause_of[index]]

    def between(self, first: int, last: int) -> list[Phrase]:
        """Content phrases that begin at words ``first`` up to and without ``last``."""
        begins = self.begins
        low = bisect_left(begins, first)
        return self.content[low : bisect_left(begins, last, low)] if last > first else []

    def cues_between(self, first: int, last: int) -> list[Phrase]:
        """Cues that begin at words ``first`` up to and without ``last``."""
        return self.cues[bisect_left(self.cues, first, key=_first) : bisect_left(self.cues, last, key=_first)]

    def cues_over(self, first: int, last: int) -> list[Phrase]:
        """Cues that share a word with words ``first`` up to and without ``last``; cues share none with one another."""
        at = bisect_left(self.cues, first, key=_first)
        before = self.cues[at - 1 : at] if at else []
        return [cue for cue in (*before, *self.cues_between(first, last)) if cue.last > first]

    def segment(self, index: int) -> tuple[int, int]:
        """The comma-to-comma stretch of words around a word, as (first, last)."""
        mark = self.segment_of[index]
        return self.bounds[mark], self.bounds[mark + 1]


def stage(words: Words, found: list[Phrase]) -> Scene:
    """Parts the text into clauses (listings run on: dashes, bullets and line breaks part them too) and comma segments."""
    norm = words.norm
    inside = bytearray(len(norm) + 1)
    for phrase in found:
        if phrase.row.id != "query":
            inside[phrase.first : phrase.last] = b"\1" * (phrase.last - phrase.first)
    clauses: list[Clause] = []
    clause_of, segment_of = [0] * len(norm), [0] * len(norm)
    first, bounds = 0, [0]
    for index, word in enumerate(norm):
        if index - first >= _LONGEST:
            clauses.append(Clause(first, index, ""))
            first = index
            bounds.append(index)
        clause_of[index], segment_of[index] = len(clauses), len(bounds) - 1
        if (word in _STOPPING or (word > _SYMBOLS and is_symbol(word))) and not inside[index] and _ends_clause(words, index):
            clauses.append(Clause(first, index + 1, word))
            first = index + 1
            bounds.append(first)
        elif word in _SOFT and not inside[index]:
            bounds.append(index + 1)
    if first < len(norm):
        clauses.append(Clause(first, len(norm), ""))
    bounds.append(len(norm))
    content = [phrase for phrase in found if phrase.row.kind not in CUES]
    cues = [phrase for phrase in found if phrase.row.kind in CUES and not _counts(norm, phrase)]
    at = {phrase.first: phrase for phrase in content}
    return Scene(words, norm, content, cues, clauses, clause_of, segment_of, bounds, at, [*at], starts_in(norm))


def _counts(norm: list[str], cue: Phrase) -> bool:
    """Whether "no" is the short form of number, or "no two alike", and denies nothing: "copy no. 123", "No 44 of 300"."""
    if norm[cue.first : cue.last] != ["no"] or norm[cue.first - 1 : cue.first] == ["?"]:
        return False
    if norm[cue.last : cue.last + 1] in (["two"], ["2"]) or norm[cue.last : cue.last + 2] == [".", "line"]:
        return True
    dotted = norm[cue.last : cue.last + 1] == ["."]
    at = cue.last + dotted
    if not norm[at : at + 1] or not norm[at][0].isdecimal():
        return False
    counted = norm[at + 1 : at + 2] in (["of"], ["/"], ["from"], ["out"])
    return dotted or counted or (norm[cue.first - 1 : cue.first] != [] and norm[cue.first - 1] in roles()["numbered_things"])


def _ends_clause(words: Words, index: int) -> bool:
    word = words.norm[index]
    if word in _HARD or word > _SYMBOLS:
        return True
    last = index + 1 == len(words.norm)
    if word == "-":
        spaced = index > 0 and words.start[index] > words.end[index - 1]
        return spaced or last
    if word != ".":
        return False
    if last:
        return True
    following = words.text[words.start[index + 1]]
    glued = words.start[index + 1] == words.end[index]
    before = words.norm[index - 1] if index else ""
    if glued and (following in ".,;:/)" or (len(before) == 1 and before.isalpha()) or following.isdecimal()):
        return following == "."
    return not (
        before in roles()["abbreviations"] and (following.islower() or following.isdecimal() or following in ",;:(/+-&$£")
    )
