"""Which descriptions share their words, among any number: hashes go to files by their value, and each file is looked at alone."""

from __future__ import annotations

import tempfile
from array import array
from collections.abc import Iterable, Iterator, Sequence
from contextlib import ExitStack
from typing import Any, BinaryIO, NamedTuple

import numpy as np
import numpy.typing as npt

from auditor.samewords.prints import Print

MOST_LISTINGS = 50  # words in more listings than this are boilerplate,
MOST_SUBJECTS = 3  # and so are those in listings about more books than this
FEWEST = 5  # hashes in common, some 25 words; fewer are chance or a set phrase
SHARE = 0.5  # of a description's own words, those that aren't boilerplate, from which on they are the same words
_FILES = 64

_ROW = np.dtype([("hash", np.uint64), ("number", np.uint32), ("subject", np.uint32)])


class Others(NamedTuple):
    """``numbers`` of the listings where the words also stand, those that share most first; ``share`` of the words, 0 to 1."""

    numbers: tuple[int, ...]
    share: float


def find(prints: Iterable[Print]) -> dict[int, Others]:
    """The listings whose words also stand in others, by their number in the order given.

    Memory grows by a few bytes a listing; the rest stands in temporary files, some 350 bytes a listing of 100 words.
    """
    own = array("H")
    with ExitStack() as stack:
        rows, pairs = ([stack.enter_context(tempfile.TemporaryFile()) for _ in range(_FILES)] for _ in range(2))
        for number, each in enumerate(prints):
            own.append(min(len(each.hashes), 0xFFFF))
            _put(rows, _rows(each, number), each.hashes >> np.uint64(58))
        left = np.array(own, np.int64)
        for file in rows:
            shared, boilerplate = _shared(_all(file, _ROW))
            np.subtract.at(left, boilerplate, 1)
            _put(pairs, shared, (shared[:, 0] % _FILES).astype(np.uint64))
        return dict(sorted(found for file in pairs for found in _found(_all(file, np.dtype((np.uint32, 2))), left)))


def _rows(each: Print, number: int) -> npt.NDArray[Any]:
    rows = np.empty(len(each.hashes), _ROW)
    rows["hash"], rows["number"], rows["subject"] = each.hashes, number, each.subject
    return rows


def _put(files: Sequence[BinaryIO], rows: npt.NDArray[Any], places: npt.NDArray[np.uint64]) -> None:
    """Each row to the file at its place."""
    order = np.argsort(places, kind="stable")
    ends = np.searchsorted(places[order], np.arange(_FILES + 1, dtype=np.uint64))
    for place in np.flatnonzero(np.diff(ends)):
        files[int(place)].write(rows[order[ends[place] : ends[place + 1]]].tobytes())


def _all(file: BinaryIO, kind: np.dtype[Any]) -> npt.NDArray[Any]:
    file.seek(0)
    return np.frombuffer(file.read(), kind)


def _shared(rows: npt.NDArray[Any]) -> tuple[npt.NDArray[np.uint32], npt.NDArray[np.uint32]]:
    """(pairs of listings both ways, one for each hash that they share; listings, one for each hash that is boilerplate)."""
    rows = rows[np.argsort(rows["hash"], kind="stable")]
    starts = np.flatnonzero(np.r_[True, rows["hash"][1:] != rows["hash"][:-1]]) if len(rows) else np.empty(0, np.int64)
    ends = np.r_[starts[1:], len(rows)]
    pairs = [np.empty((0, 2), np.uint32)]
    boilerplate = [np.empty(0, np.uint32)]
    for start, end in zip(starts[ends - starts > 1], ends[ends - starts > 1], strict=True):
        numbers = rows["number"][start:end]
        subjects = np.unique(rows["subject"][start:end])
        if len(numbers) > MOST_LISTINGS or np.count_nonzero(subjects) > MOST_SUBJECTS:
            boilerplate.append(numbers)
        else:
            one, other = np.nonzero(~np.eye(len(numbers), dtype=bool))
            pairs.append(np.stack([numbers[one], numbers[other]], axis=1))
    return np.concatenate(pairs), np.concatenate(boilerplate)


def _found(pairs: npt.NDArray[Any], left: npt.NDArray[np.int64]) -> Iterator[tuple[int, Others]]:
    told, counts = np.unique(pairs.reshape(-1, 2), axis=0, return_counts=True)
    enough = (counts >= FEWEST) & (counts >= SHARE * left[told[:, 0]])
    by: dict[int, list[tuple[int, int]]] = {}
    for (number, other), count in zip(told[enough].tolist(), counts[enough].tolist(), strict=True):
        by.setdefault(number, []).append((-count, other))
    for number, others in by.items():
        others.sort()
        yield number, Others(tuple(other for _, other in others), min(-others[0][0] / int(left[number]), 1.0))
