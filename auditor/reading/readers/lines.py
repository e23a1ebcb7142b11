"""Number lines: copied out, told by their ends, called full or wanting, or not looked at."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from auditor.reading.readers.figure_rows import row_at
from auditor.reading.readers.line_ends import STRONG, WEAK, counted_down, line_draft
from auditor.reading.readers.row_words import LETTERS, listed, number, written_out
from auditor.reading.readers.told_lines import told_of
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.starts import Start
from auditor.values import Stance

_AROUND = 12


def read_lines(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``number_line``. What only looks like one (telephone, size, ISBN, date) is left alone."""
    rows: list[Draft] = []
    signs = [phrase.first for phrase in scene.content if phrase.row.sign in (STRONG, WEAK)]
    index = 0
    for at in scene.starting(_START):
        if at < index:
            continue
        draft = _row(scene, at, signs)
        if draft is not None:
            rows.append(draft)
            yield draft
        index = draft.last if draft is not None else _behind_number(scene, at)
    for phrase in scene.content:
        if phrase.row.sign in (STRONG, WEAK) and not any(row.first <= phrase.first < row.last for row in rows):
            told = list(told_of(scene, phrase, rows))
            rows += [draft for draft in told if draft.value]
            yield from told
    for at in scene.starting(_DOWN):
        down = counted_down(scene, at)
        if down is not None and not any(abs(row.first - at) < _AROUND for row in rows):
            yield down


@cache
def _starters() -> frozenset[str]:
    """Words besides figures that a row may begin with: numbers in words and stretches of the alphabet."""
    stretches = {LETTERS[first:last] for first in range(26) for last in range(first + 1, 27)}
    return frozenset(stretches | set(roles()["numbers"]))


_DOWN = Start(lambda word: word == "down")
_START = Start(lambda word: word[0].isdecimal() or word in _starters())


def _behind_number(scene: Scene, index: int) -> int:
    """The next word to look at: not inside a longer run of figures, which is no line then."""
    if not scene.norm[index].isdecimal():
        return index + 1
    while index + 1 < len(scene.norm) and scene.norm[index + 1].isdecimal():
        index += 1
    return index + 1


def _row(scene: Scene, index: int, signs: Sequence[int]) -> Draft | None:
    figure = number(scene.norm[index])
    signed = bool(signs) and _signed(scene, index, signs)
    if figure is not None and (span := _span(scene, index, figure, signed)) is not None:
        return span
    row = row_at(scene, index, signed)
    return line_draft(row.value, row.first, row.last, _seen(scene, row.first)) if row is not None else None


def _signed(scene: Scene, index: int, signs: Sequence[int]) -> bool:
    """Whether words near by name a number line."""
    clause = scene.clause(index)
    first, last = max(clause.first - 4, index - _AROUND, 0), min(index + _AROUND, clause.last)
    return any(first <= sign < last for sign in signs)


def _seen(scene: Scene, index: int) -> Stance | None:
    """A row copied out was seen: doubts behind it are about what it means. Only cues right before it bear on the row itself."""
    clause = scene.clause(index)
    before = [cue for cue in scene.cues_between(clause.first, index) if cue.row.direction != "back"]
    kinds = {cue.row.kind for cue in before}
    if clause.end == "?" or kinds & {"elsewhere", "denial"}:
        return None
    doubts = [cue for cue in before if cue.row.kind in ("hedge", "unchecked")]
    own = [cue for cue in doubts if not {",", *listed("grounds")} & set(scene.norm[cue.last : index])]
    return None if own else "asserted"


def _span(scene: Scene, index: int, start: int, signed: bool) -> Draft | None:
    """A line told by its two ends: "1-10", "ten down to three", "start at 10 and stop at 4"."""
    norm, between = scene.norm, []
    if index and norm[index - 1] in listed("not_before"):
        return None
    at, clause = index + 1, scene.clause(index)
    while at < clause.last and norm[at] in listed("to_words") and at - index <= 7:
        between.append(norm[at])
        at += 1
    end = number(norm[at]) if at < clause.last and between else None
    if (
        end is None
        or not set(between) & listed("span_words")
        or not 0 < min(start, end) < max(start, end) <= 40
        or abs(start - end) < 2
    ):
        return None
    whole = (start, end) == (10, 1) and bool({"down", "through", "thru"} & set(between))
    if (
        not (signed or whole)
        or between == [","]
        or norm[at + 1 : at + 2] in (["-"], ["/"], ["x"], ["inches"], ["mm"], ["cm"], ["days"])
    ):
        return None
    return line_draft(written_out(start, end), index, at + 1, _seen(scene, index))
