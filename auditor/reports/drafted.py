"""A draft's self-check on the terminal: its words, the facts line, what to add, what to leave out, what doesn't agree."""

from __future__ import annotations

from rich.console import Console
from rich.text import Text

from auditor.reports.drafting import advise
from auditor.reports.marked import legend, marked
from auditor.reports.screen import indented, safe
from auditor.reports.words import CAUTION
from auditor.values import Listing, Verdict


def show(listing: Listing, verdict: Verdict, work: str | None, screen: Console) -> None:
    """Prints it; ``work`` names the book that was found."""
    told = advise(listing, verdict)
    for text, said in ((listing.title, verdict.title_claims), (listing.text, verdict.claims)):
        if text and text.strip():
            body = marked(text, said)
            body.rstrip()
            indented(screen, body)
    claims = [*verdict.claims, *verdict.title_claims]
    if claims:
        screen.print()
        indented(screen, Text("marks: ").append_text(legend(claims)))
    parts = (
        ("The book", [f"{'perhaps ' if verdict.doubtful_work else ''}{work}" if work else "no point set speaks of it"]),
        ("The facts, in one line", [told.facts] if told.facts else ["Nothing is claimed yet."]),
        ("What doesn't agree", told.disagree),
        ("Grade against faults", told.grades),
        ("What a buyer would miss", told.missed),
        ("What would show it", told.shown),
        ("Words to avoid", [f"{word}: {why}" for word, why in told.avoid]),
    )
    for head, lines in parts:
        if lines:
            screen.print()
            screen.print(Text(head, style="bold underline"))
            for line in lines:
                indented(screen, Text(safe(line)))
    screen.print()
    indented(screen, Text(CAUTION, style="italic"), 0)
