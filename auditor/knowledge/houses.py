"""How publishers mark printings: the plain rule of the number line, and the houses that depart from it.

Houses and periods stand in lexicon/publishers.toml. Only rows that a page backs overrule the plain rule; the years there are
approximate, so near the end of a period its neighbour is heard as well.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Literal

from auditor.knowledge import lexicon
from auditor.knowledge.lines import letter_value, lowest

__all__ = ["House", "LineReading", "houses", "lowest", "practice", "printing_by_line"]

_LEEWAY = 1  # years that a period's ends may be out, as the table says that they are approximate
_CODED = ("letter", "letters and figures", "date letters")
_PLAIN = "the lowest number left in the line is the printing"


@dataclass(frozen=True, slots=True)
class House:
    """One house in one period; ``first`` and ``later`` tell in words what its first and later printings carry.

    ``line_style`` is None where the house prints no line. ``first_line_starts_at`` is the lowest figure on a first printing;
    with ``needs_statement`` the line means a first printing only where "First Edition" stands beside it.
    """

    publisher: str
    country: str
    from_year: int
    to_year: int
    method: str
    first: str
    later: str
    confidence: Literal["sourced", "partial", "secondary", "memory"]
    source: str
    aliases: tuple[str, ...] = ()
    line_style: Literal["numbers", "letters", "letter", "letters and figures", "date letters"] | None = None
    first_line_starts_at: int = 1
    needs_statement: bool = False
    note: str = ""
    urls: tuple[str, ...] = ()

    @property
    def backed(self) -> bool:
        return self.confidence in ("sourced", "partial")


@dataclass(frozen=True, slots=True)
class LineReading:
    """What a number line says. ``printing`` is None where it does not decide; ``reason`` tells why, for a person."""

    printing: int | None
    reason: str
    source: str


@cache
def houses() -> tuple[House, ...]:
    """Every row of the table, in its order."""
    rows = lexicon.table("publishers")["houses"]
    return tuple(House(**{**row, "aliases": tuple(row.get("aliases", ())), "urls": tuple(row.get("urls", ()))}) for row in rows)


@lru_cache(maxsize=4096)
def practice(publisher: str, year: int | None = None) -> tuple[House, ...]:
    """The rows that speak of ``publisher`` in ``year`` (of any year where it is None), the surest period first; () if unknown."""
    asked = _words(publisher)
    named = [(len(name), house) for house, names in _named() for name in names if name and name <= asked]
    closest = max((length for length, _ in named), default=0)
    rows = list({id(house): house for length, house in named if length == closest}.values())
    if year is None:
        return tuple(rows)
    near = [house for house in rows if house.from_year - _LEEWAY <= year <= house.to_year + _LEEWAY]
    return tuple(sorted(near, key=lambda house: not house.from_year <= year <= house.to_year))


def printing_by_line(
    line: str, *, publisher: str | None = None, year: int | None = None, stated_first: bool | None = None
) -> LineReading:
    """The printing that a line gives, by the publisher's practice where it is known.

    ``stated_first`` tells whether the words "First Edition" stand on the page: None where nobody told, False where they are
    known not to. That decides a line down to 2: some houses let the words stand for the 1, so with them it is a first
    printing there, without them a second, and untold it is open.
    """
    rows = practice(publisher, year) if publisher else ()
    coded = next((house for house in rows if house.backed and house.line_style in _CODED), None)
    if coded and (year is not None or all(house.line_style in (coded.line_style, None) for house in rows)):
        return _by_code(line, coded)
    figure = lowest(line)
    if figure is None:
        return LineReading(None, f"{line!r} names no printing that can be told from years, letters or codes", _rule("two_groups"))
    departs = next((house for house in rows if house.needs_statement), None)
    if departs is not None:
        return _beside_statement(figure, departs, stated_first, certain=year is not None)
    if figure == 2 and not rows and publisher is None and stated_first is not False:
        reason = "some houses let 'First Edition' stand for the 1, and the publisher isn't told"
        return LineReading(None, reason, _rule("random_house_exception"))
    return LineReading(figure, _PLAIN, _rule("lowest_number"))


def _beside_statement(figure: int, house: House, stated_first: bool | None, *, certain: bool) -> LineReading:
    """A house that lets the words stand for the 1, so that its first printing's line starts at 2."""
    name = house.publisher
    if figure > house.first_line_starts_at:
        return LineReading(figure, _PLAIN, _rule("lowest_number"))
    if figure == house.first_line_starts_at and stated_first is False:
        return LineReading(figure, f"a line from {figure} without 'First Edition' is the second printing at {name}", house.source)
    if figure == house.first_line_starts_at and stated_first and house.backed:
        reason = f"at {name} 'First Edition' stands for the 1, so the line of a first printing starts at {figure}"
        return LineReading(1, reason, house.source)
    if figure < house.first_line_starts_at and (stated_first or not certain or not house.backed):
        return LineReading(figure, _PLAIN, _rule("lowest_number"))
    return LineReading(None, f"at {name} the line decides only together with the words 'First Edition'", house.source)


def _by_code(line: str, house: House) -> LineReading:
    """Houses whose letters count printings by themselves, whatever figures stand behind them."""
    if house.line_style == "date letters":
        return LineReading(None, f"the letters of {house.publisher} date a copy; they don't number the printing", house.source)
    if house.line_style == "letter":
        if found := re.match(r"\W*([A-Z])(?![A-Za-z])", line):
            reason = f"the letter counts at {house.publisher}: A is the first printing"
            return LineReading(letter_value(found[1]), reason, house.source)
    else:
        values = [int(token) if token.isdigit() else letter_value(token) for token in re.findall(r"\d+|[A-Za-z]", line)]
        if values:
            return LineReading(min(values), f"letters and figures both count at {house.publisher}", house.source)
    return LineReading(lowest(line), _PLAIN, _rule("lowest_number"))


@cache
def _rule(name: str) -> str:
    return next(str(row["source"]) for row in lexicon.table("publishers")["general_rules"] if row["id"] == name)


@cache
def _named() -> tuple[tuple[House, tuple[frozenset[str], ...]], ...]:
    """Each row with the names of its house as words."""
    return tuple(
        (house, tuple(_words(part) for name in (house.publisher, *house.aliases) for part in name.split(" / ")))
        for house in houses()
    )


def _words(name: str) -> frozenset[str]:
    words = re.findall(r"\w+", re.sub(r"['’]s\b|\([^)]*\)", "", name.lower()))
    return frozenset(word for word in words if word not in _legal_forms())


@cache
def _legal_forms() -> frozenset[str]:
    return frozenset(lexicon.table("publishers")["legal_forms"])
