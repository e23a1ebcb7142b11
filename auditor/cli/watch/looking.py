"""Looking at the list: ``list``, ``sort``, ``show``, ``export``."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from auditor.cli.common import Points, open_shelf, outs_of, wrong
from auditor.cli.watch.common import File, Key, console, get, open_list, rows_of, watch_app

ORDERS = ("added", "standing", "missing", "contradiction", "overclaim", "asking", "work", "changed")


@watch_app.command("list", epilog="Example: auditor watch list")
def list_(points: Points = None, file: File = None) -> None:
    """Print the list in the order it was made."""
    _print_sorted("added", points, file)


@watch_app.command(epilog="Example: auditor watch sort asking")
def sort(
    by: Annotated[str, typer.Argument(metavar="|".join(ORDERS), help="What to sort by.")],
    points: Points = None,
    file: File = None,
) -> None:
    """Print the list sorted.

    Supported first, the lowest score first, the lowest price against its figures, the latest change.
    """
    if by not in ORDERS:
        wrong(f"{by!r} is nothing to sort by: expected {', '.join(ORDERS)}")
    _print_sorted(by, points, file)


@watch_app.command(epilog="Example: auditor watch show 3")
def show(key: Key, points: Points = None, file: File = None) -> None:
    """Print one listing: its report, its history, its questions."""
    from auditor.reports import terminal
    from auditor.watchlist import telling
    from auditor.watchlist.elsewhere import elsewhere
    from auditor.watchlist.order import row

    shelf, _ = open_shelf(points)
    with open_list(file) as store:
        found = row(get(store, key), shelf.sets, elsewhere(store))
    screen = console()
    terminal.show(found.watched.listing, found.watched.verdict, found.work, screen)
    screen.print()
    telling.kept_in_time(found, screen)


@watch_app.command(epilog="Example: auditor watch export watchlist.csv")
def export(
    outs: Annotated[list[Path], typer.Argument(metavar="FILE", help="The suffix tells the kind, as for scan --out.")],
    points: Points = None,
    file: File = None,
) -> None:
    """Write the list to files.

    A .csv or .jsonl file holds history, questions, notes and decision too.
    """
    from auditor.watchlist.export import write

    outs_of(outs, "watch export")
    rows, shelf = rows_of(points, file)
    for path in outs:
        try:
            write(path, rows, shelf.sets)
        except OSError as error:
            wrong(f"{path}: {error.strerror}")


def _print_sorted(by: str, points: list[Path] | None, file: Path | None) -> None:
    from auditor.watchlist import telling
    from auditor.watchlist.order import in_order

    rows, _ = rows_of(points, file)
    telling.listed(in_order(rows, by), console(160))
