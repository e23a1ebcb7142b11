"""Which point set a listing speaks of: by ISBN, else by title and author. No match is better than a wrong one.

An index from each title's rarest word to its works, and from authors' surnames to theirs, leaves a few candidates of any
number of works. A candidate must stand as a title: its words together, with nothing but trade words, punctuation, or the
author's name beside them ("Dune Messiah" is not "Dune"). Short titles need the author as well, or to be all of the title.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from rapidfuzz import fuzz

from auditor.knowledge.gathering import Support, plain, score, telling
from auditor.knowledge.isbn import to_13
from auditor.knowledge.names import Author
from auditor.knowledge.places import STRONG, Place, Title, bounds, gap_before, hides, is_mention, is_other, is_trade, of_this_copy
from auditor.knowledge.points import PointSet
from auditor.knowledge.titles import ARTICLES, Word, closes, core, listed, says, words

_HEAD = 60  # words of the text in which the title of what is sold is looked for
_SLIP = 90.0  # ratio of letters from which words by the right author count as the title misspelt
_SHORT = 7  # letters of a title below which a slip isn't looked for
_LOT = 15  # two titles this near each other are a lot, not a book and a mention
_STRAY = 2  # unexplained words in a title field from which a match is doubtful
_PROSE = 5  # and from which a title without its author is none


@dataclass(frozen=True, slots=True)
class Match:
    """The set's stem; ``doubtful`` where title or author was not told plainly; ``score`` from 0 to 100."""

    stem: str
    doubtful: bool
    score: float


