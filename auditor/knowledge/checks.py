"""One point-set file, row by row: what the model refuses and what no model can see, told in words with its line.

A mistake leaves its row out (a wrong work or edition refuses the file, as every other row leans on them); a remark leaves all in.
A point left out only makes the reasoning more careful, so leaving it out never accuses anyone.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache
from typing import Any, TypeVar

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from auditor.knowledge import lexicon
from auditor.knowledge.isbn import to_13
from auditor.knowledge.locate import Path, Places
from auditor.knowledge.points import Account, Copies, Edition, Point, PointSet, Reading, Row, Value, Work

_TABLES: dict[str, type[Row]] = {"work": Work, "editions": Edition, "points": Point, "values": Value}
_INNER: dict[str, type[Row]] = {"readings": Reading, "accounts": Account}
_RowType = TypeVar("_RowType", bound=Row)


@dataclass(frozen=True, slots=True)
class Mistake:
    """Something wrong or worth a look in a file: ``line`` counts from 1, None where the whole file is meant."""

    file: str
    line: int | None
    message: str

    def __str__(self) -> str:
        return f"{self.file}:{self.line}: {self.message}" if self.line else f"{self.file}: {self.message}"


@dataclass(slots=True)
class Review:
    """What came of one file: the set (None where the file is refused), and what was found on the way."""

    file: str
    places: Places
    set: PointSet | None = None
    mistakes: list[Mistake] = field(default_factory=list)
    remarks: list[Mistake] = field(default_factory=list)

    def wrong(self, path: Path, message: str) -> None:
        self.mistakes.append(Mistake(self.file, self.places.line(path), message))

    def remark(self, path: Path, message: str) -> None:
        self.remarks.append(Mistake(self.file, self.places.line(path), message))


def review(text: str, stem: str, file: str) -> Review:
    """Reads one point set from ``text``. Never raises: whatever is wrong stands in ``mistakes``."""
    found = Review(file, Places(text))
    try:
        data = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        place = re.search(r"at line (\d+)", str(error))
        line = int(place[1]) if place else text.count("\n") + 1
        found.mistakes.append(Mistake(file, line, f"not TOML: {error}; the file is left out"))
        return found
    for name in data.keys() - _TABLES.keys():
        found.wrong((name,), f"unknown table {name!r}: expected [work], [[editions]], [[points]], [[values]]; it is left out")
    work = _row(found, Work, data.get("work"), ("work",), "[work] with title and author")
    editions = _rows(found, Edition, data, "editions")
    if work is None or not editions or len(editions) < len(data["editions"]) or _unsound_editions(found, dict(editions)):
        if not data.get("editions"):
            found.wrong(("editions",), "no [[editions]]: expected at least one with id, name and kind")
        found.wrong((), "the file is left out, since [work] and every [[editions]] row must be right")
        return found
    known = {edition.id: edition for _, edition in editions}
    points = _sound_points(found, _rows(found, Point, data, "points"), known)
    values = [value for index, value in _rows(found, Value, data, "values") if _value_is_sound(found, index, value, known)]
    found.set = PointSet(stem=stem, work=work, editions=tuple(known.values()), points=tuple(points), values=tuple(values))
    return found


def _rows(found: Review, model: type[_RowType], data: dict[str, Any], table: str) -> list[tuple[int, _RowType]]:
    rows = data.get(table, [])
    if not isinstance(rows, list):
        found.wrong((table,), f"[{table}] has one pair of brackets: expected [[{table}]] for each row; it is left out")
        return []
    made = [(index, _row(found, model, row, (table, index), f"a [[{table}]] table")) for index, row in enumerate(rows)]
    return [(index, row) for index, row in made if row is not None]


def _row(found: Review, model: type[_RowType], row: object, path: Path, expected: str) -> _RowType | None:
    if not isinstance(row, dict):
        found.wrong(path, f"expected {expected}, found {'nothing' if row is None else repr(row)}")
        return None
    try:
        return model.model_validate(row)
    except ValidationError as error:
        for detail in error.errors():
            found.wrong((*path, *detail["loc"]), f"{_name(row, path)}: {_in_words(detail, model)}")
        return None


def _name(row: dict[str, Any], path: Path) -> str:
    if path[0] == "work":
        return "[work]"
    kind = str(path[0]).removesuffix("s")
    return f"{kind} {row['id']!r}" if "id" in row else f"{kind} number {int(path[1]) + 1}"


def _in_words(detail: ErrorDetails, model: type[Row]) -> str:
    """What pydantic found, for a person: the key, what stands there, what was expected."""
    keys = [str(part) for part in detail["loc"] if isinstance(part, str) and not part.startswith(("tuple", "str"))]
    key, kind, got = keys[-1] if keys else "row", detail["type"], detail["input"]
    if kind == "missing":
        return f"the key {key!r} is missing"
    if kind == "extra_forbidden":
        inner = next((_INNER[name] for name in keys[:-1] if name in _INNER), model)
        return f"unknown key {key!r}: expected one of {', '.join(inner.model_fields)}"
    if kind == "literal_error":
        return f"{key} is {got!r}: expected {detail['ctx']['expected']}"
    if kind == "value_error":
        return str(detail["ctx"]["error"])
    return f"{key} is {got!r}: {detail['msg'].replace('Input should', 'it should')}"


def _unsound_editions(found: Review, editions: dict[int, Edition]) -> bool:
    """Tells doubled ids, wrong ISBNs, runs that are no printings. True where the file can't stand."""
    seen: set[str] = set()
    fatal = False
    for index, edition in editions.items():
        path = ("editions", index)
        if edition.id in seen:
            found.wrong((*path, "id"), f"edition {edition.id!r} stands twice: expected each id once")
            fatal = True
        seen.add(edition.id)
        for number in edition.isbns:
            if to_13(number) is None:
                found.wrong((*path, "isbn"), f"isbn {number!r} fails its check digit: no listing is matched by it")
        for printing in edition.print_runs:
            if not printing.isdecimal() or int(printing) < 1:
                found.wrong((*path, "print_runs"), f'print run of {printing!r}: expected the number of a printing, such as "1"')
                fatal = True
            elif edition.printings and int(printing) > edition.printings:
                found.remark((*path, "print_runs"), f"a run of printing {printing}, but {edition.id!r} has {edition.printings}")
        if edition.year is not None and not 1400 <= edition.year <= 2100:
            found.remark((*path, "year"), f"year {edition.year} of edition {edition.id!r} looks wrong: expected four digits")
    return fatal


