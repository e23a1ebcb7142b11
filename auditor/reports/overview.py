"""Many listings on the terminal: a table, the worst first, and a summary in sentences."""

from __future__ import annotations

import re
from typing import get_args

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

from auditor.reports.screen import indented, safe
from auditor.reports.tally import Tally
from auditor.reports.words import CAUTION
from auditor.values import Standing

MOST_ROWS = 200
_TITLE = 16  # columns, so that no word of a title is cut
_WIDE = 100  # a narrower screen goes without what is left open of book and jacket
_STYLES = {"grave": "bold red", "weighty": "yellow", "note": "", "": ""}


def show(tally: Tally, screen: Console, rejects: str | None = None) -> None:
    """Prints the table, the summary and the caution; ``rejects`` is the file that tells what could not be read."""
    rows = tally.rows[:MOST_ROWS]
    if rows:
        table = Table(box=box.SIMPLE_HEAD, pad_edge=False)
        table.add_column("id", overflow="fold")
        table.add_column("title", overflow="fold", min_width=_TITLE)
        table.add_column("standing", no_wrap=True)
        wide = screen.width >= _WIDE
        for head in ("book", "jacket") if wide else ():
            table.add_column(head, overflow="fold")
        for head in ("missing", "contra-\ndiction", "over-\nclaim"):
            table.add_column(head, justify="right", no_wrap=True)
        table.add_column("gravest finding", min_width=len("gravest finding"))
        for row in rows:
            cells = row.cells[:-1] if wide else (*row.cells[:3], *row.cells[5:-1])
            table.add_row(*map(Text, cells), Text(row.cells[-1], style=_STYLES[row.severity or ""]))
        with screen.capture() as printed:
            screen.print(table)
        print(re.sub(r" +$", "", printed.get().strip("\n"), flags=re.M), file=screen.file)
    if tally.listings > len(rows):
        screen.print(f"{tally.listings - len(rows)} more listings, less grave, are not shown; --out FILE.csv keeps all.")
    indented(screen, Text("\n".join(_summary(tally, rejects))), 0)
    indented(screen, Text(CAUTION, style="italic"), 0)


def _summary(tally: Tally, rejects: str | None) -> list[str]:
    """The counts in sentences."""
    standings = ", ".join(f"{tally.standings[name]} {name}" for name in get_args(Standing))
    lines = [f"{_count(tally.listings, 'listing')}, {tally.known} of them of a book with a point set: {standings}."]
    if tally.findings:
        kinds = ", ".join(f"{kind} {count}" for kind, count in tally.findings.most_common())
        lines.append(f"Listings with a finding: {kinds}.")
    if tally.same_words is not None:
        lines.append(f"{_count(tally.same_words, 'listing')} in words that also stand in another listing.")
    if tally.rejects:
        lines.append(f"{_count(tally.rejects, 'thing')} could not be read, told {f'in {safe(rejects)}' if rejects else 'above'}.")
    return lines


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