class Matcher:
    """Looks listings up among ``sets``; the index is built once, a look-up takes a fraction of a millisecond."""

    def __init__(self, sets: Mapping[str, PointSet]) -> None:
        self._isbns: dict[str, set[str]] = defaultdict(set)
        titles: list[Title] = []
        for stem, work in sets.items():
            author = Author.of(work.work.author)
            publishers = frozenset(word.norm for e in work.editions for word in words(e.publisher or "") if len(word.norm) > 3)
            spellings = {core(name) for name in (work.work.title, *work.work.also_titled)} - {()}
            years = frozenset(str(edition.year) for edition in work.editions if edition.year)
            support = Support.of(work, author)
            titles += [Title(stem, spelling, author, publishers, years, support) for spelling in spellings]
            for edition in work.editions:
                for number in filter(None, map(to_13, edition.isbns)):
                    self._isbns[number].add(stem)
        counts = Counter(word for title in titles for word in set(title.words))
        self._by_word: dict[str, list[Title]] = defaultdict(list)
        self._by_surname: dict[str, list[Title]] = defaultdict(list)
        self._by_telling: dict[str, list[Title]] = defaultdict(list)
        for title in titles:
            for word in telling(title.words):
                self._by_telling[word].append(title)
            self._by_word[min(title.words, key=lambda word: (counts[word], -len(word)))].append(title)
            self._by_surname[title.author.surname].append(title)

    def match(self, text: str, title: str | None = None, isbns: Sequence[str] = ()) -> Match | None:
        stems = set[str]().union(*(self._isbns.get(to_13(number) or "", set()) for number in isbns))
        if len(stems) == 1:
            return Match(stems.pop(), False, 100.0)
        head = words(text[: _HEAD * 12], _HEAD)
        field = words(title or "", _HEAD)
        if any(word.norm not in listed("beside") and not word.norm.isdigit() for word in field):
            return self._in_field(field, head)
        return self._in_text(head)

    def _in_field(self, field: list[Word], head: list[Word]) -> Match | None:
        if says(field, "another_kind"):
            return None
        places = self._places(field)
        if any(is_other(one, two) for one in places for two in places):
            return None
        matches = [found for place in places if (found := _judge_field(place, field, head))]
        if matches:
            return _best(matches)
        return self._misspelt(field, head) or self._shortened(places, field, head) or self._gathered(field, head)

    def _gathered(self, field: list[Word], head: list[Word]) -> Match | None:
        """A title turned round, cut short or among shop words: the one that explains most of the field, or none."""
        if says(field, "speaks_of_another"):
            return None
        found: list[Match] = []
        for title in {id(t): t for word in field for t in self._by_telling.get(plain(word.norm), ())}.values():
            author = title.author
            worth = None if author.is_another(field, title.words) else score(title.words, title.support, field, head)
            if worth is not None and (author.is_named(field) or not author.is_another(head, title.words)):
                found.append(Match(title.stem, True, worth))
        return _best(found) if found else None

    def _shortened(self, places: list[Place], field: list[Word], head: list[Word]) -> Match | None:
        """A title cut short in its field ("Nutkin, Warne"), or only talked of ("Fantasy novel, Marrant"), that the text gives."""
        told = self._in_text(head)
        spoken = {word.norm for word in field if len(word.norm) > 3} - listed("beside")
        there = [place for place in self._places(head) if place.title.strong and not is_mention(place, head)]
        for place in there:
            title = place.title
            clear = not places or (told and not told.doubtful)
            if told and clear and title.stem == told.stem and spoken & set(title.words):
                return Match(told.stem, True, 75.0)
            rivals = any(is_other(place, other) for other in there)
            if not places and not rivals and title.support.is_talk(field) and _stands(place, head, field):
                return Match(title.stem, True, 72.0)
        return None

    def _in_text(self, head: list[Word]) -> Match | None:
        everywhere = self._places(head)
        places = [place for place in everywhere if not is_mention(place, head)]
        judged = [(place, found) for place in places if (found := _judge_text(place, head))]
        if not judged:
            return None
        first = judged[0][0]
        match = _best([found for place, found in judged if place.start == first.start])
        others = [place for place in everywhere if is_other(place, first)]
        if match is None:
            return None
        if any(place.start < first.start or (place in places and place.start - first.end <= _LOT) for place in others):
            return None
        return Match(match.stem, True, match.score) if any(place in places for place in others) else match

    def _places(self, stream: list[Word]) -> list[Place]:
        """Every place where a title stands; a longer title hides the shorter ones inside it."""
        found: list[Place] = []
        norms = [word.norm for word in stream]
        for rarest in dict.fromkeys(norm for norm in norms if norm in self._by_word):
            at = [place for place, norm in enumerate(norms) if norm == rarest]
            for title in self._by_word[rarest]:
                wanted, step = list(title.words), title.words.index(rarest)
                for start in (place - step for place in at if place >= step):
                    end = start + len(wanted)
                    if norms[start:end] == wanted and not any(closes(word) for word in stream[start + 1 : end]):
                        found.append(Place(title, start, end))
        longest = [one for one in found if not any(hides(other, one) for other in found)]
        return sorted(longest, key=lambda place: place.start)

    def _misspelt(self, field: list[Word], head: list[Word]) -> Match | None:
        """A title with a slip in it, by an author named beside it."""
        best: Match | None = None
        joined: Joined = {}
        candidates = {id(title): title for word in (*field, *head) for title in self._by_surname.get(word.norm, ())}
        for title in candidates.values():
            author = title.author
            for place, ratio in _slips(title, field, joined):
                if best is not None and ratio <= best.score:
                    continue
                named = author.is_named(field, title.words) or author.is_named(head, title.words)
                if named and all(bounds(place, field)) and not is_mention(place, field):
                    best = Match(title.stem, True, ratio)
        return best


def _stands(place: Place, head: list[Word], field: list[Word]) -> bool:
    """Whether a title in the text is written as one: with its author named, or between two stops."""
    title = place.title
    if not head[place.start].capital or not all(bounds(place, head)):
        return False
    if title.author.is_named(field) or title.author.is_named(head, title.words):
        return True
    ends = place.end == len(head) or head[place.end].gap not in ("", "-")
    return len(title.words) > STRONG and ends and (place.start <= 1 or gap_before(place, head) not in ("", "-"))


