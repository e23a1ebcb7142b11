"""Which characters a file's bytes stand for: its byte order mark, UTF-8 where valid, UTF-16 by its zeros, else Windows-1252."""

from __future__ import annotations

import codecs
import io
import re
from typing import BinaryIO, NamedTuple, TextIO

from auditor.intake.file import File

_MARKS = (
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
_HEAD = 4096


def _as_windows_1252(error: UnicodeError) -> tuple[str, int]:
    if not isinstance(error, UnicodeDecodeError):
        raise error
    return error.object[error.start : error.end].decode("cp1252", "replace"), error.end


# Byte by byte, so that a UTF-8 file with a few stray Windows characters keeps its good ones.
codecs.register_error("windows-1252", _as_windows_1252)


class Encoding(NamedTuple):
    """How to decode a file; ``said`` is what to tell about it, empty for plain UTF-8."""

    name: str
    errors: str = "strict"
    said: str = ""

    def text(self, stream: BinaryIO) -> TextIO:
        """The stream as text, line ends as they are."""
        return io.TextIOWrapper(stream, encoding=self.name, errors=self.errors, newline="")

    def decode(self, data: bytes) -> str:
        return data.decode(self.name, self.errors)


def detect(file: File) -> Encoding:
    """The encoding of a file, read once in pieces. Raises ValueError for binary data, OSError when it can't be read."""
    with file.peek() as stream:
        return _detect(stream)


def decode(data: bytes) -> tuple[str, str]:
    """Text and what to tell about its encoding. Raises ValueError for binary data."""
    encoding = _detect(io.BytesIO(data))
    return encoding.decode(data), encoding.said


def decode_page(data: bytes) -> tuple[str, str]:
    """As ``decode``, but bytes that aren't UTF-8 are read in the charset that the page declares, where it is a known one."""
    encoding = _detect(io.BytesIO(data))
    declared = re.search(rb"<meta[^>]+charset\s*=\s*[\"']?\s*([\w.:-]+)", data[:_HEAD], re.I)
    if encoding.errors == "windows-1252" and declared:
        name = declared[1].decode("ascii", "replace").lower()
        # Browsers read a declared Latin-1 as Windows-1252 (WHATWG Encoding standard), and "UTF-8" was just disproved.
        if name not in ("utf-8", "utf8", "iso-8859-1", "latin1", "us-ascii"):
            try:
                return data.decode(name, "replace"), f"encoding {name}, as the page declares"
            except LookupError:
                pass
    return encoding.decode(data), encoding.said


def _detect(stream: BinaryIO) -> Encoding:
    head = stream.read(_HEAD)
    for mark, name in _MARKS:
        if head.startswith(mark):
            return Encoding(
                name, "replace", f"encoding {name.removesuffix('-sig')}, by its byte order mark" if name != "utf-8-sig" else ""
            )
    if b"\0" in head:
        # Latin letters in UTF-16 have a zero in each second byte.
        even, odd, half = head[::2].count(0), head[1::2].count(0), len(head) / 2
        if odd > 0.4 * half and even < 0.1 * half:
            return Encoding("utf-16-le", "replace", "encoding utf-16, told by its zero bytes")
        if even > 0.4 * half and odd < 0.1 * half:
            return Encoding("utf-16-be", "replace", "encoding utf-16, told by its zero bytes")
        raise ValueError("holds binary data, not text")
    decoder = codecs.getincrementaldecoder("utf-8")()
    piece = head
    try:
        while piece:
            decoder.decode(piece)
            piece = stream.read(1 << 20)
        decoder.decode(b"", final=True)
    except UnicodeDecodeError:
        return Encoding("utf-8", "windows-1252", "encoding windows-1252 where it is no valid utf-8")
    return Encoding("utf-8")
