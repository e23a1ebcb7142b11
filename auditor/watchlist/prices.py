"""The price asked beside the prices that the point set's sources name for what is shown and for what is claimed."""

from __future__ import annotations

from typing import NamedTuple

from auditor.knowledge.points import Copies, PointSet
from auditor.values import Listing, Verdict
from auditor.weighing.band import OWN_HAND, Band, band, money
from auditor.weighing.index import index_of


class Prices(NamedTuple):
    """``shown`` is the band of the printings that the text leaves open, ``claimed`` that of what is claimed."""

    amount: float | None
    shown: Band | None
    claimed: Band | None

    @property
    def against(self) -> float | None:
        """The price asked as a share of the band's middle: of what is shown, or of what is claimed where that has none."""
        known = self.shown or self.claimed
        return self.amount / ((known.low + known.high) / 2) if self.amount is not None and known else None


def prices(listing: Listing, verdict: Verdict, work: PointSet | None) -> Prices:
    """Without bands where no figure fits: no set, another currency, a copy signed by its maker."""
    amount, currency = money(listing.asking)
    claims = (*verdict.claims, *verdict.title_claims)
    signed = any(c.feature == "signed" and c.value in OWN_HAND and c.stance == "asserted" for c in claims)
    if work is None or signed:
        return Prices(amount, None, None)
    index = index_of(work)
    rows = [row for row in work.values if row.currency == currency and not row.signed]
    if verdict.jacket is None:
        rows = [row for row in rows if not row.with_jacket] or rows

    def of(ranges: tuple[str, ...] | None) -> Band | None:
        mask = 0
        for text in ranges or ():
            mask |= index.cells.mask(Copies.parse(text))
        return band(index, mask, rows)

    return Prices(amount, of(verdict.book), of(verdict.claimed))
