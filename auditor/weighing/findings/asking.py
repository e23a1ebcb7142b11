"""The price asked against the values that the set gives: for what is left open, and for what is claimed.

Dated figures from their sources; never advice and never an appraisal.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from auditor.knowledge.points import Copies, Value
from auditor.values import Finding
from auditor.weighing.band import OWN_HAND, band, covers, money
from auditor.weighing.case import Case
from auditor.weighing.cells import bits
from auditor.weighing.practice import table


def asking_price(case: Case) -> Iterator[Finding]:
    """A price beyond the stated multiple of the highest value left, in the same currency; signed copies are excepted.

    Nothing is said where an edition or printing left open has no figure, nor one of an earlier printing that bounds it.
    """
    amount, currency = money(case.asking)
    if amount is None or not case.book.cells or case.has("signed", *OWN_HAND):
        return
    rows = [row for row in case.index.work.values if row.currency == currency and not row.signed]
    if case.jacket is None:
        rows = [row for row in rows if not row.with_jacket] or rows
    highest = _highest(case, rows)
    if highest is None or highest.high is None or amount <= table("asking")["factor"] * highest.high:
        return
    text = (
        f"The price asked is {case.asking}; the text leaves {case.index.describe(case.book.cells)}, for which the highest figure"
        f" of the set is {highest.high:g} {highest.currency}, as of {highest.as_of} ({highest.source}). "
        f"{_claimed(case, rows, amount)}Prices differ with time, place and copy."
    )
    yield Finding("asking price", "weighty", text)


def _highest(case: Case, rows: list[Value]) -> Value | None:
    """The row with the highest upper end for the cells left; None where some of them has no bound."""
    found: list[Value] = []
    for bit in bits(case.book.cells):
        cell = case.index.cells.cells[bit]
        of_edition = [row for row in rows if row.edition == cell.edition]
        here = [row for row in of_edition if covers(case.index, row) >> bit & 1]
        here = here or [row for row in of_edition if _copies(row).first < cell.printing]  # a later printing isn't worth more
        if not here and case.index.work.edition(cell.edition).kind in ("book club", "reprint", "facsimile"):
            continue
        if not here or any(row.high is None for row in here):
            return None
        found += here
    return max(found, key=lambda row: row.high or 0.0, default=None)


def _claimed(case: Case, rows: Sequence[Value], amount: float) -> str:
    """The band of what is claimed, where it is worth more than what is shown; empty where the set gives none."""
    beyond = case.claimed.mask & ~case.book.cells
    found = band(case.index, beyond, rows)
    if found is None:
        return ""
    fits = "the price asked is one of what is claimed, not of what is shown. " if found.low <= amount <= found.high else ""
    return f"For what is claimed, {case.index.describe(case.claimed.mask)}, the set gives {found}{': ' if fits else '. '}{fits}"


def _copies(row: Value) -> Copies:
    return Copies.parse(f"{row.edition}:{row.printing}")
