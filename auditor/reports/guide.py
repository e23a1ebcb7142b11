"""A point set told as a guide: what a first printing shows, what tells another one, every place to look at, prices named."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from rich.console import Console
from rich.text import Text

from auditor.knowledge.points import Copies, Edition, Point, PointSet, Value
from auditor.reports.screen import indented, safe
from auditor.reports.words import CAUTION, in_words


class Sign(NamedTuple):
    """One thing to see: ``place``, what stands there, and the copies that ``have`` it beside the one meant ("" where none)."""

    place: str
    reading: str
    have: str


class Guide(NamedTuple):
    """``first`` is the printing that the guide is for, in words; ``shows`` are its signs, ``others`` those of other copies."""

    first: str
    shows: tuple[Sign, ...]
    others: tuple[Sign, ...]


def guide(work: PointSet) -> Guide:
    """What the first printing of the first trade edition shows by the set, and what it does not."""
    edition = first_edition(work)
    shows, others = [], []
    for point in work.points:
        for reading in point.readings:
            if any(_is_first(copies, edition) for copies in reading.copies):
                beside = [str(copies) for copies in _without_first(reading.copies, edition)]
                shows.append(Sign(point.place, reading.value, in_words(beside, work)))
            elif reading.copies:
                others.append(Sign(point.place, reading.value, in_words([str(copies) for copies in reading.copies], work)))
    return Guide(in_words([f"{edition.id}:1"], work), tuple(shows), tuple(others))


def first_edition(work: PointSet) -> Edition:
    """The first trade edition in the file's order, else the first of any kind."""
    return next((edition for edition in work.editions if edition.kind == "trade"), work.editions[0])


def _is_first(copies: Copies, edition: Edition) -> bool:
    return copies.edition == edition.id and copies.first == 1


def _without_first(ranges: tuple[Copies, ...], edition: Edition) -> Iterator[Copies]:
    for copies in ranges:
        if not _is_first(copies, edition):
            yield copies
        elif copies.last is None or copies.last > 1:
            yield copies._replace(first=2, state="")


def copies_in_words(ranges: tuple[Copies, ...], work: PointSet) -> str:
    return in_words([str(copies) for copies in ranges], work) or "no printing named"


def price_in_words(value: Value) -> str:
    """``120 to 180 USD``, ``from 40 GBP``, ``up to 40 GBP``."""
    low, high = (f"{amount:,.0f}" if amount is not None else None for amount in (value.low, value.high))
    span = low if low == high else f"{low} to {high}" if low and high else f"from {low}" if low else f"up to {high}"
    return f"{span} {value.currency}"


def copy_in_words(value: Value) -> str:
    """``fine, with jacket, signed``, as far as the row says."""
    jacket = {True: "with jacket", False: "without jacket", None: ""}[value.with_jacket]
    return ", ".join(words for words in (value.grade or "", jacket, "signed" if value.signed else "") if words)


def show(work: PointSet, screen: Console) -> None:
    """Prints the guide."""
    told = guide(work)
    screen.print(Text(safe(f"{work.work.title}, {work.work.author}"), style="bold"))
    if work.work.also_titled:
        screen.print(safe(f"Also sold as {', '.join(work.work.also_titled)}."))
    _part(screen, "Editions", map(_edition, work.editions))
    _part(screen, f"What to look for: {told.first}", (_sign(sign, "also: ") for sign in told.shows))
    _part(screen, "What tells another copy", (_sign(sign, "") for sign in told.others))
    for part in ("book", "jacket"):
        _part(
            screen,
            f"Where to look: the {part}",
            (line for point in work.points if point.part == part for line in _point(point, work)),
        )
    _part(screen, "Prices that sources name, dated and no advice", (_value(value, work) for value in work.values))
    screen.print()
    indented(screen, Text(CAUTION, style="italic"), 0)


def _part(screen: Console, heading: str, lines: Iterator[str] | map[str]) -> None:
    told = list(lines)
    if told:
        screen.print()
        screen.print(Text(safe(heading), style="bold underline"))
        for line in told:
            indented(screen, Text(safe(line)), 2 + len(line) - len(line.lstrip()))


def _edition(edition: Edition) -> str:
    imprint = ", ".join(words for words in (edition.publisher or "", str(edition.year or "")) if words)
    known = f"{edition.printings} printing{'' if edition.printings == 1 else 's'}" if edition.printings else "printings not known"
    runs = "; ".join(f"printing {printing} of {copies:,} copies" for printing, copies in edition.print_runs.items())
    return f"{edition.name} ({edition.kind}): {'; '.join(words for words in (imprint, known, runs, edition.note or '') if words)}"


def _sign(sign: Sign, beside: str) -> str:
    return f"{sign.place}: “{sign.reading}”" + (f" ({beside}{sign.have})" if sign.have else "")


def _point(point: Point, work: PointSet) -> Iterator[str]:
    yield f"{point.place} ({point.feature})"
    for reading in point.readings:
        worn = f"; also found on {copies_in_words(reading.worn_by, work)}" if reading.worn_by else ""
        yield f"  “{reading.value}”: {copies_in_words(reading.copies, work)}{worn}"
    for account in point.accounts:
        said = "; ".join(f"“{value}”: {copies_in_words(copies, work)}" for value, copies in account.copies.items())
        yield f"  {account.authority} has it otherwise: {said} ({account.source})"
    if point.disputed:
        yield f"  disputed: {point.disputed}"
    if point.note:
        yield f"  note: {point.note}"
    yield f"  source: {point.source}"


def _value(value: Value, work: PointSet) -> str:
    copy = copy_in_words(value)
    printing = f"{work.edition(value.edition).name}, printing {value.printing}"
    return f"{printing}{f', {copy}' if copy else ''}: {price_in_words(value)}, as of {value.as_of} ({value.source})"
