"""Statements that can't all be true: within a part, against what is claimed, and between book and jacket."""

from __future__ import annotations

import re
from collections.abc import Iterator

from auditor.values import Finding
from auditor.weighing.case import Case, Narrowed, spans
from auditor.weighing.cells import bits
from auditor.weighing.conflict import smallest_conflict
from auditor.weighing.evidence import Evidence
from auditor.weighing.findings.telling import claims_of, points_of, quote, reasons
from auditor.weighing.practice import table


def conflicts(case: Case) -> Iterator[Finding]:
    """Contradictions, made-up copies and married jackets."""
    if not case.book.sure:
        yield _made_up(case) or _contradiction(case, case.book, "book")
    elif speaks_against_claim(case):
        yield _against_claim(case)
    if case.jacket and not case.jacket.sure:
        yield _contradiction(case, case.jacket, "jacket")
    if is_married(case) and not _follows_from_claim(case):
        yield _married(case)
    yield from _mixed_volumes(case)


def speaks_against_claim(case: Case) -> bool:
    """Whether the book's tells rule out a first printing, or an edition named by its country, that is asserted.

    A printing only put forward accuses nobody, nor does a later one: who says "third printing" claims nothing that isn't due.
    """
    said = case.claimed
    named = (said.narrow and said.has_first) or any(claim.feature == "edition" and " " in claim.value for claim in said.claims)
    return bool(case.book.sure) and case.standing == "contradicted" and named and said.asserted and not shows_other_edition(case)


def _follows_from_claim(case: Case) -> bool:
    """Whether the jacket is of the edition claimed and the book of another one: the contradiction says so already."""
    whole = case.index.cells.whole
    fits = case.jacket and whole(case.jacket.sure) & whole(case.claimed.mask)
    return bool(fits) and not case.claimed.narrow and speaks_against_claim(case)


def shows_other_edition(case: Case) -> bool:
    """Whether the book's tells leave only club editions, reprints and facsimiles."""
    return bool(case.book.cells) and not case.book.cells & ~case.index.kind("book club", "reprint", "facsimile")


def is_married(case: Case) -> bool:
    """Whether book and jacket, each possible and neither at odds with its words, can't come from the same printing."""
    whole, jacket = case.index.cells.whole, case.jacket
    if jacket is None or not (jacket.sure and case.book.sure) or jacket.unheard or case.book.unheard:
        return False
    return not whole(case.book.sure) & whole(jacket.sure)


def is_open_pairing(case: Case) -> bool:
    """Whether the seller tells of the other jacket openly, or a point's note calls such a pairing known."""
    told = case.has("jacket", "supplied", stances=("asserted", "hedged"))
    told += tuple(c for c in case.has("printing", stances=("asserted", "hedged")) if c.part == "jacket" and c.value != "1")
    return bool(told) or _may_be_worn(case) or _is_known_pairing(case)


def _may_be_worn(case: Case) -> bool:
    """Whether every tell of the jacket is one that a book of this printing is known to be found with."""
    assert case.jacket is not None
    whole = case.index.cells.whole
    worn = case.index.cells.meet(item.bearing.sure | item.bearing.worn for item in case.jacket.evidence)
    return bool(whole(worn) & whole(case.book.sure))


def _smallest(case: Case, items: tuple[Evidence, ...], start: int) -> tuple[Evidence, ...]:
    whole = case.index.cells.whole
    found = smallest_conflict([whole(item.bearing.sure) for item in items], whole(start))
    if found is None:  # only the letters of states differ
        found = smallest_conflict([item.bearing.sure for item in items], start)
    return tuple(items[n] for n in found or ())


def _two_at_a_place(case: Case, items: tuple[Evidence, ...]) -> tuple[Evidence, ...]:
    """Two readings of one place that no printing shares: they rule each other out whatever else is told, and so come first."""
    whole = case.index.cells.whole
    shown = [item for item in items if item.asserted and item.bearing.point and item.bearing.own and not item.bearing.disputed]
    for place, one in enumerate(shown):
        for other in shown[place + 1 :]:
            if one.bearing.point == other.bearing.point and not whole(one.bearing.own) & whole(other.bearing.own):
                return one, other
    return ()


def _contradiction(case: Case, part: Narrowed, name: str) -> Finding:
    items = _two_at_a_place(case, part.evidence) or _smallest(case, part.evidence, case.index.cells.full)
    text = f"These statements cannot all be true of one {name}. {reasons(items)}."
    return Finding("contradiction", "grave" if name == "book" else "weighty", text, spans(claims_of(items)), points_of(items))


