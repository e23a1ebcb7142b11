"""The journal of a scan: its plan, then the part of each chunk in order. What is written in it needn't be done again.

The first line is the plan in JSON. Behind it stand the parts, each with its length and checksum before it, so that the end of
a journal that was cut short by a kill, a full disk or a power cut is known for what it is.
"""

from __future__ import annotations

import json
import struct
import zlib
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any, BinaryIO

from auditor.scan.chunk import Part
from auditor.whole import held

_HEAD = struct.Struct("<QI")


class Journal:
    """Open by ``opened``; held against other processes as long as it is. ``plan`` is None for a new one."""

    def __init__(self, stream: BinaryIO, most: int) -> None:
        self._stream, self._most = stream, most
        stream.seek(0)
        self.plan: Mapping[str, Any] | None = _plan(stream.readline())
        self._start = stream.tell()

    def begin(self, plan: Mapping[str, Any]) -> None:
        """Empties it, for a scan of this plan."""
        self._stream.seek(0)
        self._stream.truncate()
        self._stream.write(json.dumps(plan).encode() + b"\n")
        self._stream.flush()
        self.plan, self._start = plan, self._stream.tell()

    def parts(self) -> Iterator[Part]:
        """The parts from the first on; then stands at the end, where ``append`` goes on, behind the last part that is whole."""
        self._stream.seek(self._start)
        while True:
            at = self._stream.tell()
            head = self._stream.read(_HEAD.size)
            if len(head) == _HEAD.size:
                size, check = _HEAD.unpack(head)
                data = self._stream.read(size)
                if len(data) == size and zlib.crc32(data) == check:
                    yield Part.of(data, self._most)
                    continue
            self._stream.seek(at)
            self._stream.truncate()
            return

    def append(self, part: bytes) -> None:
        """Raises OSError when the disk is full; the parts before it stay good."""
        self._stream.write(_HEAD.pack(len(part), zlib.crc32(part)))
        self._stream.write(part)
        self._stream.flush()


@contextmanager
def opened(path: Path, most: int) -> Iterator[Journal]:
    """Yields the journal at ``path``, the one that is there or a new one. ``most`` as of the parts' tallies.

    Raises OSError when it can't be opened, BlockingIOError among them while another scan has it.
    """
    with held(path, keep=True) as stream:
        yield Journal(stream, most)


def _plan(line: bytes) -> Mapping[str, Any] | None:
    try:
        plan = json.loads(line)
    except ValueError:
        return None
    return plan if isinstance(plan, dict) and line.endswith(b"\n") else None
