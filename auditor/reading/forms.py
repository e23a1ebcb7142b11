"""Spoken forms: what a row of lexicon/forms/*.toml may hold, loaded and checked.

A form is an opener, words that may stand between, a target and what may close it, with what must or must not stand around. What
it makes is its kind: a claim, or a cue that lays its stance over the words around. Sellers' turns of phrase are endless and their
forms few: "nobody here ever checked", "I've not yet had it out to count" are one. DEVELOPERS.md tells how to add one.

In any list of a form a phrase is written as in lexicon/reading (``(a|b|)``, hyphens); ``@name`` stands for the words of the
``[[words]]`` row of that id, ``#amount``, ``#number`` and ``#word`` for any word of that class (auditor/reading/ready.py).
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Literal

from pydantic import BaseModel, ConfigDict, model_validator

from auditor.knowledge import lexicon
from auditor.reading.rows import Direction
from auditor.values import Part

CUE_KINDS = ("denial", "hedge", "unchecked", "elsewhere")


class _Told(BaseModel):
    """What every row tells of itself; the tests run ``fires`` and ``quiet``."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    id: str
    reason: str
    source: str = "common practice, no source"
    fires: tuple[str, ...]
    quiet: tuple[str, ...]


class WordList(_Told):
    """Words of one sense, named ``@id`` in forms and asked for by id where a reader needs them."""

    words: tuple[str, ...]


class Form(_Told):
    """One form; which words each list speaks of is told beside it. Without a ``target`` the opener is the whole form."""

    kind: Literal["claim", "denial", "hedge", "unchecked", "elsewhere"]

    opener: tuple[str, ...]
    between: tuple[str, ...] = ()  # single words that may stand between opener and target, ``widest`` at most
    needs: tuple[str, ...] = ()  # one of these is in the opener or between
    barred: tuple[str, ...] = ()  # none of these stands between, whatever ``between`` allows
    widest: int = 6
    target: tuple[str, ...] = ()
    closer: tuple[str, ...] = ()  # single words behind that belong to it where nothing else follows up to a mark

    after: tuple[str, ...] = ()  # one of these stands at most three words before the opener
    not_after: tuple[str, ...] = ()  # none of these stands right before the opener
    behind: tuple[str, ...] = ()  # one of these stands right behind the target
    not_behind: tuple[str, ...] = ()  # none of these does
    ahead: tuple[str, ...] = ()  # one of these stands anywhere before the opener in its clause
    about: tuple[str, ...] = ()  # one of these stands anywhere in the clause or in the one before
    not_about: tuple[str, ...] = ()  # none of these does
    asked: tuple[str, ...] = ()  # the clause before is a question of at most four words, one of them of these
    place: Literal["opening", "later"] | None = None  # whether it opens its clause (behind words of ``openings`` at most)

    direction: Direction = "forward"  # of a cue: which words it lays its stance over
    reach: Literal["clause", "segment", "list"] = "clause"
    sign: str | None = None

    feature: str | None = None  # of a claim
    value: str | None = None
    part: Part | None = None
    denied: bool = False
    carried_by: Literal["all", "opener", "target"] = "all"  # the words that the claim stands on
    unread: bool = False  # only where no row of lexicon/reading claims its carrying words

    @model_validator(mode="after")
    def _claims_something(self) -> Form:
        if (self.kind == "claim") != (self.feature is not None and self.value is not None):
            raise ValueError("a claim, and nothing else, has a feature and a value")
        return self


Rows = tuple[dict[str, Form], dict[str, WordList]]


@cache
def form_rows() -> Rows:
    """Forms and word lists by id, in file order. Raises ValueError naming the file and row of a mistake."""
    forms: dict[str, Form] = {}
    lists: dict[str, WordList] = {}
    for path in sorted((lexicon.root() / "forms").glob("*.toml")):
        for row in _file(path):
            if row.id in forms or row.id in lists:
                raise ValueError(f"{path.name}: row id {row.id!r} stands in lexicon/forms twice")
            if isinstance(row, Form):
                forms[row.id] = row
            else:
                lists[row.id] = row
    return forms, lists


def _file(path: Path) -> Iterator[Form | WordList]:
    for kind, tables in tomllib.loads(path.read_text(encoding="utf-8")).items():
        for table in tables:
            try:
                yield WordList.model_validate(table) if kind == "words" else Form.model_validate({"kind": kind, **table})
            except ValueError as error:
                raise ValueError(f"{path.name}: row {table.get('id', '?')!r}: {error}") from error
