"""What a scan keeps of all its listings together: counts, and the rows of the worst. It stays small however many they are."""

from __future__ import annotations

import heapq
from collections import Counter
from collections.abc import Mapping
from typing import Any, NamedTuple

from auditor.knowledge.points import PointSet
from auditor.reports.flat import printings, worst_first
from auditor.reports.screen import safe
from auditor.values import Listing, Reject, Severity, Standing, Verdict
from auditor.weighing.scores import concern

MOST_REJECTS = 500  # that a page tells one by one; a file of rejects holds all
MOST_SOURCES = 500
_FIGURES = 3  # significant figures of a price in the picture, so that the number of different prices is bounded

Concern = tuple[bool, int, int, int, int]


class Row(NamedTuple):
    """One listing's row. Rows sort by how soon a listing wants a second look, then by the order they came in.

    ``cells`` are the terminal's; ``page`` is what ``page_row`` gives, where a page is wanted.
    """

    concern: Concern
    order: int  # the negative number of the listing
    severity: Severity | None
    cells: tuple[str, ...]
    page: tuple[list[Any], str, str | None] | None = None


class Tally:
    """Collects results as they come, or tallies of results. ``most`` is how many rows are kept.

    With ``sets`` the rows hold what a page shows of them. ``floor`` is the concern of the least row kept elsewhere already:
    listings of no more concern are counted only.
    """

    def __init__(self, most: int, sets: Mapping[str, PointSet] | None = None, floor: Concern | None = None) -> None:
        self.most, self._sets, self._floor = most, sets, floor
        self.listings = self.rejects = self.known = self.more_sources = 0
        self.same_words: int | None = None  # listings whose words also stand in others, where that was looked at
        self.standings: Counter[Standing] = Counter()
        self.findings: Counter[str] = Counter()
        self.sources: Counter[str] = Counter()
        self.prices: Counter[tuple[Standing, float, str]] = Counter()
        self.first_rejects: list[Reject] = []
        self._rows: list[Row] = []

    def add(self, listing: Listing, verdict: Verdict) -> None:
        self.listings += 1
        self.known += verdict.work is not None
        self.standings[verdict.standing] += 1
        self.findings.update(dict.fromkeys((finding.kind for finding in verdict.findings), 1))  # in order: ties stay as they are
        self._source((listing.source or "").partition(", row ")[0], 1)
        amount, _, currency = (listing.asking or "").partition(" ")
        if (asked := _amount(amount)) is not None:
            self.prices[verdict.standing, asked, currency] += 1
        rank = concern(verdict)
        if (floor := self.floor) is None or rank > floor:
            self._keep(self._row(rank, listing, verdict))

    def reject(self, reject: Reject) -> None:
        self.rejects += 1
        if len(self.first_rejects) < MOST_REJECTS:
            self.first_rejects.append(reject)

    def merge(self, other: Tally) -> None:
        """Adds what came behind; the order of merging is the order of the listings."""
        for row in other.rows:
            self._keep(row._replace(order=row.order - self.listings))
        self.listings += other.listings
        self.known += other.known
        self.standings.update(other.standings)
        self.findings.update(other.findings)
        self.prices.update(other.prices)
        for name, count in other.sources.items():
            self._source(name, count)
        self.more_sources += other.more_sources
        for reject in other.first_rejects:
            self.reject(reject)
        self.rejects += other.rejects - len(other.first_rejects)

    @property
    def floor(self) -> Concern | None:
        """A listing of no more concern than this is not kept; None while there is room."""
        return self._rows[0].concern if len(self._rows) >= self.most else self._floor

    @property
    def rows(self) -> list[Row]:
        """The rows kept, the worst first."""
        return sorted(self._rows, reverse=True)

    def to_dict(self) -> dict[str, Any]:
        """As plain lists and dicts, for ``of``."""
        return {
            "counts": [self.listings, self.rejects, self.known, self.more_sources],
            "standings": self.standings,
            "findings": self.findings,
            "sources": self.sources,
            "prices": [[*key, count] for key, count in self.prices.items()],
            "rejects": [[each.source, each.place, each.reason] for each in self.first_rejects],
            "rows": self._rows,
        }

    @classmethod
    def of(cls, told: Mapping[str, Any], most: int) -> Tally:
        """The tally that gave ``told``."""
        tally = cls(most)
        tally.listings, tally.rejects, tally.known, tally.more_sources = told["counts"]
        tally.standings.update(told["standings"])
        tally.findings.update(told["findings"])
        tally.sources.update(told["sources"])
        tally.prices.update({(standing, amount, currency): count for standing, amount, currency, count in told["prices"]})
        tally.first_rejects = [Reject(*each) for each in told["rejects"]]
        for rank, order, severity, cells, page in told["rows"]:
            tally._keep(Row(tuple(rank), order, severity, tuple(cells), tuple(page) if page else None))
        return tally

    def _row(self, rank: Concern, listing: Listing, verdict: Verdict) -> Row:
        worst = next(iter(worst_first(verdict)), None)
        title = " ".join((listing.title or listing.text[:200]).split())
        cells = (
            safe(listing.id),
            safe(title if len(title) <= 60 else f"{title[:57]}..."),
            verdict.standing,
            printings(verdict.book),
            printings(verdict.jacket),
            *map(str, verdict.scores.to_dict().values()),
            worst.kind if worst else "",
        )
        page = None
        if self._sets is not None:
            from auditor.reports.page.detail import page_row

            page = page_row(listing, verdict, self._sets.get(verdict.work) if verdict.work else None)
        return Row(rank, -self.listings, worst.severity if worst else None, cells, page)

    def _keep(self, row: Row) -> None:
        if len(self._rows) < self.most:
            heapq.heappush(self._rows, row)
        else:
            heapq.heappushpop(self._rows, row)

    def _source(self, name: str, count: int) -> None:
        if name in self.sources or len(self.sources) < MOST_SOURCES:
            self.sources[name] += count
        else:
            self.more_sources += count


def _amount(text: str) -> float | None:
    try:
        return float(f"{float(text):.{_FIGURES}g}")
    except ValueError:
        return None
