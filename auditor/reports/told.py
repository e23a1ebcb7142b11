"""What each claim that bears on a part leaves open: the bars of the ruler, on the page and in the terminal alike."""

from __future__ import annotations

from typing import Literal, NamedTuple

from auditor.knowledge.points import Copies, PointSet
from auditor.values import Claim, Verdict
from auditor.weighing.case import Case
from auditor.weighing.evidence import Evidence
from auditor.weighing.index import index_of


class Told(NamedTuple):
    """One statement: its words, the printings that it leaves, and those that are known to show it."""

    words: str
    leaves: tuple[Copies, ...]
    shows: tuple[Copies, ...]


def told(verdict: Verdict, work: PointSet) -> dict[Literal["book", "jacket"], list[Told]]:
    """The statements that bear on the book and on the jacket, in the order of the text; a line and its point are one."""
    case = Case.of(index_of(work), (*verdict.claims, *verdict.title_claims))
    render = case.index.cells.render

    def bars(evidence: tuple[Evidence, ...]) -> list[Told]:
        once = {item.bearing.point or named(item): item for item in reversed(evidence)}
        return [
            Told(named(item), parsed(render(item.bearing.mask)), parsed(render(item.bearing.own)))
            for item in reversed(once.values())
        ]

    return {"book": bars(case.book.evidence), "jacket": bars(case.jacket.evidence) if case.jacket else []}


def parsed(ranges: tuple[str, ...] | None) -> tuple[Copies, ...]:
    return tuple(Copies.parse(text) for text in ranges or ())


def named(item: Evidence) -> str:
    claim = item.claims[0]
    words = claim.value.partition("=")[2] if claim.feature == "point" else claim_words(claim, None)
    return f"not {words}" if claim.stance == "denied" else words


def claim_words(claim: Claim, work: PointSet | None) -> str:
    """The claim in a few words: ``number line to 3``, ``gray cloth (boards)``."""
    if claim.feature == "point":
        name, _, value = claim.value.partition("=")
        return f"{value} ({next((point.place for point in work.points if point.id == name), name) if work else name})"
    feature = claim.feature.replace("_", " ")
    return feature if claim.value == "yes" else f"{feature} {claim.value.replace('_', ' ')}"
