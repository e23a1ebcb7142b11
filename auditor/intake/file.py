"""A file that may hold listings: where its bytes are, plain or packed, and what it is called when people are told of it."""

from __future__ import annotations

import gzip
import io
import shutil
import tempfile
import zipfile
import zlib
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from functools import lru_cache
from pathlib import Path, PurePosixPath
from typing import BinaryIO, cast

LARGEST_WHOLE = 64 << 20  # bytes; files that must be held in memory whole are read up to this size
LARGEST_PACKED = 64 << 20  # bytes; a packed file may always unpack to as much,
MOST_TIMES = 200  # and beyond it to so many times its own size: tables of listings pack to a fifth, bombs to a thousandth


@dataclass(frozen=True, slots=True)
class File:
    """``member`` is its name inside a .zip, ``zipped`` says that it is a .gz. ``count`` is told of each read."""

    path: Path
    member: str | None = None
    zipped: bool = False
    count: Callable[[int], None] | None = field(default=None, compare=False, repr=False)

    @property
    def name(self) -> str:
        """As people are told: ``shop.zip/pages/1.html``."""
        return told(self.path) if self.member is None else f"{told(self.path)}/{told(self.member)}"

    @property
    def _inner(self) -> PurePosixPath:
        path = PurePosixPath(self.path.name if self.member is None else self.member)
        return path.with_suffix("") if self.zipped else path

    @property
    def stem(self) -> str:
        """What its listings are named by where they bring no id: ``shop`` of ``shop.csv.gz``."""
        return told(self._inner.stem)

    @property
    def suffix(self) -> str:
        """What kind it is, lower case: ``.csv`` of ``shop.CSV.gz``."""
        return self._inner.suffix.lower()

    def peek(self) -> BinaryIO:
        """As ``open``, for a look that isn't counted."""
        return replace(self, count=None).open()

    def open(self) -> BinaryIO:
        """Its bytes, unpacked, from the start.

        Reading raises ValueError where a packed file is broken or unpacks beyond the limits above, OSError when it can't be read.
        """
        if self.member is not None:
            return _watched(_member(archive(self.path), self.member), lambda size: None)
        plain: BinaryIO = self.path.open("rb")
        if self.count is not None:
            plain = _watched(plain, self.count)
        if not self.zipped:
            return plain
        own = self.path.stat().st_size
        left = allowed(own)

        def seen(size: int) -> None:
            nonlocal left
            left -= size
            if left < 0:
                raise ValueError(beyond(own))

        return _watched(cast(BinaryIO, gzip.GzipFile(fileobj=plain)), seen, plain)

    def seekable(self) -> BinaryIO:
        """As ``open``, for formats that are read out of order: what is packed is unpacked to a temporary file first."""
        if self.member is None and not self.zipped:
            return self.open()
        unpacked = tempfile.TemporaryFile()  # noqa: SIM115  # the caller closes it
        with self.open() as stream:
            shutil.copyfileobj(stream, unpacked)
        unpacked.seek(0)
        return cast(BinaryIO, unpacked)

    def read(self) -> bytes:
        """All its bytes. Raises ValueError beyond ``LARGEST_WHOLE``, and as ``open``."""
        with self.open() as stream:
            data = stream.read(LARGEST_WHOLE + 1)
        if len(data) > LARGEST_WHOLE:
            raise ValueError(f"is larger than {LARGEST_WHOLE >> 20} MB: expected a page, a text, or a table as .csv or .jsonl")
        return data


def told(path: Path | str) -> str:
    """A path for people: bytes of a name that are no text, which Python keeps as lone surrogates, become question marks."""
    return str(path).encode("utf-8", "replace").decode()


@lru_cache(maxsize=1)  # the pages of one archive are opened one after the other
def archive(path: Path) -> zipfile.ZipFile:
    """A .zip, its directory read. Raises ValueError where it is broken or would unpack beyond the limits above."""
    try:
        found = zipfile.ZipFile(path)
    except zipfile.BadZipFile as error:
        raise ValueError(f"is no sound .zip: {error}") from error
    # zipfile never yields more of a member than its directory says, so the directory is enough to go by.
    try:
        check(found, path.stat().st_size)
    except ValueError:
        found.close()
        raise
    return found


def check(zipped: zipfile.ZipFile, size: int) -> None:
    """Raises ValueError for an archive of ``size`` bytes that would unpack beyond the limits above."""
    if sum(info.file_size for info in zipped.infolist()) > allowed(size):
        raise ValueError(beyond(size))


def _member(zipped: zipfile.ZipFile, name: str) -> BinaryIO:
    """Raises ValueError for a member under a password, or packed in one of the rarer ways, whose output zipfile can't bound."""
    info = zipped.getinfo(name)
    if info.flag_bits & 1:
        raise ValueError("is under a password")
    if info.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
        raise ValueError("is packed in a way that is not read: expected deflate, as .zip files mostly are")
    try:
        return cast(BinaryIO, zipped.open(info))
    except zipfile.BadZipFile as error:
        raise ValueError(f"is packed and broken: {error}") from error


def _watched(stream: BinaryIO, seen: Callable[[int], None], below: BinaryIO | None = None) -> BinaryIO:
    return cast(BinaryIO, io.BufferedReader(_Watched(stream, seen, below), 1 << 16))


def allowed(size: int) -> int:
    """To how many bytes a packed file of ``size`` may unpack."""
    return max(LARGEST_PACKED, MOST_TIMES * size)


def beyond(size: int) -> str:
    return (
        f"would unpack to more than {allowed(size) >> 20} MB, {MOST_TIMES} times its size, which tables and pages don't: not read"
    )


class _Watched(io.RawIOBase):
    """A stream that tells how much of it was read, and whose faults of packing are ValueErrors in words for people."""

    def __init__(self, stream: BinaryIO, seen: Callable[[int], None], below: BinaryIO | None = None) -> None:
        self._stream, self._seen, self._below = stream, seen, below

    def readable(self) -> bool:
        return True

    def seekable(self) -> bool:
        return self._below is None and self._stream.seekable()

    def seek(self, offset: int, whence: int = 0) -> int:
        return self._stream.seek(offset, whence)

    def readinto(self, buffer: bytearray) -> int:  # type: ignore[override]  # the stub's own buffer type is not public
        try:
            data = self._stream.read(len(buffer))
        except (EOFError, gzip.BadGzipFile, zipfile.BadZipFile, zlib.error) as error:
            raise ValueError(f"is packed and broken: {error}") from error
        buffer[: len(data)] = data
        self._seen(len(data))
        return len(data)

    def close(self) -> None:
        self._stream.close()
        if self._below is not None:
            self._below.close()
        super().close()
