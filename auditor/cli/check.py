"""``auditor check``: one listing, told in full."""

from __future__ import annotations

from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import DONE, FOUND, UNREAD, Authority, FailOn, Points, has, kinds_of, one_listing, open_shelf, price_of


@app.command(epilog='Example: auditor check listing.txt --title "The Ore Dock" --asking "45.00 USD"')
def check(
    file: Annotated[
        str, typer.Argument(metavar="FILE|-", help="A text file or a saved page; - or nothing: standard input.")
    ] = "-",
    title: Annotated[str | None, typer.Option(help="The listing's title.")] = None,
    asking: Annotated[str | None, typer.Option(help='The price asked, such as "45.00 USD".')] = None,
    points: Points = None,
    authority: Authority = None,
    fail_on: FailOn = None,
    explain: Annotated[
        bool,
        typer.Option("--explain", help="Tell for each claim which phrase, cue and scope made it, by its row of the lexicon."),
    ] = False,
    json: Annotated[bool, typer.Option("--json", help="Print one JSON object instead of the report.")] = False,
) -> None:
    """Audit one listing and print the whole report."""
    kinds = kinds_of(fail_on)
    price = price_of(asking)
    listing = one_listing(file)
    from dataclasses import replace

    from auditor.auditing import audit_on
    from auditor.reports import jsonlines, screen, terminal

    shelf, mistakes = open_shelf(points, authority)
    listing = replace(listing, title=title or listing.title, asking=price or listing.asking)
    verdict = audit_on(shelf, listing.text, listing.title, listing.asking)
    if json:
        print(jsonlines.line(listing, verdict))
    else:
        console = screen.console()
        terminal.show(listing, verdict, shelf.sets[verdict.work] if verdict.work else None, console, explained=explain)
    raise typer.Exit(FOUND if has(verdict, kinds) else UNREAD if mistakes else DONE)
