"""What the seller says that the copy is, as a set of cells: the words "first edition", "first printing" and their kin.

By the contract "first edition" is every printing of the first trade edition, "first printing" printing 1 of it; an edition named
by country stands in place of the plain one; hedged words count only where none is asserted; a club edition, reprint, facsimile
or "a later printing" named is evidence and claims nothing: it would only be weighed against itself.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from auditor.knowledge.points import Edition, Point
from auditor.values import Claim
from auditor.weighing.index import Index
from auditor.weighing.practice import is_later, table

_NAMES_NO_PLACE = ("reprint", "facsimile", "limited")
_FEATURES = ("edition", "printing", "issue", "state")


@dataclass(frozen=True, slots=True)
class Claimed:
    """``mask`` 0 is nothing claimed. ``edition`` is the edition spoken of; ``narrow``: less than all of it is claimed."""

    mask: int = 0
    claims: tuple[Claim, ...] = ()
    edition: str | None = None
    first_printing: bool = False
    narrow: bool = False
    has_first: bool = False  # a first printing, or a state of it, is claimed

    @property
    def asserted(self) -> bool:
        return any(claim.stance == "asserted" for claim in self.claims)


def identity_claims(claims: Sequence[Claim]) -> tuple[Claim, ...]:
    """The claims that say which edition or printing the book is: the asserted ones, or where there is none the hedged."""
    said = [claim for claim in claims if claim.feature in _FEATURES and claim.part == "book" and _names_one(claim)]
    asserted = tuple(claim for claim in said if claim.stance == "asserted")
    return asserted or tuple(claim for claim in said if claim.stance == "hedged")


def claimed(index: Index, claims: Sequence[Claim], imprint: int, shown: int) -> Claimed:
    """What is claimed of the book; nothing where the words name an edition that the set doesn't know.

    ``imprint`` is what publisher and ISBN leave open: a printing named without an edition is one of the edition that they name.
    ``shown`` are the copies that have every reading told of the book: "second printing" alone, of a book whose tells are all the
    American edition's, is the American one.
    """
    said = identity_claims(claims)
    editions = [claim.value for claim in said if claim.feature == "edition"]
    numbers = [claim.value for claim in said if claim.feature == "printing"]
    rest = [claim for claim in said if claim.feature in ("issue", "state")]
    base = _edition(index, editions, imprint)
    if not said or base is None:
        return Claimed()
    cells = index.cells
    if not editions:
        base = _shown_to_have(index, numbers, shown) or base
    whole = cells.editions[base.id]
    first = cells.printing(base.id, 1)
    later = [number for number in numbers if number != "1"]
    if "1" in numbers:
        mask = first
    elif named := sum({cells.printing(base.id, int(number)) for number in later if number.isdigit()}):
        mask = named
    elif any(number.isdigit() for number in later) or (editions and (later or all(map(is_later, editions)))):
        mask = (whole if any(value.startswith("1") for value in editions) else cells.full) & ~first
    elif any(claim.value in ("1", "a") for claim in rest):
        mask = first
    elif editions:
        mask = whole
    else:
        return Claimed()
    stated = _with_state(index, mask, rest)
    return Claimed(stated, said, base.id, mask == first, bool(whole & ~stated), bool(mask & first))


def _names_one(claim: Claim) -> bool:
    return claim.value not in ("unknown", "no") and not (claim.feature == "edition" and claim.value in _NAMES_NO_PLACE)


def _edition(index: Index, values: Sequence[str], imprint: int) -> Edition | None:
    """The edition spoken of: the one a country or kind names, else the first trade edition; None if the name fits none."""
    qualified = [value.partition(" ")[2] for value in values if value.startswith("1 ")]
    if qualified:
        return next((edition for qualifier in qualified for edition in _named(index, qualifier, imprint)), None)
    published = _of_imprint(index, imprint)
    return published[0] if not values and len(published) == 1 else index.first


def _shown_to_have(index: Index, numbers: Sequence[str], shown: int) -> Edition | None:
    """The trade edition to which all copies shown belong, if a printing named is among them."""
    cells = index.cells
    named = [int(number) for number in numbers if number.isdigit()]
    of_one = [edition for edition in index.trade() if shown and not shown & ~cells.editions[edition.id]]
    return next((e for e in of_one for number in named if cells.printing(e.id, number) & shown), None)


def _of_imprint(index: Index, imprint: int) -> list[Edition]:
    """The trade editions that publisher and ISBN leave open."""
    return [edition for edition in index.trade() if index.cells.editions[edition.id] & imprint]


def _named(index: Index, qualifier: str, imprint: int) -> list[Edition]:
    """The trade editions that a qualifier may mean; "first thus" is the named publisher's."""
    if qualifier == "trade":
        return [index.first]
    if qualifier == "thus":
        published = _of_imprint(index, imprint) if imprint != index.cells.full else []
        return published if len(published) == 1 else []
    words = "|".join(re.escape(word) for word in table("qualifiers").get(qualifier, ()))
    named = [edition for edition in index.trade() if words and re.search(rf"\b(?:{words})\b", _names(edition), re.IGNORECASE)]
    return index.trade() if not named and qualifier == "hardcover" and len(index.trade()) == 1 else named


def _names(edition: Edition) -> str:
    return f"{edition.id.replace('-', ' ')} | {edition.name} | {edition.publisher}"


def _with_state(index: Index, mask: int, said: Sequence[Claim]) -> int:
    """A state named by letter, or by number where the letters of the printing stand in an order of time."""
    cells = index.cells
    letters = sorted({cell.state for bit, cell in enumerate(cells.cells) if mask >> bit & 1 and cell.state})
    for claim in said:
        value = claim.value
        if value.isdigit() and 0 < int(value) <= len(letters) and _ordered(index):
            value = letters[int(value) - 1]
        if value.lower() in letters:
            mask = cells.state(mask, value.lower())
            break
    return mask


def _ordered(index: Index) -> bool:
    """Whether no lettered point's note or dispute denies an order (facts/points/README, rule 9)."""
    lettered = [m.point for m in index.points.values() if any(c.state for reading in m.point.readings for c in reading.copies)]
    return all(map(is_ordered, lettered))


def is_ordered(point: Point) -> bool:
    """Whether the point's letters stand in an order of time, as neither note nor dispute denies it."""
    return not (point.disputed or any(word in (point.note or "").lower() for word in table("unordered")["words"]))