def _sound_points(found: Review, rows: list[tuple[int, Point]], editions: dict[str, Edition]) -> Iterator[Point]:
    seen: set[str] = set()
    for index, point in rows:
        path = ("points", index)
        faults = list(_point_faults(point, editions))
        if point.id in seen:
            faults.append((("id",), "this id stands twice: expected each id once"))
        for tail, fault in faults:
            found.wrong((*path, *tail), f"point {point.id!r}: {fault}; the point is left out")
        seen.add(point.id)
        if faults:
            continue
        if pairs := sorted(_overlaps(point)):
            told = ", ".join(f"{earlier + 1} and {later + 1}" for earlier, later in pairs)
            found.remark(path, f"point {point.id!r}: readings {told} share printings, so they don't tell them apart")
        yield point


def _point_faults(point: Point, editions: dict[str, Edition]) -> Iterator[tuple[Path, str]]:
    if not point.readings:
        yield ("readings",), "no [[points.readings]]: expected at least one with value and copies"
    if not point.source.strip():
        yield ("source",), 'the source is empty: expected where the fact stands, or "from memory"'
    for index, reading in enumerate(point.readings):
        for key, named in (("copies", reading.copies), ("worn_by", reading.worn_by)):
            yield from _unknown_copies(("readings", index, key), named, editions)
        if reading.worn_by and point.part != "jacket":
            yield ("readings", index, "worn_by"), "worn_by is of jackets only: expected it on a point of part jacket"
    for index, account in enumerate(point.accounts):
        for named in account.copies.values():
            yield from _unknown_copies(("accounts", index, "copies"), named, editions)


def _unknown_copies(path: Path, named: tuple[Copies, ...], editions: dict[str, Edition]) -> Iterator[tuple[Path, str]]:
    for copies in named:
        if copies.edition not in editions:
            yield path, f"edition {copies.edition!r} is not declared: expected one of {', '.join(editions)}"
        elif (most := editions[copies.edition].printings) and max(copies.first, copies.last or 0) > most:
            yield path, f"{copies} goes beyond the {most} printings of {copies.edition!r}"


def _overlaps(point: Point) -> Iterator[tuple[int, int]]:
    for later, reading in enumerate(point.readings):
        for earlier, other in enumerate(point.readings[:later]):
            if any(_share(one, two) for one in reading.copies for two in other.copies):
                yield earlier, later


def _share(one: Copies, two: Copies) -> bool:
    starts, ends = max(one.first, two.first), [last for last in (one.last, two.last) if last is not None]
    states = {one.state, two.state}
    return one.edition == two.edition and all(starts <= end for end in ends) and (len(states) == 1 or "" in states)


def _value_is_sound(found: Review, index: int, value: Value, editions: dict[str, Edition]) -> bool:
    faults: list[tuple[str, str]] = []
    if value.edition not in editions:
        faults.append(("edition", f"edition {value.edition!r} is not declared: expected one of {', '.join(editions)}"))
    if not value.source.strip():
        faults.append(("source", "the source is empty: expected who asked or paid it, and where that stands"))
    if value.currency not in _currencies():
        faults.append(("currency", f"currency {value.currency!r} is no ISO 4217 code: expected one such as USD or GBP"))
    if value.low is not None and value.high is not None and value.low > value.high:
        faults.append(("low", f"low {value.low:g} is above high {value.high:g}"))
    if value.low is None and value.high is None:
        faults.append(("edition", "neither low nor high: expected at least one of them"))
    if not re.fullmatch(r"\d{4}(-\d\d(-\d\d)?)?", value.as_of):
        faults.append(("as_of", f"as_of is {value.as_of!r}: expected a year, a month or a day, such as 1998-04-01"))
    try:
        Copies.parse(f"{value.edition}:{value.printing}")
    except ValueError:
        faults.append(("printing", f"printing is {value.printing!r}: expected 1, 1-4, 2- or 1a"))
    for key, fault in faults:
        found.wrong(("values", index, key), f"value number {index + 1}: {fault}; the row is left out")
    return not faults


@cache
def _currencies() -> frozenset[str]:
    table = lexicon.table("standards")["currencies"]
    return frozenset(table["codes"]) | frozenset(table["withdrawn"])
