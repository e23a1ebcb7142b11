"""``auditor desk``: the local page."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import Points, open_shelf, wrong


@app.command(epilog="Example: auditor desk --points my_points")
def desk(
    points: Points = None,
    port: Annotated[int, typer.Option(min=0, max=65535, help="The port; 0 takes a free one.")] = 0,
    watchlist: Annotated[
        Path | None, typer.Option(metavar="FILE", help="The watchlist; else the one in your data folder.")
    ] = None,
    browser: Annotated[bool, typer.Option(help="Open the desk in the browser.")] = True,
) -> None:
    """Serve a page for this computer alone: draft a description, read a batch, keep a watchlist, look books up."""
    from auditor.desk.serve import serve
    from auditor.watchlist.store import default_path

    shelf, _ = open_shelf(points)
    try:
        serve(shelf, watchlist or default_path(), port, browse=browser)
    except OSError as error:
        wrong(f"--port {port}: {error.strerror}")
