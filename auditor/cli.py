"""The ``auditor`` command. Heavy rooms are imported inside the commands, so that --help is quick."""

from __future__ import annotations

import signal
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NoReturn, get_args

import typer

from auditor.values import FindingKind, Listing, Reject, Verdict

if TYPE_CHECKING:
    from auditor.intake import Item
    from auditor.knowledge.shelf import Shelf

DONE, FOUND, UNREAD = 0, 1, 3  # 2, used wrongly, is click's own

app = typer.Typer(add_completion=False, no_args_is_help=True, pretty_exceptions_enable=False, rich_markup_mode=None)
points_app = typer.Typer(no_args_is_help=True, help="Work on point sets.")
app.add_typer(points_app, name="points")

Points = Annotated[
    list[Path] | None, typer.Option(metavar="FOLDER", help="Point sets of your own; they win over the built-in ones.")
]
FailOn = Annotated[
    list[str] | None,
    typer.Option(metavar="FINDING-KIND", help=f"Exit with 1 on such a finding: {', '.join(get_args(FindingKind))}."),
]


@app.callback()
def auditor() -> None:
    """Read what a bookseller's listing claims, and weigh it against the known points of the book."""


@app.command(epilog='Example: auditor check listing.txt --title "The Ore Dock" --asking "45.00 USD"')
def check(
    file: Annotated[
        str, typer.Argument(metavar="FILE|-", help="A text file or a saved page; - or nothing: standard input.")
    ] = "-",
    title: Annotated[str | None, typer.Option(help="The listing's title.")] = None,
    asking: Annotated[str | None, typer.Option(help='The price asked, such as "45.00 USD".')] = None,
    points: Points = None,
    fail_on: FailOn = None,
    explain: Annotated[
        bool,
        typer.Option("--explain", help="Tell for each claim which phrase, cue and scope made it, by its row of the lexicon."),
    ] = False,
    json: Annotated[bool, typer.Option("--json", help="Print one JSON object instead of the report.")] = False,
) -> None:
    """Audit one listing and print the whole report."""
    kinds = _kinds(fail_on)
    price = _price(asking)
    listing = _one(file)
    from dataclasses import replace

    from auditor.auditing import audit_on
    from auditor.reports import jsonlines, screen, terminal

    shelf, mistakes = _shelf(points)
    listing = replace(listing, title=title or listing.title, asking=price or listing.asking)
    verdict = audit_on(shelf, listing.text, listing.title, listing.asking)
    if json:
        print(jsonlines.line(listing, verdict))
    else:
        console = screen.console()
        terminal.show(listing, verdict, shelf.sets[verdict.work] if verdict.work else None, console, explained=explain)
    raise typer.Exit(FOUND if _has(verdict, kinds) else UNREAD if mistakes else DONE)


