"""Book clubs: what a gutter code dates, which tells point to a club copy. The rows stand in lexicon/bookclub.toml."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Literal

from auditor.knowledge import lexicon

# A letter (rarely two) for the year and up to three digits for the week, either way round (ISFDB wiki, "Gutter Codes").
_CODE = re.compile(r"(?P<letter>[A-Z])[A-Z]?\s*(?P<week>\d{1,3})|(?P<week_first>\d{1,2})\s*(?P<letter_last>[A-Z])")
_LAST_WEEK = 53


@dataclass(frozen=True, slots=True)
class Tell:
    """What sets a club copy apart. ``strength``: decisive, strong, moderate, weak, dating only, warning or none."""

    id: str
    feature: str
    where: str
    meaning: str
    strength: Literal["decisive", "strong", "moderate", "weak", "dating only", "warning", "none"]
    clubs: str
    source: str
    exceptions: str = ""
    urls: tuple[str, ...] = ()


def gutter_years(code: str) -> tuple[int, ...]:
    """The years that a gutter code's letter may mean, earliest first: ``"P6"`` is 1974 or 1985. () if it is no such code.

    The code dates the making of the copy, trade or club; it goes some weeks ahead of publication.
    """
    match = _CODE.fullmatch(code.strip().upper())
    if not match or not 1 <= int(match["week"] or match["week_first"]) <= _LAST_WEEK:
        return ()
    return _letters().get(match["letter"] or match["letter_last"], ())


@cache
def tells() -> dict[str, Tell]:
    """The tells of club copies by id."""
    return {row["id"]: Tell(**{**row, "urls": tuple(row.get("urls", ()))}) for row in lexicon.table("bookclub")["tells"]}


@cache
def _letters() -> dict[str, tuple[int, ...]]:
    return {row["letter"]: tuple(row["years"]) for row in lexicon.table("bookclub")["gutter_letters"]}
