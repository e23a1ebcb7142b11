"""One point-set file, row by row: what the model refuses and what no model can see, told in words with its line.

A mistake leaves its row out (a wrong work or edition refuses the file, as every other row leans on them); a remark leaves all in.
A point left out only makes the reasoning more careful, so leaving it out never accuses anyone.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Collection, Iterator
from dataclasses import dataclass, field
from datetime import date
from functools import cache
from typing import Any, TypeVar

from pydantic import ValidationError

from auditor.knowledge import lexicon
from auditor.knowledge.covering import worth_a_look
from auditor.knowledge.isbn import to_13
from auditor.knowledge.locate import Path, Places
from auditor.knowledge.points import Copies, Edition, Point, PointSet, Row, Value, Work
from auditor.knowledge.slips import in_words, near, shown, written
from auditor.knowledge.toml_slips import explained

_TABLES: dict[str, type[Row]] = {"work": Work, "editions": Edition, "points": Point, "values": Value}
_NAMED = "edition:1"
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
        line, slip = explained(text, str(error))
        found.mistakes.append(Mistake(file, line, f"not TOML: {slip}; the file is left out"))
        return found
    for name in data.keys() - _TABLES.keys():
        mend = "; readings stand below their point as [[points.readings]]" if name == "readings" else near(name, _TABLES)
        found.wrong(
            (name,), f"unknown table {name!r}: expected [work], [[editions]], [[points]], [[values]]{mend}; it is left out"
        )
    work = _row(found, Work, data.get("work"), ("work",), "[work] with title and author")
    editions = _rows(found, Edition, data, "editions")
    if work is None or not editions or len(editions) < len(data["editions"]) or _unsound_editions(found, dict(editions)):
        if not data.get("editions"):
            example = f"{written('name')}, {written('kind')}"
            found.wrong(
                ("editions",), f'no [[editions]]: expected at least one with id, name and kind, such as id = "trade", {example}'
            )
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
        found.wrong(
            (table,),
            f"[{table}] has one pair of brackets: expected [[{table}]] for each row, as there may be several; it is left out",
        )
        return []
    made = [(index, _row(found, model, row, (table, index), f"a [[{table}]] table")) for index, row in enumerate(rows)]
    return [(index, row) for index, row in made if row is not None]


def _row(found: Review, model: type[_RowType], row: object, path: Path, expected: str) -> _RowType | None:
    if not isinstance(row, dict):
        found.wrong(path, f"expected {expected}, found {'nothing' if row is None else shown(row)}")
        return None
    try:
        return model.model_validate(row)
    except ValidationError as error:
        told: set[object] = set()
        for detail in error.errors():
            if "isbn" not in told or "isbn" not in detail["loc"]:  # of two kinds allowed, the first tells enough
                found.wrong((*path, *detail["loc"]), f"{_name(row, path)}: {in_words(detail, model)}")
            told.update(detail["loc"])
    return None


def _name(row: dict[str, Any], path: Path) -> str:
    if path[0] == "work":
        return "[work]"
    kind = str(path[0]).removesuffix("s")
    return f"{kind} {row['id']!r}" if "id" in row else f"{kind} number {int(path[1]) + 1}"


def _unsound_editions(found: Review, editions: dict[int, Edition]) -> bool:
    """Tells doubled ids, wrong ISBNs, runs that are no printings. True where the file can't stand."""
    seen: set[str] = set()
    fatal = False
    for index, edition in editions.items():
        path = ("editions", index)
        if edition.id in seen:
            found.wrong((*path, "id"), f"edition {edition.id!r} stands twice: expected each id once; give this edition another")
            fatal = True
        seen.add(edition.id)
        if not re.fullmatch(r"[\w-]+", edition.id):
            found.wrong(
                (*path, "id"), f"edition {edition.id!r}: expected letters, figures and hyphens alone, so that {_NAMED} names it"
            )
            fatal = True
        if not edition.name.strip():
            found.wrong(
                (*path, "name"), f"edition {edition.id!r}: the name is empty: expected words for people, {written('name')}"
            )
            fatal = True
        for number in edition.isbns:
            if to_13(number) is None:
                figures = sum(sign.isdigit() or sign in "Xx" for sign in number)
                fault = "fails its check digit" if figures in (10, 13) else f"has {figures} figures, not 10 or 13"
                found.wrong((*path, "isbn"), f"isbn {number!r} {fault}: compare it with the book; no listing is matched by it")
        for printing, run in edition.print_runs.items():
            if run < 1:
                found.wrong(
                    (*path, "print_runs"), f"a run of {run} copies: expected 1 or more; leave it out where it isn't known"
                )
                fatal = True
            if not printing.isdecimal() or int(printing) < 1:
                found.wrong((*path, "print_runs"), f'print run of {printing!r}: expected the number of a printing, such as "1"')
                fatal = True
            elif edition.printings and int(printing) > edition.printings:
                found.remark(
                    (*path, "print_runs"),
                    f"a run of printing {printing}, but {edition.id!r} has {edition.printings}: is one of them a slip?",
                )
        if edition.year is not None and not 1400 <= edition.year <= 2100:
            found.remark((*path, "year"), f"year {edition.year} of edition {edition.id!r} looks wrong: expected four digits")
    return fatal


