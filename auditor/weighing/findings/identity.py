"""Words that name another edition than the tells, or more than they show."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.knowledge.points import Point
from auditor.values import Finding
from auditor.weighing.bearings import Bearing
from auditor.weighing.case import Case, spans
from auditor.weighing.claimed import is_ordered
from auditor.weighing.evidence import Evidence
from auditor.weighing.findings.conflicts import is_married, shows_other_edition
from auditor.weighing.findings.telling import claims_of, points_of, quote, reasons


def identity(case: Case) -> Iterator[Finding]:
    """Other editions and overclaims."""
    yield from _other_edition(case)
    if case.book.sure and not shows_other_edition(case):
        yield from _put_forward(case)
        yield from _later_printing(case)
        yield from _only_the_edition(case)
        yield from _other_country(case)
        yield from _mixed_states(case)


def is_openly_other(case: Case) -> bool:
    """Whether the text itself calls the copy a club edition, a reprint or a facsimile."""
    return bool(case.has("book_club", "yes") or case.has("edition", "reprint", "facsimile"))


def _other_edition(case: Case) -> Iterator[Finding]:
    """The tells of book or jacket leave only club editions, reprints or facsimiles, beside a claim; said openly, it's a note.

    Where nothing is claimed nothing is amiss: what is left open says it.
    """
    others = case.index.kind("book club", "reprint", "facsimile")
    part = case.book if shows_other_edition(case) else case.jacket
    if (
        not case.claimed.mask
        or part is None
        or not part.cells
        or part.cells & ~others
        or (part is case.jacket and (is_married(case) or not case.book.sure))
    ):
        return
    rest = case.index.cells.full & ~others
    items = [item for item in part.evidence if item.bearing.mask & rest != rest]
    if not any(_points_to(item.bearing, part.cells, rest) for item in items):
        return
    openly = is_openly_other(case)
    name = "book" if part is case.book else "jacket"
    text = f"What the text tells of the {name} fits {case.index.describe(part.cells)}. {reasons(items)}."
    if openly:
        text += " The text says so itself."
    weighty = not openly and not part.sure & ~others
    yield Finding(
        "other edition", "weighty" if weighty else "note", text, spans(case.claimed.claims + claims_of(items)), points_of(items)
    )


def _points_to(bearing: Bearing, left: int, rest: int) -> bool:
    """Whether it is itself a mark of what is left, not only against all else: a copy that no reading covers proves nothing."""
    return bool(bearing.own & left) or not (bearing.point or bearing.mask & rest)


def _put_forward(case: Case) -> Iterator[Finding]:
    """A printing put forward with a doubt, or doubted, that the tells rule out: a note, as nobody claims it."""
    said = case.claimed
    if case.standing == "contradicted" and said.narrow and not said.asserted:
        items = [item for item in case.book.evidence if not item.bearing.sure & said.mask]
        text = (
            f"The text speaks of {quote(said.claims)} with a doubt; what it tells leaves {case.index.describe(case.book.cells)}. "
            f"{reasons(items)}."
        )
        yield Finding("overclaim", "note", text, spans(said.claims + claims_of(items)), points_of(items))


def _later_printing(case: Case) -> Iterator[Finding]:
    """ "First edition" said of what is shown to be a later printing. Said with its printing or a doubt, it overclaims nothing."""
    said = case.claimed
    openly = case.has("printing", stances=("denied", "hedged", "unchecked")) + case.has("number_line", stances=("hedged",))
    if openly or said.edition is None or said.narrow or not said.asserted:
        return
    first = case.index.cells.printing(said.edition, 1)
    if not case.book.sure & first and not case.book.sure & ~said.mask:
        items = [item for item in case.book.evidence if not item.bearing.sure & first]
        text = (
            f"The text says {quote(said.claims)}, a term that collectors keep for the first printing; what it tells leaves "
            f"{case.index.describe(case.book.cells)}. {reasons(items)}."
        )
        yield Finding("overclaim", "weighty", text, spans(said.claims + claims_of(items)), points_of(items))


def _only_the_edition(case: Case) -> Iterator[Finding]:
    """A first printing asserted where the words "first edition" quoted stand in other printings of the edition too."""
    said = case.claimed
    if case.standing != "unproven" or not (said.narrow and said.first_printing and said.asserted and said.edition):
        return
    more = case.index.cells.editions[said.edition] & ~said.mask & case.book.cells
    items = [
        item
        for item in case.book.evidence
        if item.bearing.own & said.mask and item.bearing.own & more and _states_the_edition(item)
    ]
    if items:
        text = (
            f"The text says {quote(said.claims)}; the imprint that it tells shows the edition, not the printing: it leaves "
            f"{case.index.describe(case.book.cells)}. {reasons(items)}."
        )
        yield Finding("overclaim", "weighty", text, spans(said.claims + claims_of(items)), points_of(items))


def _states_the_edition(item: Evidence) -> bool:
    """Whether it is a point that the words "first edition" stand in the book."""
    return any(claim.feature == "point" and "first edition" in claim.value.casefold() for claim in item.claims)


def _other_country(case: Case) -> Iterator[Finding]:
    """A "true first" of an edition that another one came before; a plain "first edition" of it is a note on the word."""
    said, first = case.claimed, case.index.first
    editions = [e for e in case.index.trade() if case.index.cells.editions[e.id] & case.book.sure]
    if not editions or first in editions or case.book.sure & ~sum(case.index.cells.editions[e.id] for e in editions):
        return
    words = case.has("lapse", "true first")
    later = first.year is not None and all(e.year is not None and e.year > first.year for e in editions)
    if not words and said.asserted and said.edition == first.id and not said.narrow:
        words = said.claims
    if words:
        items = [item for item in case.book.evidence if not item.bearing.sure & case.index.cells.editions[first.id]]
        text = (
            f"The text says {quote(words)}; what it tells leaves {case.index.describe(case.book.cells)}, and the set names "
            f"“{first.name}” before it. {reasons(items)}."
        )
        weighty = later and words != said.claims
        yield Finding("overclaim", "weighty" if weighty else "note", text, spans((*words, *claims_of(items))), points_of(items))


def _mixed_states(case: Case) -> Iterator[Finding]:
    """A first state or issue claimed of a printing whose elements vary by themselves, one of them told in a later state: a note.

    Mixed copies are lawful; the word is what says too much. Letters that stand in no order say nothing (see ``unordered``).
    """
    words = tuple(c for c in case.has("state", "1", "a") + case.has("issue", "1") if c.part == "book")
    if not words or case.standing == "contradicted":
        return
    points = case.index.points
    later = [
        item
        for item in case.book.evidence
        if item.asserted and item.bearing.point and item.bearing.own and _is_later_state(points[item.bearing.point].point, item)
    ]
    if later:
        text = f"The text says {quote(words)}; of the elements that it tells of, some are in a later state. {reasons(later)}."
        yield Finding("overclaim", "note", text, spans((*words, *claims_of(later))), points_of(later))


def _is_later_state(point: Point, item: Evidence) -> bool:
    """Whether the reading told belongs only to letters behind "a", on a point whose letters stand in an order of time."""
    told = {claim.value.partition("=")[2].casefold() for claim in item.claims if claim.feature == "point"}
    copies = [c for reading in point.readings if reading.value.casefold() in told for c in reading.copies]
    return bool(copies) and all(c.state > "a" and c.first == 1 for c in copies) and is_ordered(point)
