"""Typing slips: a word that nobody writes, one or two strokes from a word of the lexicon, is read as that word.

Words that are right as they stand are never mended: the lexicon's own, and the English words and names of
lexicon/english.txt. Each form is looked up once.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from rapidfuzz import process
from rapidfuzz.distance import OSA

from auditor.knowledge.english import right_words
from auditor.reading.phrases import spellings
from auditor.reading.rows import Row, chunks
from auditor.reading.scene import roles
from auditor.reading.words import Words, words

SHORTEST = 5
_LONG = 8  # from this length on two strokes may be wrong
_NAME = 6  # a capitalised word shorter than this may be any name
_REMEMBERED = 50_000
_PLAIN = (
    *("theres", "theyre", "edition", "editions", "printing", "impression", "condition"),
    *("american", "british", "illustrated", "limited", "revised"),
)


def vocabulary(rows: Iterable[Row]) -> frozenset[str]:
    """The words that slips are mended to: those of the lexicon's phrases and of the word lists that readers use."""
    pieces = {piece for row in rows for phrase in row.phrases for choices in chunks(phrase) for piece in choices}
    known = {word for piece in pieces for form in spellings(piece) for word in form}
    for name in ("ordinals", "numbers", "colours", "materials", "abbreviations"):
        known.update(word for entry in roles()[name] for word in words(entry).norm)
    known.update(roles()["question_openers"])
    known.update(word.replace("'", "") for word in tuple(known))
    known.update(_PLAIN)
    return frozenset(word for word in known if word.isalpha())


def strokes(word: str) -> int:
    """How many letters of a word of this length may be wrong, missing, doubled or swapped."""
    return 2 if len(word) >= _LONG else 1


class Mender:
    """Mends words against the lexicon's; what it found it remembers."""

    def __init__(self, rows: Iterable[Row]) -> None:
        self.known = vocabulary(rows)
        self._by_letter: dict[str, list[str]] = {}
        for word in sorted(self.known):
            if len(word) >= SHORTEST:
                self._by_letter.setdefault(word[0], []).append(word)
        self._right: set[str] = set(self.known)  # forms met that need no mending
        self._mended: dict[str, str] = {}

    def mend(self, split: Words) -> Words:
        """The words with slips mended. A short word that begins with a capital in running text is left: it may be a name."""
        norm, right = split.norm, self._right
        suspects = [i for i, word in enumerate(norm) if word not in right]
        mended = norm.copy() if suspects else norm
        for i in suspects:
            if norm[i] in roles()["common_slips"]:
                mended[i] = roles()["common_slips"][norm[i]]
                continue
            piece = split.text[split.start[i] : split.start[i] + 2]
            if len(norm[i]) >= _NAME or not piece[0].isupper() or piece[1:2].isupper():
                mended[i] = self.word(norm[i])
        return replace(split, norm=mended) if suspects else split

    def word(self, word: str) -> str:
        """The word that this one is read as: itself if it is right as it stands."""
        if word in self._right:
            return word
        held = self._mended.get(word)
        if held is None:
            held = self._near(word) if self._may_slip(word) else word
            if len(self._right) + len(self._mended) >= _REMEMBERED:
                self._right, self._mended = set(self.known), {}
            if held == word:
                self._right.add(word)
            else:
                self._mended[word] = held
        return held

    def _may_slip(self, word: str) -> bool:
        return len(word) >= SHORTEST and word.isalpha() and word not in self.known and word not in right_words()

    def _near(self, word: str) -> str:
        found = process.extractOne(word, self._by_letter.get(word[0], ()), scorer=OSA.distance, score_cutoff=strokes(word))
        return found[0] if found and len(found[0]) >= len(word) - 2 else word
