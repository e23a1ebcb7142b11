"""Point sets: what is known of one work's editions and printings. One TOML file a work, one model a table.

The shape of a file is told in DEVELOPERS.md ("Add a book"); `auditor.knowledge.shelf` loads folders of them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Annotated, Literal, NamedTuple

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, WithJsonSchema, model_validator

EditionKind = Literal["trade", "book club", "reprint", "facsimile", "limited"]
PointFeature = Literal[
    "misprint",
    "price",
    "statement",
    "number line",
    "binding colour",
    "lettering",
    "blurb",
    "endpapers",
    "topstain",
    "advertisement",
    "dimensions",
    "other",
]


_COPIES = r"([\w-]+):(\d+)(?:([a-z])|(-)(\d*))?"


class Copies(NamedTuple):
    """``trade:2-4`` as (edition, first, last, state). ``last`` None is "and every later one"; ``state`` "" is every state."""

    edition: str
    first: int
    last: int | None
    state: str = ""

    @classmethod
    def parse(cls, text: str) -> Copies:
        """Reads ``edition:1``, ``edition:1-4``, ``edition:2-`` or ``edition:1a``; ValueError tells what was expected."""
        match = re.fullmatch(_COPIES, text)
        if not match:
            raise ValueError(f"{text!r} is no printing: expected edition:1, edition:1-4, edition:2- or edition:1a")
        edition, first, state, dash, last = match[1], int(match[2]), match[3] or "", match[4], match[5]
        if first < 1 or (last and int(last) < first):
            raise ValueError(f"{text!r} is an empty range: expected printings from 1 on, the lower first, as in edition:1-4")
        return cls(edition, first, None if dash and not last else int(last or first), state)

    def __str__(self) -> str:
        span = "" if self.last == self.first else f"-{self.last or ''}"
        return f"{self.edition}:{self.first}{self.state}{span}"


class Row(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


class Work(Row):
    title: str
    author: str
    also_titled: tuple[str, ...] = ()


class Edition(Row):
    """``printings`` is the number of printings where known; ``print_runs`` maps a printing to its number of copies."""

    id: str
    name: str
    kind: EditionKind
    publisher: str | None = None
    year: int | None = None
    isbn: str | tuple[str, ...] | None = None
    printings: int | None = Field(default=None, ge=1)
    print_runs: dict[str, int] = {}
    source: str | None = None
    note: str | None = None

    @property
    def isbns(self) -> tuple[str, ...]:
        return () if self.isbn is None else (self.isbn,) if isinstance(self.isbn, str) else self.isbn


def _parsed(rows: object) -> object:
    return tuple(Copies.parse(row) if isinstance(row, str) else row for row in rows) if isinstance(rows, list) else rows


_NAMED = WithJsonSchema({"type": "array", "items": {"type": "string", "pattern": f"^{_COPIES}$"}})
CopyList = Annotated[tuple[Copies, ...], BeforeValidator(_parsed), _NAMED]


class Reading(Row):
    """What may stand at a point's place. ``said_as`` are hints of how sellers put it, not a closed list.

    ``worn_by`` (jackets): books of other printings that are lawfully found in it; ``copies`` are those it was made for.
    ``numbers``: the copies of a limitation that have it, ``"251-1000"``, so that a number told names the reading.
    """

    value: str
    copies: CopyList = ()
    said_as: tuple[str, ...] = ()
    worn_by: CopyList = ()
    numbers: str | None = Field(default=None, pattern=r"^\d+-\d+$")

    def numbered(self, number: int) -> bool:
        """Whether the copy of that number in a limitation has this reading."""
        first, _, last = (self.numbers or "1-0").partition("-")
        return int(first) <= number <= int(last)


class Account(Row):
    """Where authorities differ: what one of them says, reading by reading. A reading it leaves out has copies unknown to it."""

    authority: str
    source: str
    copies: dict[str, CopyList]


class Point(Row):
    """One place to look at and what may stand there. ``disputed`` says who disagrees; such a point never contradicts alone.

    ``accounts`` give each authority's own copies beside those of the readings; `PointSet.by` chooses one. ``element`` names what
    letters are states of (the text, one plate, the binding): letters of two elements never have to agree. ``presence_only``:
    seeing a reading proves, missing it proves nothing. ``volumes``: the place is in each of so many volumes, which can be mixed.
    ``known_pairing`` (jackets): the publisher put later jackets on earlier books.
    """

    id: str
    part: Literal["book", "jacket"]
    place: str
    feature: PointFeature
    source: str
    readings: tuple[Reading, ...]
    note: str | None = None
    disputed: str | None = None
    accounts: tuple[Account, ...] = ()
    element: str | None = None
    presence_only: bool = False
    volumes: int = Field(default=1, ge=1)
    known_pairing: bool = False

    @model_validator(mode="after")
    def _accounts_name_readings(self) -> Point:
        known = {reading.value for reading in self.readings}
        for account in self.accounts:
            if unknown := sorted(account.copies.keys() - known):
                raise ValueError(
                    f"account of {account.authority!r} names no reading of this point: {unknown}; expected of {sorted(known)}"
                )
        return self

    def by(self, authority: str) -> Point:
        """The point as ``authority`` has it, still disputed; itself where that authority says nothing of it."""
        account = next((one for one in self.accounts if one.authority == authority), None)
        if account is None:
            return self
        readings = tuple(one.model_copy(update={"copies": account.copies.get(one.value, ())}) for one in self.readings)
        return self.model_copy(update={"readings": readings, "source": account.source})


class Value(Row):
    """A dated price from a source; a missing ``low`` or ``high`` is an open end. Never advice."""

    edition: str
    printing: str
    source: str
    currency: str
    as_of: str
    grade: str | None = None
    with_jacket: bool | None = None
    signed: bool | None = None
    low: float | None = None
    high: float | None = None
    note: str | None = None


class PointSet(Row):
    """All that one file says of one work; ``stem`` is the file's name without ``.toml``."""

    stem: str
    work: Work
    editions: tuple[Edition, ...]
    points: tuple[Point, ...] = ()
    values: tuple[Value, ...] = ()

    @model_validator(mode="after")
    def _names_are_declared(self) -> PointSet:
        known = {edition.id for edition in self.editions}
        for point in self.points:
            for copies in named_copies(point):
                if copies.edition not in known:
                    raise ValueError(f"point {point.id!r}: edition {copies.edition!r} is not declared; known: {sorted(known)}")
        return self

    def authorities(self) -> tuple[str, ...]:
        """Who gives an account of their own of some disputed point, each once."""
        return tuple(dict.fromkeys(account.authority for point in self.points for account in point.accounts))

    def by(self, authority: str) -> PointSet:
        """The set as one authority has it: its account at each point where it gives one, else the file's own readings."""
        if authority not in self.authorities():
            raise ValueError(f"{authority!r} gives no account in {self.stem!r}; expected one of {list(self.authorities())}")
        return self.model_copy(update={"points": tuple(point.by(authority) for point in self.points)})

    def edition(self, name: str) -> Edition:
        return next(edition for edition in self.editions if edition.id == name)

    def point(self, name: str) -> Point:
        return next(point for point in self.points if point.id == name)


def named_copies(point: Point) -> Iterator[Copies]:
    """Every printing that a point names: of its readings, of books in its jackets, and of its accounts."""
    for reading in point.readings:
        yield from (*reading.copies, *reading.worn_by)
    for account in point.accounts:
        for copies in account.copies.values():
            yield from copies
