"""What the commands of ``auditor watch`` share."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import line_of, open_shelf, wrong
from auditor.values import Reject

if TYPE_CHECKING:
    from rich.console import Console

    from auditor.knowledge.shelf import Shelf
    from auditor.watchlist.keeping import Kept
    from auditor.watchlist.order import Row
    from auditor.watchlist.store import Store
    from auditor.watchlist.values import Watched

watch_app = typer.Typer(no_args_is_help=True, help="Keep listings on a watchlist: what changes, what was asked, what you decide.")
app.add_typer(watch_app, name="watch")

File = Annotated[Path | None, typer.Option("--file", metavar="FILE", help="The watchlist; else the one in your data folder.")]
Key = Annotated[int, typer.Argument(metavar="NUMBER", help="The listing's number on the list.")]


def _day(words: str) -> datetime:
    try:
        return datetime.strptime(words, "%Y-%m-%d")
    except ValueError:
        wrong(f"{words!r} is no day; expected one such as 2025-09-02")


On = Annotated[
    datetime | None, typer.Option("--on", metavar="DAY", parser=_day, help="The day it was, if not today: 2025-09-02.")
]


@contextmanager
def open_list(file: Path | None) -> Iterator[Store]:
    from auditor.watchlist.store import Unusable, default_path, opened

    try:
        with opened(file or default_path()) as store:
            yield store
    except Unusable as error:
        wrong(str(error))


def rows_of(points: list[Path] | None, file: Path | None) -> tuple[list[Row], Shelf]:
    """The whole list, in the order it was made."""
    from auditor.watchlist.elsewhere import elsewhere
    from auditor.watchlist.order import row

    shelf, _ = open_shelf(points)
    with open_list(file) as store:
        others = elsewhere(store)
        return [row(each, shelf.sets, others) for each in store.all()], shelf


def get(store: Store, key: int) -> Watched:
    found = store.get(key)
    if found is None:
        wrong(f"there is no #{key} on the list: auditor watch list tells the numbers")
    return found


def moment_of(on: datetime | None) -> str:
    from auditor.watchlist.values import moment

    if on and on.date() > datetime.now().date():
        wrong(f"--on {on:%Y-%m-%d} is still to come")
    return moment(on.date() if on else None)


def tell(result: Kept | Reject) -> bool:
    """Tells what became of a save; False where it could not be kept."""
    if isinstance(result, Reject):
        typer.echo(line_of(result), err=True)
        return False
    from auditor.watchlist import telling

    telling.what_came(result, console())
    return True


def console(width: int = 100) -> Console:
    from auditor.reports import screen

    return screen.console(piped_width=width)


def say(words: str) -> None:
    from rich.text import Text

    from auditor.reports.screen import indented, safe

    indented(console(), Text(safe(words)), 0)
