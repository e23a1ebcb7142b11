"""A line of words as one point hears it: "the red bird" is its kingfisher, "violet" its purple, a bare "87" its page 87.

lexicon/point_things.toml names what may stand for a reading's word. Whether it does is asked point by point, so that a word may
stand for one thing in one set and for another in the next.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.points.lexis import Token, colours, stem
from auditor.reading.points.table import lexis

_NO_PAGE = {"$", "£", "/", "€", "x", "×", "mm", "cm", "mo", "c", "cent", "pence", "shilling", "dollar", "inch", "copies", "page"}


@cache
def _things() -> dict[str, frozenset[str]]:
    """By the stem of a reading's word: the stems that may stand for it."""
    found: dict[str, frozenset[str]] = {}
    for key, listed in lexicon.table("point_things").items():
        one = stem(key)
        found[one] = found.get(one, frozenset()) | {stem(word) for word in listed} - {one}
    return found


def aliases_of(needs: Iterable[str], homes: Iterable[str]) -> dict[str, tuple[str, ...]]:
    """What each word may stand for at a point with these needs; never a word of the point's own, and of two colours none."""
    own = {need.split("@")[0] for need in needs if need[0] != "#"} | {home for home in homes if home in _things()}
    found: dict[str, list[str]] = {}
    for need in sorted(own):
        for word in _things().get(need, ()):
            if word not in own and word not in lexis()["generic"]:
                found.setdefault(word, []).append(need)
    shades = colours()
    return {word: tuple(named) for word, named in found.items() if len(named) == 1 or shades.isdisjoint(named)}


def heard_as(line: Sequence[Token], aliases: dict[str, tuple[str, ...]], pages: frozenset[str]) -> list[Token]:
    """The line with such words as what they stand for; the same list where there are none."""
    found: list[Token] = []
    for number, (at, one) in enumerate(line):
        for other in aliases.get(one, (one,)):
            found.append((at, other))
        if one.isdecimal() and f"page{one}" in pages and _may_be_page(line, number):
            found.append((at, f"page{one}"))
    return found


def _may_be_page(line: Sequence[Token], number: int) -> bool:
    """Whether a bare figure may be a page: no price, measure or count."""
    one = line[number][1]
    around = {word for _, word in (*line[max(0, number - 1) : number], *line[number + 1 : number + 2])}
    return len(one) > 1 and around.isdisjoint(_NO_PAGE) and not any(re.fullmatch(r"page\d+", word) for word in around)
