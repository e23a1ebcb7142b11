"""Small files of named cells beside a report, as a .csv or as JSON lines: what could not be read, same words, the watchlist."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any, NamedTuple

from auditor.reports.table import rows
from auditor.whole import whole

Record = Mapping[str, Any]


class Kind(NamedTuple):
    """What a file with these column names begins with (nothing, where there are none), and how some records stand in it."""

    head: Callable[[Sequence[str]], bytes]
    piece: Callable[[Iterable[Record]], bytes]


def _lines(records: Iterable[Record]) -> bytes:
    return "".join(f"{json.dumps(each, ensure_ascii=False)}\n" for each in records).encode("utf-8", "replace")


KINDS: dict[str, Kind] = {
    ".csv": Kind(lambda heads: rows([heads] if heads else []), lambda records: rows(each.values() for each in records)),
    ".jsonl": Kind(lambda heads: b"", _lines),
}


@contextmanager
def writing(path: Path, heads: Sequence[str]) -> Iterator[Callable[[Iterable[Record]], object]]:
    """Yields a function that adds records, whose keys are ``heads`` in their order. The file appears whole or not at all.

    Raises KeyError for a suffix that isn't in ``KINDS``, OSError when it can't be written.
    """
    kind = KINDS[path.suffix.lower()]
    with whole(path) as stream:
        stream.write(kind.head(heads))
        yield lambda records: stream.write(kind.piece(records))
