"""Results as a workbook (.xlsx), safe to open: no cell is a formula. Longer tables run over several sheets."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import TYPE_CHECKING, BinaryIO

from auditor.intake.cells import for_workbook, neutralised
from auditor.reports.run import Result
from auditor.reports.table import HEADS, cells

if TYPE_CHECKING:
    from openpyxl.cell import Cell
    from openpyxl.worksheet._write_only import WriteOnlyWorksheet

MOST_ROWS = 1_048_576  # of a sheet, and
LONGEST = 32_767  # characters of a cell: the format's own limits
CUT = " [cut: longer than a workbook's cell; a .csv or .jsonl keeps all]"


def piece(results: Sequence[Result]) -> bytes:
    """Some results as a JSON array of rows."""
    return json.dumps([[_cell(value) for value in cells(*result).values()] for result in results]).encode()


@contextmanager
def joining(stream: BinaryIO) -> Iterator[Callable[[bytes], object]]:
    """Yields a function that adds a ``piece`` to the workbook."""
    import openpyxl

    book = openpyxl.Workbook(write_only=True)
    sheet: WriteOnlyWorksheet | None = None
    left = 0

    def add(piece: bytes) -> None:
        nonlocal sheet, left
        for row in json.loads(piece):
            if sheet is None or not left:
                sheet = book.create_sheet("listings" if sheet is None else f"listings {len(book.worksheets) + 1}")
                sheet.append(HEADS)
                left = MOST_ROWS - 1
            sheet.append([_words(sheet, value) if isinstance(value, str) else value for value in row])
            left -= 1

    try:
        yield add
    except BaseException:
        for each in book.worksheets:
            each.close()
        raise
    if sheet is None:
        book.create_sheet("listings").append(HEADS)
    book.save(stream)


def _cell(value: object) -> object:
    if not isinstance(value, str):
        return value
    safe = for_workbook(neutralised(value.encode("utf-8", "replace").decode()))
    return safe if len(safe) <= LONGEST else safe[: LONGEST - len(CUT)] + CUT


def _words(sheet: WriteOnlyWorksheet, value: str) -> Cell:
    """A cell that is text whatever it looks like: ``#N/A`` too."""
    from openpyxl.cell import WriteOnlyCell

    cell = WriteOnlyCell(sheet, value)
    cell.data_type = "s"
    return cell
