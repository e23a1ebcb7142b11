"""Words as points compare them: each by what it means, whatever its form, and each colour with the noun that it is said of."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache, lru_cache

from auditor.knowledge.english import right_words
from auditor.reading.points.cardinals import number_at, roman
from auditor.reading.points.forms import form_at, opens_form
from auditor.reading.points.table import lexis
from auditor.reading.scene import roles
from auditor.reading.words import words

Token = tuple[int, str]  # where a word stands, and its stem

_ENDINGS = ("'s", "s'", "ings", "ing", "ies", "es", "ed", "s")
NO = frozenset({"no", "nothing"})
_BEHIND, _BEYOND = 5, 5  # how many words a colour may stand from the noun before it, and behind a preposition


@cache
def _forms() -> dict[str, str]:
    forms = {form: key for key, listed in lexis()["synonyms"].items() for form in listed}
    for word, number in {**roles()["ordinals"], "next": 2}.items():
        forms.setdefault(word, f"{number}th")
    for word, number in lexis()["cardinals"].items():
        forms.setdefault(word, str(number))
    return forms | {f"{n}{end}": f"{n}th" for n in range(1, 51) for end in ("st", "nd", "rd", "th")}


@cache
def _phrases() -> dict[str, list[tuple[tuple[str, ...], str]]]:
    """By first word: the phrases that count as one word, the longest first."""
    by_first: dict[str, list[tuple[tuple[str, ...], str]]] = {}
    for key, listed in lexis()["phrases"].items():
        owners = ("its", "this", "that", "our", "my")
        owned = [phrase.replace("the ", f"{own} ") for phrase in listed if "the " in phrase for own in owners]
        for phrase in (*listed, *owned):
            split = tuple(words(phrase).norm)
            by_first.setdefault(split[0], []).append((split, key))
    for rows in by_first.values():
        rows.sort(key=lambda row: -len(row[0]))
    return by_first


@lru_cache(maxsize=30_000)
def stem(word: str) -> str:
    """A word's plain form for comparing: its synonyms' key, else without the commonest endings."""
    forms = _forms()
    if word in forms:
        return forms[word]
    if word.endswith(("n't", "nt")) and word.rstrip("t").rstrip("'").rstrip("n") in (
        "is",
        "does",
        "has",
        "are",
        "was",
        "do",
        "did",
        "have",
    ):
        return "no"
    if word.endswith("ish") and (shade := _shaded(word[:-3])):
        return shade
    for ending in _ENDINGS:
        if (
            word.endswith(ending)
            and len(word) - len(ending) >= 3
            and not (ending in ("s", "es") and word.endswith(("ss", "us", "is")))
        ):
            base = _base(word, ending)
            return forms.get(base, base)
    return roman(word) or word


def _base(word: str, ending: str) -> str:
    """ "Edges" without its ending as "edge", "cropped" as "crop", "berries" as "berry"."""
    base = word[: -len(ending)]
    if ending == "ies":
        return base + "y"
    if ending not in ("es", "ed", "ing", "ings"):
        return base
    if ending == "es" and not base.endswith(("s", "x", "z", "ch", "sh")):
        return base + "e"
    if _is_known(base):
        return base
    if len(base) > 3 and base[-1] == base[-2] and base[-1] not in "lsz":
        return base[:-1]
    return base + "e" if _is_known(base + "e") else base


def _is_known(word: str) -> bool:
    return word in right_words() or word in _forms()


def _shaded(base: str) -> str | None:
    """ "Yellowish", "reddish", "bluish": the colour."""
    for word in (base, base[:-1], f"{base}e"):
        if word in roles()["colours"]:
            return stem(word)
    return None


def tokens(norm: Sequence[str], first: int, last: int) -> list[Token]:
    """The stems of words ``first`` to ``last``; a phrase counts as one, a page with its number as well ("page87")."""
    found: list[Token] = []
    at = first
    while at < last:
        word = norm[at]
        one, phrases, formed = _entry(word)
        if not phrases and not formed:
            found.append((at, one))
            at += 1
            continue
        for phrase, key in phrases:
            if tuple(norm[at : at + len(phrase)]) == phrase and at + len(phrase) <= last:
                found.append((at, key))
                at += len(phrase)
                break
        else:
            form = form_at(norm, at, last) or number_at(norm, at, last) if formed else None
            one, behind = form or (one, at + 1)
            found.append((at, one))
            if one.isdigit() and _of_page(norm, at, first):
                found.append((at, f"page{one}"))
            at = behind
    return found


@lru_cache(maxsize=30_000)
def _entry(word: str) -> tuple[str, tuple[tuple[tuple[str, ...], str], ...], bool]:
    """A word's stem, the phrases that begin with it, and whether a form, a number in words or a page's number may."""
    one = stem(word) if word[0].isalnum() else word
    formed = one.isdigit() or opens_form(word) or word in lexis()["cardinals"]
    return one, tuple(_phrases().get(word, ())), formed


def _of_page(norm: Sequence[str], at: int, first: int) -> bool:
    """ "p. 87", "pages 9-10", "pg.#87"."""
    before = at - 1
    while (
        before >= first
        and at - before <= 3
        and (norm[before] in (".", "#", "no", "-", "—", "and", "[", "number") or norm[before].isdecimal())
    ):
        before -= 1
    return before >= first and stem(norm[before]) == "page"


@cache
def colours() -> frozenset[str]:
    """Stems of colours and of "plain" and its like, which are said of a noun."""
    single = {stem(word) for word in roles()["colours"] if " " not in word and "-" not in word}
    return frozenset(single - {"stone", "natural", "rose"}) | {"plain", "glazed", "matte", "blackwhite"}


@cache
def _degrees() -> frozenset[str]:
    more = {
        "full",
        "paper",
        "covered",
        "original",
        "textured",
        "patterned",
        "rear",
        "front",
        "solid",
        "plain",
        "fine",
        "a",
        "bit",
        "of",
        "-",
        "/",
        "outlined",
    }
    return frozenset(roles()["colour_degrees"]) | colours() | more


@cache
def _heads() -> dict[str, str]:
    return {noun: kind for kind, nouns in lexis()["heads"].items() for noun in nouns}


def kind(noun: str) -> str | None:
    """What a noun is one of, of those that take a colour."""
    return _heads().get(noun)


def head(line: Sequence[Token], at: int, homes: frozenset[str] = frozenset()) -> str | None:
    """The kind of noun that the colour at ``line[at]`` is said of: the one behind it, else before it, else behind a preposition.

    A noun of ``homes`` is a kind of its own ("frontispiece").
    """

    def kind(noun: str) -> str | None:
        return noun if noun in homes else _heads().get(noun)

    ahead = at + 1
    while ahead < len(line) and ahead - at <= 4 and line[ahead][1] in _degrees() and kind(line[ahead][1]) != "stain":
        ahead += 1
    if ahead + 1 < len(line) and line[ahead][1] == "colour" and kind(line[ahead + 1][1]) not in (None, "stain"):
        ahead += 1  # "rust coloured cloth"
    if ahead + 1 < len(line) and line[ahead][1] in ("and", "&") and line[ahead + 1][1] in colours():
        return head(line, ahead + 1, homes)
    found = kind(line[ahead][1]) if ahead < len(line) else None
    if found is None and ahead - at > 1:
        found = kind(line[ahead - 1][1])  # "blank rear panel", which is one word
    if found is None and ahead + 1 < len(line) and line[ahead][1].isalpha() and kind(line[ahead + 1][1]) == "board":
        found = None if line[ahead][1] in lexis()["stop"] | NO else "board"  # "red gingham cloth"
    if found == "stain":
        return _beyond(line, ahead + 1, kind) or _before(line, at, kind)
    return found or _before(line, at, kind) or _beyond(line, at + 1, kind)


def beyond(line: Sequence[Token], at: int, homes: frozenset[str]) -> str | None:
    """The kind of noun behind the preposition ``line[at]``."""
    return _beyond(line, at, lambda noun: noun if noun in homes else kind(noun))


def _before(line: Sequence[Token], at: int, kind: Callable[[str], str | None]) -> str | None:
    for back in range(at - 1, max(at - 1 - _BEHIND, -1), -1):
        word = line[back][1]
        if word in (",", ".", ";", "(", ")", "with", "no"):
            return None
        found = kind(word)
        if found is not None and found != "stain":
            return found
    return None


def _beyond(line: Sequence[Token], at: int, kind: Callable[[str], str | None]) -> str | None:
    if at >= len(line) or line[at][1] not in (
        "on",
        "to",
        "at",
        "along",
        "of",
        "over",
        "in",
        "across",
        "round",
        "around",
        "inside",
        "down",
        "upon",
    ):
        return None
    for ahead in range(at + 1, min(at + 1 + _BEYOND, len(line))):
        word = line[ahead][1]
        if word in (",", ".", ";", "("):
            return None
        found = kind(word)
        if found is not None and found != "stain":
            return found
    return None
