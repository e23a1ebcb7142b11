"""Forms made ready to be walked: every list spelled out into words, with the word lists that it names."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence, Set
from dataclasses import dataclass

from auditor.reading.forms import Form
from auditor.reading.phrases import spellings
from auditor.reading.rows import Row, spread

Spelling = tuple[str, ...]
Phrases = dict[str, list[Spelling]]  # by first word, the longest first
Spelled = Mapping[str, set[Spelling]]  # the word lists by id

MARKS = frozenset({",", ":", ".", ";", ")", "\n", "?", "!", "|"})
_LISTS = ("needs", "barred", "closer", "after", "not_after", "behind", "not_behind", "ahead", "about", "not_about", "asked")


def is_amount(norm: Sequence[str], index: int) -> bool:
    """Whether a word is an amount: behind a sign of currency, with decimals, or before a shilling's "s" or stroke."""
    if not norm[index][0].isdecimal():
        return False
    before, behind = norm[index - 1 : index], norm[index + 1 : index + 2]
    return before in (["$"], ["£"], ["€"]) or "." in norm[index] or behind in (["s"], ["/"], ["d"])


CLASSES: dict[str, Callable[[Sequence[str], int], bool]] = {
    "#amount": is_amount,
    "#number": lambda norm, index: norm[index][0].isdecimal(),
    "#word": lambda norm, index: norm[index] not in MARKS,
}


@dataclass(frozen=True, slots=True)
class Ready:
    """A form with its lists spelled out. ``lists`` holds those that are looked at word by word, under their field's name;
    ``row`` is what a cue of the form is traced to."""

    form: Form
    row: Row
    openers: Phrases
    targets: Phrases
    between: frozenset[str]
    classes: tuple[str, ...]
    lists: dict[str, frozenset[str]]


def ready(form: Form, words: Spelled) -> Ready:
    """Raises ValueError where the form names a list that isn't there."""
    between = _single(form.between, words)
    lists = {name: _single(getattr(form, name), words) for name in _LISTS}
    lists["openings"] = _single(("@openings",), words)
    row = Row(
        id=form.id,
        kind="term" if form.kind == "claim" else form.kind,
        phrases=(),
        reason=form.reason,
        direction=form.direction,
        reach=form.reach,
        sign=form.sign,
    )
    classes = tuple(word for word in between if word in CLASSES)
    return Ready(form, row, _phrases(form.opener, words), _phrases(form.target, words), between, classes, lists)


def spelled(phrases: Iterable[str], words: Spelled) -> set[Spelling]:
    """Every spelling of phrases in the lexicon's notation."""
    found: set[Spelling] = set()
    for phrase in phrases:
        for plain in spread(phrase):
            joined: set[Spelling] = {()}
            for piece in plain.split(" "):
                joined = {(*one, *other) for one in joined for other in _pieces(piece, words)}
            found |= joined - {()}
    return found


def _pieces(piece: str, words: Spelled) -> Set[Spelling]:
    if piece[0] == "@" and len(piece) > 1:
        if piece[1:] not in words:
            raise ValueError(f"lexicon/forms: {piece} names no [[words]] row")
        return words[piece[1:]]
    return {(piece,)} if piece in CLASSES else spellings(piece)


def _phrases(phrases: Iterable[str], words: Spelled) -> Phrases:
    found: Phrases = {}
    for spelling in spelled(phrases, words):
        found.setdefault(spelling[0], []).append(spelling)
    for entries in found.values():
        entries.sort(key=len, reverse=True)
    return found


def _single(phrases: Iterable[str], words: Spelled) -> frozenset[str]:
    return frozenset(" ".join(spelling) for spelling in spelled(phrases, words))
