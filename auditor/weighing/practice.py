"""The weighing room's words and customs, from lexicon/practice.toml."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Any, NamedTuple

from auditor.knowledge import lexicon
from auditor.values import Claim, Part


class Place(NamedTuple):
    """Where a photograph is taken; ``leaf`` tells that it is a single leaf with the imprint, which can be replaced."""

    name: str
    leaf: bool


@cache
def _practice() -> dict[str, Any]:
    return lexicon.table("practice")


def table(name: str) -> Any:  # noqa: ANN401  # tables differ in shape
    """One table of it as plain data."""
    return _practice()[name]


@lru_cache(maxsize=4096)
def place(words: str, part: Part) -> Place:
    """A point's ``place`` as the photograph that shows it; a place that no row knows stands for itself."""
    for row in table("places"):
        if row["part"] == part and (match := re.search(row["words"], words, re.IGNORECASE)):
            return Place(row["place"].format(**match.groupdict()), row.get("leaf", False))
    return Place(words.split(",")[0], False)


@cache
def _phrases() -> dict[str, str]:
    return dict(table("phrases"))


def is_later(value: str) -> bool:
    """Whether an edition's or printing's value is another than the first: ``"2"``, ``"later"``, ``"revised"``."""
    return value in ("later", "revised") or (value.isdigit() and value != "1")


def say(claim: Claim) -> str:
    """A claim in a few plain words, for a sentence: ``not “3”``, ``number line “1 2 3”``, ``heavy “foxing”``."""
    value = claim.value.partition("=")[2] if claim.feature == "point" else claim.value
    phrases = _phrases()
    words = phrases.get(f"{claim.feature}={value}") or phrases.get(claim.feature, "“{v}”").format(v=value.replace("_", " "))
    owner = " (jacket)" if claim.part == "jacket" and claim.feature in ("edition", "printing", "issue", "state", "grade") else ""
    denial, degree = "not " if claim.stance == "denied" else "", f"{claim.degree} " if claim.degree else ""
    return f"{denial}{degree}{words}{owner}"
