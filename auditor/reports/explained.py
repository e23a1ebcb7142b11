"""Why each claim was read: the lexicon row that made it, the cue behind its stance, how far that reached, what gave its part."""

from __future__ import annotations

from collections.abc import Iterator

from rich.console import Console
from rich.text import Text

from auditor.reports.screen import indented, safe
from auditor.values import Claim, Listing, Verdict


def explain(listing: Listing, verdict: Verdict, screen: Console) -> None:
    """Prints one block a claim, under the listing's words."""
    screen.print(Text("How it was read", style="bold underline"))
    for text, claims in ((listing.text, verdict.claims), (listing.title or "", verdict.title_claims)):
        for claim in claims:
            for depth, line in lines(claim, text):
                indented(screen, Text(safe(line)), depth)
    screen.print()


def lines(claim: Claim, text: str) -> Iterator[tuple[int, str]]:
    """(indent, line) for one claim of ``text``."""
    trace = claim.trace
    yield 2, f"{claim.feature} = {claim.value}, {claim.part}, {claim.stance}: “{_quoted(text, (claim.start, claim.end))}”"
    yield 6, f"row: {trace.row}"
    if claim.degree:
        yield 6, f"degree: {claim.degree}"
    if trace.cue:
        yield 6, f"cue: “{trace.cue}”" + (f" (row: {trace.cue_row})" if trace.cue_row else "")
    if trace.cue and trace.scope:
        yield 6, f"scope: “{_quoted(text, trace.scope)}”"
    if trace.governor:
        yield 6, f"part by: “{trace.governor}”"


def _quoted(text: str, span: tuple[int, int]) -> str:
    return " ".join(text[span[0] : span[1]].split())
