"""What intake yields: listings, what could not be read, and notes on how the rest was taken."""

from __future__ import annotations

from dataclasses import dataclass

from auditor.values import Listing, Reject


@dataclass(frozen=True, slots=True)
class Note:
    """Something recognised or decided on the way in, for people: ``source`` is the file it is said of."""

    source: str
    text: str


Item = Listing | Reject | Note
