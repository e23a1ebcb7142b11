"""Workbooks (.xlsx): each sheet is a table, one listing a row."""

from __future__ import annotations

import zipfile
from collections.abc import Iterator, Mapping
from typing import BinaryIO
from xml.etree.ElementTree import ParseError

from auditor.intake.cells import from_workbook, restored
from auditor.intake.columns import nameless, recognise
from auditor.intake.file import File, check
from auditor.intake.item import Item, Note
from auditor.intake.rows import Place, listing

MOST_SHARED = 256 << 20  # bytes; a workbook's shared words are held in memory whole


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields a listing a row, rejects and notes; sheets without a column of words are told and passed over.

    Raises ValueError when it can't be read or no sheet has a column of words.
    """
    import openpyxl
    from openpyxl.utils.exceptions import InvalidFileException

    with file.seekable() as stream:
        _check(stream)
        try:
            book = openpyxl.load_workbook(stream, read_only=True, data_only=True)
            heads: list[str] = []
            known = False
            number = 0
            for sheet in book.worksheets:
                sheet.reset_dimensions()  # what the sheet says of its own size is often wrong
                rows = sheet.iter_rows(values_only=True)
                heads = [_words(cell) for cell in next(rows, ())]
                found, said = recognise(heads, columns)
                if not {"text", "title"} & found.keys():
                    yield Note(file.name, f"sheet {sheet.title!r} has no column of words and is not read")
                    continue
                known = True
                yield from (Note(file.name, words) for words in said)
                for line, row in enumerate(rows, 2):
                    if any(cell is not None and cell != "" for cell in row):
                        number += 1
                        cells = dict(zip(heads, map(_plain, row), strict=False))
                        place = Place(file.name, f"sheet {sheet.title!r}, row {line}", f"{file.stem}-{number}")
                        yield from listing(cells, found, place)
        except (InvalidFileException, zipfile.BadZipFile, ParseError, KeyError, TypeError, AttributeError, IndexError) as error:
            raise ValueError(f"is no sound workbook: {error}") from error
    if not known:
        raise ValueError(nameless(heads))


def _check(stream: BinaryIO) -> None:
    """Raises ValueError where the workbook, which is a zip of XML, is none, or would unpack to more than any table does."""
    try:
        zipped = zipfile.ZipFile(stream)
    except zipfile.BadZipFile as error:
        raise ValueError(f"is no sound workbook: {error}") from error
    check(zipped, stream.seek(0, 2))
    if any(info.file_size > MOST_SHARED for info in zipped.infolist() if "sharedStrings" in info.filename):
        raise ValueError(f"holds more than {MOST_SHARED >> 20} MB of shared words: save it as .csv")
    stream.seek(0)


def _words(cell: object) -> str:
    return "" if cell is None else str(_plain(cell)).strip()


def _plain(cell: object) -> object:
    return restored(from_workbook(cell)) if isinstance(cell, str) else cell
