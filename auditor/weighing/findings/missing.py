"""What isn't told and would decide the claim, and what is told so that it may be of another copy."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.values import Finding
from auditor.weighing.case import Case, spans
from auditor.weighing.findings.telling import claims_of, points_of, quote, reasons
from auditor.weighing.questions import deciding


def missing_evidence(case: Case) -> Iterator[Finding]:
    """One finding that lists the points of the book which would decide what is claimed, where it is unproven and some would."""
    if case.standing != "unproven":
        return
    said = case.claimed
    points, disputed = deciding(case), _disputed(case)
    if not points and not disputed:
        return
    places: dict[str, list[str]] = {}
    for masks in points:
        places.setdefault(masks.point.source, []).append(masks.point.place)
    named = "; ".join(f"{' and '.join(group)} ({source})" for source, group in places.items())
    told = f"The text says {quote(said.claims)}; what it tells leaves {case.index.describe(case.book.cells)}.{disputed}"
    text = f"{told} Not told, and would help to decide it: {named}." if points else told
    ids = tuple(masks.point.id for masks in points)
    yield Finding(
        "missing evidence", "weighty" if said.asserted and not case.claims_no_first else "note", text, spans(said.claims), ids
    )


def said_of_which(case: Case) -> Iterator[Finding]:
    """What was laid aside: it doesn't go with the rest and stands among words of other copies, so one can ask which it is."""
    for part in (case.book, case.jacket):
        if part is not None and part.aside:
            text = (
                "In a sentence that also talks of other copies, or of what isn't so, stands something that doesn't go with the"
                f" rest; it was left out, and whether it is said of this copy can be asked. {reasons(part.aside)}."
            )
            yield Finding("missing evidence", "note", text, spans(claims_of(part.aside)), points_of(part.aside))


def _disputed(case: Case) -> str:
    """What speaks against the claim and can't be sure to: it is told and doesn't count against it."""
    said = case.claimed.mask
    if case.book.cells & said:
        return ""
    against = [item for item in case.book.evidence if not item.bearing.mask & said]
    disputed = [item for item in against if item.bearing.disputed]
    if disputed:
        return f" Only what authorities differ on speaks against it: {reasons(disputed)}."
    told = f" {reasons(against)}." if against else ""
    return f"{told} No source tells what all the other printings have there, so it doesn't rule the claim out."
