"""The listing's own words with its claims marked in place, readable without colour."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from rich.text import Text

from auditor.reports.screen import safe
from auditor.values import Claim, Stance


class Mark(NamedTuple):
    """How one stance is shown: what stands before and behind the words, their style, and what the legend says."""

    before: str
    behind: str
    style: str
    legend: str


MARKS: dict[Stance, Mark] = {
    "asserted": Mark("[", "]", "bold", "said of this copy"),
    "denied": Mark("[-", "-]", "strike red", "said not to be so"),
    "hedged": Mark("[?", "?]", "italic yellow", "put forward with doubt"),
    "unchecked": Mark("[~", "~]", "italic yellow", "not looked at, not known"),
    "elsewhere": Mark("{", "}", "dim", "said of other copies"),
}


def marked(text: str, claims: Sequence[Claim]) -> Text:
    """The text, each claim's words between the marks of its stance; marks never stand inside one another."""
    text = safe(text)
    shown = Text()
    at = 0
    for start, end, stance in pieces(claims, len(text)):
        mark = MARKS[stance]
        shown.append(text[at:start])
        shown.append(f"{mark.before}{text[start:end]}{mark.behind}", style=mark.style)
        at = end
    return shown.append(text[at:])


def legend(claims: Sequence[Claim]) -> Text:
    """What the marks that occur mean."""
    told = {_shown(claim) for claim in claims}
    used = [mark for stance, mark in MARKS.items() if stance in told]
    return Text("   ").join(Text(f"{mark.before}{mark.legend}{mark.behind}", style=mark.style) for mark in used)


def pieces(claims: Sequence[Claim], length: int) -> Iterator[tuple[int, int, Stance]]:
    """The claims' spans in order and apart: where they overlap the shortest speaks; touching ones of one stance are one."""
    spans = [(claim.start, claim.end, _shown(claim)) for claim in claims if 0 <= claim.start < claim.end <= length]
    edges = sorted({edge for start, end, _ in spans for edge in (start, end)})
    held: tuple[int, int, Stance] | None = None
    for start, end in pairwise(edges):
        over = [span for span in spans if span[0] <= start and end <= span[1]]
        if not over:
            continue
        stance = min(over, key=lambda span: (span[1] - span[0], span))[2]
        if held and held[1] == start and held[2] == stance:
            held = held[0], end, stance
            continue
        if held:
            yield held
        held = start, end, stance
    if held:
        yield held


def _shown(claim: Claim) -> Stance:
    """The stance that the words are marked with: "price present" denies clipping, and a reader sees it said, not struck out."""
    return "asserted" if claim.stance == "denied" and claim.trace.cue is None else claim.stance
