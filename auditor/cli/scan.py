"""``auditor scan``: many listings, a table and files."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import (
    DONE,
    FOUND,
    STOPPED,
    UNREAD,
    Authority,
    FailOn,
    Points,
    columns_of,
    kinds_of,
    line_of,
    open_shelf,
    outs_of,
    wrong,
)
from auditor.cli.progress import telling
from auditor.values import Reject


@app.command(epilog="Example: auditor scan listings.csv saved_pages/ --points my_points --out result.csv --out report.html")
def scan(
    paths: Annotated[
        list[Path],
        typer.Argument(
            metavar="PATH",
            help="Files or folders: tables, workbooks, JSON, texts and saved pages, such as .csv, .xlsx, .jsonl, .txt or .html, "
            "each also as .gz or in a .zip.",
        ),
    ],
    points: Points = None,
    authority: Authority = None,
    column: Annotated[
        list[str] | None, typer.Option(metavar="FIELD=COLUMN", help="Which column holds a field, such as text=Body.")
    ] = None,
    out: Annotated[
        list[Path] | None,
        typer.Option(metavar="FILE", help="Keep the results; the suffix tells the kind, such as .csv, .jsonl or .html."),
    ] = None,
    rejects: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Keep what could not be read, with place and reason: .csv or .jsonl.")
    ] = None,
    same_words: Annotated[
        Path | None,
        typer.Option(
            metavar="FILE", help="Keep which listings' words also stand in others, maybe of another copy: .csv, .jsonl."
        ),
    ] = None,
    workers: Annotated[int, typer.Option(min=1, help="Processes that audit side by side.")] = 1,
    cluster: Annotated[
        str | None,
        typer.Option(metavar="ADDRESS", help="Audit on this Dask cluster; each --out is then a folder of part files."),
    ] = None,
    resume: Annotated[bool, typer.Option("--resume", help="Go on with the same scan where it was stopped.")] = False,
    fail_on: FailOn = None,
) -> None:
    """Audit many listings and print a table, the worst first."""
    kinds = kinds_of(fail_on)
    columns = columns_of(column)
    outs = outs_of(out, folders=bool(cluster))
    if rejects or same_words:
        from auditor.reports.records import KINDS

        outs_of([rejects] if rejects else [], "--rejects", tuple(KINDS), folders=bool(cluster))
        outs_of([same_words] if same_words else [], "--same-words", tuple(KINDS))
    if resume and not (outs or rejects or same_words):
        wrong("--resume: only a scan with --out can be taken up")
    from auditor.reports import overview, screen
    from auditor.scan import CannotStart, Job, Part, ScanFailed
    from auditor.scan import scan as run_here

    if cluster:
        from auditor.scan.cluster import scan_on

    run = partial(scan_on, cluster) if cluster else run_here
    shelf, mistakes = open_shelf(points, authority)
    job = Job(paths, outs, rejects, same_words, points or (), authority, columns, workers, resume)

    with telling() as told:

        def heard(part: Part, read_to: int) -> None:
            for item in part.told:
                if rejects is None or not isinstance(item, Reject):
                    told.line(line_of(item))
            told.done(part.tally.listings, read_to)

        try:
            tally = run(job, shelf, heard, lambda plan: told.total(plan.size))
        except CannotStart as error:
            wrong(str(error))
        except (KeyboardInterrupt, ScanFailed, OSError) as error:
            if isinstance(error, OSError):
                reason = f"{error.filename or job.files[0]}: {error.strerror}"
            else:
                reason = str(error) or "Stopped"
            kept = "" if not job.files else " What is done is kept: the same command with --resume goes on from there."
            told.line(f"{reason}.{kept}")
            raise typer.Exit(STOPPED) from None
    overview.show(tally, screen.console(piped_width=160), str(rejects) if rejects else None)
    found = any(tally.findings[kind] for kind in kinds)
    raise typer.Exit(FOUND if found else UNREAD if tally.rejects or mistakes else DONE)
