"""``auditor draft``: a description before it goes out."""

from __future__ import annotations

from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import DONE, UNREAD, Points, one_listing, open_shelf


@app.command(epilog='Example: auditor draft draft.txt --title "The Ore Dock"')
def draft(
    file: Annotated[str, typer.Argument(metavar="FILE|-", help="A text file; - or nothing: standard input.")] = "-",
    title: Annotated[str | None, typer.Option(help="The title that the listing will have.")] = None,
    points: Points = None,
) -> None:
    """Check a description before it goes out: facts in one line, what a buyer would miss, words to avoid."""
    listing = one_listing(file)
    from dataclasses import replace

    from auditor.auditing import audit_on
    from auditor.reports import drafted, screen

    shelf, mistakes = open_shelf(points)
    listing = replace(listing, title=title or listing.title)
    verdict = audit_on(shelf, listing.text, listing.title)
    work = shelf.sets[verdict.work].work if verdict.work else None
    drafted.show(listing, verdict, f"{work.title}, {work.author}" if work else None, screen.console())
    raise typer.Exit(UNREAD if mistakes else DONE)
