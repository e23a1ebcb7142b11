"""What the watchlist keeps of a listing. Times are UTC, ISO 8601 with microseconds, so that they sort as strings."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime
from typing import Literal

from auditor.values import Listing, Verdict

ActKind = Literal["asked", "answered", "note", "decision"]


@dataclass(frozen=True, slots=True)
class Reading:
    """A listing as it stood when it was read, and what its words left open then."""

    at: str
    listing: Listing
    verdict: Verdict


@dataclass(frozen=True, slots=True)
class Act:
    """What the collector did: asked for what ``place`` shows, marked that as answered, wrote a note or a decision."""

    at: str
    kind: ActKind
    words: str = ""
    place: str = ""


@dataclass(frozen=True, slots=True)
class Watched:
    """One listing on the list. ``readings``, oldest first, are never empty; ``seen`` is when it was last looked at."""

    key: int
    readings: tuple[Reading, ...]
    acts: tuple[Act, ...]
    seen: str

    @property
    def listing(self) -> Listing:
        return self.readings[-1].listing

    @property
    def verdict(self) -> Verdict:
        return self.readings[-1].verdict

    @property
    def decision(self) -> str:
        """The last one written, empty if there is none."""
        return next((act.words for act in reversed(self.acts) if act.kind == "decision"), "")

    @property
    def notes(self) -> tuple[str, ...]:
        return tuple(act.words for act in self.acts if act.kind == "note")

    @property
    def name(self) -> str:
        """Its title, or how its text begins, on one line."""
        words = " ".join((self.listing.title or self.listing.text[:300]).split())
        return words if len(words) <= 70 else f"{words[:69]}…"


def moment(day: date | None = None) -> str:
    """Now, or the same time of another day: what is entered one after the other stays in that order."""
    now = datetime.now().astimezone()
    then = now if day is None else datetime.combine(day, now.time()).astimezone()
    return then.astimezone(UTC).isoformat(timespec="microseconds")


def day_of(at: str) -> str:
    """The day of a moment where the reader is: ``2025-09-02``."""
    return datetime.fromisoformat(at).astimezone().date().isoformat()
