"""From claims to evidence: the statements that count, each with what it leaves open for the book or for the jacket.

By the contract only what is asserted or denied counts; `auditor.weighing.bearings` reads each statement by itself, here they are
put side by side.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import reduce
from operator import or_

from auditor.values import Claim
from auditor.weighing.bearings import READERS, Bearing, Beside, bearings
from auditor.weighing.index import Index


@dataclass(frozen=True, slots=True)
class Evidence:
    """A bearing and the claims that make it: the text's and the title's, where both say so."""

    claims: tuple[Claim, ...]
    bearing: Bearing

    @property
    def asserted(self) -> bool:
        return self.claims[0].stance == "asserted"

    @property
    def clear(self) -> bool:
        """Whether it is said of this copy beyond doubt; see `Claim`."""
        return any(claim.clear for claim in self.claims)


def evidence(index: Index, claims: Sequence[Claim]) -> tuple[Evidence, ...]:
    """All evidence that ``claims`` hold, in their order; the same statement made twice is one item."""
    asserted = {(claim.feature, claim.value) for claim in claims if claim.stance == "asserted"}
    beside = Beside(("edition", "1") in asserted, ("price_clipped", "yes") in asserted)
    said: dict[tuple[str, str, str, str], list[Claim]] = {}
    for claim in claims:
        if claim.feature in READERS and claim.stance in ("asserted", "denied"):
            said.setdefault(claim.key, []).append(claim)
    items = [
        Evidence(tuple(group), bearing) for group in said.values() for bearing in bearings(index, *group[0].key, beside=beside)
    ]
    return _one_reading_a_place(_volumes_together(index, items))


def _volumes_together(index: Index, items: list[Evidence]) -> list[Evidence]:
    """Readings of a point that stands in each of several volumes may be those of different volumes: a mixed set, no conflict."""
    of_sets: dict[str, list[Evidence]] = {}
    for item in items:
        if item.bearing.own and index.points[item.bearing.point or ""].point.volumes > 1:
            of_sets.setdefault(item.bearing.point or "", []).append(item)
    for name, group in of_sets.items():
        joined = reduce(or_, (item.bearing.mask for item in group)), reduce(or_, (item.bearing.sure for item in group))
        shown = reduce(or_, (item.bearing.own for item in group))
        items = [
            replace(item, bearing=item.bearing._replace(mask=joined[0], sure=joined[1], own=shown))
            if item.asserted and item.bearing.point == name
            else item
            for item in items
        ]
    return items


def _one_reading_a_place(items: list[Evidence]) -> tuple[Evidence, ...]:
    """A copy shows one reading at a place, of whatever printing it is: two of a point that no printing shares leave no printing
    that the point doesn't cover. (Disputed points stay out of contradictions.)
    """
    shared: dict[str, int] = {}
    for item in items:
        if item.bearing.point and item.bearing.own and not item.bearing.disputed:
            shared[item.bearing.point] = shared.get(item.bearing.point, item.bearing.own) & item.bearing.own
    if all(shared.values()):
        return tuple(items)
    return tuple(_without_uncovered(item) if shared.get(item.bearing.point or "") == 0 else item for item in items)


def _without_uncovered(item: Evidence) -> Evidence:
    bearing = item.bearing
    if not bearing.own or bearing.disputed:
        return item
    return replace(item, bearing=bearing._replace(mask=bearing.own, sure=bearing.own))
