"""Titles that sellers take apart: turned round, cut short, among shop words ("Nightjar (Brass)", "mrs bodkin winter book").

Only words are counted here, whatever their order: all of a title's telling words, or a distinctive part of them, and nothing
left over in the field that another book's title could be made of. What is found so is always doubtful.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import pairwise

from rapidfuzz import fuzz

from auditor.knowledge import lexicon
from auditor.knowledge.english import right_words
from auditor.knowledge.names import Author
from auditor.knowledge.points import PointSet
from auditor.knowledge.titles import ARTICLES, Word, listed, normal, words

_BRACKETS = {"(": 1, "[": 1, ")": -1, "]": -1}
_APART = 4  # words between two of a title's words
_SLIPPABLE = 4  # letters from which a word may be cut short; one more and it may carry a slip
_NEAR = 70.0  # ratio of letters from which it is one
_FEW = 2  # words of a title, or of what is left of it, that tell something


@dataclass(frozen=True, slots=True)
class Support:
    """What else tells of a work: its author, publishers' words and initials, years, and the wordings of its readings."""

    author: Author
    publishers: frozenset[str]
    years: frozenset[str]
    readings: tuple[str, ...]

    @classmethod
    def of(cls, work: PointSet, author: Author) -> Support:
        """From a point set; ``author`` is its work's."""
        publishers = {word.norm for edition in work.editions for word in words(edition.publisher or "") if len(word.norm) > 3}
        years = frozenset(str(edition.year) for edition in work.editions if edition.year)
        return cls(author, frozenset(publishers | _initials(work) | _houses(work)), years, _wordings(work))

    def owns(self, word: Word) -> bool:
        return word.norm in self.publishers or self.author.owns(word)

    def given(self, field: Sequence[Word], head: Sequence[Word], title: Sequence[str]) -> int:
        """How much of it is told: 2 for the author or a reading, 1 for a publisher or a year."""
        if self.author.is_named(list(field), title) or self.author.is_named(list(head), title):
            return 2
        said = f" {' '.join(word.norm for word in (*field, *head))} "
        if any(f" {reading} " in said for reading in self.readings):
            return 2
        return int(self.publishes(field) or self.publishes(head) or any(word.norm in self.years for word in (*field, *head)))

    def is_talk(self, field: Sequence[Word]) -> bool:
        """Whether a field names no book but talks of one: no capital in it but the first, the author's and the trade's."""
        strange = [at for at, word in enumerate(field) if not _explained(word, self)]
        if any(field[at].capital for at in strange if at):
            return False
        return not strange or any(not word.capital for word in field)

    def publishes(self, field: Sequence[Word]) -> bool:
        """Whether a publisher is named by a word of its own."""
        return any(word.norm in self.publishers and word.norm not in listed("publishers_share") for word in field)


def _initials(work: PointSet) -> set[str]:
    """ "LSU" for Louisiana State University Press: a publisher's initials, three letters or more."""
    named = [[word.norm for word in words(edition.publisher or "") if word.norm not in ARTICLES] for edition in work.editions]
    spelt = {"".join(name[0] for name in one[:last]) for one in named for last in (len(one) - 1, len(one)) if one}
    return {initials for initials in spelt if len(initials) > _FEW}


def _houses(work: PointSet) -> set[str]:
    """The words by which its editions are named, such as a book club's, the trade's own left out."""
    common = listed("beside") | listed("small") | listed("shop_talk") | listed("loose")
    return {word.norm for edition in work.editions for word in words(edition.name) if word.norm.isalpha()} - common


def _wordings(work: PointSet) -> tuple[str, ...]:
    """How a work's misprints read: words that hardly another book has."""
    read = (reading.value for point in work.points if point.feature == "misprint" for reading in point.readings)
    return tuple(said for value in read if len((said := normal(value)).split()) > _FEW)


@lru_cache(maxsize=50_000)
def telling(title: tuple[str, ...]) -> frozenset[str]:
    """The words of a title that tell it, plurals and possessives by their stems, numbers by their figures."""
    return frozenset(plain(word) for word in title if word not in listed("small"))


