"""Numbers in words: "forty-four" is 44, "one hundred and thirty one" 131, "twenty-first" 21st, "XIX" 19."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache

from auditor.knowledge.english import right_words
from auditor.reading.points.table import lexis
from auditor.reading.scene import roles

_ROMAN = {"i": 1, "v": 5, "x": 10, "l": 50, "c": 100, "d": 500, "m": 1000}
_ROMAN_FORM = re.compile(r"(?=.)m{0,3}(?:cm|cd|d?c{0,3})(?:xc|xl|l?x{0,3})(?:ix|iv|v?i{0,3})")


@cache
def _values() -> tuple[dict[str, int], dict[str, int]]:
    """Words below twenty and those of the tens."""
    given = lexis()["cardinals"]
    return {word: n for word, n in given.items() if n < 20}, {word: n for word, n in given.items() if n >= 20}


def number_at(norm: Sequence[str], at: int, last: int) -> tuple[str, int] | None:
    """The figure that begins at word ``at`` ("131", an ordinal as "21th") and the word behind it; single words are none."""
    small, tens = _values()
    word = norm[at]
    if word not in tens and not (word in small and norm[at + 1 : at + 2] == ["hundred"]):
        return None
    total, behind = 0, at
    if word in small:
        total, behind = small[word] * 100, at + 2
        if norm[behind : behind + 1] == ["and"] and behind + 1 < last and norm[behind + 1] in small.keys() | tens.keys():
            behind += 1
    if behind < last and norm[behind] in tens:
        total, behind = total + tens[norm[behind]], behind + 1
        unit = behind + 1 if behind < last and norm[behind] == "-" else behind
        ordinal = roles()["ordinals"].get(norm[unit]) if unit < last else None
        if ordinal is not None and ordinal < 10:
            return f"{total + ordinal}th", unit + 1
        if unit < last and small.get(norm[unit], 10) < 10:
            total, behind = total + small[norm[unit]], unit + 1
    elif behind < last and behind > at and norm[behind] in small:
        total, behind = total + small[norm[behind]], behind + 1
    return str(total), behind


def figure(word: str) -> str:
    """ "seven" as "7"; any other word as it is."""
    small, _ = _values()
    return str(small[word]) if word in small else word


def roman(word: str) -> str | None:
    """ "xix" as "19"; no English word and no letter by itself is one."""
    if len(word) < 2 or word in right_words() or not _ROMAN_FORM.fullmatch(word):
        return None
    figures = [_ROMAN[letter] for letter in word]
    return str(sum(-n if n < following else n for n, following in zip(figures, [*figures[1:], 0], strict=True)))
