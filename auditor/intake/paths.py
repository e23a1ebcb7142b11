"""Paths in, items out: each kind of input is one function, named in one table by suffix."""

from __future__ import annotations

import os
import re
import sys
from collections import Counter
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from pathlib import Path

from auditor.intake import delimited, jsonfile, page, textfile
from auditor.intake.item import Item, Note
from auditor.values import Listing, Reject

Reader = Callable[[Path, Mapping[str, str]], Iterator[Item]]

KINDS: dict[str, Reader] = {
    ".csv": delimited.read,
    ".tsv": delimited.read,
    ".jsonl": jsonfile.read_lines,
    ".json": jsonfile.read,
    ".txt": textfile.read,
    ".html": page.read,
    ".htm": page.read,
}


def open_paths(
    paths: Sequence[Path], columns: Mapping[str, str] | None = None, *, leave_out: Collection[Path] = ()
) -> Iterator[Listing | Reject | Note]:
    """Streams what the files and folders hold; nothing that can't be read stops the rest.

    ``columns`` (field -> column name) goes before the known names; ``leave_out`` are files that a folder may hold and that
    are not input (the outputs of a scan). Ids are made unique, and that is told.
    """
    seen: dict[str, int] = {}
    for path in paths:
        for item in _items(path, columns or {}, {file.resolve() for file in leave_out}):
            if isinstance(item, Listing):
                unique = _unique(item.id, seen)
                if unique != item.id:
                    yield Note(item.source or str(path), f"the id {item.id!r} was used before; this one is called {unique!r}")
                    item = replace(item, id=unique)
            yield item


def _items(path: Path, columns: Mapping[str, str], leave_out: Collection[Path]) -> Iterator[Item]:
    if not path.is_dir():
        yield from _file(path, columns)
        return
    skipped: Counter[str] = Counter()
    closed: list[OSError] = []
    read = 0
    for file in _files(path, closed):
        if file.suffix.lower() not in KINDS:
            skipped[file.suffix.lower() or file.name] += 1
        elif file.resolve() not in leave_out:
            read += 1
            yield from _file(file, columns)
    if skipped:
        kinds = ", ".join(f"{count} {suffix}" for suffix, count in sorted(skipped.items()))
        yield Note(str(path), f"{skipped.total()} files of no known kind skipped ({kinds})")
    yield from (Reject(str(path), str(error.filename), f"could not be opened: {error.strerror}") for error in closed)
    if not read:
        yield Reject(str(path), "folder", f"holds no file of a known kind: expected {', '.join(KINDS)}")


def _files(folder: Path, closed: list[OSError]) -> Iterator[Path]:
    """All files below a folder, sorted; hidden ones and the side folders of saved pages ("page_files") are passed over.

    Folders that can't be entered are put into ``closed``.
    """
    for place, folders, files in os.walk(folder, onerror=closed.append):
        pages = {Path(name).stem for name in files if Path(name).suffix.lower() in (".html", ".htm")}
        side = {f"{stem}{tail}" for stem in pages for tail in ("_files", ".files", "-files")}
        folders[:] = sorted(name for name in folders if not name.startswith(".") and name not in side)
        yield from (Path(place) / name for name in sorted(files) if not name.startswith("."))


def _file(path: Path, columns: Mapping[str, str]) -> Iterator[Item]:
    reader = KINDS.get(path.suffix.lower())
    if not path.exists():
        yield Reject(str(path), "file", "no such file or folder")
    elif reader is None:
        yield Reject(str(path), "file", f"{path.suffix or 'no suffix'} is no known kind: expected {', '.join(KINDS)}")
    else:
        try:
            yield from reader(path, columns)
        except OSError as error:
            yield Reject(str(path), "file", f"could not be opened: {error.strerror or error}")
        except ValueError as error:
            yield Reject(str(path), "file", str(error))


def _unique(name: str, seen: dict[str, int]) -> str:
    """The name, or the name with the next free number behind it."""
    unique, count = name, seen.get(name, 0)
    while unique in seen:
        count += 1
        unique = f"{name}-{count}"
    seen[name] = max(count, 1)
    seen.setdefault(unique, 1)
    return unique


def open_one(file: str) -> Iterator[Item]:
    """What one file holds, or standard input for ``-``: by its suffix, else a page or plain text by how it begins."""
    path = Path(file)
    if file != "-" and path.suffix.lower() in KINDS:
        yield from _file(path, {})
        return
    try:
        data = sys.stdin.buffer.read() if file == "-" else path.read_bytes()
        yield from of_bytes(data, "standard input" if file == "-" else file, "stdin" if file == "-" else path.stem)
    except OSError as error:
        yield Reject(file, "file", f"could not be opened: {error.strerror or error}")
    except ValueError as error:
        yield Reject(file, "file", str(error))


def of_bytes(data: bytes, source: str, name: str) -> Iterator[Item]:
    """A listing given as bytes, as a page or as plain text. Raises ValueError where there is neither."""
    if re.match(rb"(?:\xef\xbb\xbf)?\s*<(?:!doctype\s+html|html|head|body|!--)", data[:1024], re.I):
        yield from page.of_bytes(data, source, name)
    else:
        yield from textfile.of_bytes(data, source, name)
