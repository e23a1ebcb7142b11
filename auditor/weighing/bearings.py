"""What one statement leaves open of one part: a reader for each feature that can be evidence.

The words "first edition", "first printing", "first state" are what is claimed, not evidence. A jacket's tell never narrows the
book nor the other way round; a club edition admitted or denied narrows both.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import lru_cache
from typing import Literal, NamedTuple

from rapidfuzz import fuzz, utils

from auditor.knowledge.houses import printing_by_line
from auditor.values import Claim
from auditor.weighing.index import Index, PointMasks, amounts_in, lowest_in, says_none
from auditor.weighing.practice import is_later, table

_SAME_NAME, _OTHER_NAME = 88.0, 65.0  # of 100: a publisher's name that is the same, one that is clearly another

_NO_LINE = re.compile(r"none\b|(?:no|without)(?: a)?(?: number)? (?:line|row)", re.IGNORECASE)


class Bearing(NamedTuple):
    """What one statement leaves of one part. ``sure`` is the part of it that a contradiction may rest on (see Shown)."""

    part: Literal["book", "jacket"]
    mask: int
    sure: int
    why: str
    point: str | None = None
    own: int = 0  # for an asserted reading: the copies that are known to have it
    disputed: bool = False
    worn: int = 0  # for an asserted reading of a jacket: the books that it may lawfully be found on


class Beside(NamedTuple):
    """What else is said that bears on how a claim is read."""

    stated_first: bool
    clipped: bool


@lru_cache(maxsize=8192)
def bearings(index: Index, feature: str, value: str, part: str, stance: str, *, beside: Beside) -> tuple[Bearing, ...]:
    claim = Claim(feature, value, part, stance, 0, 0)  # type: ignore[arg-type]  # they come from a claim's key
    full = index.cells.full
    return tuple(bearing for bearing in READERS[feature](index, claim, beside) if bearing.mask != full or bearing.point)


def _point(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    found = index.values.get(claim.value.casefold())
    if found:
        masks, number = found
        yield _of_point(index, masks, [number], claim.stance == "denied")


def _of_point(index: Index, masks: PointMasks, chosen: list[int], denied: bool) -> Bearing:
    """What readings of a point leave; a reading of which no source names the copies says nothing."""
    point = masks.point
    shown = masks.any_of(chosen)
    value = " or ".join(point.readings[n].value for n in chosen)
    if not shown.own:
        why = f"no source tells which printings have “{value}” ({point.place})"
    else:
        why = f"“{value}” ({point.place}) is a mark of {index.describe(shown.own)} ({point.source})"
    if point.disputed:
        why += f", which is disputed: {point.disputed}"
    if denied:
        return Bearing(point.part, shown.denied, shown.denied_sure, why, point.id)
    return Bearing(point.part, shown.told, shown.sure, why, point.id, shown.own, point.disputed is not None, shown.worn)


def _number_line(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    points = index.of_feature("number line", "book")
    denied = claim.stance == "denied"
    if claim.value == "none":
        for masks in points:
            chosen = [n for n, reading in enumerate(masks.point.readings) if _NO_LINE.match(reading.value)]
            if chosen:
                yield _of_point(index, masks, chosen, denied)
        return
    told = lowest_in(claim.value)
    for masks in points:
        chosen = [n for n, reading in enumerate(masks.point.readings) if lowest_in(reading.value) & told]
        if chosen:
            yield _of_point(index, masks, chosen, denied)
    if not points and not denied:
        yield from _by_houses(index, claim.value, beside)


def _by_houses(index: Index, line: str, beside: Beside) -> Iterator[Bearing]:
    """The line by each publisher's practice. Club and facsimile editions stay open, as they may keep the line of the original."""
    mask, why = 0, ""
    for edition in index.work.editions:
        cells = index.cells.editions[edition.id]
        if edition.kind in ("trade", "limited"):
            stated = True if beside.stated_first else None
            read = printing_by_line(line, publisher=edition.publisher, year=edition.year, stated_first=stated)
            if read.printing is not None:
                last = 1 << cells.bit_length() - 1
                cells = index.cells.printing(edition.id, read.printing) or last
                why = why or f"the line gives printing {read.printing}: {read.reason} ({read.source})"
        mask |= cells
    if why:
        yield Bearing("book", mask, mask, why)


