"""A plain text file: one listing, its words untouched."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from auditor.intake.encoding import decode
from auditor.intake.file import File
from auditor.intake.item import Item, Note
from auditor.values import Listing


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields the listing. Raises ValueError for an empty or binary file, OSError when it can't be read."""
    yield from of_bytes(file.read(), file.name, file.stem)


def of_bytes(data: bytes, source: str, name: str, title: str | None = None) -> Iterator[Item]:
    """The listing of a text given as bytes; errors as for ``read``."""
    text, said = decode(data)
    if not text.strip():
        raise ValueError("is empty: expected the words of a listing")
    if said:
        yield Note(source, said)
    yield Listing(id=name, text=text, title=title, source=source)
