"""The ruler: printings along one axis, a bar for what is left open of the book, one for the jacket, the overlap marked."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from textwrap import wrap
from typing import NamedTuple

from auditor.knowledge.points import Copies, Edition, PointSet
from auditor.reports.screen import safe
from auditor.reports.told import Told, parsed, told
from auditor.values import Verdict

_MOST_MARKS = 14
_EVERY_PRINTING_TO = 10
_NAME = 14  # columns that an edition takes at least, to tell its name
_MARGIN = 12
_WORDS = 40  # of a statement, behind its bar


class Mark(NamedTuple):
    """One place on the axis: a printing, a run of printings nothing tells apart (``last`` None: and on), or a state of one."""

    edition: str
    first: int
    last: int | None
    state: str = ""

    @property
    def label(self) -> str:
        if self.last == self.first:
            return f"{self.first}{self.state}"
        return f"{self.first}+" if self.last is None else f"{self.first}-{self.last}"

    def within(self, ranges: Iterable[Copies]) -> bool:
        """Whether some range reaches this place."""
        return any(
            copies.edition == self.edition
            and (self.last is None or copies.first <= self.last)
            and (copies.last is None or self.first <= copies.last)
            and (not copies.state or not self.state or copies.state == self.state)
            for copies in ranges
        )


class Signs(NamedTuple):
    """The characters that the ruler is drawn with."""

    book: str
    jacket: str
    both: str
    none: str
    line: str
    part: str


FINE = Signs("█", "▒", "▲", "·", "─", "│")
PLAIN = Signs("#", "=", "^", ".", "-", "|")


def ruler(verdict: Verdict, work: PointSet, *, width: int, signs: Signs = FINE) -> list[str]:
    """The ruler's lines, none where nothing was weighed. An axis wider than ``width`` goes on below itself."""
    if verdict.book is None and verdict.jacket is None:
        return []
    book, jacket, claimed = parsed(verdict.book), parsed(verdict.jacket), parsed(verdict.claimed)
    statements = told(verdict, work)
    marks = axis(work, [*book, *jacket, *claimed])
    count = Counter(mark.edition for mark in marks)
    widths = {
        edition: max([_NAME // count[edition]] + [len(mark.label) + 2 for mark in marks if mark.edition == edition])
        for edition in count
    }
    lines: list[str] = []
    for part in _folded(marks, widths, width - _MARGIN):
        both = [mark.within(book) and mark.within(jacket) for mark in part]
        draw = _Drawing(part, widths, signs)
        lines += [
            *(_row("", names) for names in draw.names(work, width - _MARGIN)),
            _row("printing", draw.cells([mark.label for mark in part])),
            _row("claimed", draw.brackets([mark.within(claimed) for mark in part])) if claimed else "",
            *_statements(statements["book"], part, draw),
            _row("book", draw.bar([mark.within(book) for mark in part], signs.book)) if verdict.book is not None else "",
            *_statements(statements["jacket"], part, draw),
            _row("jacket", draw.bar([mark.within(jacket) for mark in part], signs.jacket)) if verdict.jacket is not None else "",
            _row("both", draw.cells([signs.both if here else "" for here in both])) if any(both) else "",
        ]
    return [line for line in lines if line.strip()]


def axis(work: PointSet, told: Sequence[Copies]) -> list[Mark]:
    """The places that tell something apart, edition by edition; only editions that are spoken of, all where none is."""
    spoken = {copies.edition for copies in told} or {edition.id for edition in work.editions}
    editions = [edition for edition in work.editions if edition.id in spoken]
    known = [copies for point in work.points for reading in point.readings for copies in reading.copies]
    marks = [mark for edition in editions for mark in _marks(edition, [*told, *known], every=True)]
    if len(marks) > _MOST_MARKS:
        marks = [mark for edition in editions for mark in _marks(edition, told, every=False)]
    return marks


def _marks(edition: Edition, ranges: Sequence[Copies], *, every: bool) -> list[Mark]:
    own = [copies for copies in ranges if copies.edition == edition.id]
    last = edition.printings
    starts = {1} | {copies.first for copies in own} | {copies.last + 1 for copies in own if copies.last is not None}
    if every and last is not None and last <= _EVERY_PRINTING_TO:
        starts |= set(range(1, last + 1))
    inside = sorted(start for start in starts if last is None or start <= last)
    marks: list[Mark] = []
    for start, following in zip(inside, [*inside[1:], None], strict=True):
        end = following - 1 if following is not None else last
        states = sorted({copies.state for copies in own if copies.state and copies.first == start})
        marks += [Mark(edition.id, start, end, state) for state in states or [""]]
    return marks


def _statements(statements: Sequence[Told], part: Sequence[Mark], draw: _Drawing) -> Iterator[str]:
    """A thin bar for what each statement leaves, its words behind it; one that leaves everything isn't drawn."""
    for one in statements:
        inside = [mark.within(one.leaves) for mark in part]
        if not all(inside):
            yield f"{_row('', draw.bar(inside, draw.signs.line))}  {safe(one.words)[:_WORDS]}"


def _row(name: str, cells: str) -> str:
    return f"  {name:<9} {cells}".rstrip()


def _folded(marks: Sequence[Mark], widths: Mapping[str, int], room: int) -> Iterator[list[Mark]]:
    """The axis in pieces that fit into ``room`` columns, at least one place each."""
    part: list[Mark] = []
    for mark in marks:
        if part and sum(widths[each.edition] + 1 for each in [*part, mark]) - 1 > room:
            yield part
            part = []
        part.append(mark)
    yield part


class _Drawing(NamedTuple):
    """One stretch of the axis, drawn row by row: a cell for each place, editions parted by a line."""

    marks: Sequence[Mark]
    widths: Mapping[str, int]
    signs: Signs

    def cells(self, words: Sequence[str]) -> str:
        drawn = ""
        for number, (mark, word) in enumerate(zip(self.marks, words, strict=True)):
            parting = "" if not number else " " if self.marks[number - 1].edition == mark.edition else self.signs.part
            drawn += parting + word.center(self.widths[mark.edition])
        return drawn

    def bar(self, inside: Sequence[bool], sign: str) -> str:
        return self.cells(
            [sign * self.widths[mark.edition] if here else self.signs.none for mark, here in zip(self.marks, inside, strict=True)]
        )

    def brackets(self, inside: Sequence[bool]) -> str:
        """A bracket round each unbroken run of places."""
        line = self.signs.line
        drawn: list[str] = []
        for number, (mark, here) in enumerate(zip(self.marks, inside, strict=True)):
            before = number > 0 and inside[number - 1] and self.marks[number - 1].edition == mark.edition
            behind = number + 1 < len(inside) and inside[number + 1] and self.marks[number + 1].edition == mark.edition
            drawn.append(
                f"{line if before else '['}{line * (self.widths[mark.edition] - 2)}{line if behind else ']'}" if here else ""
            )
        return self.cells(drawn).replace(f"{line} {line}", line * 3)

    def names(self, work: PointSet, room: int) -> list[str]:
        """The editions' names over their places, on as many lines as they need; only the last may run on into the free room."""
        columns: list[tuple[int, list[str]]] = []
        for edition in dict.fromkeys(mark.edition for mark in self.marks):
            own = sum(self.widths[edition] + 1 for mark in self.marks if mark.edition == edition) - 1
            free = room - sum(width + 1 for width, _ in columns) if edition == self.marks[-1].edition else own
            columns.append((own, wrap(work.edition(edition).name, max(free, own))))
        height = max(len(lines) for _, lines in columns)
        rows = (
            [("" if number >= len(lines) else lines[number]).ljust(own) for own, lines in columns] for number in range(height)
        )
        return [self.signs.part.join(row) for row in rows]
