"""Two readings of one listing, put side by side: what came, what went, in words that blame nobody."""

from __future__ import annotations

import difflib
import html
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Final, Literal

from auditor.knowledge.points import PointSet
from auditor.reports.marked import MARKS
from auditor.reports.told import claim_words
from auditor.reports.words import in_words
from auditor.values import Claim, Listing, Question, Verdict
from auditor.watchlist.values import Reading
from auditor.weighing.case import Case
from auditor.weighing.index import index_of

ChangeKind = Literal["price", "seller", "title", "text", "claims", "read", "standing"]
_MOST = 160  # letters of a quotation


@dataclass(frozen=True, slots=True)
class Change:
    """One thing that is otherwise than before; ``kind`` ``read`` is how the same words are read."""

    kind: ChangeKind
    text: str


@dataclass(frozen=True, slots=True)
class _Said:
    """A claim with the words that carry it."""

    claim: Claim
    words: str


def compare(before: Reading, after: Reading, work: PointSet | None = None, asked: Sequence[Question] = ()) -> tuple[Change, ...]:
    """What changed from one reading to the next. ``work`` is the set of the later one; ``asked`` are questions that wait."""
    old, new = before.listing, after.listing
    return (
        *_listing(old, new),
        *_claims(before, after, work, asked),
        *_verdict(before.verdict, after.verdict, work),
    )


def same_words(old: Listing, new: Listing) -> bool:
    """Whether title and text are the same, but for blanks and line ends."""
    return _folded(old.title) == _folded(new.title) and _folded(old.text) == _folded(new.text)


def told_points(verdict: Verdict, work: PointSet | None) -> Mapping[tuple[str, str, str, str], frozenset[str]]:
    """The points that the claims tell, by the claims' keys."""
    if work is None or work.stem != verdict.work:
        return {}
    case = Case.of(index_of(work), (*verdict.claims, *verdict.title_claims))
    parts = (case.book, case.jacket) if case.jacket else (case.book,)
    told: dict[tuple[str, str, str, str], frozenset[str]] = {}
    for item in (item for part in parts for item in (*part.evidence, *part.unheard) if item.bearing.point):
        for claim in item.claims:
            told[claim.key] = told.get(claim.key, frozenset()) | {item.bearing.point or ""}
    return told


def _listing(old: Listing, new: Listing) -> Iterator[Change]:
    if old.asking != new.asking:
        yield Change("price", _price(old.asking, new.asking))
    if old.seller != new.seller:
        yield Change("seller", f"The seller's name is now “{new.seller}”; before, {f'“{old.seller}”' if old.seller else 'none'}.")
    if _folded(old.title) != _folded(new.title):
        yield Change("title", f"The title is now “{_short(new.title or '')}”; before, “{_short(old.title or '')}”.")
    if _folded(old.text) != _folded(new.text):
        gone, come = _pieces(_shown(old.text), _shown(new.text))
        told = [f"added {_quoted(come)}"] * bool(come) + [f"no longer there {_quoted(gone)}"] * bool(gone)
        yield Change("text", f"The text changed{': ' if told else ''}{'; '.join(told)}.")


def _price(old: str | None, new: str | None) -> str:
    if old is None or new is None:
        return f"The price asked is {new or 'not told'}; before, {old or 'not told'}."
    (was, money), (now, other) = _amount(old), _amount(new)
    share = f" ({abs(now - was) / was:.0%} {'less' if now < was else 'more'})" if money == other and was else ""
    return f"The price asked went from {old} to {new}{share}."


def _claims(before: Reading, after: Reading, work: PointSet | None, asked: Sequence[Question]) -> Iterator[Change]:
    """Claims that came or went, told by their words; several claims of the same words are told once."""
    old, new = _said(before), _said(after)
    came = [said for key, said in new.items() if key not in old]
    went = [said for key, said in old.items() if key not in new]
    points = told_points(after.verdict, work)
    reread = same_words(before.listing, after.listing)
    told: set[str] = set()
    for said in came:
        if _once(said, told, came):
            continue
        partner = _restated(said, went)
        if partner:
            went = [each for each in went if each.claim.key[:3] != said.claim.key[:3]]
        if partner or reread or _stands(said.words, before.listing):
            yield Change("read", _read(said, partner, work))
        else:
            places = [q.place for q in asked if points.get(said.claim.key, frozenset()) & set(q.points)]
            where = f" after you asked ({', '.join(dict.fromkeys(places))})" if places else ""
            yield Change("claims", f"{_naming(said, work)} was added{where}.")
    told.clear()
    for said in went:
        if _once(said, told, went):
            continue
        if reread or _stands(said.words, after.listing):
            yield Change("read", f"“{_short(said.words)}” is no longer read as {_meaning(said.claim, work)}.")
        else:
            yield Change("claims", f"{_naming(said, work)} is no longer in the text.")


def _said(reading: Reading) -> dict[tuple[str, str, str, str], _Said]:
    listing, verdict = reading.listing, reading.verdict
    return {
        claim.key: _Said(claim, " ".join(text[claim.start : claim.end].split()))
        for text, claims in ((listing.title or "", verdict.title_claims), (listing.text, verdict.claims))
        for claim in claims
    }


def _once(said: _Said, told: set[str], among: Sequence[_Said]) -> bool:
    """Whether these words, or longer ones that hold them, are told already or by another of these claims."""
    words = _folded(said.words)
    if words in told or any(words != _folded(each.words) and words in _folded(each.words) for each in among):
        return True
    told.add(words)
    return False


