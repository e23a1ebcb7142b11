"""Many listings on the terminal: a table, the worst first, and a summary in a sentence."""

from __future__ import annotations

import heapq
import re
from collections import Counter
from typing import NamedTuple, get_args

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

from auditor.reports.flat import printings, worst_first
from auditor.reports.screen import indented, safe
from auditor.reports.words import CAUTION
from auditor.values import Listing, Severity, Standing, Verdict
from auditor.weighing.scores import concern

_MOST_ROWS = 200
_STYLES = {"grave": "bold red", "weighty": "yellow", "note": "", "": ""}


class _Row(NamedTuple):
    """Sorts worst first, as `auditor.weighing.scores.concern` has it, then by the order they came in."""

    rank: tuple[int, int, int, int, int, int]
    severity: Severity | None
    cells: tuple[str, ...]


class Overview:
    """Collects results as they come. Only the worst rows are kept, so it stays small however many there are."""

    def __init__(self) -> None:
        self.listings = self.rejects = self.known = 0
        self.standings: Counter[Standing] = Counter()
        self.findings: Counter[str] = Counter()
        self._rows: list[_Row] = []

    def add(self, listing: Listing, verdict: Verdict) -> None:
        self.listings += 1
        self.known += verdict.work is not None
        self.standings[verdict.standing] += 1
        self.findings.update({finding.kind for finding in verdict.findings})
        worst = next(iter(worst_first(verdict)), None)
        scores = verdict.scores
        title = " ".join((listing.title or listing.text[:200]).split())
        cells = (
            safe(listing.id),
            safe(title if len(title) <= 60 else f"{title[:57]}..."),
            verdict.standing,
            printings(verdict.book),
            printings(verdict.jacket),
            *map(str, (scores.missing, scores.contradiction, scores.overclaim)),
            worst.kind if worst else "",
        )
        row = _Row((*concern(verdict), -self.listings), worst.severity if worst else None, cells)
        if len(self._rows) < _MOST_ROWS:
            heapq.heappush(self._rows, row)
        else:
            heapq.heappushpop(self._rows, row)

    def show(self, screen: Console) -> None:
        """Prints the table, the summary and the caution."""
        if self._rows:
            table = Table(box=box.SIMPLE_HEAD, pad_edge=False)
            for head in ("id", "title", "standing", "book", "jacket"):
                table.add_column(head, overflow="fold")
            for head in ("missing", "contra-\ndiction", "over-\nclaim"):
                table.add_column(head, justify="right")
            table.add_column("gravest finding")
            for row in sorted(self._rows, reverse=True):
                table.add_row(*(Text(cell) for cell in row.cells[:-1]), Text(row.cells[-1], style=_STYLES[row.severity or ""]))
            with screen.capture() as printed:
                screen.print(table)
            print(re.sub(r" +$", "", printed.get().strip("\n"), flags=re.M), file=screen.file)
        if self.listings > len(self._rows):
            screen.print(f"{self.listings - len(self._rows)} more listings, less grave, are not shown; --out FILE.csv keeps all.")
        indented(screen, Text("\n".join(self.summary())), 0)
        indented(screen, Text(CAUTION, style="italic"), 0)

    def summary(self) -> list[str]:
        """The counts in sentences."""
        standings = ", ".join(f"{self.standings[name]} {name}" for name in get_args(Standing))
        lines = [f"{_count(self.listings, 'listing')}, {self.known} of them of a book with a point set: {standings}."]
        if self.findings:
            lines.append(
                "Listings with a finding: " + ", ".join(f"{kind} {count}" for kind, count in self.findings.most_common()) + "."
            )
        if self.rejects:
            lines.append(f"{_count(self.rejects, 'thing')} could not be read, told above.")
        return lines


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
