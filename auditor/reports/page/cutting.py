"""The listing's words cut where a mark or a finding begins or ends. The page sets each piece as text, so none can be markup."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from auditor.reports.marked import pieces
from auditor.values import Claim, Finding

Piece = tuple[str, str, list[int]]


def cut(text: str, claims: Sequence[Claim], findings: Sequence[Finding] = ()) -> list[Piece]:
    """(words, stance or "", numbers of the findings that rest on them), which joined are the text again."""
    shown = text.replace("\r\n", " \n").replace("\r", "\n")  # as long as the text, so offsets stay
    marks = list(pieces(claims, len(text)))
    spans = [(max(start, 0), min(end, len(text)), number) for number, each in enumerate(findings) for start, end in each.spans]
    edges = sorted({0, len(text)} | {edge for start, end, _ in (*marks, *spans) if start < end for edge in (start, end)})
    cuts: list[Piece] = []
    at = 0
    for start, end in pairwise(edges):
        while at < len(marks) and marks[at][1] <= start:
            at += 1
        stance = marks[at][2] if at < len(marks) and marks[at][0] <= start else ""
        on = sorted({number for first, last, number in spans if first <= start and end <= last})
        cuts.append((shown[start:end], stance, on))
    return cuts
