"""Sentences that every report uses."""

from __future__ import annotations

from collections.abc import Sequence

from auditor.knowledge.points import Copies, PointSet
from auditor.values import Listing, Standing, Verdict

BRIEF_CAUTION = "Text only: neither an authentication nor an appraisal."  # in each row and object of a file
CAUTION = f"{BRIEF_CAUTION} See the copy, ask a specialist; local consumer law and the marketplace's rules come first."

_STANDING: dict[Standing, str] = {
    "supported": "The evidence told leaves nothing but what is claimed.",
    "unproven": "What is told neither settles nor rules out what is claimed.",
    "contradicted": "The evidence told rules out what is claimed.",
    "unclaimed": "No edition or printing is claimed that could be weighed.",
}


def meaning(verdict: Verdict) -> str:
    """The standing in a sentence."""
    if any(claim.feature == "proof" and claim.stance == "asserted" for claim in (*verdict.claims, *verdict.title_claims)):
        return "A proof, an advance copy or a review copy is told of; such copies are not weighed."
    return _STANDING[verdict.standing]


def in_words(ranges: Sequence[str], work: PointSet | None) -> str:
    """``["trade:1", "trade:3-"]`` as "First edition, printing 1; First edition, printings 3 and later"."""
    return "; ".join(ranges if work is None else (_range(Copies.parse(text), work) for text in ranges))


def _range(copies: Copies, work: PointSet) -> str:
    edition = work.edition(copies.edition)
    last = edition.printings if copies.last is None else copies.last
    if (copies.first, last) == (1, edition.printings) or (copies.first, last, copies.last) == (1, None, None):
        return f"{edition.name}, any printing" if edition.printings != 1 else edition.name
    if last == copies.first:
        return f"{edition.name}, printing {copies.first}{f' in state {copies.state}' if copies.state else ''}"
    return f"{edition.name}, printings {copies.first} {f'to {last}' if last else 'and later'}"


def message(listing: Listing, verdict: Verdict) -> str:
    """The verdict's questions as a message to the seller, ready to send; empty where there are none."""
    if not verdict.questions:
        return ""
    copy = f"your copy of {listing.title.strip()}" if listing.title else "this copy"
    asked = [f"- {question.text}" for question in verdict.questions]
    return "\n".join(
        ["Good day,", "", f"I am interested in {copy}. Before I decide, could you tell or show me:", *asked, "", "Thank you."]
    )
