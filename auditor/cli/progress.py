"""How far a scan is, on standard error: a bar with rate and time left on a terminal, nothing but what must be told elsewhere."""

from __future__ import annotations

import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rich.progress import Progress


class Telling:
    """``total`` is the bytes to read. ``line`` tells something; ``done`` counts listings, and bytes read till now."""

    def __init__(self, bar: Progress | None) -> None:
        self._bar, self._began = bar, time.monotonic()
        self._task = bar.add_task("", total=None, listings=0, rate="") if bar else None
        self._listings = self._taken_up = 0

    def total(self, size: int) -> None:
        if self._bar and self._task is not None:
            self._bar.update(self._task, total=size or None)

    def line(self, words: str) -> None:
        if self._bar:
            self._bar.console.print(words)
        else:
            print(words, file=sys.stderr)

    def done(self, listings: int, read_to: int) -> None:
        """``read_to`` 0: they were done before this run."""
        self._listings += listings
        if not read_to:
            self._taken_up, self._began = self._listings, time.monotonic()
        if self._bar and self._task is not None:
            self._bar.update(self._task, completed=read_to, listings=self._listings, rate=self._rate())

    def _rate(self) -> str:
        took = time.monotonic() - self._began
        return f"{(self._listings - self._taken_up) / took:,.0f} a second" if took > 1 else ""

    def end(self) -> None:
        """A line of summary, where there is a terminal to read it."""
        if self._bar:
            took = time.monotonic() - self._began
            self._bar.console.print(f"{self._listings:,} listings read in {took:,.0f} s {self._rate()}".rstrip())


@contextmanager
def telling() -> Iterator[Telling]:
    """NO_COLOR is respected, as rich does."""
    if not sys.stderr.isatty():
        yield Telling(None)
        return
    from rich.console import Console
    from rich.progress import BarColumn, Progress, SpinnerColumn, TextColumn, TimeRemainingColumn

    screen = Console(stderr=True, highlight=False, markup=False, emoji=False)
    columns = (
        SpinnerColumn(),
        TextColumn("{task.fields[listings]:,} listings read"),
        BarColumn(),
        TextColumn("{task.fields[rate]}"),
        TimeRemainingColumn(),
    )
    with Progress(*columns, console=screen, transient=True) as bar:
        told = Telling(bar)
        yield told
        told.end()