@app.command(epilog="Example: auditor scan listings.csv saved_pages/ --points my_points --out result.csv --out report.html")
def scan(
    paths: Annotated[list[Path], typer.Argument(metavar="PATH", help="Files or folders: .csv .tsv .jsonl .json .txt .html")],
    points: Points = None,
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
    kinds = _kinds(fail_on)
    columns = _columns(column)
    outs = _outs(out)
    from auditor.intake import open_paths
    from auditor.reports import files, screen
    from auditor.reports.overview import Overview
    from auditor.reports.run import Run
    from auditor.scan import run

    shelf, mistakes = _shelf(points)
    overview = Overview()
    told = Run(shelf.sets)
    found = False
    with ExitStack() as stack:
        writers = []
        for path in outs:
            try:
                writers.append(stack.enter_context(files.writing(path, told)))
            except OSError as error:
                _wrong(f"--out {path}: {error.strerror}")
        tell = stack.enter_context(_progress())
        for item in run(open_paths(paths, columns, leave_out=outs), shelf):
            if isinstance(item, tuple):
                overview.add(*item)
                found = found or _has(item[1], kinds)
                for write in writers:
                    write(*item)
                tell(None)
            else:
                if isinstance(item, Reject):
                    overview.rejects += 1
                    told.rejects.append(item)
                tell(_told(item))
    overview.show(screen.console(piped_width=160))
    raise typer.Exit(FOUND if found else UNREAD if overview.rejects or mistakes else DONE)


@app.command(epilog='Example: auditor draft draft.txt --title "The Ore Dock"')
def draft(
    file: Annotated[str, typer.Argument(metavar="FILE|-", help="A text file; - or nothing: standard input.")] = "-",
    title: Annotated[str | None, typer.Option(help="The title that the listing will have.")] = None,
    points: Points = None,
) -> None:
    """Check a description before it goes out: facts in one line, what a buyer would miss, words to avoid."""
    listing = _one(file)
    from dataclasses import replace

    from auditor.auditing import audit_on
    from auditor.reports import drafted, screen

    shelf, mistakes = _shelf(points)
    listing = replace(listing, title=title or listing.title)
    verdict = audit_on(shelf, listing.text, listing.title)
    work = shelf.sets[verdict.work].work if verdict.work else None
    drafted.show(listing, verdict, f"{work.title}, {work.author}" if work else None, screen.console())
    raise typer.Exit(UNREAD if mistakes else DONE)


@app.command(epilog="Example: auditor desk --points my_points")
def desk(
    points: Points = None,
    port: Annotated[int, typer.Option(min=0, max=65535, help="The port; 0 takes a free one.")] = 0,
    browser: Annotated[bool, typer.Option(help="Open the desk in the browser.")] = True,
) -> None:
    """Serve a page for this computer alone: draft a description, read a batch, look books up."""
    from auditor.desk.serve import serve

    shelf, _ = _shelf(points)
    try:
        serve(shelf, port, browse=browser)
    except OSError as error:
        _wrong(f"--port {port}: {error.strerror}")


@points_app.command("check", epilog="Example: auditor points check my_points/")
def points_check(
    folder: Annotated[Path, typer.Argument(metavar="FOLDER", help="A folder of .toml point sets, or one such file.")],
) -> None:
    """Check point sets, telling file, line and what was expected."""
    from auditor.knowledge.shelf import Shelf

    if not folder.exists():
        _wrong(f"{folder}: no such folder or file")
    shelf = Shelf.of((folder,))
    for mistake in shelf.mistakes:
        print(mistake)
    for remark in shelf.remarks:
        print(f"{remark} (worth a look)")
    number = len(shelf.sets)
    if not number and not shelf.mistakes:
        _wrong(f"{folder}: holds no .toml file")
    print(
        f"{number} point set{'' if number == 1 else 's'} read, {len(shelf.mistakes)} mistakes, {len(shelf.remarks)} worth a look."
    )
    raise typer.Exit(UNREAD if shelf.mistakes else DONE)


def main() -> None:
    """The command's entry point."""
    if hasattr(signal, "SIGPIPE"):
        signal.signal(signal.SIGPIPE, signal.SIG_DFL)  # a reader that closes the pipe ends us quietly, like any filter
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal that lacks a letter gets a ? for it
    app(prog_name="auditor")


def _wrong(message: str) -> NoReturn:
    raise typer.BadParameter(message)


def _kinds(fail_on: list[str] | None) -> frozenset[str]:
    for kind in fail_on or ():
        if kind not in get_args(FindingKind):
            _wrong(f"--fail-on {kind!r} is no kind of finding; expected one of: {', '.join(get_args(FindingKind))}")
    return frozenset(fail_on or ())


def _has(verdict: Verdict, kinds: frozenset[str]) -> bool:
    return any(finding.kind in kinds for finding in verdict.findings)


def _price(asking: str | None) -> str | None:
    from auditor.intake import money

    price = money.asking(asking) if asking else None
    if asking and price is None:
        _wrong(f'--asking {asking!r} is no single clear amount; expected something like "45.00 USD"')
    return price


def _columns(pairs: list[str] | None) -> dict[str, str]:
    from auditor.intake.columns import fields

    columns: dict[str, str] = {}
    for pair in pairs or ():
        field, sign, head = pair.partition("=")
        if not sign or not head or field not in fields():
            _wrong(f"--column {pair!r}: expected FIELD=COLUMN, FIELD one of {', '.join(fields())}")
        columns[field] = head
    return columns


def _outs(out: list[Path] | None) -> list[Path]:
    from auditor.reports.files import KINDS

    for path in out or ():
        if path.suffix.lower() not in KINDS:
            _wrong(f"--out {path}: the suffix must tell the kind: {' or '.join(KINDS)}")
        if path.is_dir() or not path.resolve().parent.is_dir():
            _wrong(f"--out {path}: {'is a folder' if path.is_dir() else 'its folder does not exist'}")
    return out or []


def _shelf(points: list[Path] | None) -> tuple[Shelf, bool]:
    """The point sets, mistakes in them told on standard error, and whether there were any."""
    from auditor.knowledge.shelf import Shelf

    for folder in points or ():
        if not folder.exists():
            _wrong(f"--points {folder}: no such folder")
    shelf = Shelf.open(points or ())
    for mistake in shelf.mistakes:
        print(mistake, file=sys.stderr)
    return shelf, bool(shelf.mistakes)


def _one(file: str) -> Listing:
    """The one listing of a file or of standard input; exits when there is none, or more than one."""
    from auditor.intake import open_one

    listings: list[Listing] = []
    for item in open_one(file):
        if isinstance(item, Listing):
            listings.append(item)
        else:
            print(_told(item), file=sys.stderr)
        if len(listings) > 1:
            _wrong(f"{file} holds more than one listing: auditor scan reads many")
    if not listings:
        raise typer.Exit(UNREAD)
    return listings[0]


def _told(item: Item) -> str:
    from auditor.reports.screen import safe

    if isinstance(item, Reject):
        return safe(f"{item.source}, {item.place}: could not be read: {item.reason}")
    return "" if isinstance(item, Listing) else safe(f"{item.source}: {item.text}")


@contextmanager
def _progress() -> Iterator[Callable[[str | None], None]]:
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
