"""How far a scan is, on standard error."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager


@contextmanager
def progress() -> Iterator[Callable[[str | None], None]]:
    """Yields a function that tells a line on standard error, or (None) counts one listing where a terminal shows the count."""
    if not sys.stderr.isatty():
        yield lambda line: print(line, file=sys.stderr) if line else None
        return
    from rich.console import Console
    from rich.progress import Progress, SpinnerColumn, TextColumn, TimeElapsedColumn

    screen = Console(stderr=True, highlight=False, markup=False, emoji=False)
    shown = TextColumn("{task.completed:.0f} listings read")
    with Progress(SpinnerColumn(), shown, TimeElapsedColumn(), console=screen, transient=True) as progress:
        task = progress.add_task("", total=None)
        yield lambda line: screen.print(line) if line else progress.advance(task)
