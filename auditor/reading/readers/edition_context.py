"""What stands around an edition's words: a page that is quoted, a country, a jacket, a row of figures."""

from __future__ import annotations

import re
from dataclasses import dataclass

from auditor.reading.othercopies import edition_words
from auditor.reading.scene import Scene, roles

_WIDEST = 6  # words between an ordinal and its noun
COUNTRIES = frozenset({"american", "british", "english", "canadian"})


def only_quoted(norm: list[str], first: int) -> bool:
    """ "It says First Edition": the judgement left open is the point and no claim of an edition, by the contract."""
    before = [word for word in norm[max(0, first - 4) : first] if word not in ('"', "'", ":", ",")]
    words = edition_words()
    if norm[first - 1 : first] == ['"'] and before[-1:] in (["has"], ["bears"], ["carries"]) and words["quoted_on"] & set(before):
        return True  # 'the copyright page has "First Edition"'
    return bool(before) and before[-1] in words["quoting"]


def copied(norm: list[str], first: int) -> bool:
    """ "A facsimile of the 1889 first edition", "facsimile reprint of the first printing": what was copied is another copy."""
    before = norm[max(0, first - 6) : first]
    if "." in before:
        before = before[len(before) - before[::-1].index(".") :]
    return (
        "facsimile" in before
        and "of" in before[before.index("facsimile") :]
        and edition_words()["copied_part"].isdisjoint(before)
    )


def wording(norm: list[str], first: int, last: int) -> bool:
    """ "No First Edition on the copyright page", "the "First Edition" wording": the words are spoken of."""
    words = edition_words()
    quoted = norm[first - 1 : first] == ['"'] and norm[last : last + 1] == ['"']
    behind = norm[last + quoted : last + quoted + 1]
    before = [word for word in norm[max(0, first - 3) : first] if word not in ('"', "the", "a", "any")]
    denied = before[-1:] in (["no"], ["without"], ["find"], ["where"], ["not"])
    spoken = behind[:1] and behind[0] in words["quoted_behind"]
    stands = behind[:1] == ["is"] and norm[last + quoted + 1 : last + quoted + 2] in (["on"], ["printed"], ["there"])
    return bool(
        stands
        or (denied and spoken)
        or (quoted and spoken)
        or (behind[:1] and behind[0] in ("wording", "statement", "slug", "legend"))
    )


def country_before(norm: list[str], first: int) -> str | None:
    """ "British first edition"."""
    country = edition_words()["qualifiers"].get(norm[first - 1]) if first else None
    return (
        country
        if country in ("american", "british", "english", "canadian") and norm[first - 2 : first - 1] not in (["the"], ["great"])
        else None
    )


def of_jacket(norm: list[str], index: int) -> bool:
    """Whether a jacket follows: "first issue dust jacket", "third-printing jacket"."""
    following = [word for word in norm[index : index + 4] if word not in edition_words()["before_jacket"]]
    return bool(following) and following[0] in edition_words()["jackets"]


def alternative(norm: list[str], index: int) -> tuple[int, int] | None:
    """ "First or second printing": where the other ordinal begins and the word behind it."""
    if norm[index : index + 1] not in (["or"], ["and"], ["/"], ["&"]) or index + 1 >= len(norm):
        return None
    at = index + 1 + (norm[index + 1] in ("a", "the", "possibly", "perhaps"))
    other = ordinal(norm, at) if at < len(norm) else None
    return (at, other[1]) if other is not None else None


def named_alone(norm: list[str], index: int) -> str | None:
    """ "First Canadian, published ...": a country behind the ordinal and a mark behind the country."""
    country = edition_words()["qualifiers"].get(norm[index]) if index + 1 < len(norm) else None
    return country if country in COUNTRIES and norm[index + 1] != "-" and not norm[index + 1][0].isalnum() else None


def is_year(word: str) -> bool:
    return len(word) == 4 and word.isdecimal() and 1800 <= int(word) <= 2029


def more_figures(norm: list[str], at: int) -> bool:
    return at + 1 < len(norm) and (
        norm[at + 1].isdecimal() or (norm[at + 1] in (",", "-", "/") and at + 2 < len(norm) and norm[at + 2].isdecimal())
    )


_FIGURE = re.compile(r"(\d{1,2})(?:st|nd|rd|th)")
_TENS = {"twenty": 20, "thirty": 30}


def opens_ordinal(word: str) -> bool:
    """Whether an ordinal may begin with a word."""
    known = word in roles()["ordinals"] or word in edition_words()["earliest"] or word in _TENS
    return known or _FIGURE.fullmatch(word) is not None


def ordinal(norm: list[str], index: int) -> tuple[int, int] | None:
    """The number that an ordinal at this word stands for and the word behind it, or None."""
    ordinals, word = roles()["ordinals"], norm[index]
    if word in edition_words()["earliest"] and norm[index + 1 : index + 2] in (
        ["issue"],
        ["state"],
        ["printing"],
        ["impression"],
        ["edition"],
    ):
        return 1, index + 1
    if word in _TENS and norm[index + 1 : index + 2] == ["-"] and index + 2 < len(norm) and norm[index + 2] in ordinals:
        return _TENS[word] + ordinals[norm[index + 2]], index + 3
    if word in ordinals:
        return ordinals[word], index + 1
    match = _FIGURE.fullmatch(word)
    return (int(match[1]), index + 1) if match else None


@dataclass(frozen=True, slots=True)
class Counted:
    """An ordinal with its noun: ``noun`` is edition, printing, issue, state or thus; ``last`` is the word behind it all."""

    number: int
    noun: str
    qualifier: str | None
    first: int
    at: int
    last: int


def noun_behind(norm: list[str], first: int, number: int, index: int) -> Counted | None:
    """The noun that an ordinal counts, with what qualifies it."""
    words, nouns = edition_words(), edition_words()["nouns"]
    qualifier: str | None = None
    at = index
    while at < min(len(norm), index + _WIDEST):
        word = norm[at]
        if word in nouns:
            last = at + 1
            if norm[last : last + 1] == ["."] and word in words["abbreviated"]:
                last += 1
            return Counted(number, nouns[word], qualifier, first, at, last)
        country, width = _country(norm, at)
        if country is not None:
            qualifier = country
            at += width
            continue
        if word in words["qualifiers"]:
            found = words["qualifiers"][word]
            qualifier = found if qualifier is None or found != "trade" else qualifier
        elif word not in words["fillers"] and not (word == "." and norm[at - 1] in words["short"]):
            return None
        at += 1
    return None


def _country(norm: list[str], at: int) -> tuple[str | None, int]:
    """ "U.S.", "u. k.", "US": letters with or without stops."""
    letters = "".join(norm[at : at + 4])
    for spelled, country in (("u.s.a", "american"), ("u.s", "american"), ("u.k", "british")):
        if letters.startswith(spelled):
            width = len(spelled)
            return country, width + (norm[at + width : at + width + 1] == ["."])
    return None, 0


def in_story(scene: Scene, first: int, last: int) -> bool:
    """ "The third edition of the evening paper", "the blurb promises a first edition hidden in the attic": no book for sale."""
    norm, words = scene.norm, edition_words()
    if norm[last : last + 1] == ["of"] and set(norm[last + 1 : last + 4]) & words["papers"]:
        return True
    before = norm[scene.clause(first).first : first]
    return before[-1:] != [] and before[-1] in words["sought"] and bool(set(before) & words["plots"])
