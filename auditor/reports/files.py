"""Report files: each kind is one module, named in one table by suffix, and each file appears whole or not at all.

A kind makes some results into a piece of bytes (where they were audited), and joins pieces in their order to a file.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path
from typing import BinaryIO, NamedTuple

from auditor.knowledge.points import PointSet
from auditor.reports import jsonlines, page, parquet, table, workbook
from auditor.reports.run import Result, Run
from auditor.reports.tally import Tally
from auditor.values import Listing, Verdict
from auditor.whole import whole

Add = Callable[[bytes], object]


class Kind(NamedTuple):
    """``piece`` makes results into bytes, ``joining`` yields what adds such pieces to a file."""

    piece: Callable[[Sequence[Result]], bytes]
    joining: Callable[[BinaryIO], AbstractContextManager[Add]]


@contextmanager
def _plainly(stream: BinaryIO) -> Iterator[Add]:
    yield stream.write


KINDS: dict[str, Kind] = {
    ".jsonl": Kind(jsonlines.piece, _plainly),
    ".csv": Kind(table.piece, table.joining),
    ".parquet": Kind(parquet.piece, parquet.joining),
    ".xlsx": Kind(workbook.piece, workbook.joining),
}
PAGE = ".html"  # made from a tally and not from pieces, so that it stays small
KNOWN = (*KINDS, PAGE)


def write_page(path: Path, tally: Tally, sets: Mapping[str, PointSet]) -> None:
    """Writes the page of a tally. Raises OSError when it can't be written."""
    with whole(path) as stream:
        for part in page.pieces(tally, sets):
            stream.write(part.encode("utf-8", "replace"))  # a file's name need not be valid text


@contextmanager
def joined(path: Path) -> Iterator[Add]:
    """Yields a function that adds a piece to the file. Raises KeyError for a suffix that isn't in ``KINDS``, OSError."""
    with whole(path) as stream, KINDS[path.suffix.lower()].joining(stream) as add:
        yield add


@contextmanager
def writing(path: Path, run: Run | None = None) -> Iterator[Callable[[Listing, Verdict], object]]:
    """Yields a function that adds one result. The file takes its place when the block ends well; else nothing is left behind.
    ``run`` is what the report may tell beside the results.

    Raises KeyError for a suffix that isn't in ``KNOWN``, OSError when the folder can't be written to.
    """
    run = run or Run()
    if path.suffix.lower() == PAGE:
        tally = Tally(page.MOST_ROWS, run.sets)
        yield tally.add
        for reject in run.rejects:
            tally.reject(reject)
        write_page(path, tally, run.sets)
    else:
        piece = KINDS[path.suffix.lower()].piece
        with joined(path) as add:
            yield lambda listing, verdict: add(piece([(listing, verdict)]))
