"""The reader's lexicon: rows of phrases with a kind, loaded from lexicon/reading/*.toml and checked.

A phrase is written in lower case; ``(a|b|)`` stands for each of its alternatives in turn (an empty one drops the word), and a
hyphen matches a hyphen, a blank or nothing. What a kind means is told in DEVELOPERS.md.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from functools import cache, lru_cache
from itertools import product
from pathlib import Path
from typing import Literal

from pydantic import BaseModel, ConfigDict

from auditor.knowledge import lexicon
from auditor.values import Part, Stance

Kind = Literal[
    "term",  # states a claim
    "topic",  # names a feature without a value: a claim only where the seller says that it was not checked
    "noun",  # names a part of the copy
    "denial",
    "hedge",
    "unchecked",
    "elsewhere",
    "exception",  # "except for": what follows is said of this copy after all
    "contrast",  # "but": earlier cues reach no further
    "this copy",  # "ours": talk comes back from other copies
    "grade",
    "sign",  # tells a reader what a number or a name near it is: a price, a number line, a size ...
    "mask",  # words with another sense: they claim nothing
]
Direction = Literal["forward", "back", "both"]


class Row(BaseModel):
    """One row. ``fires`` are examples that it must fire on, ``quiet`` ones that it must not; the tests run both."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    id: str
    kind: Kind
    phrases: tuple[str, ...]
    reason: str
    source: str = "common practice, no source"
    fires: tuple[str, ...] = ()
    quiet: tuple[str, ...] = ()
    feature: str | None = None
    value: str | None = None
    part: Part | None = None
    stance: Stance = "asserted"
    direction: Direction = "forward"
    reach: Literal["clause", "segment", "list"] = "clause"
    sign: str | None = None


def spread(phrase: str) -> Iterator[str]:
    """Every phrase that a row's notation stands for: ``price-clip(ped|s)`` gives eight."""
    pieces = re.split(r"\(([^()]*)\)", phrase)
    choices = [piece.split("|") if index % 2 else [piece] for index, piece in enumerate(pieces)]
    for chosen in product(*choices):
        plain = re.sub(r"\s+", " ", "".join(chosen)).strip()
        if plain:
            yield plain


@lru_cache(maxsize=20_000)
def chunks(phrase: str) -> list[list[str]]:
    """A phrase as a row of choices: the notation between blanks outside brackets, each with its alternatives."""
    return [_alternatives(piece) for piece in re.findall(r"(?:\([^()]*\)|[^\s()])+", phrase)]


def _alternatives(piece: str) -> list[str]:
    found = list(spread(piece))
    return [*found, ""] if _may_vanish(piece) else found


def _may_vanish(piece: str) -> bool:
    """Whether every bracket of a piece may be empty and nothing stands outside them."""
    return re.fullmatch(r"(?:\((?:[^()]*\|)?\)|\(\|[^()]*\)|\([^()]*\|\|[^()]*\))+", piece) is not None


@cache
def rows() -> tuple[Row, ...]:
    """All rows of lexicon/reading, in file order. Raises ValueError naming the file and row of a mistake."""
    found: list[Row] = []
    seen: dict[str, str] = {}
    for path in sorted((lexicon.root() / "reading").glob("*.toml")):
        found.extend(_file(path, seen))
    return tuple(found)


def _file(path: Path, seen: dict[str, str]) -> Iterator[Row]:
    for kind, tables in tomllib.loads(path.read_text(encoding="utf-8")).items():
        for table in tables:
            name = table.get("id", "?")
            if name in seen:
                raise ValueError(f"{path.name}: row id {name!r} stands in {seen[name]} already")
            seen[name] = path.name
            try:
                yield Row.model_validate({"kind": kind.replace("_", " "), **table})
            except ValueError as error:
                raise ValueError(f"{path.name}: row {name!r}: {error}") from error
