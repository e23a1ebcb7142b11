"""What is known of a work's points, ready for reading: wordings, readings, points, and the index of a work."""

from __future__ import annotations

from collections.abc import Iterable, KeysView
from dataclasses import dataclass
from typing import Literal

from auditor.knowledge.points import Point, Reading
from auditor.reading.points.astray import Difference
from auditor.reading.points.table import lexis

Role = Literal["wrong", "right", ""]


@dataclass(frozen=True, slots=True)
class Way:
    """One wording of a reading: what it needs. ``lack`` tells that it denies what it names."""

    needs: frozenset[str]
    lack: bool
    telling: frozenset[str]
    statement: bool

    @classmethod
    def of(cls, needs: Iterable[str], lack: bool) -> Way:
        """``telling`` are the words that few points share."""
        needs = frozenset(needs)
        telling = frozenset(need for need in needs if need not in lexis()["generic"] and (need[0] != "#" or need == "#nolater"))
        return cls(needs, lack, telling, any(need[0] == "#" for need in needs))

    def open_to(self, keys: KeysView[str]) -> bool:
        """Whether a clause with these words can say it at all."""
        return not (self.telling or self.needs).isdisjoint(keys)


@dataclass(frozen=True, slots=True)
class Said:
    """A reading: its ways, the words that no other reading of its point shares, and whether it is a lack."""

    reading: Reading
    ways: tuple[Way, ...]
    own: frozenset[str]
    lack: bool
    role: Role


@dataclass(frozen=True, slots=True, eq=False)
class Told:
    """A point: its readings, the words of its place, the kinds of noun that its colours are said of, its page, its sure words."""

    point: Point
    said: tuple[Said, ...]
    anchors: frozenset[str]
    homes: frozenset[str]
    pages: frozenset[str]
    sure: frozenset[str]
    kinds: frozenset[str]
    weights: dict[str, float]  # how much each word of a way tells
    is_slip: bool
    slip_words: frozenset[str]  # beside which talk of a slip is of this point
    place: frozenset[str]
    known: frozenset[str]  # words of the title and the author's name: they may stand anywhere
    aliases: dict[str, tuple[str, ...]]  # what else its words are called
    change: Difference  # what parts the slip from the right form

    @property
    def lack(self) -> Said | None:
        """The one reading that is a lack."""
        lacks = [said for said in self.said if said.lack]
        return lacks[0] if len(lacks) == 1 else None

    def of_kind(self, kind: str) -> bool:
        return kind in self.kinds


@dataclass(frozen=True, slots=True)
class Index:
    """All points of a work; ``touched`` names for each word the points that it may speak of."""

    points: tuple[Told, ...]
    touched: dict[str, frozenset[int]]
    slips: frozenset[str]  # misprints as they stand, which the mending of typing slips must leave
    alone: frozenset[Told]  # points that are the only one of a kind ("the misprint")
    only: dict[Told, frozenset[str]]  # a point's words that no other point has: colours without their noun
