"""One listing on the terminal: its words, its work, its standing, the ruler, findings, questions, scores."""

from __future__ import annotations

from collections.abc import Iterator

from rich.console import Console
from rich.text import Text

from auditor.knowledge.points import Point, PointSet
from auditor.reports.explained import explain
from auditor.reports.flat import worst_first
from auditor.reports.marked import legend, marked
from auditor.reports.ruler import FINE, PLAIN, ruler
from auditor.reports.screen import indented, safe
from auditor.reports.words import CAUTION, in_words, meaning, message
from auditor.values import Finding, Listing, Severity, Verdict

STYLES: dict[Severity, str] = {"grave": "bold red", "weighty": "bold yellow", "note": "bold"}
_MOST_READINGS = 6


def show(listing: Listing, verdict: Verdict, work: PointSet | None, screen: Console, explained: bool = False) -> None:
    """Prints the whole report; ``work`` is the point set that the verdict names. ``explained`` adds why each claim was read."""
    _words(listing, verdict, screen)
    if explained:
        explain(listing, verdict, screen)
    _part(screen, "The work", [_work(verdict, work)])
    _part(screen, "Standing", [f"{verdict.standing.capitalize()}. {meaning(verdict)}", *_left(verdict, work)])
    if work:
        _ruler(verdict, work, screen)
    _findings(listing, verdict, work, screen)
    if verdict.share:
        _part(screen, "Copies that fit", [verdict.share.text])
    if verdict.questions:
        _part(screen, "A message to the seller", message(listing, verdict).split("\n"))
    scores = verdict.scores
    told = f"evidence missing {scores.missing}   contradiction {scores.contradiction}   overclaim {scores.overclaim}"
    _part(screen, "Scores, 0 (nothing) to 100", [told])
    indented(screen, Text(CAUTION, style="italic"), 0)


def _words(listing: Listing, verdict: Verdict, screen: Console) -> None:
    if listing.title:
        screen.print(marked(listing.title, verdict.title_claims))
    told = [safe(words) for words in (listing.asking and f"asking {listing.asking}", listing.seller, listing.url) if words]
    if told:
        screen.print(Text(", ".join(told), style="dim"))
    body = marked(listing.text, verdict.claims)
    body.rstrip()
    if body.plain.strip():
        screen.print()
        indented(screen, body)
    claims = [*verdict.claims, *verdict.title_claims]
    if claims:
        screen.print()
        indented(screen, Text("marks: ").append_text(legend(claims)))
    screen.print()


def _part(screen: Console, heading: str, lines: list[str]) -> None:
    screen.print(Text(heading, style="bold underline"))
    indented(screen, Text("\n".join(lines)))
    screen.print()


def _work(verdict: Verdict, work: PointSet | None) -> str:
    if work is None:
        return "No point set speaks of this book: general practice alone was weighed."
    told = f"{work.work.title}, {work.work.author} (point set {work.stem})"
    return f"Perhaps {told}: the words fit it without settling it." if verdict.doubtful_work else told


def _left(verdict: Verdict, work: PointSet | None) -> Iterator[str]:
    if verdict.claimed:
        yield f"Claimed: {in_words(verdict.claimed, work)}."
    for part, left in (("book", verdict.book), ("jacket", verdict.jacket)):
        if left is not None:
            yield (
                f"Left open for the {part}: {in_words(left, work)}."
                if left
                else f"Nothing is left open for the {part}: the claims rule each other out."
            )


def _ruler(verdict: Verdict, work: PointSet, screen: Console) -> None:
    signs = PLAIN if screen.options.ascii_only else FINE
    lines = ruler(verdict, work, width=screen.width, signs=signs)
    if lines:
        screen.print(Text("The ruler", style="bold underline"))
        screen.print(Text("\n".join(lines)), no_wrap=True, crop=False, overflow="ignore")
        screen.print(
            Text(
                f"  [ ] what is claimed   {signs.book} the book may be   {signs.jacket} the jacket may be   {signs.both} both\n",
                style="dim",
            )
        )


def _findings(listing: Listing, verdict: Verdict, work: PointSet | None, screen: Console) -> None:
    screen.print(Text("Findings, gravest first" if verdict.findings else "Findings", style="bold underline"))
    if not verdict.findings:
        screen.print("  None.")
    for finding in worst_first(verdict):
        title = Text(f"{finding.severity}: {finding.kind}", style=STYLES[finding.severity]).append(
            Text(f". {safe(finding.text)}", style="not bold default")
        )
        indented(screen, title)
        for line in _evidence(finding, listing, work):
            indented(screen, Text(safe(line), style="dim"), 6)
    screen.print()


def _evidence(finding: Finding, listing: Listing, work: PointSet | None) -> Iterator[str]:
    """What the text says, word for word, and what the point set says of the same."""
    quoted = dict.fromkeys(" ".join(listing.text[start:end].split()) for start, end in finding.spans if 0 <= start < end)
    if quoted:
        yield "text: " + "; ".join(f'"{words}"' for words in quoted)
    known = {point.id: point for point in work.points} if work else {}
    for name in finding.points:
        if name in known:
            yield f"point set: {_point(known[name])}"


def _point(point: Point) -> str:
    readings = [f"{reading.value} = {', '.join(map(str, reading.copies)) or 'no printing named'}" for reading in point.readings]
    more = f"; and {len(readings) - _MOST_READINGS} more" if len(readings) > _MOST_READINGS else ""
    disputed = f"; disputed: {point.disputed}" if point.disputed else ""
    return f"{point.place}: {'; '.join(readings[:_MOST_READINGS])}{more}{disputed} (source: {point.source})"
