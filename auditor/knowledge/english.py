"""English words and names, of lexicon/english.txt: what is right as it stands, and no name of somebody's making."""

from __future__ import annotations

from functools import cache

from auditor.knowledge import lexicon


@cache
def right_words() -> frozenset[str]:
    """All of them, in lower case."""
    text = (lexicon.root() / "english.txt").read_text(encoding="utf-8")
    return frozenset(line for line in text.split("\n") if line and not line.startswith("#"))
