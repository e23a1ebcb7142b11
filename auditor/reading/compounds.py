""" "No jacket tears" denies tears to the jacket, where "no jacket" alone tells that there is none."""

from __future__ import annotations

from functools import cache

from auditor.reading.phrases import Phrase
from auditor.reading.rows import Row, rows
from auditor.reading.scene import roles


@cache
def _row(row_id: str) -> Row:
    return next(row for row in rows() if row.id == row_id)


def parted(found: list[Phrase], norm: list[str]) -> list[Phrase]:
    """The phrases of a text, with a denied jacket parted into denial and jacket where the noun of a fault stands behind it."""
    lacking = [phrase for phrase in found if phrase.row.id == "jacket lacking" and phrase.last - phrase.first > 1]
    if not lacking:
        return found
    named = (phrase for phrase in found if phrase.row.feature in ("defect", "repair") and _is_noun(norm[phrase.last - 1]))
    placed = roles()["linkers"]  # "no dj stains on cover": whoever leaves commas out denies the jacket
    faults = {phrase.first for phrase in named if not placed & set(norm[phrase.last : phrase.last + 1])}
    phrases: list[Phrase] = []
    for phrase in found:
        if phrase in lacking and phrase.last in faults:
            phrases += [
                Phrase(_row("no"), phrase.first, phrase.first + 1),
                Phrase(_row("jacket present"), phrase.first + 1, phrase.last),
            ]
        else:
            phrases.append(phrase)
    return phrases


def _is_noun(word: str) -> bool:
    """Whether a fault's word names it and isn't said of what follows: "tears", "wear"; "foxing pages" may be either."""
    return (word.endswith("s") and not word.endswith("ss")) or word in roles()["fault_nouns"]
