"""Titles and names as words: folded to plain lower case, with what stands between them, so that sellers' spellings meet."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from functools import cache, lru_cache
from typing import NamedTuple

from auditor.knowledge import lexicon

ARTICLES = frozenset({"the", "a", "an"})
_TOKEN = re.compile(r"\w+(?:['’‘`]\w+)*")
_CLOSING = frozenset(".!?\n|;")
_LEADING_MARK = "'’‘`"


class Word(NamedTuple):
    """``norm`` is plain lower case without apostrophes; ``gap`` is what stood before it, blanks left out but for line breaks.

    A hyphen inside a compound is the gap ``-``; one with blanks round it, or a longer dash, is ``–``.
    """

    norm: str
    gap: str
    capital: bool


def words(text: str, most: int = 1_000) -> list[Word]:
    """The first ``most`` words of ``text``."""
    found: list[Word] = []
    shortening = listed("shortened")
    end = 0
    for match in _TOKEN.finditer(text):
        token = match[0]
        start = match.start()
        between = text[end:start]
        end = start + len(token)
        if "&" in between:
            before, between = between.split("&", 1)
            found.append(Word("and", _gap(before), False))
        if between[:1] == "." and found and found[-1].capital:
            shortened = len(found[-1].norm) == 1 or found[-1].norm in shortening
            between = between[1:] if shortened else between
        found.append(_word(token, between))
        if len(found) >= most:
            break
    return found


@lru_cache(maxsize=30_000)
def _word(token: str, between: str) -> Word:
    return Word(fold(token), _gap(between), token[0].isupper() or token[0].isdigit())


def fold(token: str) -> str:
    plain = unicodedata.normalize("NFKD", token) if not token.isascii() else token
    return re.sub(r"[\W_]", "", plain).lower()


def normal(text: str) -> str:
    """``"'Salem’s Lot"`` as ``"salems lot"``, ``"J.R.R. Tolkien"`` as ``"j r r tolkien"``: what two spellings share."""
    return " ".join(word.norm for word in words(text))


def core(text: str) -> tuple[str, ...]:
    """A title's words without the article that begins it."""
    found = [word.norm for word in words(text)]
    return tuple(found[1:] if len(found) > 1 and found[0] in ARTICLES else found)


@cache
def listed(name: str) -> frozenset[str]:
    """The words of one list of lexicon/titles.toml."""
    return frozenset(lexicon.table("titles")[name])


def says(stream: Sequence[Word], table: str) -> bool:
    """Whether a phrase of one list of lexicon/titles.toml stands in ``stream``."""
    said = f" {' '.join(word.norm for word in stream)} "
    return any(phrase in said for phrase in _phrases(table))


@cache
def _phrases(table: str) -> tuple[str, ...]:
    return tuple(f" {phrase} " for phrase in lexicon.table("titles")[table])


def closes(word: Word) -> bool:
    """Whether a sentence or a line ended before ``word``."""
    return not _CLOSING.isdisjoint(word.gap)


def _gap(between: str) -> str:
    if between == "-":
        return "-"
    marks = re.sub(r"[^\S\n]", "", re.sub(r"\s[-–—]+|[–—]+|-{2,}|-\s", "–", between))
    return marks.strip(_LEADING_MARK) if marks.strip(_LEADING_MARK) else ('"' if marks and between != marks else "")
