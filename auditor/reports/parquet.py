"""Results as a Parquet file: the columns of a .csv, scores as numbers. pyarrow writes it, the extra ``parquet``."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from functools import cache
from typing import TYPE_CHECKING, BinaryIO

from auditor.reports.run import Result
from auditor.reports.table import HEADS, cells

if TYPE_CHECKING:
    import pyarrow as arrow

_GROUP = 20_000  # rows to a row group: readers take one at a time
_NUMBERS = ("missing", "contradiction", "overclaim")


def piece(results: Sequence[Result]) -> bytes:
    """Some results as an Arrow stream."""
    import pyarrow as arrow

    told = [cells(*result) for result in results]
    columns = {head: [_sound(row[head]) for row in told] for head in HEADS}
    stream = io.BytesIO()
    with arrow.ipc.new_stream(stream, _schema()) as writer:
        writer.write_table(arrow.table(columns, schema=_schema()))
    return stream.getvalue()


@contextmanager
def joining(stream: BinaryIO) -> Iterator[Callable[[bytes], object]]:
    """Yields a function that adds a ``piece`` to the file; its rows are gathered into row groups."""
    import pyarrow as arrow
    from pyarrow import parquet

    waiting: list[arrow.Table] = []
    with parquet.ParquetWriter(stream, _schema(), compression="zstd") as writer:

        def flush() -> None:
            writer.write_table(arrow.concat_tables(waiting))
            waiting.clear()

        def add(piece: bytes) -> None:
            waiting.append(arrow.ipc.open_stream(piece).read_all())
            if sum(table.num_rows for table in waiting) >= _GROUP:
                flush()

        yield add
        if waiting:
            flush()


@cache
def _schema() -> arrow.Schema:
    import pyarrow as arrow

    return arrow.schema([(head, arrow.int16() if head in _NUMBERS else arrow.string()) for head in HEADS])


def _sound(value: object) -> object:
    """A file's name need not be valid text."""
    return value.encode("utf-8", "replace").decode() if isinstance(value, str) else value
