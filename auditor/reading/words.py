"""A listing's text as words: one regular expression, offsets into the text as given, each word with a plain lower-case form.

Entities, tags, soft hyphens, zero-width marks and curly quotes are dealt with here, word by word, so that no offset ever has
to be translated back. The spaCy tokenizer of the pipeline is this function: spaCy's own rules keep ``VG+/NF`` or ``12s6d`` in
one piece and split ``don't``, and neither suits a bookseller's shorthand.
"""

from __future__ import annotations

import html
import re
from dataclasses import dataclass
from functools import lru_cache

_LONGEST_KEPT = 40  # characters of a chunk that is worth keeping: longer ones hardly come again
_SOFT = "\u00ad\u200b-\u200d\u2060\ufe0f\ufeff"
_WORD = re.compile(
    rf"""
      <[^<>]{{1,200}}>                                               # a tag
    | [^\W\d_](?:[^\W\d_{_SOFT}]|[{_SOFT}]|&shy;|(?:['’ʼ`´]|&\#0?39;|&\#x27;|&[rl]squo;|&apos;)(?=[^\W\d_]))*   # don't
    | &(?:[a-zA-Z]{{2,8}}|\#\d{{1,6}}|\#x[0-9a-fA-F]{{1,5}});        # an entity
    | \d+(?:[.,]\d+)*(?:st|nd|rd|th)\b                             # 1st
    | \d+(?:[.,]\d+)*                                              # 12.95, 1,000, 7
    | \r?\n | [^\w\s] | _
    """,
    re.VERBOSE | re.IGNORECASE,
)
_ODD = re.compile(r"[&<\u00ad\u200b-\u200d\u2060\ufe0f\ufeff’‘ʼ`´“”–—‒―−\u2022\u00b7\u25aa\u25cf½¼…′″]")
_PLAIN = str.maketrans(
    {
        "’": "'", "‘": "'", "ʼ": "'", "`": "'", "´": "'", "′": "'", "“": '"', "”": '"', "″": '"', "–": "—", "‒": "—", "―": "—",
        "−": "-", "·": "•", "▪": "•", "●": "•", "…": "...", "\u00ad": None, "\u200b": None, "\u200c": None, "\u200d": None,
        "\u2060": None, "\ufe0f": None, "\ufeff": None, "\u00a0": " ",
    }
)  # fmt: skip
_BREAKS = re.compile(r"</?(?:br|p|li|ul|ol|div|tr|td|h\d|hr)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Words:
    """``norm[i]`` is the plain form of the word at ``text[start[i]:end[i]]``; "\\n" stands for a line or block break."""

    text: str
    norm: list[str]
    start: list[int]
    end: list[int]

    def __len__(self) -> int:
        return len(self.norm)

    def quote(self, first: int, last: int) -> str:
        """The text as given from word ``first`` up to and without word ``last``."""
        return self.text[self.start[first] : self.end[last - 1]] if last > first else ""


def _plain(piece: str) -> str:
    if piece[0] == "<" and len(piece) > 1:
        return "\n" if _BREAKS.match(piece) else ""
    if "&" in piece:
        piece = html.unescape(piece)
    return piece.translate(_PLAIN).strip(" ").lower()


def words(text: str) -> Words:
    """Splits a text. Empty pieces (inline tags, stray soft hyphens) leave no word.

    Nothing but a tag reaches over a blank, so a text without tags is split at its blanks, and each chunk between them once for
    all texts: listings use the same chunks over and over.
    """
    norm: list[str] = []
    start: list[int] = []
    end: list[int] = []
    at = 0
    for chunk in (text,) if "<" in text else text.split(" "):
        size = len(chunk)
        for plain, first, last in _known(chunk) if size <= _LONGEST_KEPT else _split(chunk):
            norm.append(plain)
            start.append(at + first)
            end.append(at + last)
        at += size + 1
    return Words(text, norm, start, end)


def _split(chunk: str) -> tuple[tuple[str, int, int], ...]:
    """Plain form, start and end of each word of a chunk."""
    odd = _ODD.search(chunk) is not None
    found: list[tuple[str, int, int]] = []
    for match in _WORD.finditer(chunk):
        piece = match.group()
        plain = "\n" if piece[-1] == "\n" else _plain(piece) if odd else piece.lower()
        if plain:
            found.append((plain, *match.span()))
    return tuple(found)


_known = lru_cache(maxsize=30_000)(_split)