@cache
def _numbers() -> dict[str, int]:
    return dict(lexicon.table("words")["numbers"])


@lru_cache(maxsize=30_000)
def plain(word: str) -> str:
    if word in _numbers():
        return str(_numbers()[word])
    return word[:-1] if len(word) > 3 and word.endswith("s") and not word.endswith("ss") else word


def score(title: tuple[str, ...], support: Support, field: Sequence[Word], head: Sequence[Word]) -> float | None:
    """From 0 to 80 how well a title is gathered from the words of a field; None where it isn't."""
    wanted = telling(title)
    places = {plain(word.norm): at for at, word in enumerate(field) if plain(word.norm) in wanted}
    if not places or not _together(sorted(places.values())):
        return None
    left: list[_Left] = []
    for word in _left_over(places.values(), wanted - places.keys(), support, field):
        if not word.talk:
            return None
        left.append(word)
    given = support.given(field, head, title)
    if left and not given and not all(word.apart for word in left):
        return None
    if len(wanted) < _FEW:
        begins = min(places.values()) <= 1 and all(field[at].norm in title for at in places.values())
        housed = support.publishes(field) or (support.publishes(head) and field[min(places.values())].capital)
        return 55.0 - len(left) if begins and housed else None
    if places.keys() == wanted:
        if left and not given and sorted(places, key=lambda word: places[word]) != [w for w in map(plain, title) if w in places]:
            return None
        exact = {field[at].norm for at in places.values() if not field[at].norm.isdigit()} <= set(title)
        return 70.0 + 5 * given - len(left) if exact or given else None
    if _spelt_out(title, head):
        given = 2
    named = any(word.norm in listed("titles_of_people") for word in (field[at] for at in places.values()))
    if len(places) >= _FEW and (given or named):
        return 60.0 + 5 * given - len(left)
    (first, *_) = places
    return 50.0 - len(left) if given > 1 or (given and not left) or (len(first) > _SLIPPABLE and not _is_english(first)) else None


def _is_english(word: str) -> bool:
    """Whether a word brought to its plain form is no name of somebody's making."""
    return any(form in right_words() and plain(form) == word for form in (word, f"{word}s"))


def _spelt_out(title: Sequence[str], head: Sequence[Word]) -> bool:
    """Whether the text gives the whole title."""
    return f" {' '.join(title)} " in f" {' '.join(word.norm for word in head)} "


@dataclass(frozen=True, slots=True)
class _Left:
    """A word that nothing explains: ``talk`` if it can be no part of a title, ``apart`` if a mark parts it from one."""

    talk: bool
    apart: bool


def _left_over(places: Iterable[int], wanting: frozenset[str], support: Support, field: Sequence[Word]) -> Iterator[_Left]:
    held = set(places)
    titled = all(field[at].capital for at in held)
    depth, apart, seen = 0, False, False  # inside brackets; behind a mark or a turn of talk; behind the title's first word
    for at, word in enumerate(field):
        depth += sum(_BRACKETS.get(mark, 0) for mark in word.gap)
        seen = seen or at in held
        apart = (
            seen
            and at not in held
            and (apart or word.gap not in ("", "-") or (word.norm in listed("turns") and not word.capital))
        )
        if at not in held and not _explained(word, support) and not any(_is_slip(word.norm, one) for one in wanting):
            aside = depth > 0 and seen
            yield _Left(aside or (titled and not word.capital), aside or apart)


def _is_slip(said: str, meant: str) -> bool:
    """A word cut short ("arith.") or misspelt."""
    short = len(said) >= _SLIPPABLE and meant.startswith(said)
    return short or (len(said) > _SLIPPABLE and said[0] == meant[0] and fuzz.ratio(said, meant) >= _NEAR)


def _explained(word: Word, support: Support) -> bool:
    known = any(word.norm in listed(name) for name in ("beside", "loose", "small", "shop_talk"))
    return known or len(word.norm) == 1 or any(letter.isdigit() for letter in word.norm) or support.owns(word)


def _together(places: Sequence[int]) -> bool:
    return all(after - before <= _APART for before, after in pairwise(places))
