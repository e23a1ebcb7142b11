"""What comes onto the list and goes off it: ``add``, ``recheck``, ``merge``, ``drop``."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from auditor.cli.common import DONE, UNREAD, Points, line_of, open_shelf, price_of, wrong
from auditor.cli.watch.common import File, Key, On, get, moment_of, open_list, say, tell, watch_app
from auditor.values import Listing, Reject

if TYPE_CHECKING:
    from auditor.intake import Item


@watch_app.command(
    epilog='Example: auditor watch add saved_pages/  or: auditor watch add - --title "The Ore Dock" --asking "45 USD"'
)
def add(
    paths: Annotated[list[str], typer.Argument(metavar="PATH|-", help="Anything that scan takes; - is text pasted in.")],
    title: Annotated[str | None, typer.Option(help="The title, where the text has none.")] = None,
    asking: Annotated[str | None, typer.Option(help='The price asked, such as "45.00 USD".')] = None,
    seller: Annotated[str | None, typer.Option(help="The seller's name.")] = None,
    url: Annotated[str | None, typer.Option(help="The listing's address.")] = None,
    into: Annotated[int | None, typer.Option("--as", metavar="NUMBER", help="It is a later save of this listing.")] = None,
    on: On = None,
    points: Points = None,
    file: File = None,
) -> None:
    """Put listings on the list.

    One that is there already gets a further reading, and what changed is told.
    """
    told = {"title": title, "asking": price_of(asking), "seller": seller, "url": url}
    given = {name: value for name, value in told.items() if value}
    listings, unread = _listings(paths)
    if (given or into is not None) and len(listings) > 1:
        wrong(f"--title, --asking, --seller, --url and --as speak of one listing; here are {len(listings)}")
    from dataclasses import replace

    from auditor.watchlist.keeping import keep

    shelf, mistakes = open_shelf(points)
    at = moment_of(on)
    with open_list(file) as store:
        for listing in listings:
            unread += not tell(keep(store, shelf, replace(listing, **given), at, into=into))
    raise typer.Exit(UNREAD if unread or mistakes else DONE)


@watch_app.command(epilog="Example: auditor watch recheck saved_again/  or: auditor watch recheck")
def recheck(
    paths: Annotated[
        list[str] | None, typer.Argument(metavar="PATH", help="New saves; without any the kept words are read anew.")
    ] = None,
    on: On = None,
    points: Points = None,
    file: File = None,
) -> None:
    """Read listings anew and tell what changed.

    From new saves, or the kept words with today's lexicon.
    """
    from auditor.watchlist.keeping import keep, reread

    listings, unread = _listings(paths or [])
    shelf, mistakes = open_shelf(points)
    at = moment_of(on)
    met: set[int] = set()
    changed = strange = 0
    with open_list(file) as store:
        known = [key for key, _ in store.latest()]
        if paths:
            results = (keep(store, shelf, listing, at, known_only=True) for listing in listings)
        else:
            results = (found for key in known if (found := reread(store, shelf, key, at)))
        for result in results:
            if isinstance(result, Reject):
                unread += not tell(result)
            elif result.key is None:
                strange += 1
                if result.maybe:
                    tell(result)
            else:
                met.add(result.key)
                changed += bool(result.changes)
                if result.changes:
                    tell(result)
    if paths and (absent := sorted(set(known) - met)):
        say(f"Not among what was given: {', '.join(f'#{key}' for key in absent)}.")
    say(f"{len(met)} read again, {changed} changed. {len(known)} on the list{f'; {strange} given are not' if strange else ''}.")
    raise typer.Exit(UNREAD if unread or mistakes else DONE)


@watch_app.command(epilog="Example: auditor watch merge 7 3")
def merge(
    key: Key,
    into: Annotated[int, typer.Argument(metavar="INTO", help="The number that it is to have.")],
    points: Points = None,
    file: File = None,
) -> None:
    """Make two numbers one listing.

    What was kept under the first becomes later readings of the second.
    """
    from auditor.watchlist import keeping

    if key == into:
        wrong(f"#{key} is #{into} already")
    shelf, _ = open_shelf(points)
    with open_list(file) as store:
        for each in (key, into):
            get(store, each)
        result = keeping.merge(store, shelf, key, into)
    raise typer.Exit(DONE if result and tell(result) else UNREAD)


@watch_app.command(epilog="Example: auditor watch drop 3")
def drop(keys: Annotated[list[int], typer.Argument(metavar="NUMBER")], file: File = None) -> None:
    """Take listings off the list, with their history."""
    with open_list(file) as store, store.change():
        for key in keys:
            name = get(store, key).name
            store.drop(key)
            say(f"#{key} is off the list: {name}")


def _listings(paths: Sequence[str]) -> tuple[list[Listing], int]:
    """What the paths hold, and how much of it could not be read, which is told."""
    from auditor.intake import open_one, open_paths
    from auditor.watchlist.keeping import pasted

    def items() -> Iterator[Item]:
        for path in paths:
            yield from map(pasted, open_one("-")) if path == "-" else open_paths([Path(path)])

    listings: list[Listing] = []
    unread = 0
    for item in items():
        if isinstance(item, Listing):
            listings.append(item)
        else:
            unread += isinstance(item, Reject)
            typer.echo(line_of(item), err=True)
    return listings, unread
