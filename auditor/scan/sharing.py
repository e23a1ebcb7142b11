"""Words that also stand in other listings of a scan: prints are taken with each chunk and compared when all are there."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path
from typing import Any

import numpy as np

from auditor.reports import records
from auditor.reports.run import Result
from auditor.samewords import Others, Print, find, print_of

_HEADS = ("id", "source", "seller", "share", "note")
_MOST_NAMED = 5

Name = tuple[str, str | None, str | None]


def piece(results: Sequence[Result]) -> bytes:
    """The prints of some listings, and what they are called: a line of JSON, then the numbers of all prints."""
    prints = [print_of(listing.text, verdict.work or listing.title) for listing, verdict in results]
    head = {
        "names": [(listing.id, listing.source, listing.seller) for listing, _ in results],
        "sizes": [len(each.hashes) for each in prints],
        "subjects": [each.subject for each in prints],
    }
    hashes = np.concatenate([np.empty(0, np.uint64), *(each.hashes for each in prints)])
    return json.dumps(head).encode() + b"\n" + hashes.tobytes()


def write(path: Path, pieces: Callable[[], Iterator[bytes]]) -> int:
    """Writes the file and returns how many listings it tells of. ``pieces`` begins anew each time. Raises OSError."""
    found = find(each for data in pieces() for each in _prints(data))
    wanted = {number for number, others in found.items() for number in (number, *others.numbers[:_MOST_NAMED])}
    names = {number: name for number, name in enumerate(name for data in pieces() for name in _names(data)) if number in wanted}
    with records.writing(path, _HEADS) as add:
        for number, others in found.items():
            add([_told(names, number, others)])
    return len(found)


def _told(names: dict[int, Name], number: int, others: Others) -> dict[str, Any]:
    shown = [f"{name} ({seller})" if seller else name for name, _, seller in map(names.__getitem__, others.numbers[:_MOST_NAMED])]
    more = len(others.numbers) - len(shown)
    note = f"these words also stand in {', '.join(shown)}{f' and {more} more' if more else ''}: they may describe another copy"
    return dict(zip(_HEADS, (*names[number], round(others.share, 2), note), strict=True))


def _prints(data: bytes) -> Iterator[Print]:
    line, _, rest = data.partition(b"\n")
    head = json.loads(line)
    hashes = np.frombuffer(rest, np.uint64)
    at = 0
    for size, subject in zip(head["sizes"], head["subjects"], strict=True):
        yield Print(hashes[at : at + size], subject)
        at += size


def _names(data: bytes) -> Iterable[Name]:
    return [tuple(name) for name in json.loads(data.partition(b"\n")[0])["names"]]
