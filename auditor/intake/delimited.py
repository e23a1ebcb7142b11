"""Tables: .csv and .tsv, whatever their separator, one listing a row."""

from __future__ import annotations

import csv
from collections import deque
from collections.abc import Iterator, Mapping
from itertools import chain
from typing import Literal, NamedTuple, TextIO

from auditor.intake.cells import restored
from auditor.intake.columns import nameless, recognise
from auditor.intake.encoding import detect
from auditor.intake.file import File
from auditor.intake.item import Item, Note
from auditor.intake.rows import Place, listing
from auditor.values import Reject

_SAMPLE = 1 << 16
_LONGEST_RECORD = 200_000  # characters; a quote that is never closed must not swallow the rest of the table

_AGAIN = 50  # how many times what was read may be read again in search of a quotation mark's other one
_TOO_LONG = f"is longer than {_LONGEST_RECORD:,} characters, as no listing is"
_UNPAIRED = "a quotation mark opens a cell and is never closed, or stands inside one undoubled"


class _Shape(NamedTuple):
    """How a table is written: its separator, csv's quoting mode, the physical lines to pass over before the heads."""

    separator: str
    quoting: Literal[0, 3] = csv.QUOTE_MINIMAL
    skip: int = 0


class _Record(NamedTuple):
    """One record: its first physical line, its cells or the fault for which it can't be read, and whether it was mended."""

    line: int
    cells: list[str] | None
    mended: bool = False
    fault: str = ""


def read(opened: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields a listing a row, rejects and notes. Raises ValueError when no column holds words, OSError when it can't be read."""
    file = opened.name
    encoding = detect(opened)
    if encoding.said:
        yield Note(file, encoding.said)
    with encoding.text(opened.peek()) as stream:
        shape = _shape(stream.read(_SAMPLE), opened.suffix, columns)
    with encoding.text(opened.open()) as stream:
        records = _records(stream, shape)
        heads = next((record.cells for record in records if record.cells and any(cell.strip() for cell in record.cells)), None)
        if heads is None:
            raise ValueError("is empty: expected a first row of column names")
        heads = [head.removeprefix("\ufeff").strip() for head in heads]
        found, said = recognise(heads, columns)
        if not {"text", "title"} & found.keys():
            raise ValueError(nameless(heads))
        yield from (Note(file, words) for words in said)
        number = 0
        for record in records:
            if record.cells is not None and not any(cell.strip() for cell in record.cells):
                continue
            number += 1
            place = Place(file, f"row {number} (line {record.line})", f"{opened.stem}-{number}")
            if record.cells is None:
                yield Reject(file, place.words, record.fault)
            elif any(cell.strip() for cell in record.cells[len(heads) :]):
                found_cells = f"{len(record.cells)} cells under {len(heads)} column names"
                yield Reject(file, place.words, f"{found_cells}: is a separator in the text not inside quotation marks?")
            else:
                if record.mended:
                    yield Note(file, f"{place.words}: quotation marks inside a cell are not doubled; read without them")
                yield from listing(dict(zip(heads, map(restored, record.cells), strict=False)), found, place)


def _shape(sample: str, suffix: str, columns: Mapping[str, str]) -> _Shape:
    """The separator under which the first row names most fields, then has most cells; the suffix's own where they tie."""
    lines = sample.splitlines(keepends=True)
    lines = lines[:-1] if len(sample) == _SAMPLE and len(lines) > 1 else lines
    if lines and lines[0].lower().strip("\ufeff\r\n").startswith("sep=") and len(lines[0].strip("\ufeff\r\n")) == 5:
        return _Shape(lines[0].strip("\ufeff\r\n")[-1], skip=1)

    def worth(separator: str) -> tuple[int, int]:
        heads = next((row for row in csv.reader(lines, delimiter=separator) if any(row)), [])
        return len(recognise(heads, columns).heads), len(heads)

    separator = max("\t,;|" if suffix == ".tsv" else ",;\t|", key=worth)
    if separator == "\t":
        # Tab-separated exports often know no quoting: a mark is then a plain character.
        try:
            deque(csv.reader(lines, delimiter=separator, strict=True), maxlen=0)
        except csv.Error as error:
            if "unexpected end" not in str(error) or len(sample) < _SAMPLE:
                return _Shape(separator, csv.QUOTE_NONE)
    return _Shape(separator)


def _records(stream: TextIO, shape: _Shape) -> Iterator[_Record]:
    """The table's records. One that breaks gives up its first line alone: the next record begins on the line behind it."""
    csv.field_size_limit(_LONGEST_RECORD)
    lines = enumerate(stream, 1)
    for _ in range(shape.skip):
        next(lines, None)
    ahead: deque[tuple[int, str]] = deque()
    taken: list[tuple[int, str]] = []
    heads = behind = again = 0  # characters of the lines that are done with, and of those that were read once more

    def feed() -> Iterator[str]:
        size = 0
        while item := ahead.popleft() if ahead else next(lines, None):
            size = size + len(item[1]) if taken else len(item[1])
            taken.append(item)
            if size > _LONGEST_RECORD:
                raise csv.Error("record too long")
            yield item[1]

    while True:
        try:
            for cells in csv.reader(feed(), delimiter=shape.separator, quoting=shape.quoting, strict=True):
                heads = heads or len(cells)
                yield _Record(taken[0][0], cells)
                behind += sum(len(line) for _, line in taken)
                taken.clear()
            return
        except csv.Error:
            (number, line), *rest = taken
            ahead.extendleft(reversed(rest))
            taken.clear()
            behind += len(line)
            again += sum(len(line) for _, line in rest)
            if again > _AGAIN * (behind + _LONGEST_RECORD):
                raise ValueError(f"quotation marks don't pair, line after line: not read from line {number} on") from None
            mended = _mended(line, shape)
            if mended and len(mended) == heads:
                yield _Record(number, mended, mended=True)
            else:
                yield _Record(number, None, fault=_TOO_LONG if len(line) > _LONGEST_RECORD else _UNPAIRED)


def _mended(line: str, shape: _Shape) -> list[str] | None:
    """One line with stray quotation marks, read leniently; None where a cell still runs on past its end."""
    try:
        rows = list(csv.reader(chain([line]), delimiter=shape.separator, quoting=shape.quoting))
    except csv.Error:
        return None
    return rows[0] if rows and not any("\n" in cell or "\r" in cell for cell in rows[0]) else None
