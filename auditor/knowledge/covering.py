"""How a point's readings cover the printings: lawful as it stands, but worth a look, as slips look the same."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from auditor.knowledge.points import Copies, Edition, Point


def worth_a_look(point: Point, editions: Mapping[str, Edition]) -> Iterator[str]:
    """What an author may have meant otherwise: readings that share printings, a point that decides nothing, a printing left out
    between others."""
    if pairs := sorted(_overlaps(point)):
        told = ", ".join(f"{earlier + 1} and {later + 1}" for earlier, later in pairs)
        yield f"readings {told} share printings, so they don't tell them apart: is that what the source says?"
    if _decides_nothing(point, editions):
        yield "it decides nothing, as every printing has its reading: add what else may stand there, or leave the point out"
    for name, number in _gaps(point):
        yield f"no reading covers {name}:{number}, which stands between others: is it left out?"


def _overlaps(point: Point) -> Iterator[tuple[int, int]]:
    for later, reading in enumerate(point.readings):
        for earlier, other in enumerate(point.readings[:later]):
            if any(_share(one, two) for one in reading.copies for two in other.copies):
                yield earlier, later


def _share(one: Copies, two: Copies) -> bool:
    starts, ends = max(one.first, two.first), [last for last in (one.last, two.last) if last is not None]
    states = {one.state, two.state}
    return one.edition == two.edition and all(starts <= end for end in ends) and (len(states) == 1 or "" in states)


def _decides_nothing(point: Point, editions: Mapping[str, Edition]) -> bool:
    """One reading, of every printing of every edition."""
    if len(point.readings) != 1 or point.presence_only:
        return False
    whole = {copies.edition for copies in point.readings[0].copies if copies.first == 1 and not copies.state}
    whole = {
        name
        for name in whole
        if any(_to_the_end(copies, editions[name]) for copies in point.readings[0].copies if copies.edition == name)
    }
    return whole == set(editions)


def _to_the_end(copies: Copies, edition: Edition) -> bool:
    return copies.first == 1 and (copies.last is None or copies.last == edition.printings)


def _gaps(point: Point) -> Iterator[tuple[str, int]]:
    """Printings that no reading has, though readings have one before and one behind."""
    named = [copies for reading in point.readings for copies in reading.copies]
    for name in dict.fromkeys(copies.edition for copies in named):
        spans = sorted((c.first, c.last) for c in named if c.edition == name and c.last is not None)
        opens = min((c.first for c in named if c.edition == name and c.last is None), default=None)
        reached = 0
        for first, last in [*spans, *([(opens, opens)] if opens else [])]:
            if reached and first == reached + 2:
                yield name, reached + 1
            reached = max(reached, last)
