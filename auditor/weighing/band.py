"""The band of prices that a set's sources name for some printings. Dated figures; never advice and never an appraisal."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from auditor.knowledge.points import Copies, Value
from auditor.weighing.index import Index

OWN_HAND: Final = ("signed", "inscribed", "bookplate", "tipped_in")  # values of a claim ``signed``: no band speaks of such copies


@dataclass(frozen=True, slots=True)
class Band:
    """From the lowest to the highest figure of the rows, in their currency."""

    low: float
    high: float
    currency: str

    def __str__(self) -> str:
        return f"{self.low:g} to {self.high:g} {self.currency}"


def band(index: Index, mask: int, rows: Iterable[Value]) -> Band | None:
    """The band of the cells of ``mask`` by those ``rows``, all of one currency; None where one of its ends has no figure."""
    here = [row for row in rows if covers(index, row) & mask]
    lows, highs = [row.low for row in here if row.low is not None], [row.high for row in here if row.high is not None]
    return Band(min(lows), max(highs), here[0].currency) if lows and highs else None


def covers(index: Index, row: Value) -> int:
    """The cells of the printing that a row names."""
    return index.cells.mask(Copies.parse(f"{row.edition}:{row.printing}"))


def money(asking: str | None) -> tuple[float | None, str]:
    """Amount and currency; without a currency it can't be compared."""
    match = re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s+([A-Z]{3})\s*", asking or "")
    return (float(match[1]), match[2]) if match else (None, "")
