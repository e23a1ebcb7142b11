"""Parquet files, one listing a row. pyarrow reads them, the extra ``parquet``."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal

from auditor.intake.columns import nameless, recognise
from auditor.intake.file import File
from auditor.intake.item import Item, Note
from auditor.intake.rows import Place, listing

_ROWS = 500


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields a listing a row, rejects and notes. Raises ValueError when it can't be read or no column holds words."""
    try:
        import pyarrow as arrow
        from pyarrow import parquet
    except ImportError as error:
        raise ValueError("needs pyarrow: pip install 'listing-text-auditor[parquet]'") from error
    try:
        with file.seekable() as stream, parquet.ParquetFile(stream, pre_buffer=False) as table:
            heads = table.schema_arrow.names
            found, said = recognise(heads, columns)
            if not {"text", "title"} & found.keys():
                raise ValueError(nameless(heads))
            yield from (Note(file.name, words) for words in said)
            number = 0
            for batch in table.iter_batches(_ROWS, columns=list(found.values())):
                for row in batch.to_pylist():
                    number += 1
                    cells = {head: _plain(value) for head, value in row.items()}
                    yield from listing(cells, found, Place(file.name, f"row {number}", f"{file.stem}-{number}"))
    except arrow.ArrowException as error:
        raise ValueError(f"is no sound Parquet file: {error}") from error


def _plain(value: object) -> object:
    """Text that stands as bytes, and exact decimals, as words."""
    if isinstance(value, bytes):
        return value.decode("utf-8", "replace")
    return format(value, "f") if isinstance(value, Decimal) else value
