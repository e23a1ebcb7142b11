"""A point set made ready for weighing, once for each set: its cells, and for each reading the cells it leaves."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from auditor.knowledge.houses import lowest
from auditor.knowledge.isbn import to_13
from auditor.knowledge.points import Copies, Edition, Point, PointSet, Reading
from auditor.weighing.cells import Cells, axis
from auditor.weighing.practice import Place, place

_MONEY = re.compile(r"(?P<sign>[$£€])\s*(?P<amount>\d+(?:\.\d+)?)|(?:(?P<s>\d+)\s*(?:s\b\.?|/-))?\s*(?:(?P<d>\d+)\s*d\b)?")
_CURRENCY = {"$": "USD", "£": "GBP", "€": "EUR"}


@dataclass(frozen=True, eq=False, slots=True)
class Shown:
    """What one reading leaves, asserted (``told``) or ``denied``; ``sure`` where a contradiction may lean on it.

    ``told`` leaves the reading's copies and every printing that another point of the part names but this one doesn't; a denial
    removes the copies that show this reading and no other of the point, and none where only presence proves. ``sure`` adds the
    printings that no point of the part names ("printings that no reading covers": nothing follows for them), and is everything
    for a disputed point, so that such a point never contradicts. ``worn`` are the books that such a jacket may lawfully be on.
    """

    own: int
    told: int
    sure: int
    denied: int
    denied_sure: int
    worn: int = 0


@dataclass(frozen=True, eq=False, slots=True)
class PointMasks:
    """One point: what each reading leaves, in the file's order; ``covered`` are the cells that some reading has."""

    point: Point
    place: Place
    covered: int
    readings: tuple[Shown, ...]

    def any_of(self, chosen: list[int]) -> Shown:
        """The readings together: a copy shows one of them."""
        shown = [self.readings[n] for n in chosen]
        told = sure = own = worn = 0
        denied = denied_sure = -1
        for one in shown:
            own, told, sure, worn = own | one.own, told | one.told, sure | one.sure, worn | one.worn
            denied, denied_sure = denied & one.denied, denied_sure & one.denied_sure
        return Shown(own, told, sure, denied, denied_sure, worn)


@dataclass(frozen=True, eq=False, slots=True)
class Index:
    """Everything that weighing asks of a set. Equal only to itself, so it can key caches."""

    work: PointSet
    cells: Cells
    points: dict[str, PointMasks]
    values: dict[str, tuple[PointMasks, int]]
    kinds: dict[str, int]
    first: Edition
    isbns: dict[str, int]

    def kind(self, *names: str) -> int:
        """The cells of the editions of these kinds."""
        mask = 0
        for name in names:
            mask |= self.kinds.get(name, 0)
        return mask

    def trade(self) -> list[Edition]:
        """The trade editions in the file's order."""
        return [edition for edition in self.work.editions if edition.kind == "trade"]

    def of_feature(self, feature: str, part: str) -> list[PointMasks]:
        return [masks for masks in self.points.values() if masks.point.feature == feature and masks.point.part == part]

    def first_printings(self) -> int:
        """Printing 1 of every trade and limited edition."""
        return sum(self.cells.printing(edition.id, 1) for edition in self.work.editions if edition.kind in ("trade", "limited"))

    def describe(self, mask: int) -> str:
        """A set of cells, not empty, in words: ``"printings 2-4 of First edition; Guild edition"``."""
        names = {edition.id: edition.name for edition in self.work.editions}
        said = []
        for text in self.cells.render(mask):
            edition, _, span = text.partition(":")
            if mask & self.cells.editions[edition] == self.cells.editions[edition]:
                said.append(f"any printing of “{names[edition]}”")
            else:
                span = f"{span[:-1]} and later" if span.endswith("-") else span
                said.append(f"{'printing' if re.fullmatch(r'[0-9]+[a-z]?', span) else 'printings'} {span} of “{names[edition]}”")
        return "; ".join(said)


class _Same:
    """A point set as a cache key: by identity, as pydantic models with dicts can't be hashed."""

    __slots__ = ("work",)

    def __init__(self, work: PointSet) -> None:
        self.work = work

    def __hash__(self) -> int:
        return id(self.work)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.work is self.work


