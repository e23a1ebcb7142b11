"""A batch: files that the browser sends are read like those of a scan, and the report is kept under a name none can guess."""

from __future__ import annotations

import re
import secrets
import shutil
import tempfile
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import BinaryIO

from auditor.intake import KNOWN, open_paths
from auditor.knowledge.shelf import Shelf
from auditor.reports import files
from auditor.reports.run import Run
from auditor.scan import run
from auditor.values import Reject

__all__ = ["KNOWN", "kept", "read"]


def read(shelf: Shelf, sent: Sequence[tuple[str, BinaryIO]], folder: Path) -> str:
    """Audits what the (name, file) pairs hold; the report is ``kept`` in ``folder`` under the name returned."""
    name = f"{secrets.token_urlsafe(12)}.html"
    told = Run(shelf.sets)
    with tempfile.TemporaryDirectory(dir=folder) as place, files.writing(folder / name, told) as write:
        paths = [_put(Path(place), number, given, file) for number, (given, file) in enumerate(sent)]
        for item in run(open_paths(paths), shelf):
            if isinstance(item, tuple):
                listing, verdict = item
                write(replace(listing, source=_as_sent(listing.source or "", place)), verdict)
            elif isinstance(item, Reject):
                told.rejects.append(Reject(*(_as_sent(words, place) for words in (item.source, item.place, item.reason))))
    return name


def kept(folder: Path, name: str) -> Path | None:
    """The report of that name, None if there is none."""
    path = folder / name
    return path if re.fullmatch(r"[\w-]+\.html", name) and path.is_file() else None


def _as_sent(words: str, place: str) -> str:
    """The words without the folder that the files were put into, which is the desk's own."""
    return re.sub(rf"{re.escape(place)}[/\\]\d+[/\\]", "", words)


def _put(place: Path, number: int, name: str, file: BinaryIO) -> Path:
    """The file under a safe form of its own name, each in a folder of its own, as names may repeat."""
    safe = re.sub(r"[^\w. -]", "_", re.split(r"[/\\]", name)[-1]).lstrip(".")[-120:] or "file"
    own = place / str(number)
    own.mkdir()
    with (own / safe).open("wb") as stream:
        shutil.copyfileobj(file, stream)
    return own / safe
