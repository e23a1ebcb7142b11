"""``auditor points``: work on point sets."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import DONE, UNREAD, Points, open_shelf, wrong

points_app = typer.Typer(no_args_is_help=True, help="Work on point sets.")
app.add_typer(points_app, name="points")


@points_app.command("check", epilog="Example: auditor points check my_points/")
def points_check(
    folder: Annotated[Path, typer.Argument(metavar="FOLDER", help="A folder of .toml point sets, or one such file.")],
) -> None:
    """Check point sets, telling file, line and what was expected."""
    from auditor.knowledge.shelf import Shelf

    if not folder.exists():
        wrong(f"{folder}: no such folder or file")
    shelf = Shelf.of((folder,))
    for mistake in shelf.mistakes:
        print(mistake)
    for remark in shelf.remarks:
        print(f"{remark} (worth a look)")
    number = len(shelf.sets)
    if not number and not shelf.mistakes:
        wrong(f"{folder}: holds no .toml file")
    print(
        f"{number} point set{'' if number == 1 else 's'} read, "
        f"{len(shelf.mistakes)} mistake{'' if len(shelf.mistakes) == 1 else 's'}, {len(shelf.remarks)} worth a look."
    )
    raise typer.Exit(UNREAD if shelf.mistakes else DONE)


@points_app.command("list", epilog="Example: auditor points list --points my_points/")
def points_list(points: Points = None) -> None:
    """List the books whose points are known, by author."""
    from auditor.reports import screen

    shelf, mistakes = open_shelf(points)
    console = screen.console()
    for _, work in shelf.by_author():
        console.print(screen.safe(f"{work.work.author}: {work.work.title} ({work.stem})"))
    raise typer.Exit(UNREAD if mistakes else DONE)


@points_app.command("show", epilog='Example: auditor points show "The Ore Dock" --out guide.html')
def points_show(
    work: Annotated[str, typer.Argument(metavar="WORK", help="A title, or the name of a point set's file without .toml.")],
    points: Points = None,
    out: Annotated[Path | None, typer.Option(metavar="FILE.html", help="Write a page that prints well instead.")] = None,
) -> None:
    """Tell the points of one book as a guide: what to look for, what tells another copy, what it is worth."""
    if out is not None and out.suffix.lower() != ".html":
        wrong(f"--out {out}: a guide is an .html page")
    shelf, mistakes = open_shelf(points)
    found = shelf.named(work)
    if len(found) != 1:
        near = found or shelf.near(work)
        told = f"; {'it may be' if found else 'near it are'}: {', '.join(near)}" if near else "; auditor points list tells them"
        wrong(f"{work!r} {'names several point sets' if found else 'is no work with a point set'}{told}")
    from auditor.reports import screen
    from auditor.reports.guide import show
    from auditor.reports.page.guide import page

    if out is None:
        show(shelf.sets[found[0]], screen.console())
    else:
        try:
            out.write_text(page(shelf.sets[found[0]]), encoding="utf-8")
        except OSError as error:
            wrong(f"--out {out}: {error.strerror}")
    raise typer.Exit(UNREAD if mistakes else DONE)


@points_app.command(
    "new", epilog='Example: auditor points new "The Ore Dock" --author "Ilse Varnum" --out my_points/ore-dock.toml'
)
def points_new(
    title: Annotated[str, typer.Argument(metavar="TITLE", help="The title of the book.")],
    author: Annotated[str, typer.Option(help="Its author.")] = "",
    out: Annotated[Path | None, typer.Option(metavar="FILE.toml", help="Write the file instead of printing it.")] = None,
) -> None:
    """Write the skeleton of a point set, with a comment at each key; check what you filled in with points check."""
    from auditor.knowledge.skeleton import skeleton

    text = skeleton(title, author)
    if out is None:
        print(text, end="")
        return
    if out.suffix != ".toml":
        wrong(f"--out {out}: a point set is a .toml file")
    try:
        with out.open("x", encoding="utf-8") as file:
            file.write(text)
    except FileExistsError:
        wrong(f"--out {out} is there already: a point set is never written over")
    except OSError as error:
        wrong(f"--out {out}: {error.strerror}")
    print(f"{out}: fill it in, then run: auditor points check {out}")


@points_app.command("schema", epilog="Example: auditor points schema > point-set.schema.json")
def points_schema() -> None:
    """Print the JSON Schema of a point set, for an editor that completes and checks TOML."""
    from auditor.knowledge.skeleton import schema

    print(schema())