def _restated(said: _Said, went: Sequence[_Said]) -> _Said | None:
    """The claim that was the same in another stance."""
    return next((each for each in went if each.claim.key[:3] == said.claim.key[:3]), None)


def _read(said: _Said, partner: _Said | None, work: PointSet | None) -> str:
    stance = MARKS[said.claim.stance].legend
    if partner:
        return f"“{_short(said.words)}” is now {stance}; before, {MARKS[partner.claim.stance].legend}."
    return f"“{_short(said.words)}” is now read as {_meaning(said.claim, work)} ({stance})."


# Features whose words don't say what they are.
_BARE_WORDS: Final = frozenset({"number_line", "jacket_price", "gutter_code", "isbn", "year", "publisher", "limitation"})


def _naming(said: _Said, work: PointSet | None) -> str:
    """The words, with what they are where they don't say it, and how they are said where not plainly of this copy.

    ``The number line “10 9 8”``, ``“mater” (page 61, line 8)``, ``“number line”, not looked at, not known,``.
    """
    claim, words = said.claim, f"“{_short(said.words)}”"
    name = claim.feature.replace("_", " ")
    if claim.feature in _BARE_WORDS and name not in said.words.casefold():
        words = f"The {name} {words}"
    if claim.feature == "point" and work:
        known = claim.value.partition("=")[0]
        words = next((f"{words} ({point.place})" for point in work.points if point.id == known), words)
    return words if claim.stance == "asserted" else f"{words}, {MARKS[claim.stance].legend},"


def _meaning(claim: Claim, work: PointSet | None) -> str:
    return f"“{claim_words(claim, work)}” of the {claim.part}"


def _verdict(old: Verdict, new: Verdict, work: PointSet | None) -> Iterator[Change]:
    if old.work != new.work:
        yield Change("standing", f"The book is now taken for {_named(new.work, work)}; before, for {_named(old.work, work)}.")
    if old.standing != new.standing:
        yield Change("standing", f"It now stands as {new.standing}; before, {old.standing}.")
    if old.work == new.work and work:
        for part, was, now in (("book", old.book, new.book), ("jacket", old.jacket, new.jacket)):
            if was != now:
                yield Change("standing", f"Open for the {part}: now {_left(now, work)}; before, {_left(was, work)}.")
    kinds = [list(dict.fromkeys(f.kind for f in v.findings if f.severity != "note")) for v in (old, new)]
    for word, ours, theirs in (("now", kinds[1], kinds[0]), ("no longer", kinds[0], kinds[1])):
        if only := [kind for kind in ours if kind not in theirs]:
            yield Change("standing", f"{'A finding' if len(only) == 1 else 'Findings'} {word} told: {', '.join(only)}.")


def _named(stem: str | None, work: PointSet | None) -> str:
    if stem is None:
        return "one without a point set"
    return f"“{work.work.title}”" if work and work.stem == stem else stem


def _left(ranges: tuple[str, ...] | None, work: PointSet) -> str:
    return "nothing to weigh" if ranges is None else in_words(ranges, work) or "nothing"


def _pieces(old: str, new: str) -> tuple[list[str], list[str]]:
    """The runs of words that only one of the two texts has, in their order; whole sentences where little stayed as it was."""
    found = _runs(old.split(), new.split(), " ")
    return found if found is not None else _runs(_SENTENCE.split(old), _SENTENCE.split(new), " ") or ([old], [new])


_TAG: Final = re.compile(r"</?[a-zA-Z][^<>]*>")
_SENTENCE: Final = re.compile(r"(?<=[.!?;])\s+")
_ENDS: Final = ".,;: "
_STAYED: Final = 0.5  # a text of which less stayed is better told by its sentences


def _runs(was: Sequence[str], now: Sequence[str], by: str) -> tuple[list[str], list[str]] | None:
    matcher = difflib.SequenceMatcher(None, list(map(_bare, was)), list(map(_bare, now)), autojunk=False)
    if matcher.ratio() < _STAYED:
        return None
    gone: list[str] = []
    come: list[str] = []
    for tag, a, b, c, d in matcher.get_opcodes():
        if tag != "equal":
            gone += [by.join(was[a:b])] * (b > a)
            come += [by.join(now[c:d])] * (d > c)
    return gone, come


def _quoted(pieces: Sequence[str]) -> str:
    return f"“{_short(' … '.join(pieces)).strip(_ENDS)}”"


def _shown(words: str) -> str:
    """The words on one line, as a reader of the page sees them."""
    return " ".join(html.unescape(_TAG.sub(" ", words)).split())


def _short(words: str) -> str:
    words = _shown(words)
    return words if len(words) <= _MOST else f"{words[: _MOST - 1]}…"


def _stands(words: str, listing: Listing) -> bool:
    return _folded(words) in _folded(f"{listing.title or ''}\n{listing.text}")


def _folded(words: str | None) -> str:
    return " ".join((words or "").casefold().split())


def _bare(word: str) -> str:
    """A word or sentence without what ends it: a full stop that became a comma is no change worth telling."""
    return word.casefold().strip(_ENDS)


def _amount(asking: str) -> tuple[float, str]:
    amount, _, currency = asking.partition(" ")
    return float(amount), currency
