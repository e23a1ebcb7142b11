"""Packed files: a .gz is the file in it, a .zip the files in it. What a packed file in a packed file holds is not read."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import PurePosixPath

from auditor.intake.file import File, archive

SUFFIXES = (".gz", ".zip")


def unpacked(file: File) -> Iterator[File]:
    """The file itself, or the files in it, by name. Raises ValueError and OSError as ``File.open``."""
    suffix = file.path.suffix.lower()
    if suffix == ".gz":
        yield replace(file, zipped=True)
    elif suffix == ".zip":
        for info in sorted(archive(file.path).infolist(), key=lambda info: info.filename):
            if not info.is_dir() and not _beside(PurePosixPath(info.filename)):
                yield replace(file, member=info.filename)
    else:
        yield file


def _beside(path: PurePosixPath) -> bool:
    """Hidden files, and those that systems put into archives beside what was meant."""
    return any(part.startswith(".") or part == "__MACOSX" for part in path.parts)
