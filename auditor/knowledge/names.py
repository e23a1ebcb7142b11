"""Authors' names as listings give them: "J.R.R. Tolkien", "TOLKIEN, J. R. R.", "Tolkein"; and when it is somebody else."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from functools import lru_cache

from rapidfuzz.distance import DamerauLevenshtein

from auditor.knowledge.titles import ARTICLES, Word, listed, words

_SLIPPABLE = 6  # letters from which a surname may carry one slip: "Tolkein", "Steinbek"
_REACH = 4  # words from the surname within which given names stand
_SHOUT = 12  # words all in capitals from which capitals mark no names


@dataclass(frozen=True, slots=True)
class Author:
    """``given`` holds given names and initials in order, ``words`` every word of the name."""

    surname: str
    given: tuple[str, ...]
    words: frozenset[str]

    @classmethod
    def of(cls, name: str) -> Author:
        """From a name as point sets write it: given names first."""
        parts = [word.norm for word in words(name) if word.norm not in ("jr", "sr")] or [""]
        return cls(parts[-1], tuple(parts[:-1]), frozenset(parts))

    def owns(self, word: Word) -> bool:
        """Whether ``word`` is a part of the name: as it is, an initial, or the surname with a slip."""
        initial = len(word.norm) == 1 and word.capital and word.norm in {name[0] for name in self.given}
        return initial or word.norm in self.words or self._is_surname(word)

    def is_named(self, stream: list[Word], title: Collection[str] = ()) -> bool:
        """Whether the surname stands in ``stream`` and no other given name goes with it; the words of ``title`` are no names."""
        return any(not self._is_namesake(stream, at, title) for at in self._surnames(stream))

    def is_another(self, stream: list[Word], title: Collection[str] = ()) -> bool:
        """Whether "by" and a name tell of another author, or a namesake stands there and the author doesn't."""
        if self.is_named(stream, title):
            return False
        if self._surnames(stream):
            return True
        if len(stream) > _SHOUT and all(word.capital for word in stream):
            return False  # all in capitals: "GO BY IS" names nobody
        for at in [at for at, word in enumerate(stream[:-1]) if word.norm == "by"]:
            after = stream[at + 1]
            names = after.capital and after.gap == "" and after.norm not in ARTICLES
            if names and not any(map(self.owns, stream[at + 1 : at + 5])):
                return True
        return False

    def stands_beside(self, stream: list[Word], start: int, end: int) -> bool:
        """Whether the name stands directly before ``start`` or, after "by" or a comma, behind ``end``."""
        before = start - 1
        while before >= 0 and stream[before].norm in ("the", "a", "an", "s"):
            before -= 1
        if before >= 0 and self.owns(stream[before]):
            return True
        behind = stream[end : end + 2 + len(self.given)]
        return bool(behind) and (behind[0].norm == "by" or self.owns(behind[0])) and any(map(self.owns, behind))

    def _surnames(self, stream: list[Word]) -> list[int]:
        """Where the surname stands: at words that begin with its letter, whatever slip it carries."""
        initial = self.surname[:1]
        return [at for at, word in enumerate(stream) if word.norm[:1] == initial and _spells(word.norm, self.surname)]

    def _is_surname(self, word: Word) -> bool:
        return _spells(word.norm, self.surname)

    def _is_namesake(self, stream: list[Word], at: int, title: Collection[str]) -> bool:
        """Another given name right beside the surname ("Brian Herbert", "Herbert, Brian."), and none of the author's near it."""
        filed = at == 0 and len(stream) > 2 and stream[1].gap == "," and "." in stream[2].gap
        if not self.given or not (filed or (at and not stream[at].gap)):
            return False
        around = stream[max(0, at - _REACH) : at] + stream[at + 1 : at + 1 + _REACH]
        initials = {name[0] for name in self.given}
        if any(word.norm in self.given or (len(word.norm) == 1 and word.norm in initials) for word in around):
            return False
        name = stream[1] if filed else stream[at - 1]
        if not name.capital or any(
            name.norm in known for known in (ARTICLES, title, listed("titles_of_people"), listed("beside"))
        ):
            return False
        return filed or at == 1 or name.gap != "" or stream[at - 2].norm == "by" or len(name.norm) == 1


@lru_cache(maxsize=30_000)
def _spells(norm: str, surname: str) -> bool:
    """Whether a word is a surname, in the genitive or with one slip as well."""
    if norm in (surname, f"{surname}s"):
        return True
    near = len(surname) >= _SLIPPABLE and abs(len(norm) - len(surname)) <= 1 and norm[:1] == surname[:1]
    return near and DamerauLevenshtein.distance(norm, surname, score_cutoff=1) <= 1
