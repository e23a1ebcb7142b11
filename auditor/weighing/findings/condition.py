"""Grades against the faults told of the same part."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from auditor.knowledge.grades import GradeRule, rank, rules
from auditor.values import Claim, Finding
from auditor.weighing.case import spans
from auditor.weighing.findings.telling import quote
from auditor.weighing.practice import say


def grade_conflicts(claims: Sequence[Claim]) -> Iterator[Finding]:
    """Grades of book and of jacket that an asserted fault rules out, and a jacket graded that isn't there."""
    asserted = [claim for claim in claims if claim.stance == "asserted" and claim.clear]
    lacking = [c for c in asserted if c.feature == "jacket" and c.value in ("lacking", "none issued")]
    for part in ("book", "jacket"):
        grades = [c for c in asserted if c.feature == "grade" and c.part == part and rank(c.value) is not None]
        if not grades:
            continue
        if part == "jacket" and lacking:
            text = f"The text gives the jacket the {say(grades[0])} and says that there is none."
            yield Finding("grade conflict", "weighty", text, spans((*grades, *lacking)))
            continue
        worst = max(grades, key=lambda claim: rank(claim.value) or 0.0)  # "very good to near fine" claims no more than very good
        broken = [
            (rule, fault)
            for fault in asserted
            for rule in _rules().get((fault.feature, fault.value), ())
            if _breaks(rule, fault, worst)
        ]
        if broken:
            strictest = max(broken, key=lambda pair: rank(pair[0].best_allowed) or 0.0)[0]
            faults = tuple(dict.fromkeys(fault for _, fault in broken))
            text = (
                f"The {part} is graded “{worst.value}” and the text tells {quote(faults)}; with that the scale goes up to"
                f" “{strictest.best_allowed}”. {strictest.reason} ({strictest.source})."
            )
            yield Finding("grade conflict", "weighty", text, spans((worst, *faults)))


def _breaks(rule: GradeRule, fault: Claim, grade: Claim) -> bool:
    """Whether the fault is of the graded part (one of the whole copy is the book's) and the grade better than the rule allows."""
    of_part = "book" if fault.part == "copy" else fault.part
    graded, allowed = rank(grade.value), rank(rule.best_allowed)
    return (
        of_part == grade.part
        and (fault.degree or "plain") in rule.degrees
        and rule.part in ("either", of_part)
        and graded is not None
        and allowed is not None
        and graded < allowed - 1e-9
    )


@cache
def _rules() -> dict[tuple[str, str], tuple[GradeRule, ...]]:
    found: dict[tuple[str, str], tuple[GradeRule, ...]] = {}
    for rule in rules():
        for value in rule.values:
            found[rule.feature, value] = (*found.get((rule.feature, value), ()), rule)
    return found
