"""Markup that no page has and that makes a parser slow: told before the page is parsed."""

from __future__ import annotations

import re
from collections import Counter

_SMALL = 100_000  # characters; a smaller page can't cost much, whatever stands in it
_LONG_TAG = 20_000  # characters of one tag that are worth a look
_MOST_ATTRIBUTES = 5_000
_MOST_STEPS = 50_000_000  # through the elements that are open, at each tag; a page of 20,000 tags, 50 deep, takes a million
_VOID = frozenset(["area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "param", "source", "track", "wbr"])
_REOPENED = frozenset(["p", "li", "dt", "dd", "option", "tr", "td", "th", "thead", "tbody"])  # one ends where the next begins
_TAG = re.compile(r"<(/?)([a-zA-Z][^\s/>]*)([^>]*)")


def fault(html: str) -> str | None:
    """What is wrong in words, or None: one element with thousands of attributes, or tens of thousands of elements in one another.

    For each attribute a parser looks at all those before it, for each tag at all the elements that are open.
    """
    if len(html) <= _SMALL:
        return None
    opened: Counter[str] = Counter()
    depth = steps = 0
    for tag in _TAG.finditer(html):
        name = tag[2].lower()
        steps += depth
        if tag[1] and opened[name]:
            opened[name] -= 1
            depth -= 1
        elif not tag[1] and name not in _VOID and not (name in _REOPENED and opened[name]):
            opened[name] += 1
            depth += 1
        if len(tag[3]) > _LONG_TAG and len(re.findall(r"[\s/]+", re.sub(r'"[^"]*"|\'[^\']*\'', "", tag[3]))) > _MOST_ATTRIBUTES:
            return f"has an element with more than {_MOST_ATTRIBUTES:,} attributes, as no page does: not read"
        if steps > _MOST_STEPS:
            return "has tens of thousands of elements in one another, as no page does: not read"
    return None
