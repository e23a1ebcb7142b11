"""The room's one door: claims and a point set in, a verdict out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from auditor.knowledge.points import PointSet
from auditor.values import Claim, Finding, Verdict
from auditor.weighing.case import Case
from auditor.weighing.findings import OF_A_SET, OF_ANY_BOOK
from auditor.weighing.index import index_of
from auditor.weighing.questions import questions
from auditor.weighing.scores import scores
from auditor.weighing.share import share
from auditor.weighing.unmatched import unweighed, weigh_unmatched


def weigh(
    claims: Sequence[Claim],
    work: PointSet | None,
    *,
    asking: str | None = None,
    title_claims: Sequence[Claim] = (),
    several: bool = False,
    doubtful_work: bool = False,
) -> Verdict:
    """What the claims leave open, by the contract's "How a verdict is reckoned".

    ``claims`` are the text's, ``title_claims`` those of the title (they count alike; spans point into the text alone). ``asking``
    is an amount and an ISO currency. ``work`` None is a work without a point set: only the trade's general practice speaks
    then. ``several`` is a lot of several works, which has no verdict.
    ``doubtful_work`` turns what rests on the set into notes, as the set may be another book's.
    Pure: reads nothing but the lexicon.
    """
    everything = (*claims, *(replace(claim, start=-1, end=-1) for claim in title_claims))
    stem = work.stem if work else None
    if several or any(claim.feature == "proof" and claim.stance == "asserted" for claim in everything):
        return unweighed(claims, title_claims, stem, doubtful_work)
    if work is None:
        standing, findings, marks = weigh_unmatched(everything)
        return Verdict(None, tuple(claims), standing, findings=findings, scores=marks, title_claims=tuple(title_claims))
    case = Case.of(index_of(work), everything, asking)
    of_set = tuple(finding for find in OF_A_SET for finding in find(case))
    of_any = tuple(finding for find in OF_ANY_BOOK for finding in find(everything))
    if doubtful_work:
        of_set = tuple(_as_note(finding, work) for finding in of_set)
    render = case.index.cells.render
    return Verdict(
        work=work.stem,
        claims=tuple(claims),
        standing=case.standing,
        book=render(case.book.cells),
        jacket=render(case.jacket.cells) if case.jacket else None,
        claimed=render(case.claimed.mask),
        findings=(*of_set, *of_any),
        scores=scores(case),
        questions=questions(case),
        title_claims=tuple(title_claims),
        doubtful_work=doubtful_work,
        share=share(case),
    )


def _as_note(finding: Finding, work: PointSet) -> Finding:
    return replace(finding, severity="note", text=f"If this is “{work.work.title}”: {finding.text}")
