"""The files of a scan, or of one partition of it, filled part by part; a page is made from a tally and isn't among them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import asdict, fields
from pathlib import Path

from auditor.reports import records
from auditor.reports.files import PAGE, joined
from auditor.scan.chunk import Part
from auditor.values import Reject


@contextmanager
def filling(outs: Iterable[Path], rejects: Path | None) -> Iterator[Callable[[Part], None]]:
    """Yields a function that adds one part to all of them: all are written before the first takes its place.

    ``rejects`` is the file for what could not be read. Raises OSError when one can't be written.
    """
    with ExitStack() as stack:
        adds = [(path.suffix.lower(), stack.enter_context(joined(path))) for path in outs if path.suffix.lower() != PAGE]
        heads = [each.name for each in fields(Reject)]
        add_rejects = stack.enter_context(records.writing(rejects, heads)) if rejects else None

        def add(part: Part) -> None:
            for suffix, add_piece in adds:
                add_piece(part.pieces[suffix])
            if add_rejects:
                add_rejects([asdict(each) for each in part.told if isinstance(each, Reject)])

        yield add
