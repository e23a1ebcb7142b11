"""lexicon/point_words.toml: how sellers put the points of a book."""

from __future__ import annotations

from functools import cache
from typing import Any

from auditor.knowledge import lexicon


@cache
def lexis() -> dict[str, Any]:
    """Its lists as frozensets, its tables as dicts."""
    table = lexicon.table("point_words")
    return {name: frozenset(value) if isinstance(value, list) else value for name, value in table.items()}
