"""What rows of figures are made of: numbers, word lists, the maker's letters and the years beside them."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

from auditor.knowledge import lexicon
from auditor.reading.scene import Scene, roles

LETTERS = "abcdefghijklmnopqrstuvwxyz"


class Row(NamedTuple):
    """A row's value and the words ``first`` up to and without ``last``."""

    value: str
    first: int
    last: int


@cache
def listed(name: str) -> frozenset[str]:
    """A word list of lexicon/lines.toml."""
    return frozenset(lexicon.table("lines")[name])


def number(word: str) -> int | None:
    """A figure of one or two digits, or a number word."""
    if word.isdecimal():
        return int(word) if len(word) <= 2 else None
    named: int | None = roles()["numbers"].get(word)
    return named


def written_out(first: int, last: int) -> str:
    """All numbers from one end to the other."""
    step = 1 if last > first else -1
    return " ".join(str(one) for one in range(first, last + step, step))


def with_makers(scene: Scene, row: Row) -> Row:
    """The row with the maker's letters right beside it, and the years behind those: "10 9 8 7 6 RRD", "10 9 8 7 QWF 04 05 06"."""
    norm, end = scene.norm, _makers(scene, row.last)
    if end > row.last and (end == len(norm) or not scene.words.text[scene.words.start[end]].isupper()):
        years = _years(norm, end)
        return Row(f"{row.value} {scene.words.quote(row.last, years)}", row.first, years)
    first = row.first
    if maker(scene, first - 1):
        first -= 1
    elif maker(scene, first - 1, closed=False) and first > 2 and norm[first - 2] == "-" and maker(scene, first - 3):
        first -= 3
    if 0 < first < row.first and norm[first - 1] == "-" and maker(scene, first - 2):
        first -= 2
    opened = first == 0 or not norm[first - 1][0].isalnum() or norm[first - 1] in listed("before_makers")
    spaced = scene.words.start[row.first] - scene.words.end[row.first - 1] == 1 if row.first else False
    if first < row.first and spaced and opened:
        return Row(f"{scene.words.quote(first, row.first)} {row.value}", first, row.last)
    return row


def years_before(scene: Scene, first: int) -> int:
    """The place of a row behind years and a maker's letters that begin here ("04 05 06 QWF 10 9 8 7"), or ``first``."""
    years = _years(scene.norm, first)
    end = _makers(scene, years, closed=False) if years > first else first
    return end if end > years else first


def _makers(scene: Scene, index: int, closed: bool = True) -> int:
    """The word behind a maker's letters ("RRD", "RRD-H") that begin one blank behind the last word, or ``index``."""
    if not maker(scene, index, closed) or scene.words.start[index] - scene.words.end[index - 1] != 1:
        return index
    return index + 3 if scene.norm[index + 1 : index + 2] == ["-"] and maker(scene, index + 2, closed=False) else index + 1


def _years(norm: list[str], first: int) -> int:
    """The word behind two or more years, each the next one's neighbour ("98 99 00", "2004 2005"), or ``first``."""
    at = first
    while at < len(norm) and norm[at].isdecimal() and len(norm[at]) in (2, 4):
        if at > first and abs(int(norm[at]) - int(norm[at - 1])) not in (1, 99):
            break
        at += 1
    told = norm[first] if first < len(norm) else ""
    return at if at - first > 1 and (len(told) == 4 or told[0] in "06789") else first


def maker(scene: Scene, index: int, closed: bool = True) -> bool:
    """Whether a word can be a maker's letters; ``closed`` leaves out the trade's own abbreviations."""
    if not 0 <= index < len(scene.norm):
        return False
    text = scene.words.text[scene.words.start[index] : scene.words.end[index]]
    return text.isalpha() and text.isupper() and len(text) <= 4 and not (closed and scene.norm[index] in listed("no_makers"))
