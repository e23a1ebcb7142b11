"""Results as rows of a table, one a listing: what .csv, .xlsx and .parquet files have in common, and the .csv itself."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from typing import Any, BinaryIO

from auditor.intake.cells import neutralised
from auditor.reports.flat import flat
from auditor.reports.run import Result
from auditor.reports.words import BRIEF_CAUTION
from auditor.values import Listing, Verdict


def cells(listing: Listing, verdict: Verdict) -> dict[str, Any]:
    """One row by column name: words, None where the listing doesn't tell, the scores as numbers."""
    return {"id": listing.id, **listing.to_dict(), **flat(verdict), "caution": BRIEF_CAUTION}


HEADS = tuple(cells(Listing("", ""), Verdict(None, (), "unclaimed")))


def piece(results: Sequence[Result]) -> bytes:
    """Some results as rows of a .csv, safe to open in a spreadsheet."""
    return rows(cells(*result).values() for result in results)


@contextmanager
def joining(stream: BinaryIO) -> Iterator[Callable[[bytes], object]]:
    """Yields a function that adds a ``piece`` to the table, which begins with its column names."""
    stream.write(rows([HEADS]))
    yield stream.write


def rows(table: Iterable[Iterable[object]]) -> bytes:
    """Rows of a .csv in UTF-8, each cell neutralised."""
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerows([["" if value is None else neutralised(str(value)) for value in row] for row in table])
    return text.getvalue().encode("utf-8", "replace")
