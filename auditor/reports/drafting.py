"""What a seller wants to hear of a draft before it goes out: what a buyer would miss, words to avoid, what doesn't agree."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from auditor.knowledge import lexicon
from auditor.reports.facts import facts
from auditor.reports.flat import worst_first
from auditor.values import Claim, FindingKind, Listing, Verdict
from auditor.weighing.practice import table

# Kinds that a draft tells otherwise: as what would show it, words to avoid, grades; a price is the seller's own.
_OTHERWISE: tuple[FindingKind, ...] = ("missing evidence", "loose wording", "grade conflict", "asking price")


@dataclass(frozen=True, slots=True)
class Advice:
    """Lists of sentences. ``avoid`` is (word, why); ``shown`` asks for what would prove the claim, place by place."""

    facts: str
    missed: tuple[str, ...]
    shown: tuple[str, ...]
    avoid: tuple[tuple[str, str], ...]
    grades: tuple[str, ...]
    disagree: tuple[str, ...]


def advise(listing: Listing, verdict: Verdict) -> Advice:
    """The self-check of one draft; every list is empty where there is nothing to say."""
    claims = (*verdict.claims, *verdict.title_claims)
    findings = worst_first(verdict)
    known = table("lapses")
    lapses = dict.fromkeys(claim.value for claim in claims if claim.feature == "lapse" and claim.stance == "asserted")
    return Advice(
        facts=facts(listing, verdict),
        missed=tuple(row["text"] for row in _rows() if _missed(row, claims)),
        shown=tuple(question.text for question in verdict.questions),
        avoid=tuple((value, f"{known[value]['text']} ({known[value]['source']})") for value in lapses if value in known),
        grades=tuple(each.text for each in findings if each.kind == "grade conflict"),
        disagree=tuple(each.text for each in findings if each.kind not in _OTHERWISE),
    )


def _missed(row: dict[str, Any], claims: Sequence[Claim]) -> bool:
    here = [claim for claim in claims if claim.stance != "elsewhere"]
    asserted = [claim for claim in claims if claim.stance == "asserted"]
    lacking = any(claim.feature == "jacket" and claim.value in ("lacking", "none issued") for claim in asserted)
    with_jacket = "jacket=present" in row.get("only_with", ())
    return (
        not _says(row["told_by"], here)
        and ("only_with" not in row or (_says(row["only_with"], here) and not (with_jacket and lacking)))
        and not _says(row.get("never_with", ()), asserted)
    )


def _says(marks: Sequence[str], claims: Sequence[Claim]) -> bool:
    """Whether some claim is one of ``feature``, ``feature/part``, ``feature=value``."""
    for mark in marks:
        feature, sign, rest = re.fullmatch(r"(\w+)([/=]?)(.*)", mark).groups()  # type: ignore[union-attr]  # our own table
        for claim in claims:
            if claim.feature == feature and (not sign or rest == (claim.part if sign == "/" else claim.value)):
                return True
    return False


@cache
def _rows() -> tuple[dict[str, Any], ...]:
    return tuple(lexicon.table("drafting")["missed"])
