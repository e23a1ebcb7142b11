"""Which column of a table (or key of an object) holds what: the names are rows of lexicon/columns.toml."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from typing import Literal, NamedTuple

from auditor.knowledge.lexicon import table

_MANY, _LONG = 40, 60  # names, and letters of a name, that a message shows


class Columns(NamedTuple):
    """``heads`` maps a field (id, title, text, asking, currency, seller, url) to the head that holds it.

    ``said`` are notes for people: what was recognised, which told names aren't there, which other heads would have fitted.
    """

    heads: dict[str, str]
    said: tuple[str, ...]


def recognise(heads: Iterable[str], chosen: Mapping[str, str] | None = None) -> Columns:
    """Finds the fields among ``heads``. ``chosen`` (field -> head) goes before the known names."""
    heads = [head for head in heads if head.strip()]
    by_key = {key(head): head for head in reversed(heads)}
    found: dict[str, str] = {}
    said: list[str] = []
    for field, wanted in (chosen or {}).items():
        head = wanted if wanted in heads else by_key.get(key(wanted))
        if head is None:
            said.append(f"no column {wanted!r} for {field} here; the columns are {_told(heads)}")
        else:
            found[field] = head
    for field, names in _names().items():
        fitting = [by_key[name] for name in names if name in by_key and by_key[name] not in found.values()]
        if field not in found and fitting:
            found[field] = fitting.pop(0)
            if field == "text" and fitting:
                other = fitting[0]
                said.append(
                    f"the text is column {found[field]}; column {other} is not read (--column text={other} reads it instead)"
                )
    if found:
        recognised = ", ".join(f"{field} from column {found[field]}" for field in fields() if field in found)
        said.insert(0, recognised)
    return Columns(found, tuple(said))


def nameless(heads: Sequence[str], thing: Literal["column", "key"] = "column") -> str:
    """That no column or key holds words, in words: what there is, and how to tell which is meant."""
    return f"no {thing} holds the text: the {thing}s are {_told(heads)}; name it with --column text={thing.upper()}"


def _told(heads: Sequence[str]) -> str:
    """The heads, of very many or very long ones the beginning."""
    shown = ", ".join(head if len(head) <= _LONG else f"{head[:_LONG]}..." for head in heads[:_MANY])
    return shown if len(heads) <= _MANY else f"{shown} and {len(heads) - _MANY:,} more"


def fields() -> tuple[str, ...]:
    """The names that ``--column`` may settle."""
    return tuple(_names())


def key(head: str) -> str:
    """A head without case, spaces and punctuation: ``"Item_Title"`` and ``"item title"`` are one."""
    return re.sub(r"[\W_]+", "", head).casefold()


@cache
def _names() -> dict[str, tuple[str, ...]]:
    return {row["field"]: tuple(dict.fromkeys(map(key, row["names"]))) for row in table("columns")["fields"]}
