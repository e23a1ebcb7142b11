"""The watchlist on the terminal: the list as a table, one listing with its history, and what a save brought."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from rich import box
from rich.console import Console
from rich.table import Table
from rich.text import Text

from auditor.reports.screen import indented, safe
from auditor.reports.words import CAUTION
from auditor.watchlist.history import Entry
from auditor.watchlist.keeping import Kept
from auditor.watchlist.order import Row
from auditor.watchlist.values import day_of

_SCORES = ("missing", "contra-\ndiction", "over-\nclaim")
_NUMBERS = ("#", "asked", *_SCORES)
_HEADS = (
    *("#", "title", "asked", "figures for\nwhat is shown", "standing"),
    *_SCORES,
    *("questions", "last change", "decision"),
)
_LEAST = {"title": 16, "figures for\nwhat is shown": 13, "last change": 11, "decision": 10}  # columns, so that no word is cut
_WIDE = 100  # a narrower screen goes without the scores


def listed(rows: Sequence[Row], screen: Console) -> None:
    """The table and the caution."""
    if not rows:
        screen.print("The list is empty: auditor watch add PATH puts listings on it.")
        return
    told = [tuple(_cells(row)) for row in rows]
    shown = [place for place in range(len(_HEADS)) if any(cells[place] for cells in told)]  # a column of nothing takes room
    if screen.width < _WIDE:
        shown = [place for place in shown if _HEADS[place] not in _SCORES]
    table = Table(box=box.SIMPLE_HEAD, pad_edge=False)
    for place in shown:
        head = _HEADS[place]
        words = head in ("title", "figures for\nwhat is shown", "last change", "decision")
        table.add_column(
            head,
            overflow="fold",
            no_wrap=not words,
            min_width=_LEAST.get(head),
            justify="right" if head in _NUMBERS else "left",
        )
    for cells in told:
        table.add_row(*(Text(safe(cells[place])) for place in shown))
    with screen.capture() as printed:
        screen.print(table)
    print(re.sub(r" +$", "", printed.get().strip("\n"), flags=re.M), file=screen.file)
    for row in rows:
        if row.elsewhere:
            indented(screen, Text(f"#{row.watched.key}: {also_in(row.elsewhere)}"), 0)
    indented(screen, Text(CAUTION, style="italic"), 0)


def kept_in_time(row: Row, screen: Console) -> None:
    """What the list knows of a listing beside its report: history, questions, notes and decision."""
    watched = row.watched
    _part(screen, f"#{watched.key} on the watchlist", list(_head(row)))
    _part(
        screen, "Its history", [line for entry in row.entries for line in (f"{day_of(entry.at)}  {entry.head}", *_under(entry))]
    )
    if row.questions:
        _part(screen, "Its questions", [f"{each.state}: {each.question.text}{_how(each.how)}" for each in row.questions])


def what_came(kept: Kept, screen: Console) -> None:
    """One save, as it was taken in."""
    listing = kept.listing
    name = safe(" ".join((listing.title or listing.text[:60]).split()))
    if kept.key is None:
        near = f" It {kept.maybe.why}: it may be #{kept.maybe.key}." if kept.maybe else ""
        indented(screen, Text(f"Not on the list, left out: {name} ({safe(listing.source or listing.id)}).{near}"), 0)
        return
    if kept.new:
        indented(screen, Text(f"#{kept.key} added: {name}"), 0)
        if kept.maybe:
            told = (
                f"It may be the same listing as #{kept.maybe.key}: it {kept.maybe.why}. If it is: auditor watch merge {kept.key}"
            )
            indented(screen, Text(f"{told} {kept.maybe.key}", style="yellow"))
        return
    indented(screen, Text(f"#{kept.key} {'changed' if kept.changes else 'as before'}: {name}"), 0)
    for change in kept.changes:
        indented(screen, Text(safe(change.text)))


def _cells(row: Row) -> Iterator[str]:
    watched, verdict = row.watched, row.watched.verdict
    yield str(watched.key)
    yield watched.name
    yield watched.listing.asking or ""
    yield str(row.prices.shown or "")
    yield verdict.standing
    yield from map(str, (verdict.scores.missing, verdict.scores.contradiction, verdict.scores.overclaim))
    yield questions_in_words(row)
    yield changed_in_words(row)
    yield watched.decision


def questions_in_words(row: Row) -> str:
    """``2 open, 1 asked``."""
    counts = ((row.count(state), state) for state in ("open", "asked", "answered"))
    return ", ".join(f"{count} {state}" for count, state in counts if count)


def changed_in_words(row: Row) -> str:
    """``2025-09-06: price, words``; empty where it never changed."""
    changed = row.changed
    return f"{day_of(changed.at)}: {', '.join(dict.fromkeys(each.kind for each in changed.changes))}" if changed else ""


def _head(row: Row) -> Iterator[str]:
    watched = row.watched
    yield f"added on {day_of(watched.readings[0].at)}, last looked at on {day_of(watched.seen)}"
    if watched.listing.asking:
        told = [f"figures for what is {word}: {band}" for word, band in _bands(row)]
        yield "; ".join([f"asked {watched.listing.asking}", *told])
    if row.elsewhere:
        yield also_in(row.elsewhere)
    if watched.decision:
        yield f"decision: {watched.decision}"


def _bands(row: Row) -> Iterator[tuple[str, object]]:
    if row.prices.shown:
        yield "shown", row.prices.shown
    if row.prices.claimed and row.prices.claimed != row.prices.shown:
        yield "claimed", row.prices.claimed


def _under(entry: Entry) -> Iterator[str]:
    yield from (f"    {line}" for line in entry.lines)


def _how(how: str) -> str:
    return f" ({how})" if how else ""


def _part(screen: Console, heading: str, lines: Sequence[str]) -> None:
    screen.print(Text(heading, style="bold underline"))
    for line in lines:
        words = line.lstrip(" ")
        indented(screen, Text(safe(words)), 2 + len(line) - len(words))
    screen.print()


def also_in(others: tuple[int, ...]) -> str:
    """``These words also stand in #3 and #7: they may describe another copy.``; empty where they stand in none."""
    names = [f"#{key}" for key in others]
    told = " and ".join([", ".join(names[:-1]), names[-1]] if len(names) > 1 else names)
    return f"These words also stand in {told}: they may describe another copy." if names else ""
