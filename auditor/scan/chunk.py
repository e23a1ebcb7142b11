"""A chunk of what was read, and its audit: the one function that runs in this process, in workers and on a cluster alike."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from auditor.auditing import audit_on
from auditor.intake import File, Item, Note, read
from auditor.knowledge.shelf import Shelf
from auditor.reports import overview, page
from auditor.reports.files import KINDS, PAGE
from auditor.reports.run import Result
from auditor.reports.tally import Concern, Tally
from auditor.values import Listing, Reject

SIZE = 200  # listings: half a second's work, and what a kill may cost each worker
SAME_WORDS = "same words"  # the piece of a part that holds its prints
_CHARACTERS = 4_000_000  # and at most so many, so that a chunk of huge cells stays small


@dataclass(frozen=True, slots=True)
class Chunk:
    """``read_to`` is how many bytes of the input had been read when it was full."""

    items: tuple[Item | File, ...]
    read_to: int


@dataclass(frozen=True, slots=True)
class Wanted:
    """What a scan makes of its chunks. ``suffixes`` are the kinds of file wanted, ``points`` the user's own point sets."""

    suffixes: tuple[str, ...] = ()
    points: tuple[Path, ...] = ()
    authority: str | None = None
    columns: Mapping[str, str] = field(default_factory=dict)
    same_words: bool = False

    @property
    def most(self) -> int:
        """How many rows a tally keeps."""
        return page.MOST_ROWS if PAGE in self.suffixes else overview.MOST_ROWS

    def shelf(self) -> Shelf:
        """The point sets, as the authority has them."""
        shelf = Shelf.open(self.points)
        return shelf.by(self.authority) if self.authority else shelf


@dataclass(frozen=True, slots=True)
class Part:
    """What a chunk came to: its tally, what is to be told, and a piece of bytes for each kind of file."""

    tally: Tally
    told: tuple[Reject | Note, ...]
    pieces: Mapping[str, bytes]

    def to_bytes(self) -> bytes:
        """As bytes for ``of``: a line of JSON, then the pieces."""
        told = [
            ["reject", each.source, each.place, each.reason] if isinstance(each, Reject) else ["note", each.source, each.text]
            for each in self.told
        ]
        sizes = {suffix: len(piece) for suffix, piece in self.pieces.items()}
        head = json.dumps({"tally": self.tally.to_dict(), "told": told, "sizes": sizes})
        return b"\n".join([head.encode(), b"".join(self.pieces.values())])

    @classmethod
    def of(cls, data: bytes, most: int) -> Part:
        """The part that gave ``data``; ``most`` as of its tally."""
        line, _, rest = data.partition(b"\n")
        head = json.loads(line)
        told = tuple(Reject(*words) if kind == "reject" else Note(*words) for kind, *words in head["told"])
        pieces, at = {}, 0
        for suffix, size in head["sizes"].items():
            pieces[suffix] = rest[at : at + size]
            at += size
        return cls(Tally.of(head["tally"], most), told, pieces)


def chunks(items: Iterable[Item | File], read_to: Callable[[], int] = lambda: 0) -> Iterator[Chunk]:
    """What was read, in chunks: the same for the same input, whoever takes them."""
    taken: list[Item | File] = []
    characters = 0
    for item in items:
        taken.append(item)
        characters += len(item.text) if isinstance(item, Listing) else 0
        if len(taken) == SIZE or characters > _CHARACTERS:
            yield Chunk(tuple(taken), read_to())
            taken, characters = [], 0
    if taken:
        yield Chunk(tuple(taken), read_to())


def audit_chunk(items: Iterable[Item | File], shelf: Shelf, wanted: Wanted, floor: Concern | None = None) -> Part:
    """Audits the listings, those of unread files among them. ``floor`` as of a tally."""
    tally = Tally(wanted.most, shelf.sets if PAGE in wanted.suffixes else None, floor)
    results: list[Result] = []
    told: list[Reject | Note] = []
    for item in run(_read(items, wanted.columns), shelf):
        if isinstance(item, tuple):
            results.append(item)
            tally.add(*item)
            continue
        told.append(item)
        if isinstance(item, Reject):
            tally.reject(item)
    pieces = {suffix: KINDS[suffix].piece(results) for suffix in wanted.suffixes if suffix in KINDS}
    if wanted.same_words:
        from auditor.scan import sharing  # here, so that numpy is loaded where it is wanted only

        pieces[SAME_WORDS] = sharing.piece(results)
    return Part(tally, tuple(told), pieces)


def run(items: Iterable[Item], shelf: Shelf) -> Iterator[Result | Reject | Note]:
    """Each listing with its verdict; rejects and notes pass through. A listing whose audit fails is a reject, not the end."""
    for item in items:
        if isinstance(item, Listing):
            try:
                yield item, audit_on(shelf, item.text, item.title, item.asking)
            except Exception as error:  # one listing that trips a fault of ours must not cost the user the others
                reason = f"the audit itself failed ({type(error).__name__}: {error}): please report it"
                yield Reject(item.source or "listing", item.id, reason)
        else:
            yield item


def _read(items: Iterable[Item | File], columns: Mapping[str, str]) -> Iterator[Item]:
    for item in items:
        yield from read(item, columns) if isinstance(item, File) else (item,)
