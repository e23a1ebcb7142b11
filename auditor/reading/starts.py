"""Where readers start: each begins only at words of certain forms, and those are found once for all readers.

A reader that finds nothing in a text should cost next to nothing, and most find nothing in most texts. So each says which words
it starts from, ``_START = Start(lambda word: word in _openers())``, and walks no others: ``for index in scene.starting(_START)``.
What a word's form may start is asked of every reader once, and kept.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

_ALL: list[Start] = []


class Start:
    """The words that a reader starts from. ``serves`` looks at the form of one word alone, never at what stands around it."""

    def __init__(self, serves: Callable[[str], bool]) -> None:
        self.serves = serves
        _ALL.append(self)
        _starts_of.cache_clear()


@lru_cache(maxsize=30_000)
def _starts_of(word: str) -> tuple[Start, ...]:
    return tuple(start for start in _ALL if start.serves(word))


def forget() -> None:
    """Asks every reader anew, once the words that it starts from have changed."""
    _starts_of.cache_clear()


def starts_in(norm: list[str]) -> dict[Start, list[int]]:
    """The places of each start in a text's words, in order; one without a place is left out."""
    found: dict[Start, list[int]] = {}
    for index, word in enumerate(norm):
        for start in _starts_of(word):
            if start in found:
                found[start].append(index)
            else:
                found[start] = [index]
    return found
