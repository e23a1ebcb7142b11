"""The list, one row a listing, in the order asked for."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final, get_args

from auditor.knowledge.points import PointSet
from auditor.values import Standing
from auditor.watchlist.asked import Asked, Sets, states
from auditor.watchlist.history import Entry, history, last_changed
from auditor.watchlist.prices import Prices, prices
from auditor.watchlist.values import Watched


@dataclass(frozen=True, slots=True)
class Row:
    """A listing with what the list shows and sorts by."""

    watched: Watched
    work: PointSet | None
    prices: Prices
    questions: tuple[Asked, ...]
    entries: tuple[Entry, ...]
    elsewhere: tuple[int, ...] = ()  # the listings of the list in which its words also stand

    @property
    def changed(self) -> Entry | None:
        return last_changed(self.entries)

    def count(self, *states: str) -> int:
        """How many of its questions are in one of these states."""
        return sum(each.state in states for each in self.questions)


def row(watched: Watched, sets: Sets, elsewhere: Mapping[int, tuple[int, ...]]) -> Row:
    work = sets.get(watched.verdict.work or "")
    return Row(
        watched,
        work,
        prices(watched.listing, watched.verdict, work),
        states(watched, sets),
        history(watched, sets),
        elsewhere.get(watched.key, ()),
    )


def in_order(rows: Sequence[Row], by: str) -> list[Row]:
    """The rows by one of ``ORDERS``; what can't be told by it comes last, and equals in the order they were added."""
    return sorted(rows, key=ORDERS[by])


_STANDINGS: Final = {standing: number for number, standing in enumerate(get_args(Standing))}


def _against(row: Row) -> tuple[bool, float]:
    against = row.prices.against
    return against is None, against or 0.0


def _work(row: Row) -> tuple[bool, str, tuple[bool, float]]:
    return row.work is None, row.work.work.title.casefold() if row.work else "", _against(row)


def _changed(row: Row) -> float:
    return -datetime.fromisoformat(row.changed.at).timestamp() if row.changed else 0.0


# By name: the key, smallest first. Supported first; the lowest score; the lowest price against its figures; the latest change.
ORDERS: Final[Mapping[str, Callable[[Row], Any]]] = {
    "added": lambda row: row.watched.key,
    "standing": lambda row: _STANDINGS[row.watched.verdict.standing],
    "missing": lambda row: row.watched.verdict.scores.missing,
    "contradiction": lambda row: row.watched.verdict.scores.contradiction,
    "overclaim": lambda row: row.watched.verdict.scores.overclaim,
    "asking": _against,
    "work": _work,
    "changed": _changed,
}
