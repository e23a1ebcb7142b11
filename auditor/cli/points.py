"""``auditor points``: work on point sets."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from auditor.cli.app import app
from auditor.cli.common import DONE, UNREAD, wrong

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
        f"{number} point set{'' if number == 1 else 's'} read, {len(shelf.mistakes)} mistakes, {len(shelf.remarks)} worth a look."
    )
    raise typer.Exit(UNREAD if shelf.mistakes else DONE)
