"""Chunks audited by this process or by several, the parts handed on in the order of the chunks."""

from __future__ import annotations

import multiprocessing
import os
import signal
import threading
from collections import deque
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool

from auditor.knowledge.shelf import Shelf
from auditor.reports.tally import Concern
from auditor.scan.chunk import Chunk, Wanted, audit_chunk
from auditor.scan.errors import ScanFailed

_AHEAD = 3  # chunks a worker that are read or done before their turn: enough to keep all busy, little to hold

_shelf: Shelf
_wanted: Wanted


def audited(
    chunks: Iterable[Chunk], shelf: Shelf, wanted: Wanted, workers: int, floor: Callable[[], Concern | None]
) -> Iterator[tuple[Chunk, bytes]]:
    """Each chunk with its part as bytes, in order; ``floor`` is asked before each.

    Raises ScanFailed where a worker is ended from outside.
    """
    if workers == 1:
        yield from ((chunk, audit_chunk(chunk.items, shelf, wanted, floor()).to_bytes()) for chunk in chunks)
        return
    pool = ProcessPoolExecutor(workers, multiprocessing.get_context("spawn"), _begin, (wanted,))
    waiting: deque[tuple[Chunk, Future[bytes]]] = deque()
    try:
        for chunk in chunks:
            waiting.append((chunk, pool.submit(_audit, chunk, floor())))
            if len(waiting) == _AHEAD * workers:
                first, future = waiting.popleft()
                yield first, future.result()
        while waiting:
            first, future = waiting.popleft()
            yield first, future.result()
    except BrokenProcessPool as error:
        raise ScanFailed("A worker process was ended from outside") from error
    finally:
        pool.shutdown(wait=False, cancel_futures=True)


def _begin(wanted: Wanted) -> None:
    """In a worker: ready to audit; Ctrl-C is for the process that hands out the chunks, and when that is gone, so are we."""
    global _shelf, _wanted
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    threading.Thread(target=_end_with_parent, daemon=True).start()
    _shelf, _wanted = wanted.shelf(), wanted


def _end_with_parent() -> None:
    parent = multiprocessing.parent_process()
    if parent is not None:
        parent.join()
        os._exit(1)


def _audit(chunk: Chunk, floor: Concern | None) -> bytes:
    return audit_chunk(chunk.items, _shelf, _wanted, floor).to_bytes()
