"""A slip told by what is lost or gained in it: "a single r", "the e is missing", "both r's are there", "the little word has
fallen out", "he loses the e from the end of his name".

Where a point's two readings differ by a letter or a word, talk of that letter or word says which of them stands there.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from rapidfuzz.distance import Indel

from auditor.reading.points.table import lexis

_MOST = 2  # letters or words that two readings may differ by
_STOPS = frozenset({",", ";", "(", ")", ":"})
_NOT = frozenset({"no", "not", "isn't", "isnt", "never", "hasn't", "hasnt", "wasn't", "nor"})
_REACH = 6  # words around the letter in which its fate is told


@dataclass(frozen=True, slots=True)
class Difference:
    """What the right reading has and the slip lacks, and what the slip has too many: letters, words, or the nouns for them."""

    lost: frozenset[str]
    gained: frozenset[str]
    doubled: frozenset[str]  # letters that the right form has twice on end

    def __bool__(self) -> bool:
        return bool(self.lost or self.gained)


NOTHING = Difference(frozenset(), frozenset(), frozenset())


def difference(wrong: str, right: str) -> Difference:
    """What parts two values: of one word each its letters, else the words that one has more."""
    slip, form = _words(re.split(r"\bfor\b", wrong)[0] if '"' in wrong else wrong), _words(right)
    if len(slip) == len(form) == 1:
        return _of_letters(slip[0], form[0])
    lost, gained = set(form) - set(slip), set(slip) - set(form)
    if len(lost) + len(gained) == 1 and len(set(form) & set(slip)) > 0:
        noun = {"word", *(("negative",) if lost | gained <= {"not", "no"} else ())}
        return Difference(frozenset(lost | noun if lost else ()), frozenset(gained | noun if gained else ()), frozenset())
    if len(lost) == len(gained) == 1 and len(form) == len(slip):
        return _of_letters(gained.pop(), lost.pop())
    return NOTHING


def _words(text: str) -> list[str]:
    return re.findall(r"[a-z']+", text.lower())


def _of_letters(slip: str, form: str) -> Difference:
    edits = [edit for edit in Indel.opcodes(slip, form) if edit.tag != "equal"]
    lost = {letter for edit in edits if edit.tag in ("insert", "replace") for letter in form[edit.dest_start : edit.dest_end]}
    gained = {letter for edit in edits if edit.tag in ("delete", "replace") for letter in slip[edit.src_start : edit.src_end]}
    if not 0 < len(lost) + len(gained) <= _MOST or not (slip + form).isalpha() or lost & gained:
        return NOTHING
    doubled = {letter for letter in lost | gained if letter * 2 in form + " " + slip}
    noun = {"letter"} if len(lost | gained) == 1 else set()
    return Difference(frozenset(lost | noun if lost else ()), frozenset(gained | noun if gained else ()), frozenset(doubled))


def fates(norm: list[str], first: int, last: int, change: Difference) -> Iterator[tuple[int, bool, bool]]:
    """Where a letter or word of the difference is spoken of, whether the text is right there, and whether that is denied."""
    for at in range(first, last):
        unit = _unit(norm[at])
        lost = unit in change.lost
        if not (lost or unit in change.gained) or (len(unit) == 1 and not _is_letter(norm, at)):
            continue
        fate, denied = _fate(norm, at, first, last, unit in change.doubled)
        if fate is not None:
            yield at, (fate == "there") is lost, denied


def _unit(word: str) -> str:
    """ "r's", "rs" and "r" are one letter."""
    return word[0] if re.fullmatch(r"[a-z]'?s", word) and word not in ("is", "as", "us") else word


def _is_letter(norm: list[str], at: int) -> bool:
    """No article and no initial."""
    if norm[at] in ("a", "i") and norm[at - 1 : at] not in (['"'], ["'"], ["the"], ["an"], ["letter"]):
        return False
    return norm[at + 1 : at + 2] != ["."] or norm[at + 2 : at + 3] == []


def _fate(norm: list[str], at: int, first: int, last: int, doubled: bool) -> tuple[str | None, bool]:
    """Whether the letter at ``at`` is "there" or "gone" by the words around it, the nearest before it first."""
    table = lexis()
    before = [word for word in norm[max(first, at - _REACH) : at] if word not in ('"', "'")]
    stops = [number for number, word in enumerate(before) if word in _STOPS]
    before = before[stops[-1] + 1 :] if stops else before
    ahead = norm[at + 1 : min(last, at + 1 + _REACH)]
    ahead = ahead[: next((number for number, word in enumerate(ahead) if word in _STOPS), len(ahead))]
    near = before[-4:]
    if not table["two"].isdisjoint(near[-2:]):
        return "there", False
    if doubled and not table["one_only"].isdisjoint(near[-2:]):
        return "gone", not _NOT.isdisjoint(near[:-1])
    if not table["letter_back"].isdisjoint(ahead):
        return "there", False
    for words in (near, ahead):
        gone = [number for number, word in enumerate(words) if word in table["letter_gone"]]
        if gone and not (words is ahead and words[gone[0]] in ("no", "without")):
            return "gone", not _NOT.isdisjoint(words[: gone[0]])
    if not _NOT.isdisjoint(ahead[:3]):
        return "gone", False
    there = not table["letter_there"].isdisjoint([*near, *ahead])
    return ("there" if there else None), False
