"""Files that appear whole or not at all: written beside their place under a name of their own, then moved onto it."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

try:
    import fcntl
except ImportError:  # Windows, where a file that is open for writing can't be replaced anyway
    fcntl = None  # type: ignore[assignment]


@contextmanager
def whole(path: Path) -> Iterator[BinaryIO]:
    """Yields a stream whose bytes become the file when the block ends well; else nothing is left and an old file stays.

    Raises OSError when it can't be written, BlockingIOError among them while another process writes the same file. A process
    that is killed leaves ``.NAME.part`` behind, which the next one takes over.
    """
    path = path.resolve()
    part = path.with_name(f".{path.name}.part")
    with held(part) as stream:
        try:
            yield stream
            stream.flush()
            os.fsync(stream.fileno())
            if fcntl is None:
                stream.close()
            part.chmod(path.stat().st_mode & 0o777 if path.exists() else 0o666 & ~_umask())
            part.replace(path)
        except BaseException:
            part.unlink(missing_ok=True)
            raise


@contextmanager
def held(path: Path, *, keep: bool = False) -> Iterator[BinaryIO]:
    """A file open for reading and writing that no other process holds; emptied, unless it is to ``keep`` what it has.

    Raises OSError when it can't be opened, BlockingIOError among them when it is held.
    """
    while True:
        with os.fdopen(os.open(path, os.O_RDWR | os.O_CREAT | getattr(os, "O_BINARY", 0), 0o600), "r+b") as stream:
            if fcntl is not None:
                try:
                    fcntl.flock(stream, fcntl.LOCK_EX | fcntl.LOCK_NB)
                except BlockingIOError as error:
                    raise BlockingIOError(error.errno, "another scan is writing it", str(path)) from error
            if not path.exists() or not os.path.samestat(os.fstat(stream.fileno()), path.stat()):
                continue  # its holder moved or removed it between our opening and our taking hold
            if not keep:
                stream.truncate()
            yield stream
            return


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
