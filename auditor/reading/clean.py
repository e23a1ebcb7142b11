"""A text without what no reader sees: marks of no width, entities, inline tags, blanks of other kinds.

Most texts have none of it and are read as they are. What words.py knows of entities and tags serves spaCy's tokenizer, which
must keep every character.
"""

from __future__ import annotations

import html
import re
from dataclasses import replace

from auditor.values import Claim

_NO_WIDTH = "\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff"
_BLANKS = "\u00a0\u2002-\u200a\u202f"
_UNSEEN = re.compile(
    rf"[{_NO_WIDTH}]+|[ {_BLANKS}{_NO_WIDTH}]{{2,}}|[{_BLANKS}]"
    r"|&(?:[a-zA-Z]{2,8}|\#\d{1,6}|\#x[0-9a-fA-F]{1,5});"
    r"|</?(?:b|i|u|em|strong|span|font|small|sup|sub)(?:\s[^<>]{0,200})?>",
    re.IGNORECASE,
)
_NO_MARKS = re.compile(f"[{_NO_WIDTH}]")


class Clean:
    """``text`` is what a reader sees of the text given; ``back`` puts a claim read in it where its words stand in that."""

    def __init__(self, given: str) -> None:
        self.text = given
        self._places: list[tuple[int, int]] = []  # for each character of ``text`` where it begins and ends in ``given``
        if not _UNSEEN.search(given):
            return
        pieces: list[str] = []
        at = 0
        for unseen in _UNSEEN.finditer(given):
            shown = _shown(unseen[0])
            if shown == unseen[0]:
                continue
            pieces += (given[at : unseen.start()], shown)
            self._places += ((place, place + 1) for place in range(at, unseen.start()))
            self._places += [unseen.span()] * len(shown)
            at = unseen.end()
        self.text = "".join([*pieces, given[at:]])
        self._places += ((place, place + 1) for place in range(at, len(given)))

    def back(self, claim: Claim) -> Claim:
        """The claim with the offsets that its words have in the text as given."""
        if not self._places:
            return claim
        start, end = self._span(claim.start, claim.end)
        trace = claim.trace
        cue, scope = (span and self._span(*span) for span in (trace.cue_span, trace.scope))
        return replace(claim, start=start, end=end, trace=replace(trace, cue_span=cue, scope=scope))

    def _span(self, start: int, end: int) -> tuple[int, int]:
        return self._places[start][0], self._places[max(end - 1, start)][1]


def _shown(piece: str) -> str:
    """What is seen of a piece. An escaped bracket stays escaped, as it opens no tag."""
    if piece[0] == "<":
        return ""
    if piece[0] == "&":
        sign = html.unescape(piece)
        return piece if len(sign) > 2 or sign in ("<", ">", "\0") else " " if sign.isspace() else _NO_MARKS.sub("", sign)
    return " " if _NO_MARKS.sub("", piece) else ""
