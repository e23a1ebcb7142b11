"""A partition of a scan on a cluster: some files, audited chunk by chunk on one worker into part files of their own."""

from __future__ import annotations

import threading
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, chdir
from dataclasses import dataclass
from pathlib import Path

from auditor.intake import KINDS as INPUTS
from auditor.intake import Note, find, open_pieces
from auditor.knowledge.shelf import Shelf
from auditor.reports.tally import Tally
from auditor.scan.chunk import Part, Wanted, audit_chunk, chunks
from auditor.scan.filling import filling
from auditor.scan.shipment import Shipment
from auditor.values import Reject
from auditor.whole import whole

_PAGES = 500  # files about a single listing that make one partition

_alone = threading.Lock()  # the folder worked in, and what readers remember, are the process's, not a thread's
_unpacked: dict[str, tuple[Wanted, Shelf]] = {}


@dataclass(frozen=True, slots=True)
class Partition:
    """``said`` is what is to be told of the folders, behind what is told of the files."""

    paths: tuple[Path, ...]
    said: tuple[Note | Reject, ...] = ()


@dataclass(frozen=True, slots=True)
class Places:
    """Where the parts go: folders, by what a scan on one machine would call its file; ``base`` is the folder worked in."""

    base: Path
    outs: tuple[Path, ...]
    rejects: Path | None
    tallies: Path

    def done(self, number: int) -> Path:
        """The file that says, as the last one written, that a partition is done: its tally and what is to be told."""
        return self.tallies / f"{number:06}"


def partitions(paths: Sequence[Path]) -> Iterator[Partition]:
    """A table is a partition; pages and texts are taken together by the hundred, in their order."""
    pages: list[Path] = []
    for found in (found for path in paths for found in find(path)):
        kind = INPUTS.get(found.suffix.lower()) if isinstance(found, Path) else None
        if isinstance(found, Path) and kind is not None and kind.single:
            pages.append(found)
            if len(pages) < _PAGES:
                continue
        if pages:
            yield Partition(tuple(pages))
            pages = []
        if not isinstance(found, Path):
            yield Partition((), (found,))
        elif kind is None or not kind.single:
            yield Partition((found,))
    if pages:
        yield Partition(tuple(pages))


def audit_partition(number: int, partition: Partition, shipment: Shipment, places: Places) -> bytes:
    """On a worker: audits the partition into ``part-000007.csv`` and its like, and returns its tally as ``Part.of`` reads it.

    Done a second time, after a worker was lost, it writes the same files again.
    """
    with _alone, chdir(places.base), ExitStack() as stack:
        wanted, shelf = _ready(shipment)
        tally = Tally(wanted.most)
        told: list[Reject | Note] = []

        def file(folder: Path) -> Path:
            return folder / f"part-{number:06}{folder.suffix}"

        add = stack.enter_context(filling(map(file, places.outs), places.rejects and file(places.rejects)))
        items = (item for items in (open_pieces(partition.paths, wanted.columns), partition.said) for item in items)
        for chunk in chunks(items):
            part = audit_chunk(chunk.items, shelf, wanted, tally.floor)
            add(part)
            told += [each for each in part.told if isinstance(each, Note) or not places.rejects]
            tally.merge(part.tally)
    data = Part(tally, tuple(told), {}).to_bytes()
    with whole(places.base / places.done(number)) as stream:
        stream.write(data)
    return data


def _ready(shipment: Shipment) -> tuple[Wanted, Shelf]:
    key = f"{shipment.key} {shipment.wanted}"
    if key not in _unpacked:
        wanted = shipment.unpacked()
        _unpacked[key] = wanted, wanted.shelf()
    return _unpacked[key]
