"""Writes the report. Listings go to a side file as they come, so that the memory needed is one short row for each."""

from __future__ import annotations

import tempfile
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import Any, TextIO, get_args

from auditor.knowledge.points import PointSet
from auditor.reports.flat import worst_first
from auditor.reports.page import assets
from auditor.reports.page.detail import detail, points_data
from auditor.reports.page.island import island
from auditor.reports.page.picture import pictures
from auditor.reports.run import Run
from auditor.reports.screen import safe
from auditor.reports.words import CAUTION
from auditor.values import Listing, Standing, Verdict

_TITLE = 110


@contextmanager
def writing(stream: TextIO, run: Run) -> Iterator[Callable[[Listing, Verdict], None]]:
    """Yields a function that adds one result; the page is written when the block ends well."""
    rows: list[list[Any]] = []
    works: dict[str, PointSet] = {}
    sources: Counter[str] = Counter()
    with tempfile.TemporaryFile("w+", encoding="ascii") as side:

        def write(listing: Listing, verdict: Verdict) -> None:
            work = run.sets.get(verdict.work) if verdict.work else None
            if work:
                works[work.stem] = work
            sources[(listing.source or "").partition(", row ")[0]] += 1
            side.write(f'<script type="application/json" id="listing-{len(rows)}">')
            side.write(f"{island(detail(listing, verdict, work))}</script>\n")
            rows.append(_row(listing, verdict, work))

        yield write
        side.seek(0)
        for part in _page(rows, works, sources, run, listings=side):
            stream.write(part.encode("utf-8", "replace").decode("utf-8"))  # a file's name need not be valid text


def _row(listing: Listing, verdict: Verdict, work: PointSet | None) -> list[Any]:
    """One row of the table, in the order that filters.js names."""
    words = " ".join((listing.title or listing.text[: 2 * _TITLE]).split())
    findings = worst_first(verdict)
    amount, _, currency = (listing.asking or "").partition(" ")
    return [
        listing.id,
        words if len(words) <= _TITLE else f"{words[: _TITLE - 1]}…",
        work.work.title if work else "",
        verdict.standing,
        findings[0].severity if findings else "",
        findings[0].kind if findings else "",
        _amount(amount),
        currency,
        listing.seller or "",
        list(dict.fromkeys(finding.kind for finding in findings)),
    ]


def _amount(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None


def _page(
    rows: Sequence[list[Any]], works: dict[str, PointSet], sources: Counter[str], run: Run, listings: TextIO
) -> Iterator[str]:
    standings = Counter(row[3] for row in rows)
    kinds = Counter(kind for row in rows for kind in row[9])
    return (
        assets.templates()
        .get_template("report.html")
        .generate(
            policy=assets.policy(assets.REPORT, assets.STYLES),
            style=assets.joined(assets.STYLES),
            script=assets.joined(assets.REPORT),
            caution=CAUTION,
            count=len(rows),
            known=sum(bool(row[2]) for row in rows),
            standings=[(standing, standings[standing]) for standing in get_args(Standing)],
            kinds=kinds.most_common(),
            sources=[(safe(name) or "no file named", count) for name, count in sources.most_common()],
            rejects=[(safe(each.source), safe(each.place), safe(each.reason)) for each in run.rejects],
            pictures=pictures((row[3], row[6], row[7]) for row in rows if row[6] is not None),
            rows=island(rows),
            points=island({stem: points_data(work) for stem, work in works.items()}),
            listings=listings,
        )
    )