def index_of(work: PointSet) -> Index:
    """The set's index, built once for each PointSet object."""
    return _index(_Same(work))


@lru_cache(maxsize=20_000)
def _index(key: _Same) -> Index:
    work = key.work
    cells = Cells.of(work)
    nowhere = {"book": cells.full, "jacket": cells.full}
    for point in work.points:
        for reading in point.readings:
            for copies in reading.copies:
                nowhere[point.part] &= ~cells.mask(copies)
    points = {point.id: _masks(point, cells, nowhere[point.part]) for point in work.points}
    kinds: dict[str, int] = {}
    isbns: dict[str, int] = {}
    for edition in work.editions:
        kinds[edition.kind] = kinds.get(edition.kind, 0) | cells.editions[edition.id]
        for text in edition.isbns:
            number = to_13(text) or text
            isbns[number] = isbns.get(number, 0) | cells.editions[edition.id]
    values = {
        f"{masks.point.id}={reading.value}".casefold(): (masks, number)
        for masks in points.values()
        for number, reading in enumerate(masks.point.readings)
    }
    first = next((edition for edition in work.editions if edition.kind == "trade"), work.editions[0])
    return Index(work, cells, points, values, kinds, first, isbns)


def _masks(point: Point, cells: Cells, nowhere: int) -> PointMasks:
    covered = 0
    for reading in point.readings:
        for copies in reading.copies:
            covered |= cells.mask(copies)
    readings = tuple(_shown(point, reading, cells, covered, nowhere) for reading in point.readings)
    return PointMasks(point, place(point.place, point.part), covered, readings)


def _shown(point: Point, reading: Reading, cells: Cells, covered: int, nowhere: int) -> Shown:
    full = cells.full
    if not reading.copies:
        return Shown(0, full, full, full, full)
    own = worn = firm = 0
    for copies in reading.copies:
        own |= cells.mask(copies)
        if _is_whole(copies, reading, point, cells):
            firm |= cells.mask(copies)
    for copies in reading.worn_by:
        worn |= cells.mask(copies)
    for other in point.readings:
        for copies in other.copies if other is not reading else ():
            firm &= ~cells.mask(copies)
    sure = own | (full & ~covered)
    denied = full if point.presence_only else full & ~firm
    if point.disputed:
        return Shown(own, sure & ~nowhere | own, full, denied, full, own | worn)
    return Shown(own, sure & ~nowhere | own, sure, denied, denied, own | worn)


def _is_whole(copies: Copies, reading: Reading, point: Point, cells: Cells) -> bool:
    """Whether denying the reading removes these copies: not a letter without a cell where another letter may lack it."""
    if not copies.state or any(cell.state for cell in cells.cells if (cell.edition, cell.printing) == copies[:2]):
        return True
    named = cells.axes[copies.edition, copies.first][axis(point)]
    return len(named) > 1 and named <= {c.state for c in reading.copies if c[:2] == copies[:2]}


@lru_cache(maxsize=4096)
def lowest_in(value: str) -> frozenset[int]:
    """The lowest numbers that a number-line reading stands for: ``"lowest number 4 or 5"`` is two, ``"no line"`` none."""
    if value.casefold().startswith(("no ", "none", "without")):
        return frozenset()
    if either := re.search(r"(\d+) or (\d+)", value):
        return frozenset(map(int, either.groups()))
    number = lowest(value)
    return frozenset() if number is None else frozenset((number,))


@lru_cache(maxsize=4096)
def amounts_in(value: str) -> tuple[tuple[float, str], ...]:
    """The sums that a price reading names, as amount and ISO currency; shillings and pence are decimal pounds (21s is 1.05)."""
    found = []
    for match in _MONEY.finditer(value):
        if match["sign"]:
            found.append((float(match["amount"]), _CURRENCY[match["sign"]]))
        elif match["s"] or match["d"]:
            found.append((round(int(match["s"] or 0) / 20 + int(match["d"] or 0) / 240, 4), "GBP"))
    return tuple(found)


def says_none(value: str) -> bool:
    """Whether a price reading is that no price was ever printed."""
    return value.casefold().startswith(("no price", "without price", "unpriced", "none"))
