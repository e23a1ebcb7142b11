"""The state of a listing's questions, from its readings and from what the collector did."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal, NamedTuple

from auditor.knowledge.points import PointSet
from auditor.values import Question
from auditor.watchlist.compare import told_points
from auditor.watchlist.values import Act, ActKind, Reading, Watched, day_of

State = Literal["open", "asked", "answered", "settled"]
Sets = Mapping[str, PointSet]


@dataclass(frozen=True, slots=True)
class Asked:
    """A question and how it stands. ``how`` tells what brought it there, ``at`` when.

    ``answered``: a later text tells what was asked for, or the collector marked it. ``settled``: asked, and no longer needed, as
    other words settled the claim.
    """

    question: Question
    state: State
    at: str = ""
    how: str = ""


def states(watched: Watched, sets: Sets) -> tuple[Asked, ...]:
    """Each question that is asked for now, or was asked of the seller; the latter in the order they came."""
    return list(walk(watched, sets))[-1].after


def waiting(asked: Sequence[Asked]) -> tuple[Question, ...]:
    """Those that were asked of the seller and have no answer yet."""
    return tuple(each.question for each in asked if each.state == "asked")


class Step(NamedTuple):
    """One event with the state of the questions before and after it."""

    event: Act | Reading
    before: tuple[Asked, ...]
    after: tuple[Asked, ...]


def walk(watched: Watched, sets: Sets) -> Iterator[Step]:
    """All that happened, by time; at the same moment a reading comes before what the collector made of it."""
    found: dict[str, Asked] = {}
    every: list[Act | Reading] = [*watched.readings, *watched.acts]
    for event in sorted(every, key=lambda event: event.at):
        before = tuple(found.values())
        found = _after_act(found, event) if isinstance(event, Act) else _after_reading(found, event, sets)
        yield Step(event, before, tuple(found.values()))


def _answers(question: Question, reading: Reading, sets: Sets) -> tuple[str, ...]:
    """The words of a reading that tell some of the points asked for; empty where none does."""
    verdict, listing = reading.verdict, reading.listing
    told = told_points(verdict, sets.get(verdict.work or ""))
    return tuple(
        dict.fromkeys(
            " ".join(text[claim.start : claim.end].split())
            for text, claims in ((listing.title or "", verdict.title_claims), (listing.text, verdict.claims))
            for claim in claims
            if told.get(claim.key, frozenset()) & set(question.points)
        )
    )


def _after_act(found: dict[str, Asked], act: Act) -> dict[str, Asked]:
    if act.kind not in ("asked", "answered") or act.place not in found:
        return found
    how = f"{'asked' if act.kind == 'asked' else 'marked as answered'} on {day_of(act.at)}"
    more = f": {act.words}" if act.words else ""
    return {**found, act.place: replace(found[act.place], state=act.kind, at=act.at, how=f"{how}{more}")}


def _after_reading(found: dict[str, Asked], reading: Reading, sets: Sets) -> dict[str, Asked]:
    needed = {question.place: question for question in reading.verdict.questions}
    after: dict[str, Asked] = {}
    for place, asked in found.items():
        if asked.state == "asked" and place not in needed:
            words = _answers(asked.question, reading, sets)
            day = day_of(reading.at)
            quoted = ", ".join(f"“{each}”" for each in words)
            after[place] = (
                replace(asked, state="answered", at=reading.at, how=f"the text of {day} answers it: {quoted}")
                if words
                else replace(asked, state="settled", at=reading.at, how=f"no longer needed since the text of {day}")
            )
        elif asked.state != "open" and (place not in needed or _still(asked, needed[place])):
            after[place] = asked
    return {**{place: Asked(question, "open") for place, question in needed.items()}, **after}


def _still(asked: Asked, needed: Question) -> bool:
    """Whether a question that is still needed stays as it stands: what was answered is open again where more is to be shown."""
    return asked.state == "asked" or (asked.state == "answered" and set(needed.points) <= set(asked.question.points))


def to_mark(watched: Watched, kind: ActKind, places: Sequence[str], sets: Sets) -> tuple[Question, ...]:
    """The questions of these places; where none is named those that wait for it: open ones to ask, asked ones to answer.

    Raises ValueError where there is none, telling the places that there are.
    """
    known = states(watched, sets)
    if places:
        by_place = {each.question.place: each.question for each in known}
        if unknown := [place for place in places if place not in by_place]:
            raise ValueError(
                f"no question about {unknown[0]!r}: expected {', '.join(map(repr, by_place)) or 'none, as all is told'}"
            )
        return tuple(by_place[place] for place in places)
    waits = "open" if kind == "asked" else "asked"
    found = tuple(each.question for each in known if each.state == waits)
    if not found:
        raise ValueError(f"#{watched.key} has no question that is {waits}")
    return found
