"""A verdict on one row: what a table file, a data frame and the terminal's table have in common."""

from __future__ import annotations

from typing import Any

from auditor.values import Finding, Severity, Verdict

SEVERITIES: tuple[Severity, ...] = ("grave", "weighty", "note")


def flat(verdict: Verdict) -> dict[str, Any]:
    """The verdict's cells by name: words, the three scores as numbers, findings and questions one a line."""
    return {
        "work": verdict.work or "",
        "standing": verdict.standing,
        "book": printings(verdict.book),
        "jacket": printings(verdict.jacket),
        "claimed": printings(verdict.claimed or None),
        **verdict.scores.to_dict(),
        "gravest": gravest(verdict),
        "findings": "\n".join(f"{finding.kind}: {finding.text}" for finding in worst_first(verdict)),
        "questions": "\n".join(question.text for question in verdict.questions),
    }


def printings(left: tuple[str, ...] | None) -> str:
    """``("trade:1", "trade:3-")`` as ``trade:1, trade:3-``; nothing weighed is empty, nothing left is ``none``."""
    return "" if left is None else ", ".join(left) or "none"


def worst_first(verdict: Verdict) -> list[Finding]:
    """The findings by severity, in their own order within one."""
    return sorted(verdict.findings, key=lambda finding: SEVERITIES.index(finding.severity))


def gravest(verdict: Verdict) -> str:
    """The kind of the gravest finding, empty where there is none."""
    return next((finding.kind for finding in worst_first(verdict)), "")
