"""Whole numbers in figures or words: "1,500", "forty", "twenty-one", "two hundred and fifty", "fifteen hundred"."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import Any

from auditor.knowledge import lexicon


@cache
def counting(name: str) -> dict[str, Any]:
    """A table of lexicon/counts.toml, lists as frozensets."""
    found = lexicon.table("counts")[name]
    return {key: frozenset(value) if isinstance(value, list) else value for key, value in found.items()}


def count_at(norm: Sequence[str], index: int) -> tuple[int, int] | None:
    """The number that begins at a word and the word behind it."""
    word = norm[index]
    if not word[0].isdecimal():
        return spelled(norm, index) if word in openers() else None
    plain = word.replace(",", "")
    if plain.isdecimal() and plain.isascii():
        grouped = all(len(piece) == 3 for piece in word.split(",")[1:])
        return (int(plain), index + 1) if grouped and len(plain) <= 7 else None
    return None


@cache
def openers() -> frozenset[str]:
    """Words besides figures that a number may begin with."""
    return frozenset({*counting("ones"), *counting("tens"), "a", "an"})


def below_hundred(norm: Sequence[str], index: int) -> tuple[int, int] | None:
    """ "Seven", "twenty", "twenty-one", "twenty one"."""
    ones, tens = counting("ones"), counting("tens")
    if index >= len(norm):
        return None
    word = norm[index]
    if word in ones:
        return ones[word], index + 1
    if word not in tens:
        return None
    at = index + 1 + (norm[index + 1 : index + 2] == ["-"])
    if at < len(norm) and 0 < ones.get(norm[at], 0) < 10:
        return tens[word] + ones[norm[at]], at + 1
    return tens[word], index + 1


def spelled(norm: Sequence[str], index: int) -> tuple[int, int] | None:
    """A number in words; "a" counts as one before a scale ("a hundred")."""
    scales = counting("scales")
    total = 0
    at = index
    group = below_hundred(norm, at)
    if group is None and norm[at] in ("a", "an") and norm[at + 1 : at + 2] and norm[at + 1] in scales:
        group = (1, at + 1)
    if group is None:
        return None
    value, at = group
    while at < len(norm):
        step = at + (norm[at] == "-")
        if step < len(norm) and norm[step] in scales:
            scale = scales[norm[step]]
            total, value = (total + value * scale, 0) if scale == 1000 else (total, value * scale)
            at = step + 1
            continue
        step = at + (norm[at] in ("and", "-"))
        more = below_hundred(norm, step) if norm[at - 1] in scales else None
        if more is None:
            break
        value, at = value + more[0], more[1]
    return total + value, at
