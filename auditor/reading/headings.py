"""Headings that deny what they list: "Among things it hasn't got: a bookplate, an inscription", "Not present - stamps, names".

A denial that ends in a word of having (lexicon/forms/doubts.toml, ``heads``) right before a colon or a dash
denies all of the list.
"""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.phrases import Phrase
from auditor.reading.rows import Row
from auditor.reading.scene import Scene, roles
from auditor.reading.starts import Start
from auditor.reading.walker import walker

HEADING = Row(
    id="heading that denies", kind="denial", phrases=("what it doesn't have:",), reason="a heading denies what it lists"
)


CROSSED = Row(id="crossed out", kind="denial", phrases=("❌",), reason="a cross before or behind what a copy hasn't got")
_CROSS = Start(lambda word: word in roles()["crosses"])


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


def crossed(scene: Scene) -> list[tuple[Phrase, int, int]]:
    """ "❌ writing ✅ jacket", "Signed ❌": each cross with the words that it denies. Where a line ends in a mark its marks
    answer what stands before them. A cross before "no stains" is a bullet."""
    found = []
    for at in scene.starting(_CROSS):
        clause = scene.clause(at)
        if not _answering(scene, at):
            clause = scene.clause(at + 1) if at + 1 < len(scene.norm) else clause
            if any(cue.row.kind == "denial" for cue in scene.cues_between(clause.first, clause.last)):
                continue
        if scene.norm[clause.first : clause.last] != [scene.norm[at]]:
            found.append((Phrase(CROSSED, at, at + 1), clause.first, clause.last))
    return found


def _answering(scene: Scene, at: int) -> bool:
    """Whether the line around a mark ends in one."""
    line = scene.norm[at : scene.norm.index("\n", at)] if "\n" in scene.norm[at:] else scene.norm[at:]
    last = next((word for word in reversed(line) if word != "."), "")
    return last in roles()["crosses"] or last in roles()["ticks"]
