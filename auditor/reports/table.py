"""A table file: one row a listing, safe to open in a spreadsheet."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TextIO

from auditor.intake.cells import neutralised
from auditor.reports.flat import flat
from auditor.values import Listing, Verdict


@contextmanager
def writing(stream: TextIO) -> Iterator[Callable[[Listing, Verdict], None]]:
    rows = csv.writer(stream)
    headed = False

    def write(listing: Listing, verdict: Verdict) -> None:
        nonlocal headed
        cells = {"id": listing.id, **listing.to_dict(), **flat(verdict)}
        if not headed:
            rows.writerow(cells)
            headed = True
        rows.writerow("" if value is None else neutralised(str(value)) for value in cells.values())

    yield write
