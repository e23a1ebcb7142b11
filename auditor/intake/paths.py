"""Paths in, items out: each kind of input is one function, named in one table by suffix."""

from __future__ import annotations

import os
import re
import sys
from collections import Counter
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from pathlib import Path
from typing import NamedTuple

from auditor.intake import delimited, jsonfile, mail, packed, page, parquet, sheets, textfile
from auditor.intake.file import File, told
from auditor.intake.item import Item, Note
from auditor.intake.longest import cut
from auditor.intake.unique import uniquely_named
from auditor.values import Reject


class Kind(NamedTuple):
    """How a file of a kind is read; ``single``: it is about one listing, or the few of a page."""

    read: Callable[[File, Mapping[str, str]], Iterator[Item]]
    single: bool = False


KINDS: dict[str, Kind] = {
    ".csv": Kind(delimited.read),
    ".tsv": Kind(delimited.read),
    ".jsonl": Kind(jsonfile.read_lines),
    ".json": Kind(jsonfile.read),
    ".parquet": Kind(parquet.read),
    ".xlsx": Kind(sheets.read),
    ".txt": Kind(textfile.read, single=True),
    ".html": Kind(page.read, single=True),
    ".htm": Kind(page.read, single=True),
    ".mhtml": Kind(mail.read, single=True),
    ".mht": Kind(mail.read, single=True),
    ".eml": Kind(mail.read, single=True),
}
KNOWN = (*KINDS, *packed.SUFFIXES)


def open_paths(
    paths: Sequence[Path], columns: Mapping[str, str] | None = None, *, leave_out: Collection[Path] = ()
) -> Iterator[Item]:
    """Streams what the files and folders hold; nothing that can't be read stops the rest.

    ``columns`` (field -> column name) goes before the known names; ``leave_out`` are files that a folder may hold and that
    are not input (the outputs of a scan). Ids are made unique within each file, and that is told.
    """
    for piece in open_pieces(paths, columns, leave_out=leave_out):
        yield from read(piece, columns or {}) if isinstance(piece, File) else (piece,)


def open_pieces(
    paths: Sequence[Path],
    columns: Mapping[str, str] | None = None,
    *,
    leave_out: Collection[Path] = (),
    count: Callable[[int], None] | None = None,
) -> Iterator[Item | File]:
    """As ``open_paths``, but a file about a single listing is handed out unread, for ``read`` to read where it is wanted.

    ``count`` is told how many bytes of the paths were read, or handed out.
    """
    left_out = {os.path.realpath(file) for file in leave_out}
    for path in paths:
        for found in find(path, left_out):
            yield from _opened(found, columns or {}, count) if isinstance(found, Path) else (found,)


def measure(paths: Sequence[Path], leave_out: Collection[Path] = ()) -> Iterator[tuple[str, int, int]]:
    """(name, bytes, time of the last change in nanoseconds) of each file that would be read, without opening it."""
    left_out = {os.path.realpath(file) for file in leave_out}
    for path in paths:
        for found in find(path, left_out):
            if isinstance(found, Path) and found.exists():
                facts = found.stat()
                yield told(found), facts.st_size, facts.st_mtime_ns


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """What one file of a known kind holds. A fault of the file is a reject, after what was read before it."""
    try:
        yield from uniquely_named(cut(KINDS[file.suffix].read(file, columns)))
    except OSError as error:
        yield Reject(file.name, "file", f"could not be opened: {error.strerror or error}")
    except ValueError as error:
        yield Reject(file.name, "file", str(error))


def find(path: Path, left_out: Collection[str] = ()) -> Iterator[Path | Note | Reject]:
    """The files of a path that are of a known kind, and what is to be told of the others."""
    if not path.is_dir():
        yield path
        return
    skipped: Counter[str] = Counter()
    closed: list[OSError] = []
    read = 0
    for file in _files(path, closed):
        if file.suffix.lower() not in KNOWN:
            skipped[file.suffix.lower() or file.name] += 1
        elif os.path.realpath(file) not in left_out:
            read += 1
            yield file
    if skipped:
        yield Note(told(path), _skipped(skipped))
    yield from (Reject(told(path), told(error.filename), f"could not be opened: {error.strerror}") for error in closed)
    if not read:
        yield Reject(told(path), "folder", f"holds no file of a known kind: expected {', '.join(KNOWN)}")


def _files(folder: Path, closed: list[OSError]) -> Iterator[Path]:
    """All files below a folder, sorted; hidden ones and the side folders of saved pages ("page_files") are passed over.

    Folders that can't be entered are put into ``closed``.
    """
    for place, folders, files in os.walk(folder, onerror=closed.append):
        pages = {Path(name).stem for name in files if Path(name).suffix.lower() in (".html", ".htm")}
        side = {f"{stem}{tail}" for stem in pages for tail in ("_files", ".files", "-files")}
        folders[:] = sorted(name for name in folders if not name.startswith(".") and name not in side)
        yield from (Path(place) / name for name in sorted(files) if not name.startswith("."))


def _opened(path: Path, columns: Mapping[str, str], count: Callable[[int], None] | None = None) -> Iterator[Item | File]:
    """What one file, plain or packed, holds; what is packed and of no known kind is counted."""
    if not path.is_file():
        # A pipe or a device would keep a reader waiting for ever.
        reason = "is neither a file nor a folder: not read" if path.exists() else "no such file or folder"
        yield Reject(told(path), "file", reason)
        return
    skipped: Counter[str] = Counter()
    read_any = False
    try:
        for file in packed.unpacked(File(path)):
            kind = KINDS.get(file.suffix)
            if kind is None:
                skipped[file.suffix or file.name] += 1
                continue
            read_any = True
            if not kind.single:
                yield from read(File(path, file.member, file.zipped, count), columns)
            else:
                yield file
                if count and file.member is None:
                    count(path.stat().st_size)
    except OSError as error:
        yield Reject(told(path), "file", f"could not be opened: {error.strerror or error}")
    except ValueError as error:
        yield Reject(told(path), "file", str(error))
    else:
        if not read_any:
            suffix = ", ".join(skipped) or "an empty archive"
            yield Reject(told(path), "file", f"{suffix} is no known kind: expected {', '.join(KNOWN)}")
        elif skipped:
            yield Note(told(path), _skipped(skipped))


def _skipped(skipped: Counter[str]) -> str:
    kinds = ", ".join(f"{count} {suffix}" for suffix, count in sorted(skipped.items()))
    return f"{skipped.total()} files of no known kind skipped ({kinds})"


def open_one(file: str) -> Iterator[Item]:
    """What one file holds, or standard input for ``-``: by its suffix, else a page or plain text by how it begins."""
    path = Path(file)
    if file != "-" and path.suffix.lower() in KNOWN:
        yield from open_paths([path])
        return
    source = "standard input" if file == "-" else file
    try:
        data = sys.stdin.buffer.read() if file == "-" else path.read_bytes()
        yield from cut(of_bytes(data, source, "stdin" if file == "-" else path.stem))
    except OSError as error:
        yield Reject(source, "file", f"could not be opened: {error.strerror or error}")
    except ValueError as error:
        yield Reject(source, "file", str(error))


def of_bytes(data: bytes, source: str, name: str) -> Iterator[Item]:
    """A listing given as bytes, as a page or as plain text. Raises ValueError where there is neither."""
    if re.match(rb"(?:\xef\xbb\xbf)?\s*<(?:!doctype\s+html|html|head|body|!--)", data[:1024], re.I):
        yield from page.of_bytes(data, source, name)
    else:
        yield from textfile.of_bytes(data, source, name)
