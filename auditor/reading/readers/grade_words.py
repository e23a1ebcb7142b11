"""Grades as they are written: the notations of the trade's scale with their signs, wherever they stand."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any

from auditor.knowledge import lexicon
from auditor.reading.scene import Scene
from auditor.reading.starts import Start
from auditor.reading.words import words

_SPACED = {"+": "+", "plus": "+", "minus": "-"}
_MINUSES = {"-", "—"}


@dataclass(frozen=True, slots=True)
class Grade:
    """A grade at words ``first`` up to and without ``last``; ``sure`` if it is no everyday word."""

    value: str
    first: int
    last: int
    sure: bool


@cache
def _table(name: str) -> dict[str, Any]:
    """A table of lexicon/grading.toml, lists as frozensets."""
    found = lexicon.table("grading")[name]
    return {key: frozenset(value) if isinstance(value, list) else value for key, value in found.items()}


@cache
def _notations() -> dict[str, list[tuple[tuple[str, ...], str]]]:
    """Notations as words, by first word, longest first; a hyphen may stand for a blank."""
    found: dict[str, list[tuple[tuple[str, ...], str]]] = {}
    for name, value in _table("notations").items():
        for form in {name, name.replace(" ", "-")}:
            pieces = tuple(words(form).norm)
            found.setdefault(pieces[0], []).append((pieces, value))
    for forms in found.values():
        forms.sort(key=lambda form: -len(form[0]))
    return found


def places(name: str) -> frozenset[str]:
    places: frozenset[str] = _table("places")[name]
    return places


@cache
def _openers() -> frozenset[str]:
    """Words that a grade may begin with, besides the lapses."""
    return frozenset({*_notations(), *_table("words"), *_table("letters")})


_START = Start(lambda word: word in _openers())


def written_grades(scene: Scene) -> Iterator[Grade]:
    """All notations of the scale in a text, in order."""
    mint = [phrase.first for phrase in scene.content if phrase.row.feature == "lapse"]
    behind = 0
    for index in sorted({*scene.starting(_START), *mint}) if mint else scene.starting(_START):
        found = _at(scene, index) if index >= behind else None
        if found is not None:
            value, behind, sure = _signed(scene, *found)
            yield Grade(value, index, behind, sure)


def _at(scene: Scene, index: int) -> tuple[str, int, bool] | None:
    """Value, the word behind and sureness of a grade that begins at a word. "Near mint" is no grade by the contract."""
    norm = scene.norm
    lapse = scene.at.get(index)
    if lapse is not None and (lapse.row.feature, lapse.row.value) == ("lapse", "mint"):
        near = norm[index] in ("near", "nearly") or (index > 0 and norm[index - 1] in ("near", "nearly", "almost"))
        return None if near else ("mint", lapse.last, True)
    for pieces, value in _notations().get(norm[index], ()):
        if tuple(norm[index : index + len(pieces)]) == pieces:
            return value, index + len(pieces), True
    if norm[index] in _table("words"):
        last = index + 1
        only = norm[last : last + 1] == ["only"] and norm[last + 1 : last + 2] != ["in"]
        return _table("words")[norm[index]], last + only, False
    if norm[index] in _table("letters") and _letter_place(scene, index):
        return _table("letters")[norm[index]], index + 1, True
    return None


def _signed(scene: Scene, value: str, last: int, sure: bool) -> tuple[str, int, bool]:
    """The grade with a plus or minus behind it."""
    norm, at = scene.norm, scene.words
    if (
        norm[last : last + 1] == ["."]
        and len(norm[last - 1]) <= 2
        and last + 1 < len(norm)
        and at.start[last + 1] == at.end[last]
        and norm[last + 1] in ("+", "-", "/")
    ):
        last += 1
    if last == len(norm):
        return value, last, sure
    if norm[last] in _SPACED and (norm[last] != "+" or at.start[last] - at.end[last - 1] <= 1):
        value, last = value + _SPACED[norm[last]], last + 1
        while norm[last : last + 1] == ["+"]:
            last += 1
        return value, last, True
    if norm[last] == "-" and norm[last + 1 : last + 2] in (["plus"], ["minus"]) and at.start[last] == at.end[last - 1]:
        return value + _SPACED[norm[last + 1]], last + 2, True
    if norm[last] in _MINUSES and at.start[last] == at.end[last - 1] and _is_minus(scene, last):
        return f"{value}-", last + 1, True
    return value, last, sure


def _is_minus(scene: Scene, index: int) -> bool:
    norm, at = scene.norm, scene.words
    return index + 1 >= len(norm) or at.start[index + 1] > at.end[index] or norm[index + 1] in ("/", ",", ".", ")", ";")


def lettered_item(norm: list[str], index: int) -> bool:
    """Whether a letter or a figure of a list stands before a word: "(b) G", "2) fine"."""
    return index > 1 and norm[index - 1] == ")" and (len(norm[index - 2]) == 1 or norm[index - 2].isdecimal())


def _letter_place(scene: Scene, index: int) -> bool:
    """Whether a capital letter is a grade: in a pair (F/F, G+/VG), with a sign (G+), behind a label (book G)."""
    norm, at = scene.norm, scene.words
    known = set(_table("letters")) | set(_table("notations")) | set(_table("words"))
    after = [word for word in norm[index + 1 : index + 5] if word not in ("+", "-")]
    if not scene.words.text[at.start[index]].isupper():
        return _small_pair(scene, index, known)
    before = [word for word in norm[max(0, index - 3) : index] if word not in ("+", "-")]
    if (
        after[:1] == ["/"]
        and after[1:2]
        and (after[1] in known | places("no_jacket") - {"-", "0"} or after[1] in ("dj", "near", "very"))
    ):
        return True
    if (
        (before[-2:] in (["in", "a"], ["in", "an"]) or before[-1:] == ["in"])
        and after[:1]
        and after[0] in places("jackets") | {"dust"}
    ):
        return True
    if before[-1:] == ["/"] and before[-2:-1] and before[-2] in known:
        return True
    closed = index + 1 == len(norm) or norm[index + 1] in (".", ",", ";", ")", "\n", "/", "in", "+", "-", "—", "only")
    if (
        norm[index] in ("f", "g", "fr", "gd")
        and index + 1 < len(norm)
        and norm[index + 1] in ("+", "-")
        and at.start[index + 1] == at.end[index]
        and _closed(scene, index + 2)
    ):
        return True
    if norm[index] != "an" and closed and ((before[-1:] and before[-1] in places("labels")) or lettered_item(norm, index)):
        return True
    return after[:1] == ["in"] and bool(after[1:2]) and after[1] in known | {"dj", "dw", "dustjacket", "jacket", "a"}


def _small_pair(scene: Scene, index: int, known: set[str]) -> bool:
    """ "f/f, never opened": small letters are grades in a pair that opens or closes a statement."""
    norm = scene.norm
    if norm[index + 1 : index + 2] == ["/"]:
        opens = index == scene.clause(index).first or norm[index - 1] in (",", "(", ":")
        return opens and norm[index + 2 : index + 3] != [] and norm[index + 2] in known
    return index > 1 and norm[index - 1] == "/" and norm[index - 2] in known and _closed(scene, index + 1)


def _closed(scene: Scene, index: int) -> bool:
    return index >= len(scene.norm) or scene.words.start[index] > scene.words.end[index - 1] or not scene.norm[index][0].isalnum()
