"""The cells of a work: every copy there can be, as (edition, printing, state), and sets of them as bit masks.

A printing has states only where its letters can mean one thing: all of the jacket, or all of one point (or one ``element``) of
the book. Letters of two elements never have to agree (facts/points/README, rule 7; HARD, case 1), so ``trade:1a`` would be two
different statements there, and the printing stays whole.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import NamedTuple

from auditor.knowledge.points import Copies, Edition, Point, PointSet


class Cell(NamedTuple):
    """One kind of copy; ``open`` marks the last cell of an edition of unknown length, which stands for every later printing."""

    edition: str
    printing: int
    state: str = ""
    open: bool = False


@dataclass(frozen=True, eq=False, slots=True)
class Cells:
    """``cells`` in order; bit n of a mask is cell n. ``editions`` and ``printings`` give the masks of each."""

    cells: tuple[Cell, ...]
    full: int
    editions: dict[str, int]
    printings: dict[tuple[str, int], int]
    axes: dict[tuple[str, int], dict[str, frozenset[str]]]
    _parted: tuple[int, ...]  # the printings that have states
    _rendered: dict[int, tuple[str, ...]] = field(default_factory=dict)

    @classmethod
    def of(cls, work: PointSet) -> Cells:
        axes = _letters(work)
        cells: list[Cell] = []
        for edition in work.editions:
            known = edition.printings or max(_largest_named(work, edition), 1)
            goes_on = edition.printings is None and edition.kind not in ("limited", "facsimile")
            for printing in range(1, known + goes_on + 1):
                still_open = printing > known
                for state in _states(axes.get((edition.id, printing), {})):
                    cells.append(Cell(edition.id, printing, state, still_open))
        editions: dict[str, int] = defaultdict(int)
        printings: dict[tuple[str, int], int] = defaultdict(int)
        for bit, cell in enumerate(cells):
            editions[cell.edition] |= 1 << bit
            printings[cell.edition, cell.printing] |= 1 << bit
        parted = tuple(mask for mask in printings.values() if mask.bit_count() > 1)
        return cls(tuple(cells), (1 << len(cells)) - 1, dict(editions), dict(printings), axes, parted)

    def mask(self, copies: Copies) -> int:
        """The cells that ``copies`` names; a letter that has no cell of its own is its whole printing."""
        mask = 0
        for (edition, printing), block in self.printings.items():
            if edition == copies.edition and copies.first <= printing and (copies.last is None or printing <= copies.last):
                lettered = self.state(block, copies.state) if copies.state else 0
                mask |= lettered or block
        return mask

    def state(self, mask: int, letter: str) -> int:
        """The cells of ``mask`` with that letter."""
        return sum(1 << bit for bit in bits(mask) if self.cells[bit].state == letter)

    def printing(self, edition: str, number: int) -> int:
        """A printing of an edition; one beyond the last named is the open last cell; 0 if there is none."""
        if found := self.printings.get((edition, number)):
            return found
        return self.later(edition, number)

    def later(self, edition: str, number: int) -> int:
        """The edition's printings from ``number`` on; beyond an open last cell that cell."""
        return sum(
            1 << bit
            for bit in bits(self.editions[edition])
            if self.cells[bit].printing >= number or (self.cells[bit].open and number > self.cells[bit].printing)
        )

    def whole(self, mask: int) -> int:
        """``mask`` with every printing that it touches in all its states."""
        for block in self._parted:
            if mask & block:
                mask |= block
        return mask

    def meet(self, masks: Iterator[int]) -> int:
        """What all masks leave open. Letters narrow a printing only as long as some state of it stays."""
        if not self._parted:
            left = self.full
            for mask in masks:
                left &= mask
            return left
        lettered = blind = self.full
        for mask in masks:
            lettered &= mask
            blind &= self.whole(mask)
        return lettered | (blind & ~self.whole(lettered))

    def render(self, mask: int) -> tuple[str, ...]:
        """The shortest ``edition:range`` strings: ``("trade:1-3", "bce:1")``, ``("trade:2-",)``, ``("trade:1a",)``."""
        if mask not in self._rendered:
            self._rendered[mask] = tuple(_ranges(self, mask))
        return self._rendered[mask]


def bits(mask: int) -> Iterator[int]:
    """The numbers of the bits that are set, lowest first."""
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low


def axis(point: Point) -> str:
    """What a point's letters are states of: its ``element`` where it names one, else the jacket, else the point's own place."""
    return point.element or ("jacket" if point.part == "jacket" else point.id)


def _states(letters: dict[str, frozenset[str]]) -> tuple[str, ...]:
    """The letters of a printing if they belong to one element and part it, else one nameless state."""
    if len(letters) == 1:
        (named,) = letters.values()
        if len(named) > 1:
            return tuple(sorted(named))
    return ("",)


def _letters(work: PointSet) -> dict[tuple[str, int], dict[str, frozenset[str]]]:
    found: dict[tuple[str, int], dict[str, frozenset[str]]] = defaultdict(dict)
    for point in work.points:
        for reading in point.readings:
            for copies in reading.copies:
                if copies.state:
                    named = found[copies.edition, copies.first]
                    named[axis(point)] = named.get(axis(point), frozenset()) | {copies.state}
    return dict(found)


def _largest_named(work: PointSet, edition: Edition) -> int:
    copies = (c for point in work.points for reading in point.readings for c in reading.copies if c.edition == edition.id)
    named = [number for c in copies for number in (c.first, c.last or 0)]
    texts = [value.printing for value in work.values if value.edition == edition.id] + list(edition.print_runs)
    return max([*named, *(int(number) for text in texts for number in re.findall(r"\d+", text))], default=0)


def _ranges(cells: Cells, mask: int) -> Iterator[str]:
    for edition in cells.editions:
        run: list[int] = []
        for (owner, printing), block in cells.printings.items():
            if owner != edition:
                continue
            if mask & block == block:
                run.append(printing)
                continue
            if run:
                yield _range(cells, edition, run)
                run = []
            for bit in bits(mask & block):
                yield f"{edition}:{printing}{cells.cells[bit].state}"
        if run:
            yield _range(cells, edition, run)


def _range(cells: Cells, edition: str, run: list[int]) -> str:
    first, last = run[0], run[-1]
    if cells.cells[cells.printings[edition, last].bit_length() - 1].open:
        return f"{edition}:{first}-"
    return f"{edition}:{first}" if first == last else f"{edition}:{first}-{last}"
