"""Report files: each kind is one module, named in one table by suffix, and each file appears whole or not at all."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path
from typing import TextIO

from auditor.reports import jsonlines, page, table
from auditor.reports.run import Run
from auditor.values import Listing, Verdict

Write = Callable[[Listing, Verdict], None]

KINDS: dict[str, Callable[[TextIO, Run], AbstractContextManager[Write]]] = {
    ".jsonl": lambda stream, _: jsonlines.writing(stream),
    ".csv": lambda stream, _: table.writing(stream),
    ".html": page.writing,
}


@contextmanager
def writing(path: Path, run: Run | None = None) -> Iterator[Write]:
    """Yields a function that adds one result. The file takes its place when the block ends well; else nothing is left behind.
    ``run`` is what the report may tell beside the results.

    Raises KeyError for a suffix that isn't in ``KINDS``, OSError when the folder can't be written to.
    """
    kind = KINDS[path.suffix.lower()]
    with replacing(path) as stream, kind(stream, run or Run()) as write:
        yield write


@contextmanager
def replacing(path: Path) -> Iterator[TextIO]:
    """A stream into a file beside ``path`` that takes its place when the block ends well. Raises OSError."""
    path = path.resolve()
    handle, name = tempfile.mkstemp(prefix=f".{path.name}.", suffix=".part", dir=path.parent)
    part = Path(name)
    try:
        with os.fdopen(handle, "w", encoding="utf-8", newline="") as stream:
            yield stream
        part.chmod(path.stat().st_mode & 0o777 if path.exists() else 0o666 & ~_umask())
        part.replace(path)
    finally:
        part.unlink(missing_ok=True)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
