"""What the collector does: ``asked``, ``answered``, ``note``, ``decide``."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from auditor.cli.common import Points, open_shelf, wrong
from auditor.cli.watch.common import File, Key, On, get, moment_of, open_list, say, watch_app

if TYPE_CHECKING:
    from auditor.watchlist.values import ActKind

Words = Annotated[list[str], typer.Argument(metavar="WORDS")]


@watch_app.command(epilog='Example: auditor watch asked 3 "copyright page"')
def asked(
    key: Key,
    places: Annotated[list[str] | None, typer.Argument(metavar="PLACE", help="What was asked about; else all.")] = None,
    on: On = None,
    points: Points = None,
    file: File = None,
) -> None:
    """Mark questions as asked of the seller."""
    _mark(key, "asked", places, "", on, points, file)


@watch_app.command(epilog='Example: auditor watch answered 3 "copyright page" --words "line to 1, by mail"')
def answered(
    key: Key,
    places: Annotated[list[str] | None, typer.Argument(metavar="PLACE", help="What was answered; else all asked.")] = None,
    words: Annotated[str, typer.Option(help="What the answer was.")] = "",
    on: On = None,
    points: Points = None,
    file: File = None,
) -> None:
    """Mark questions as answered by mail or telephone."""
    _mark(key, "answered", places, words, on, points, file)


@watch_app.command(epilog='Example: auditor watch note 3 "the copy to beat"')
def note(key: Key, words: Words, on: On = None, file: File = None) -> None:
    """Write a note to a listing."""
    _act(key, "note", " ".join(words), on, file)


@watch_app.command(epilog="Example: auditor watch decide 3 buy")
def decide(key: Key, words: Words, on: On = None, file: File = None) -> None:
    """Write what you decided of a listing; the last decision counts."""
    _act(key, "decision", " ".join(words), on, file)


def _mark(
    key: int,
    kind: ActKind,
    places: list[str] | None,
    words: str,
    on: datetime | None,
    points: list[Path] | None,
    file: Path | None,
) -> None:
    """Marks the questions of these places, all that it makes sense for where none is named."""
    from auditor.watchlist.asked import to_mark

    shelf, _ = open_shelf(points)
    with open_list(file) as store, store.change():
        try:
            questions = to_mark(get(store, key), kind, places or (), shelf.sets)
        except ValueError as error:
            wrong(str(error))
        for each in questions:
            store.act(key, kind, moment_of(on), words or (each.text if kind == "asked" else ""), each.place)
    for each in questions:
        say(f"#{key}: {kind}: {each.text}")


def _act(key: int, kind: ActKind, words: str, on: datetime | None, file: Path | None) -> None:
    if not words.strip():
        wrong("there are no words to keep")
    with open_list(file) as store, store.change():
        get(store, key)
        store.act(key, kind, moment_of(on), words.strip())
    say(f"#{key}: {kind} kept.")