Joined = dict[int, dict[str, list[tuple[int, str]]]]  # by number of words and first letter: where so many stand, run together


def _slips(title: Title, field: list[Word], joined: Joined) -> Iterator[tuple[Place, float]]:
    """The places where words nearly spell the title, a compound written apart or together among them. ``joined`` keeps the
    field's words run together for the next title: of many works many authors' names stand in a text."""
    wanted = "".join(title.words)
    if len(wanted) < _SHORT:
        return
    for size in (len(title.words) - 1, len(title.words), len(title.words) + 1):
        if size not in joined:
            joined[size] = _run_together(field, size)
        for start, said in joined[size].get(wanted[0], ()):
            if (ratio := fuzz.ratio(said, wanted, score_cutoff=_SLIP)) >= _SLIP:
                yield Place(title, start, start + size), ratio


def _run_together(field: list[Word], size: int) -> dict[str, list[tuple[int, str]]]:
    found: dict[str, list[tuple[int, str]]] = {}
    for start in range(len(field) - size + 1 if size else 0):
        said = "".join(word.norm for word in field[start : start + size])
        found.setdefault(said[:1], []).append((start, said))
    return found


def _judge_field(place: Place, field: list[Word], head: list[Word]) -> Match | None:
    title, author = place.title, place.title.author
    named = author.is_named(field, title.words)
    left, right = bounds(place, field)
    rest = (*field[: place.start], *field[place.end :])
    stray = [word for word in rest if not is_trade(word, title) and word.norm not in listed("loose")]
    if is_mention(place, field) or author.is_another(field, title.words):
        return None
    housed = title.strong and title.support.publishes(field)
    if not named and not housed and author.is_another(head, title.words):
        return None
    if not right or (not title.strong and place.start and field[place.start - 1] in stray and not closes(field[place.start])):
        return None
    if named and left:
        return Match(title.stem, len(stray) >= _STRAY, 100.0 - len(stray))
    if named:
        return Match(title.stem, True, 90.0 - len(stray)) if len(title.words) > STRONG and len(stray) <= _STRAY else None
    backed = any(word.norm in title.publishers | title.years for word in (*field, *head))
    if not left or len(stray) >= (_PROSE if len(title.words) > STRONG or (title.strong and backed) else _STRAY):
        return None
    if author.is_named(head, title.words):
        return Match(title.stem, bool(stray), 97.0 - len(stray)) if title.strong or not stray else None
    if title.strong:
        return Match(title.stem, bool(stray) or len(title.words) <= STRONG, 90.0 - len(stray))
    return Match(title.stem, True, 70.0) if not stray else None


def _judge_text(place: Place, head: list[Word]) -> Match | None:
    title, author = place.title, place.title.author
    if not all(bounds(place, head)) or author.is_another(head, title.words):
        return None
    named = author.is_named(head, title.words)
    written_as_title = head[place.start].capital or place.start <= 1
    begins = place.start == 0 or (place.start == 1 and head[0].norm in ARTICLES)
    quoted = gap_before(place, head)[-1:] in {'"', "“", "”", "«", "*", "_"}
    if title.strong:
        if named:
            return Match(title.stem, not written_as_title, 95.0)
        if (begins or quoted or of_this_copy(place, head)) and len(title.words) > STRONG:
            return Match(title.stem, True, 80.0)
        return None
    if not named or not written_as_title:
        return None
    if begins or quoted or author.stands_beside(head, place.start, place.end) or of_this_copy(place, head):
        return Match(title.stem, False, 92.0)
    return None


def _best(matches: list[Match]) -> Match | None:
    """The highest score; None where two works of one title share it."""
    best = max(matches, key=lambda match: match.score)
    rivals = {match.stem for match in matches if match.score == best.score}
    return best if len(rivals) == 1 else None
