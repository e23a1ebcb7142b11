"""Facts in figures: ISBN, limitation, print run and gutter code."""

from __future__ import annotations

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator

from auditor.knowledge.isbn import to_13
from auditor.reading.readers.copies import read_copies
from auditor.reading.scene import Draft, Scene
from auditor.values import Stance

_ISBN = re.compile(
    r"(?=[\d\s])(?:(?<![\d-])(?:97[89][-– ]?)?(?:\d[-– ]?){9}[\dXx](?!\d)"
    r"|(?<=SBN[: ])\s*(?:\d[-– ]?){8}[\dXx]\b(?![-– ]?[\dXx]\b)(?![-– ]\d))"
)
# A letter or two and a number, or a number and a letter; where neither "gutter" nor "code" stands beside, a plain one.
_CODE = re.compile(r"\b(?P<code>[A-Z]{1,2}\s?\d{1,2}|\d{1,2}[A-Z])\b")
_PLAIN_CODE = re.compile(r"[A-Z]\d{1,2}")
_LOWER_CODE = re.compile(r"\b(?:code|gutter)\W{0,3}(?:is |of |says |reads )?\W?(?P<code>[a-z]\d{1,2})\b")
_CODE_BEFORE = re.compile(r"(?<!bar)(?<!post)(?<!zip )code\s*(?:is\s*|of\s*|reads\s*|was\s*)?[:(=,-]?\s*['\"“‘]?$", re.IGNORECASE)
_NAMED = re.compile(r"\bgutters?\b|(?<!bar )(?<!bar)(?<!post)(?<!zip )(?<!dress )\bcodes?\b", re.IGNORECASE)
_ON_PAGE = re.compile(
    r"\W{0,3}(?:down\s+)?(?:on|at|in|to|near|by)\s+(?:the\s+(?:fold|gutter|crease|hinge|margin)\s+of\s+|the\s+)?(?:bottom\s+of\s+|foot\s+of\s+)?(?:the\s+)?(?:last\s+(?:printed\s+)?page|final\s+page|margin|p\.|pp?\s?\d|page\s+\d)",
    re.IGNORECASE,
)
_ELSE_BEFORE = re.compile(
    r"(?:page|pages|p\.|plate|lot|map|no\.?|\#|ref\.?|stock|item|sku|grade|section|row|shelf|size|vol\.?|series|box|bay|printing|line)\s*:?\s*$",
    re.IGNORECASE,
)
_SOUGHT = re.compile(
    r"\b(?:look(?:ed|ing)?|search(?:ed|ing)?|hunt(?:ed|ing)?|check(?:ed|ing)?) for (?:an? |the )?$", re.IGNORECASE
)
Span = tuple[int, int]


_MANY_FIGURES = re.compile(r"\d(?:[-– ]?\d){7}")
_PARTS = re.compile(r"\d+[Xx]?")
_MOST_PARTS = 5  # prefix, group, house, title and check digit: more blanks part a row of numbers


def _isbn(piece: str) -> str | None:
    """The ISBN-13 that a piece of text is, if it is one."""
    return to_13(piece) if len(_PARTS.findall(piece)) <= _MOST_PARTS else None


def find_isbns(text: str) -> tuple[str, ...]:
    """The ISBN-13s of every valid ISBN or SBN in a text, in order."""
    return tuple(dict.fromkeys(isbn for isbn, _ in _isbns(text)))


def _isbns(text: str) -> Iterator[tuple[str, Span]]:
    """Each ISBN-13 with where it stands. Few texts have so many figures in a row, and that is quickly told."""
    for match in _ISBN.finditer(text) if _MANY_FIGURES.search(text) else ():
        if isbn := _isbn(match.group()):
            yield isbn, match.span()


def read_figures(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``isbn``, ``limitation``, ``print_run`` and ``gutter_code``."""
    for isbn, span in _isbns(scene.words.text):
        yield _draft(scene, "isbn", isbn, span)
    yield from read_copies(scene)
    yield from _gutter_codes(scene)


def _gutter_codes(scene: Scene) -> Iterator[Draft]:
    """A code beside "gutter" or right behind "code", one like it elsewhere in a text that names them, or one told by its page."""
    text = scene.words.text
    plain = text.lower()
    named = ("gutter" in plain or "code" in plain) and _NAMED.search(text) is not None
    for match in _CODE.finditer(text):
        if _is_code(text, match, named):
            sought: Stance | None = "unchecked" if _SOUGHT.search(text, max(0, match.start() - 20), match.start()) else None
            yield _draft(scene, "gutter_code", match["code"].replace(" ", ""), match.span(), sought)
    for match in _LOWER_CODE.finditer(text) if named else ():
        yield _draft(scene, "gutter_code", match["code"].upper(), match.span("code"))


def _is_code(text: str, match: re.Match[str], named: bool) -> bool:
    code, before = match["code"], text[max(0, match.start() - 16) : match.start()]
    if _CODE_BEFORE.search(before):
        return True
    if _ELSE_BEFORE.search(before) or text[match.end() : match.end() + 5].lower() == " size":
        return False
    near = text[max(0, match.start() - 40) : match.end() + 40].lower()
    if "inner margin" in near:
        return True
    if "gutter" in near:
        return code[0].isalpha()
    if not _PLAIN_CODE.fullmatch(code):
        return False
    return (named and len(code) == 3) or _ON_PAGE.match(text, match.end()) is not None


def _draft(scene: Scene, feature: str, value: str, span: Span, stance: Stance | None = None) -> Draft:
    """A draft for a stretch of characters: the words that they touch."""
    words = scene.words
    first = min(bisect_right(words.end, span[0]), len(words) - 1)
    last = bisect_left(words.start, span[1])
    return Draft(feature, value, first, max(last, first + 1), feature, part="book", stance=stance)
