"""``auditor scan``: many listings, a table and files."""

from __future__ import annotations

from contextlib import ExitStack
from pathlib import Path
from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import (
    DONE,
    FOUND,
    UNREAD,
    Authority,
    FailOn,
    Points,
    columns_of,
    has,
    kinds_of,
    line_of,
    open_shelf,
    outs_of,
    wrong,
)
from auditor.cli.progress import progress
from auditor.values import Reject


@app.command(epilog="Example: auditor scan listings.csv saved_pages/ --points my_points --out result.csv --out report.html")
def scan(
    paths: Annotated[list[Path], typer.Argument(metavar="PATH", help="Files or folders: .csv .tsv .jsonl .json .txt .html")],
    points: Points = None,
    authority: Authority = None,
    column: Annotated[
        list[str] | None, typer.Option(metavar="FIELD=COLUMN", help="Which column holds a field, such as text=Body.")
    ] = None,
    out: Annotated[
        list[Path] | None,
        typer.Option(metavar="FILE", help="Keep the results; the suffix tells the kind: .jsonl, .csv, .html."),
    ] = None,
    fail_on: FailOn = None,
) -> None:
    """Audit many listings and print a table, the worst first."""
    kinds = kinds_of(fail_on)
    columns = columns_of(column)
    outs = outs_of(out)
    from auditor.intake import open_paths
    from auditor.reports import files, screen
    from auditor.reports.overview import Overview
    from auditor.reports.run import Run
    from auditor.scan import run

    shelf, mistakes = open_shelf(points, authority)
    overview = Overview()
    told = Run(shelf.sets)
    found = False
    with ExitStack() as stack:
        writers = []
        for path in outs:
            try:
                writers.append(stack.enter_context(files.writing(path, told)))
            except OSError as error:
                wrong(f"--out {path}: {error.strerror}")
        tell = stack.enter_context(progress())
        for item in run(open_paths(paths, columns, leave_out=outs), shelf):
            if isinstance(item, tuple):
                overview.add(*item)
                found = found or has(item[1], kinds)
                for write in writers:
                    write(*item)
                tell(None)
            else:
                if isinstance(item, Reject):
                    overview.rejects += 1
                    told.rejects.append(item)
                tell(line_of(item))
    overview.show(screen.console(piped_width=160))
    raise typer.Exit(FOUND if found else UNREAD if overview.rejects or mistakes else DONE)