def _sound_points(found: Review, rows: list[tuple[int, Point]], editions: dict[str, Edition]) -> Iterator[Point]:
    seen: set[str] = set()
    for index, point in rows:
        path = ("points", index)
        faults = list(_point_faults(point, editions))
        if point.id in seen:
            faults.append(
                (("id",), "this id stands twice: expected each id once; give this point another, or its readings to the first")
            )
        for tail, fault in faults:
            found.wrong((*path, *tail), f"point {point.id!r}: {fault}; the point is left out")
        seen.add(point.id)
        if faults:
            continue
        for fault in worth_a_look(point, editions):
            found.remark(path, f"point {point.id!r}: {fault}")
        yield point


def _point_faults(point: Point, editions: dict[str, Edition]) -> Iterator[tuple[Path, str]]:
    if not point.readings:
        yield (
            ("readings",),
            "no [[points.readings]]: expected at least one table of that name below the point, with value and copies",
        )
    if not point.id.strip() or not point.place.strip():
        empty = "place" if point.id.strip() else "id"
        yield (empty,), f"the {empty} is empty: expected words, such as {written(empty)}"
    if not point.source.strip():
        yield ("source",), 'the source is empty: expected where the fact stands, or "from memory"'
    for index, reading in enumerate(point.readings):
        for key, named in (("copies", reading.copies), ("worn_by", reading.worn_by)):
            yield from _unknown_copies(("readings", index, key), named, editions)
        if not re.search(r"\w", reading.value):
            yield ("readings", index, "value"), f'value {reading.value!r} has no word: expected what stands there, or "none"'
        elif reading.value in (other.value for other in point.readings[:index]):
            yield ("readings", index, "value"), f"value {reading.value!r} stands twice: expected each once, with all its copies"
        if reading.numbers and int(reading.numbers.partition("-")[0]) > int(reading.numbers.partition("-")[2]):
            yield ("readings", index, "numbers"), f"numbers {reading.numbers!r} run backwards: expected the lower one first"
        if reading.worn_by and point.part != "jacket":
            yield ("readings", index, "worn_by"), 'worn_by is of jackets only: expected it on a point with part = "jacket"'
    if point.known_pairing and point.part != "jacket":
        yield ("known_pairing",), 'known_pairing is of jackets only: expected it on a point with part = "jacket"'
    for index, account in enumerate(point.accounts):
        for named in account.copies.values():
            yield from _unknown_copies(("accounts", index, "copies"), named, editions)


def _unknown_copies(path: Path, named: tuple[Copies, ...], editions: dict[str, Edition]) -> Iterator[tuple[Path, str]]:
    for copies in named:
        if copies.edition not in editions:
            yield path, _undeclared(copies.edition, editions)
        elif (most := editions[copies.edition].printings) and max(copies.first, copies.last or 0) > most:
            yield (
                path,
                f"{copies} goes beyond the {most} printings of {copies.edition!r}: write one up to {most}, or more there",
            )


def _undeclared(name: str, editions: Collection[str]) -> str:
    known = ", ".join(editions)
    return f"edition {name!r} is not declared: expected one of {known}{near(name, editions)}; else add it as [[editions]]"


def _value_is_sound(found: Review, index: int, value: Value, editions: dict[str, Edition]) -> bool:
    faults: list[tuple[str, str]] = []
    if value.edition not in editions:
        faults.append(("edition", _undeclared(value.edition, editions)))
    if not value.source.strip():
        faults.append(("source", "the source is empty: expected who asked or paid it, and where that stands"))
    if value.currency not in _currencies():
        faults.append(
            ("currency", f"currency {value.currency!r} is no ISO 4217 code: expected three capitals, such as USD or GBP")
        )
    if value.low is not None and value.high is not None and value.low > value.high:
        faults.append(("low", f"low {value.low:g} is above high {value.high:g}: expected the lower one as low"))
    if value.low is None and value.high is None:
        faults.append(("edition", f"neither low nor high: expected at least one of them, such as {written('low')}"))
    if not all(amount is None or 0 < amount < 1e12 for amount in (value.low, value.high)):
        faults.append(("low", "an amount isn't above 0: expected what was asked or paid; leave out what isn't known"))
    if not _is_date(value.as_of):
        faults.append(("as_of", f"as_of is {value.as_of!r}: expected a year, a month or a day, such as 1998-04-01"))
    try:
        copies = Copies.parse(f"{value.edition}:{value.printing}")
    except ValueError:
        faults.append(("printing", f"printing is {value.printing!r}: expected 1, 1-4, 2- or 1a, in quotation marks"))
    else:
        beyond = _unknown_copies((), (copies,), editions) if value.edition in editions else ()
        faults += [("printing", fault) for _, fault in beyond]
    for key, fault in faults:
        found.wrong(("values", index, key), f"value number {index + 1}: {fault}; the row is left out")
    return not faults


def _is_date(text: str) -> bool:
    """A year, a month or a day, as ISO 8601 writes it."""
    try:
        return bool(re.fullmatch(r"\d{4}(-\d\d){0,2}", text)) and bool(date.fromisoformat(f"{text}-01-01"[:10]))
    except ValueError:
        return False


@cache
def _currencies() -> frozenset[str]:
    table = lexicon.table("standards")["currencies"]
    return frozenset(table["codes"]) | frozenset(table["withdrawn"])
