"""What several commands share: exit codes, options, and what is read from them."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NoReturn, get_args

import typer

from auditor.values import FindingKind, Listing, Reject, Verdict

if TYPE_CHECKING:
    from auditor.intake import Item
    from auditor.knowledge.shelf import Shelf

DONE, FOUND, UNREAD, STOPPED = 0, 1, 3, 4  # 2, used wrongly, is click's own

Points = Annotated[
    list[Path] | None, typer.Option(metavar="FOLDER", help="Point sets of your own; they win over the built-in ones.")
]
Authority = Annotated[
    str | None,
    typer.Option(metavar="NAME", help="Where authorities differ, take the account of this one; a disputed point stays disputed."),
]
FailOn = Annotated[
    list[str] | None,
    typer.Option(metavar="FINDING-KIND", help=f"Exit with 1 on such a finding: {', '.join(get_args(FindingKind))}."),
]


def wrong(message: str) -> NoReturn:
    raise typer.BadParameter(message)


def kinds_of(fail_on: list[str] | None) -> frozenset[str]:
    for kind in fail_on or ():
        if kind not in get_args(FindingKind):
            wrong(f"--fail-on {kind!r} is no kind of finding; expected one of: {', '.join(get_args(FindingKind))}")
    return frozenset(fail_on or ())


def has(verdict: Verdict, kinds: frozenset[str]) -> bool:
    return any(finding.kind in kinds for finding in verdict.findings)


def price_of(asking: str | None) -> str | None:
    from auditor.intake import money

    price = money.asking(asking) if asking else None
    if asking and price is None:
        wrong(f'--asking {asking!r} is no single clear amount; expected something like "45.00 USD"')
    return price


def columns_of(pairs: list[str] | None) -> dict[str, str]:
    from auditor.intake.columns import fields

    columns: dict[str, str] = {}
    for pair in pairs or ():
        field, sign, head = pair.partition("=")
        if not sign or not head or field not in fields():
            wrong(f"--column {pair!r}: expected FIELD=COLUMN, FIELD one of {', '.join(fields())}")
        columns[field] = head
    return columns


def outs_of(
    out: list[Path] | None, option: str = "--out", kinds: Sequence[str] | None = None, *, folders: bool = False
) -> list[Path]:
    from auditor.reports.files import KNOWN

    kinds = kinds or KNOWN
    for path in out or ():
        if path.suffix.lower() not in kinds:
            wrong(f"{option} {path}: the suffix must tell the kind: {' or '.join(kinds)}")
        if (path.is_dir() and not folders) or not path.resolve().parent.is_dir():
            wrong(f"{option} {path}: {'is a folder' if path.is_dir() else 'its folder does not exist'}")
    return out or []


def open_shelf(points: list[Path] | None, authority: str | None = None) -> tuple[Shelf, bool]:
    """The point sets, as ``authority`` has them, mistakes in them told on standard error, and whether there were any."""
    from auditor.knowledge.shelf import Shelf

    for folder in points or ():
        if not folder.exists():
            wrong(f"--points {folder}: no such folder")
    shelf = Shelf.open(points or ())
    for mistake in shelf.mistakes:
        print(mistake, file=sys.stderr)
    if authority is not None:
        try:
            shelf = shelf.by(authority)
        except ValueError as error:
            wrong(f"--authority {error}")
    return shelf, bool(shelf.mistakes)


def one_listing(file: str) -> Listing:
    """The one listing of a file or of standard input; exits when there is none, or more than one."""
    from auditor.intake import open_one

    listings: list[Listing] = []
    for item in open_one(file):
        if isinstance(item, Listing):
            listings.append(item)
        else:
            print(line_of(item), file=sys.stderr)
        if len(listings) > 1:
            wrong(f"{file} holds more than one listing: auditor scan reads many")
    if not listings:
        raise typer.Exit(UNREAD)
    return listings[0]


def line_of(item: Item) -> str:
    from auditor.reports.screen import safe

    if isinstance(item, Reject):
        return safe(f"{item.source}, {item.place}: could not be read: {item.reason}")
    return "" if isinstance(item, Listing) else safe(f"{item.source}: {item.text}")