def _jacket_price(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A price against the set's prices. One that no reading has says nothing: the set may not know them all."""
    if claim.value == "none" and beside.clipped:
        return
    for masks in index.of_feature("price", "jacket"):
        chosen = [n for n, reading in enumerate(masks.point.readings) if _same_price(claim.value, reading.value)]
        if chosen:
            yield _of_point(index, masks, chosen, claim.stance == "denied")


def _same_price(told: str, reading: str) -> bool:
    if told == "none":
        return says_none(reading)
    amount, _, currency = told.partition(" ")
    try:
        value = float(amount)
    except ValueError:
        return False
    return any(abs(value - known) < 0.005 and currency in ("", iso) for known, iso in amounts_in(reading))


def _price_clipped(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A clipped corner says nothing of printings; an unclipped price is a printed price, so the jacket isn't one without."""
    if claim.stance == "denied":
        for masks in index.of_feature("price", "jacket"):
            chosen = [n for n, reading in enumerate(masks.point.readings) if says_none(reading.value)]
            if chosen and len(chosen) < len(masks.point.readings):
                bearing = _of_point(index, masks, chosen, True)
                yield bearing._replace(sure=index.cells.full, point=None, why=f"a price is printed; {bearing.why}")


def _book_club(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    club = index.kind("book club")
    if club:
        mask = club if claim.stance == "asserted" else index.cells.full & ~club
        yield Bearing("book", mask, mask, f"the club edition is {index.describe(club)}")
        yield Bearing("jacket", mask, mask, f"the club edition is {index.describe(club)}")


def _blind_stamp(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A blind stamp is mostly a club's; its absence says nothing. A point of the set that speaks of stamps goes before."""
    club = index.kind("book club")
    if club and claim.stance == "asserted" and not any(_speaks_of_stamps(masks) for masks in index.points.values()):
        yield Bearing("book", club, index.cells.full, f"a blind stamp is mostly a club's mark; here {index.describe(club)}")


def _speaks_of_stamps(masks: PointMasks) -> bool:
    point = masks.point
    said = (point.id, point.place, *(reading.value for reading in point.readings))
    return point.part == "book" and any(re.search(table("stamps")["words"], words, re.IGNORECASE) for words in said)


def _gutter_code(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A code that is a reading of the set; another one says nothing, as a printing may have been made in several weeks."""
    for masks in index.points.values():
        chosen = [n for n, reading in enumerate(masks.point.readings) if reading.value.casefold() == claim.value.casefold()]
        if chosen:
            yield _of_point(index, masks, chosen, claim.stance == "denied")


def _edition(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    if claim.part != "book":
        return
    full, cells = index.cells.full, index.cells
    kinds = {"reprint": "reprint", "facsimile": "facsimile", "limited": "limited"}
    kind = index.kind(kinds.get(claim.value, ""))
    if claim.stance == "denied":
        if claim.value == "1":
            yield _bearing_book(full & ~index.first_printings(), "it is said not to be a first edition")
        elif kind and kind != full:
            yield _bearing_book(full & ~kind, f"the {claim.value} is {index.describe(kind)}")
    elif claim.value == "reprint":
        yield _bearing_book(full & ~index.first_printings(), "a reprint is no first printing")
    elif claim.value in kinds:
        if kind:
            yield _bearing_book(kind, f"the {claim.value} edition is {index.describe(kind)}")
    elif is_later(claim.value):
        yield _bearing_book(
            full & ~cells.printing(index.first.id, 1), f"edition “{claim.value}” is not the first printing of the first"
        )


def _printing(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A later printing said openly rules first printings out, as does a first one denied; which one it is stays a claim."""
    full = index.cells.full
    later = is_later(claim.value)
    if claim.part == "jacket":
        if claim.stance == "asserted" and later and claim.value.isdigit():
            number = int(claim.value)
            mask = sum(
                index.cells.printing(edition.id, number)
                for edition in index.work.editions
                if edition.kind in ("trade", "limited")
            )
            mask |= index.kind("book club", "reprint", "facsimile")
            yield Bearing("jacket", mask or full, mask or full, f"the jacket is said to be of printing {number}")
        elif claim.stance == "asserted" and later:
            mask = full & ~index.first_printings()
            yield Bearing("jacket", mask, mask, "the jacket is said to be of a later printing")
    elif (claim.stance == "asserted" and later) or (claim.stance == "denied" and claim.value == "1"):
        words = "not to be a first printing" if claim.stance == "denied" else "to be a later printing"
        yield _bearing_book(full & ~index.first_printings(), f"it is said {words}")


def _isbn(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """An ISBN of the set leaves its editions and those whose number isn't known; one that no edition has says nothing."""
    has = index.isbns.get(claim.value, 0)
    if has and claim.stance == "asserted":
        others = 0
        for cells in index.isbns.values():
            others |= cells
        mask = index.cells.full & ~(others & ~has)
        yield _bearing_book(mask, f"ISBN {claim.value} is that of {index.describe(has)}")


def _publisher(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A publisher that clearly is one edition's and clearly isn't another's."""
    scores = {
        edition.id: fuzz.token_set_ratio(_plain(claim.value), _plain(edition.publisher)) if edition.publisher else None
        for edition in index.work.editions
    }
    if claim.stance == "asserted" and any(score is not None and score >= _SAME_NAME for score in scores.values()):
        mask = sum(index.cells.editions[name] for name, score in scores.items() if score is None or score >= _OTHER_NAME)
        named = sum(index.cells.editions[name] for name, score in scores.items() if score is not None and score >= _SAME_NAME)
        yield _bearing_book(mask, f"“{claim.value}” published {index.describe(named)}")


def _plain(name: str) -> str:
    """Without capitals and marks: "Little, Brown" is "little brown", whatever stands behind it."""
    return str(utils.default_process(name.replace("&amp;", "&").replace("&", " and ")))


def _year(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A year before an edition existed; if that leaves no edition, the year is of something else."""
    if claim.stance == "asserted" and claim.value.isdigit():
        late = [edition for edition in index.work.editions if edition.year is not None and edition.year > int(claim.value)]
        mask = index.cells.full & ~sum(index.cells.editions[edition.id] for edition in late)
        if late and mask:
            yield _bearing_book(mask, f"{index.describe(index.cells.full & ~mask)} did not exist in {claim.value}")


def _limitation(index: Index, claim: Claim, beside: Beside) -> Iterator[Bearing]:
    """A numbered copy is a limited one; where readings name their numbers, the number names its reading too."""
    limited = index.kind("limited")
    if not limited or claim.stance != "asserted":
        return
    yield _bearing_book(limited, f"the limited edition is {index.describe(limited)}")
    number = claim.value.partition(" of ")[0]
    for masks in index.points.values() if number.isdigit() else ():
        chosen = [n for n, reading in enumerate(masks.point.readings) if reading.numbered(int(number))]
        if chosen:
            yield _of_point(index, masks, chosen, False)


def _bearing_book(mask: int, why: str) -> Bearing:
    return Bearing("book", mask, mask, why)


READERS: dict[str, Callable[[Index, Claim, Beside], Iterator[Bearing]]] = {
    "point": _point,
    "number_line": _number_line,
    "jacket_price": _jacket_price,
    "price_clipped": _price_clipped,
    "book_club": _book_club,
    "blind_stamp": _blind_stamp,
    "gutter_code": _gutter_code,
    "edition": _edition,
    "printing": _printing,
    "isbn": _isbn,
    "publisher": _publisher,
    "year": _year,
    "limitation": _limitation,
}
