"""Words that count as one by their form, not by a list: measures ("9 1/4 inches", "25mm") and letters astray ("an extra e")."""

from __future__ import annotations

from collections.abc import Sequence

from auditor.reading.points.table import lexis
from auditor.reading.scene import roles

_MILLIMETRES = "mm"
_LARGE = 400  # no book measures more, in whatever unit: a year, a page
_NO_CODE = {"p", "l", "c", "e", "s", "d", "v", "n", "b"}  # pages, lines, "circa", "e." of "t.e.g."
_LONGEST_CODE = 3
_QUOTED = 15  # words back to which a quotation mark may have opened


def opens_form(word: str) -> bool:
    """Whether such a form may begin with a word."""
    letters = _is_letter(word) or word in ("letter", "letters") or word in lexis()["letter_faults"]
    return letters or _number(word) is not None


def form_at(norm: Sequence[str], at: int, last: int) -> tuple[str, int] | None:
    """The stem of such a form at word ``at`` and the word behind it."""
    return _measure(norm, at, last) or _code(norm, at, last) or _letter_astray(norm, at, last)


def _code(norm: Sequence[str], at: int, last: int) -> tuple[str, int] | None:
    """ "S31", "28 R", "N.14": a printer's code, as one word."""
    word, behind = norm[at], at + 1
    if _is_letter(word) and word not in _NO_CODE:
        behind += behind < last and norm[behind] in (".", "-")
        if behind < last and norm[behind].isdecimal() and len(norm[behind]) <= _LONGEST_CODE:
            return f"{word}{norm[behind]}", behind + 1
    return None


def _measure(norm: Sequence[str], at: int, last: int) -> tuple[str, int] | None:
    """ "25mm" as "25mm", "nine and a quarter inches" as "9.25inch", "23 cm" as "230mm"."""
    number = _number(norm[at])
    if number is None:
        return None
    quoted = norm[max(0, at - _QUOTED) : at].count('"') % 2
    number, at = _with_fraction(norm, at + 1, last, number)
    if at < last and norm[at] == "-":
        at += 1
    if number > _LARGE or (quoted and at < last and norm[at] == '"'):
        return None
    unit = lexis()["units"].get(norm[at]) if at < last else None
    if unit is None or (norm[at] == "in" and not (at + 1 < last and norm[at + 1] in (".", "x", "tall", "high", "thick"))):
        return None
    times, name = (10.0, _MILLIMETRES) if unit == "cm" else (1.0, unit)
    return f"{number * times:g}{name}", at + 1


def _number(word: str) -> float | None:
    if word.replace(".", "", 1).isdecimal():
        return float(word)
    said = roles()["numbers"].get(word)
    return None if said is None else float(said)


def _with_fraction(norm: Sequence[str], at: int, last: int, number: float) -> tuple[float, int]:
    """ "and a half", "1/4", "-1/2", "½" behind a whole number."""
    skip = at
    while skip < last and norm[skip] in ("and", "-", "a", "an"):
        skip += 1
    word = norm[skip] if skip < last else ""
    if word in lexis()["fractions"]:
        return number + lexis()["fractions"][word], skip + 1
    written = norm[skip : skip + 3]
    if len(written) == 3 and written[1] == "/" and written[0].isdecimal() and written[2] in ("2", "4", "8", "16"):
        return number + int(written[0]) / int(written[2]), skip + 3
    return number, at


def _letter_astray(norm: Sequence[str], at: int, last: int) -> tuple[str, int] | None:
    """ "An extra e", "one p too many", "short of an r", "minus its h": talk of a slip."""
    table = lexis()
    behind = at + 1
    if norm[at] in table["letter_faults"]:
        while behind < last and norm[behind] in ("of", "a", "an", "its", "the", "one", '"', "'", "second"):
            behind += 1
        if behind < last and (_is_letter(norm[behind]) or norm[behind] in ("letter", "letters")):
            return "wrong", behind + 1
    elif _is_letter(norm[at]) or norm[at] in ("letter", "letters"):
        if behind < last and norm[behind] in ('"', "'"):
            behind += 1
        if tuple(norm[behind : behind + 2]) in (("too", "many"), ("too", "few")):
            return "wrong", min(behind + 2, last)
        if behind < last and norm[behind] in table["letter_faults"]:
            return "wrong", behind + 1
    return None


def _is_letter(word: str) -> bool:
    return len(word) == 1 and word.isalpha() and word not in ("a", "i")
