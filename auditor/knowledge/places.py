"""Where a title stands among words, and whether what stands beside it leaves it whole ("Dune Messiah" is not "Dune")."""

from __future__ import annotations

from dataclasses import dataclass

from auditor.knowledge.gathering import Support
from auditor.knowledge.names import Author
from auditor.knowledge.titles import ARTICLES, Word, closes, listed, says

STRONG = 2  # words beside the article that make a title tell by itself


@dataclass(frozen=True, slots=True)
class Title:
    stem: str
    words: tuple[str, ...]
    author: Author
    publishers: frozenset[str]
    years: frozenset[str]
    support: Support

    @property
    def strong(self) -> bool:
        return len(self.words) >= STRONG


@dataclass(frozen=True, slots=True)
class Place:
    title: Title
    start: int
    end: int


def bounds(place: Place, stream: list[Word]) -> tuple[bool, bool]:
    """Whether the words before and behind leave the title whole."""
    title = place.title
    before = place.start - 1
    if before >= 0 and stream[before].norm in ARTICLES and stream[place.start].gap == "":
        before -= 1
    gap = gap_before(place, stream)
    left = before < 0 or gap not in ("", "-") or (gap == "" and is_trade(stream[before], title))
    sold = gap == "" and of_this_copy(place, stream)
    left = left or sold
    if not title.strong and ":" in gap and not is_trade(stream[before], title):
        left = False  # "Chapterhouse: Dune"
    if place.end == len(stream):
        return left, True
    after = stream[place.end]
    beyond = stream[place.end + 1 : place.end + 2]
    if after.norm in ARTICLES:  # "Dune, a novel", "Great Gatsby The"; but "Dracula the Un-Dead"
        trade = all(is_trade(word, title) or word.gap for word in beyond)
    else:
        trade = is_trade(after, title) or (sold and title.strong and after.norm in ("is", "has"))
    if after.gap == "," and not title.strong:
        return left, trade or after.capital
    if ":" in after.gap and not title.strong:  # "Dune: House Atreides"
        return left, trade
    return left, (after.gap not in ("", "-") or (after.gap == "" and trade))


def is_trade(word: Word, title: Title) -> bool:
    """A word that may stand beside this title: the trade's, a number, its author's or publisher's name."""
    return word.norm in listed("beside") or word.norm in title.publishers or word.norm[:1].isdigit() or title.author.owns(word)


def gap_before(place: Place, stream: list[Word]) -> str:
    """What stands before the title, the article that may begin it left out."""
    start = place.start
    if start and stream[start].gap == "" and stream[start - 1].norm in ARTICLES:
        return stream[start - 1].gap
    return stream[start].gap


def of_this_copy(place: Place, stream: list[Word]) -> bool:
    at = place.start - 1
    while at >= 0 and stream[at].norm in ARTICLES:
        at -= 1
    return at >= 1 and stream[at].norm == "of" and stream[at - 1].norm in listed("of_this_copy")


def is_mention(place: Place, stream: list[Word]) -> bool:
    """Whether the sentence before the title says that it speaks of another book: "by the author of Carrie"."""
    start = next((at for at in range(place.start, 0, -1) if closes(stream[at])), 0)
    return says(stream[start : place.start], "speaks_of_another")


def is_other(one: Place, two: Place) -> bool:
    """Two places that speak of two works: works of one title share their place, and one work may be named twice."""
    return one.title.stem != two.title.stem and one.start != two.start


def hides(other: Place, one: Place) -> bool:
    inside = other.start <= one.start and one.end <= other.end
    return inside and other.end - other.start > one.end - one.start
