"""One listing under weighing: its claims, what they show of book and jacket, and what is claimed. The findings read this."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

from auditor.values import Claim, Part, Standing
from auditor.weighing.claimed import Claimed, claimed
from auditor.weighing.evidence import Evidence, evidence
from auditor.weighing.index import Index


@dataclass(frozen=True)
class Narrowed:
    """A part's evidence and what it leaves: ``cells`` for the verdict, ``sure`` where an accusation may lean on it.

    Evidence that can't all stand together with disputed or uncovered readings is heard without them, and without what the seller
    says of edition, publisher and year if points and numbers alone can stand together: a slip of words, or words of another
    copy, are likelier than a book at odds with itself. ``unheard`` are those. ``sure`` 0: the points contradict each other.
    ``aside`` is what was laid aside before all that: statements that may be of another copy and don't go with the rest.
    """

    evidence: tuple[Evidence, ...]
    cells: int
    sure: int
    unheard: tuple[Evidence, ...] = ()
    aside: tuple[Evidence, ...] = ()


@dataclass(frozen=True)
class Case:
    """``claims`` are the text's and the title's together; a title's claim has offsets -1, as spans count the text only.

    ``asking`` is an amount and an ISO currency.
    """

    index: Index
    claims: tuple[Claim, ...]
    claimed: Claimed
    book: Narrowed
    jacket: Narrowed | None
    asking: str | None = None

    @classmethod
    def of(cls, index: Index, claims: Sequence[Claim], asking: str | None = None) -> Case:
        """The claims under weighing. What may be said of another copy is laid aside where the text is only at odds because of it,
        unless a leaf from another copy is told of: then no statement is too odd to be of this one.
        """
        items = evidence(index, claims)
        case = cls._heard(index, claims, items, asking)
        if all(item.clear for item in items) or case.has("repair", "replaced_leaf", stances=("asserted", "hedged")):
            return case
        unclear = [item for item in items if not item.clear]
        for aside in ([], *([item] for item in unclear), unclear):
            other = cls._heard(index, claims, [item for item in items if item not in aside], asking, aside)
            if not other.is_at_odds:
                return other
        return case

    @classmethod
    def _heard(
        cls, index: Index, claims: Sequence[Claim], items: Sequence[Evidence], asking: str | None, aside: Sequence[Evidence] = ()
    ) -> Case:
        book = _narrow(index, items, aside, "book")
        has_none = any(
            c.feature == "jacket" and c.stance == "asserted" and c.value in ("lacking", "none issued", "facsimile")
            for c in claims
        )
        has_none = has_none or any(c.key == ("jacket", "present", "jacket", "denied") for c in claims)
        jacket = None if has_none else _narrow(index, items, aside, "jacket")
        imprint = index.cells.meet(item.bearing.sure for item in book.evidence if item.claims[0].feature in ("publisher", "isbn"))
        shown = index.cells.meet(item.bearing.own for item in book.evidence if item.bearing.own and not item.bearing.disputed)
        return cls(index, tuple(claims), claimed(index, claims, imprint, shown), book, jacket, asking)

    @property
    def is_at_odds(self) -> bool:
        """Whether a part can't be as it is told, or the book can't be what is claimed."""
        return not self.book.sure or self.standing == "contradicted" or (self.jacket is not None and not self.jacket.sure)

    @cached_property
    def standing(self) -> Standing:
        """By the contract, looking at the book. What only a disputed point rules out is left open."""
        said = self.claimed.mask
        if not said:
            return "unclaimed"
        if not self.book.sure & said:
            return "contradicted"
        return "unproven" if self.book.cells & ~said else "supported"

    @property
    def claims_no_first(self) -> bool:
        """Whether something is claimed and no first printing is among it: "third printing", said openly."""
        return bool(self.claimed.mask) and not self.claimed.mask & self.index.first_printings()

    @cached_property
    def open(self) -> int:
        """What is left of the book, and what is claimed beside it where only disputed or uncovered readings speak against it."""
        said = self.claimed.mask
        return self.book.cells if self.book.cells & said else self.book.cells | (self.book.sure & said)

    @cached_property
    def told(self) -> frozenset[str]:
        """The points that the text answers: a reading asserted, or one of only two denied."""
        parts = (self.book, self.jacket) if self.jacket else (self.book,)
        return frozenset(
            item.bearing.point
            for part in parts
            for item in part.evidence
            if item.bearing.point and (item.asserted or len(self.index.points[item.bearing.point].readings) <= 2)
        )

    def has(self, feature: str, *values: str, stances: tuple[str, ...] = ("asserted",)) -> tuple[Claim, ...]:
        """The claims of a feature with one of these values (any, if none is named) and stances."""
        return tuple(c for c in self.claims if c.feature == feature and c.stance in stances and (not values or c.value in values))


def spans(claims: Iterable[Claim]) -> tuple[tuple[int, int], ...]:
    """Where the claims stand in the text, in order, without those of the title."""
    return tuple(sorted({(claim.start, claim.end) for claim in claims if claim.start >= 0}))


def _narrow(index: Index, items: Sequence[Evidence], aside: Sequence[Evidence], part: Part) -> Narrowed:
    heard = tuple(item for item in items if item.bearing.part == part)
    unheard: tuple[Evidence, ...] = ()
    sure = index.cells.meet(item.bearing.sure for item in heard)
    if not sure:
        unheard = tuple(filter(_is_words, heard))
        heard = tuple(item for item in heard if item not in unheard)
        sure = index.cells.meet(item.bearing.sure for item in heard)
    cells = index.cells.meet(item.bearing.mask for item in heard) or sure
    return Narrowed(heard, cells, sure, unheard, tuple(item for item in aside if item.bearing.part == part))


def _is_words(item: Evidence) -> bool:
    """Whether it rests on what the seller calls the copy; that it isn't a limited edition, a reprint or a first is no name."""
    feature = item.claims[0].feature
    return feature in ("book_club", "publisher", "year") or (item.asserted and feature in ("edition", "printing"))
