"""Lettered copies: "letter Q of the 26 bound for friends", "copy F of 26 lettered copies"."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.readers.counts import count_at
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start

_LETTERS = 26
_START = Start(lambda word: word in ("letter", "lettered", "copy"))


def lettered(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``limitation`` with a letter for the copy's number."""
    norm, words = scene.norm, scene.words
    for index in scene.starting(_START):
        at = index + 1
        while at < len(norm) and norm[at] in ("copy", "letter", ":", '"', "'"):
            at += 1
        if at + 2 >= len(norm) or len(norm[at]) != 1 or not words.text[words.start[at]].isupper():
            continue
        place = at + 1 + (norm[at + 1] in ('"', "'"))
        if norm[place : place + 1] != ["of"]:
            continue
        whole = count_at(norm, place + 1 + (norm[place + 1 : place + 2] in (["the"], ["only"])))
        if whole is not None and 1 < whole[0] <= _LETTERS:
            value = f"{words.quote(at, at + 1)} of {whole[0]}"
            yield Draft("limitation", value, index, whole[1], "lettered copy", part="book")
