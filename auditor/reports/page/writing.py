"""Writes the report from a scan's tally: counts of all listings, and the listings that the tally has kept."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import get_args

from auditor.knowledge.points import PointSet
from auditor.reports.page import assets
from auditor.reports.page.detail import points_data
from auditor.reports.page.island import island
from auditor.reports.page.picture import pictures
from auditor.reports.screen import safe
from auditor.reports.tally import Tally
from auditor.values import Standing

MOST_ROWS = 5000  # listings on one page: what a browser sorts and filters without lag


def pieces(tally: Tally, sets: Mapping[str, PointSet]) -> Iterator[str]:
    """The page, piece by piece; ``tally`` was made with ``sets``, which are the point sets at hand."""
    kept = sorted((row for row in tally.rows if row.page), key=lambda row: -row.order)
    shown = [row.page for row in kept if row.page]
    works = {stem: sets[stem] for row in shown if (stem := row[2])}
    return (
        assets.templates()
        .get_template("report.html")
        .generate(
            **assets.frame(assets.REPORT, assets.STYLES),
            count=tally.listings,
            shown=len(shown),
            known=tally.known,
            standings=[(standing, tally.standings[standing]) for standing in get_args(Standing)],
            kinds=tally.findings.most_common(),
            sources=[(safe(name) or "no file named", count) for name, count in tally.sources.most_common()],
            more_sources=tally.more_sources,
            unread=tally.rejects,
            rejects=[(safe(each.source), safe(each.place), safe(each.reason)) for each in tally.first_rejects],
            pictures=pictures(tally.prices),
            rows=island([row[0] for row in shown]),
            points=island({stem: points_data(work) for stem, work in works.items()}),
            listings=(
                f'<script type="application/json" id="listing-{number}">{row[1]}</script>\n' for number, row in enumerate(shown)
            ),
        )
    )
