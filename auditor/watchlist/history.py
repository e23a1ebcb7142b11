"""All that happened to a listing on the list, oldest first, in people's words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from auditor.watchlist.asked import Sets, Step, waiting, walk
from auditor.watchlist.compare import Change, compare, same_words
from auditor.watchlist.values import Act, Reading, Watched


@dataclass(frozen=True, slots=True)
class Entry:
    """What came at one moment: ``head`` names it, ``lines`` tell it. ``changes`` are those of a further reading."""

    at: str
    head: str
    lines: tuple[str, ...] = ()
    changes: tuple[Change, ...] = ()


def history(watched: Watched, sets: Sets) -> tuple[Entry, ...]:
    """The entries, oldest first; a reading that changed nothing has none. ``sets`` are the point sets by stem."""
    return tuple(_entries(watched, sets))


def last_changed(entries: tuple[Entry, ...]) -> Entry | None:
    """The last entry in which the listing itself changed."""
    return next((entry for entry in reversed(entries) if entry.changes), None)


def _entries(watched: Watched, sets: Sets) -> Iterator[Entry]:
    before: Reading | None = None
    for step in walk(watched, sets):
        if isinstance(step.event, Act):
            yield _act(step.event)
        elif before is None:
            before = step.event
            asking = before.listing.asking
            lines = (
                f"The price asked is {asking}." if asking else "No price is told.",
                f"It stands as {before.verdict.standing}.",
            )
            yield Entry(before.at, "Put on the list", lines)
        else:
            changes = compare(before, step.event, sets.get(step.event.verdict.work or ""), waiting(step.before))
            head = "Read anew, the words unchanged" if same_words(before.listing, step.event.listing) else "The listing changed"
            if any(change.kind == "price" for change in changes):
                head = "The listing changed"
            if changes:
                yield Entry(step.event.at, head, (*(change.text for change in changes), *_came_of(step)), changes)
            before = step.event


def _act(act: Act) -> Entry:
    match act.kind:
        case "asked":
            return Entry(act.at, f"You asked about: {act.place}", (act.words,) if act.words else ())
        case "answered":
            return Entry(act.at, f"You marked as answered: {act.place}", (act.words,) if act.words else ())
        case "note":
            return Entry(act.at, "Note", (act.words,))
        case "decision":
            return Entry(act.at, "Decision", (act.words,))


def _came_of(step: Step) -> Iterator[str]:
    """What a reading made of questions that waited."""
    waited = {each.question.place for each in step.before if each.state == "asked"}
    for each in step.after:
        if each.question.place in waited and each.state in ("answered", "settled"):
            yield f"Your question ({each.question.place}) is {'answered' if each.state == 'answered' else 'no longer needed'}."
