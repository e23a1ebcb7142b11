"""Headings that deny what they list: "Among things it hasn't got: a bookplate, an inscription", "Not present - stamps, names".

A denial that ends in a word of having (lexicon/forms/doubts.toml, ``heads``) right before a colon or a dash
denies all of the list.
"""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.phrases import Phrase
from auditor.reading.rows import Row
from auditor.reading.scene import Scene
from auditor.reading.walker import walker

HEADING = Row(
    id="heading that denies", kind="denial", phrases=("what it doesn't have:",), reason="a heading denies what it lists"
)


def headings(scene: Scene) -> Iterator[tuple[Phrase, int, int]]:
    """Each such cue with the words ``first`` up to ``last`` that it denies."""
    heads = walker().words("heads")
    for cue in scene.cues:
        if cue.row.kind != "denial" or cue.last >= len(scene.norm) or scene.norm[cue.last - 1] not in heads:
            continue
        mark, clause = scene.norm[cue.last], scene.clause(cue.first)
        if mark == ":":
            yield Phrase(HEADING, cue.first, cue.last), cue.last + 1, clause.last
        elif mark in ("-", "—") and cue.last + 1 == clause.last and clause.last < len(scene.norm) and cue.first == clause.first:
            following = scene.clause(clause.last)
            yield Phrase(HEADING, cue.first, cue.last), following.first, following.last
