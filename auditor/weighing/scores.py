"""Three numbers that a collector can check by hand, and one order. Each number is 0 where nothing is wrong and at most 100.

They count printings (states apart from one another are one printing), not words, and say nothing of a seller.

- ``missing``: of all printings that aren't what is claimed, how many in 100 nothing told of the book rules out.
- ``contradiction``: 100 what is told of the book can't all be true (a finding only where its points can't: words alone may be
  those of another copy); 75 it rules out what is claimed; 50 what is told of the jacket can't all be true; 25 book and jacket
  are of different printings and nobody says so; else 0.
- ``overclaim``: of the printings that the text leaves open, how many in 100 aren't what is claimed; 100 if that is ruled out,
  else 0 where only later printings are claimed: who says "third printing" claims nothing that isn't due.

Worked: three printings and a club edition, a first printing claimed. Nothing told: missing 100 (3 of 3 others are open),
overclaim 75 (3 of the 4 open). Boards that no club copy has: missing 67 (2 of 3), overclaim 67 (2 of the 3 open). A misprint of
the first printing alone: 0 and 0. A number line down to 3: contradiction 75, overclaim 100.

A statement more never raises ``missing``, and a later-printing word never lowers ``contradiction``.

The order (`concern`): first what has a ``contradiction`` of 75 or more; then by the findings, 3 for each grave one and 2 for each
weighty one, as one thing wrong beside another is worse than either; a note counts nothing. Of equals the higher
``contradiction`` comes first, then ``overclaim``, then ``missing``.
"""

from __future__ import annotations

from auditor.values import Scores, Severity, Verdict
from auditor.weighing.case import Case
from auditor.weighing.findings.conflicts import is_married, is_open_pairing

_AGAINST_CLAIM = 75
_WEIGHT: dict[Severity, int] = {"grave": 3, "weighty": 2, "note": 0}


def concern(verdict: Verdict) -> tuple[bool, int, int, int, int]:
    """The sorting key: the greater, the sooner a listing wants a second look. What is contradicted comes first, then the weight
    of all findings, then the three scores."""
    found = verdict.scores
    return (
        found.contradiction >= _AGAINST_CLAIM,
        sum(_WEIGHT[f.severity] for f in verdict.findings),
        found.contradiction,
        found.overclaim,
        found.missing,
    )


def scores(case: Case) -> Scores:
    return Scores(missing(case), contradiction(case), overclaim(case))


def missing(case: Case) -> int:
    """Of the printings that aren't what is claimed, the share (in 100) that no statement about the book rules out.

    A statement more rules out more or as much, so a further point that is told never raises it.
    """
    cells = case.index.cells
    others = cells.full & ~cells.whole(case.claimed.mask)
    if not case.claimed.mask or not others:
        return 0
    open_still = others
    for item in (*case.book.evidence, *case.book.unheard, *case.book.aside):
        open_still &= cells.whole(item.bearing.mask)
    return _share(case, open_still, others)


def contradiction(case: Case) -> int:
    """The gravest conflict, as the page above has it.

    A statement more leaves a part less or as much, so a later-printing word beside a claimed first printing never lowers it.
    """
    if case.book.unheard or not case.book.sure:
        return 100
    if case.standing == "contradicted":
        return 75
    if case.jacket and not case.jacket.sure:
        return 50
    return 25 if is_married(case) and not is_open_pairing(case) else 0


def overclaim(case: Case) -> int:
    """Of the printings that the text leaves open, the share (in 100) that aren't what is claimed."""
    if not case.claimed.mask:
        return 0
    if case.standing == "contradicted":
        return 100
    if case.claims_no_first:
        return 0
    cells = case.index.cells
    left = cells.whole(case.book.cells)
    return _share(case, left & ~cells.whole(case.claimed.mask), left)


def _share(case: Case, part: int, whole: int) -> int:
    blocks = case.index.cells.printings.values()
    count = sum(1 for block in blocks if block & part)
    return round(100 * count / sum(1 for block in blocks if block & whole))