def _against_claim(case: Case) -> Finding:
    said = case.claimed
    items = _smallest(case, case.book.evidence, said.mask)
    text = (
        f"The text says {quote(said.claims)}, which is {case.index.describe(said.mask)}; "
        f"what it tells of the copy leaves {case.index.describe(case.book.cells)}. {reasons(items)}."
    )
    return Finding("contradiction", "grave", text, spans(said.claims + claims_of(items)), points_of(items))


def _mixed_volumes(case: Case) -> Iterator[Finding]:
    """Volumes of one set that show different readings: told, as such a set is made up, but lawful."""
    for masks in case.index.points.values():
        items = [item for item in case.book.evidence if item.asserted and item.bearing.point == masks.point.id]
        if masks.point.volumes > 1 and len(items) > 1:
            text = f"The volumes of the set differ, as mixed sets do. {reasons(items)}."
            yield Finding("made-up copy", "note", text, spans(claims_of(items)), points_of(items))


def _made_up(case: Case) -> Finding | None:
    """A book that agrees once one leaf is left out, where the make is a club edition's; any, where a replaced leaf is told of."""
    told = case.has("repair", "replaced_leaf", stances=("asserted", "hedged"))
    everything = case.book.evidence
    for leaf in dict.fromkeys(filter(None, (_leaf(case, item) for item in case.book.evidence))):
        of_leaf = [item for item in case.book.evidence if _leaf(case, item) == leaf]
        others = [item for item in case.book.evidence if _leaf(case, item) != leaf]
        left = case.index.cells.meet(item.bearing.sure for item in others)
        club = left and not left & ~case.index.kind("book club") and any(_is_make(case, item) for item in others)
        if left and (told or club):
            text = (
                f"The {leaf} and the rest of the book do not go together: {reasons(of_leaf)}. Without it the text leaves "
                f"{case.index.describe(left)}. A leaf that comes from another copy would explain it; that can be asked."
            )
            return Finding("made-up copy", "weighty", text, spans((*told, *claims_of(everything))), points_of(everything))
    if told:
        items = _smallest(case, everything, case.index.cells.full)
        text = f"The text tells of a leaf from another copy; that would explain what no one book shows. {reasons(items)}."
        return Finding("made-up copy", "weighty", text, spans((*told, *claims_of(items))), points_of(items))
    return None


def _leaf(case: Case, item: Evidence) -> str | None:
    """The imprint leaf that an item stands on, None for the rest of the book."""
    if item.claims[0].feature == "number_line":
        return "copyright page"
    place = case.index.points[item.bearing.point].place if item.bearing.point else None
    return place.name if place and place.leaf else None


def _is_make(case: Case, item: Evidence) -> bool:
    if not item.bearing.point:
        return item.claims[0].feature == "blind_stamp"
    point = case.index.points[item.bearing.point].point
    return point.feature in table("make")["features"] or bool(re.search(table("make")["words"], point.place, re.IGNORECASE))


def _married(case: Case) -> Finding:
    assert case.jacket is not None
    start = case.index.cells.whole(case.book.sure)
    jacket = _smallest(case, case.jacket.evidence, start)
    book = _smallest(case, case.book.evidence, case.index.cells.whole(case.jacket.sure))
    openly = is_open_pairing(case)
    text = (
        f"For the book the text leaves {case.index.describe(case.book.cells)}, for the jacket "
        f"{case.index.describe(case.jacket.cells)}. {reasons((*book, *jacket))}."
    )
    if openly:
        text += " Such a pair is told openly or known from the publisher, so this is only a note."
    items = (*book, *jacket)
    return Finding("married jacket", "note" if openly else "weighty", text, spans(claims_of(items)), points_of(items))


def _is_known_pairing(case: Case) -> bool:
    """A jacket point of the set, or its note, that knows this pairing: a jacket later than the book, of a printing it names."""
    assert case.jacket is not None
    book, jacket = _printings(case, case.book.sure), _printings(case, case.jacket.sure)
    if min(book) >= min(jacket):
        return False
    for masks in case.index.points.values():
        if masks.point.part == "jacket" and masks.point.known_pairing:
            return True
        note = (masks.point.note or "").lower()
        if masks.point.part == "jacket" and any(words in note for words in table("pairings")["words"]):
            names = table("pairings")["ordinals"]
            named = {names.index(word) + 1 for word in re.findall(rf"\b({'|'.join(names)})[- ](?:printing|impression)", note)}
            if (not named or named & book) and (len(named) < 2 or (named - book) & jacket):
                return True
    return False


def _printings(case: Case, mask: int) -> set[int]:
    return {case.index.cells.cells[bit].printing for bit in bits(mask)}
