"""What the models of a point set refuse, in words: the key, what stands there, what was expected and how to write it."""

from __future__ import annotations

import difflib
import re
from collections.abc import Collection
from datetime import date, time
from typing import Final

from pydantic_core import ErrorDetails

from auditor.knowledge.points import Account, Edition, Reading, Row

_INNER: Final[dict[str, type[Row]]] = {"readings": Reading, "accounts": Account}
# How each key is written; a value is shown as an author would type it.
_WRITTEN: Final = {
    "title": '"The Ore Dock"',
    "author": '"Ilse Varnum"',
    "also_titled": '["Ore Dock"]',
    "id": '"jacket-price"',
    "name": '"First edition"',
    "kind": '"trade"',
    "publisher": '"Tamarack & Vane"',
    "year": "1974",
    "isbn": '"9780306406157"',
    "printings": "4",
    "print_runs": '{ "1" = 2500 }',
    "part": '"jacket"',
    "place": '"front flap"',
    "feature": '"price"',
    "source": '"who says so, where"',
    "disputed": '"who disagrees"',
    "note": '"limits and traps"',
    "value": '"$6.95"',
    "copies": '["trade:1-2"]',
    "worn_by": '["trade:1-2"]',
    "said_as": '["priced 6.95"]',
    "numbers": '"251-1000"',
    "authority": '"who"',
    "element": '"the text"',
    "edition": '"trade"',
    "printing": '"1"',
    "grade": '"fine"',
    "currency": '"USD"',
    "as_of": '"1998-04-01"',
    "low": "60",
    "high": "90",
    "volumes": "2",
    "with_jacket": "true",
    "signed": "true",
    "presence_only": "true",
    "known_pairing": "true",
}
_KINDS: Final = {
    "string": "text in quotation marks",
    "int": "a whole number without quotation marks",
    "float": "a number without quotation marks",
    "bool": "true or false, without quotation marks",
    "tuple": "a list in brackets",
    "dict": "pairs in braces",
}


def in_words(detail: ErrorDetails, model: type[Row]) -> str:
    """What pydantic found in a row of ``model``, for a person."""
    keys = [str(part) for part in detail["loc"] if isinstance(part, str) and not part.startswith(("tuple", "str"))]
    key, kind, got = keys[-1] if keys else "row", detail["type"], detail["input"]
    if "print_runs" in keys:
        key = "print_runs"
    if kind == "missing":
        if key == "readings":
            return f"the key {key!r} is missing: add a [[points.readings]] table below the point, with value and copies"
        example = 'id = "trade"' if (key, model) == ("id", Edition) else written(key)
        return f"the key {key!r} is missing: add {example}"
    if kind == "extra_forbidden":
        inner = next((_INNER[name] for name in keys[:-1] if name in _INNER), model)
        return f"unknown key {key!r}: expected one of {', '.join(inner.model_fields)}{near(key, inner.model_fields)}"
    if kind == "literal_error":
        known = str(detail["ctx"]["expected"])
        names = re.findall(r"'([^']*)'", known)
        return f"{key} is {shown(got)}: expected {known}{near(str(got), names)}"
    if kind == "value_error":
        return str(detail["ctx"]["error"])
    if kind == "greater_than_equal":
        return f"{key} is {shown(got)}: expected {detail['ctx']['ge']} or more; leave the key out where it isn't known"
    if kind == "string_pattern_mismatch":
        return f"{key} is {shown(got)}: expected two numbers with a hyphen between them: {written(key)}"
    wanted = next((words for name, words in _KINDS.items() if kind.startswith(name)), None)
    if wanted is None:
        return f"{key} is {shown(got)}: {detail['msg'].replace('Input should', 'it should')}"
    return f"{key} is {shown(got)}: expected {wanted}, such as {written(key)}"


def written(key: str) -> str:
    """A key with a value, as one writes it."""
    return f"{key} = {_WRITTEN.get(key, chr(34) * 2)}"


def near(word: str, known: Collection[str]) -> str:
    """The known word that one may have meant, as the end of a sentence; nothing where none is near."""
    found = difflib.get_close_matches(word, [*known], 1, 0.6)
    return f"; perhaps {found[0]} is meant" if found else ""


def shown(value: object) -> str:
    """A value as its author sees it in the file."""
    if isinstance(value, date | time):
        return f"the date or time {value}"
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, dict):
        return "a table"
    return "a list" if isinstance(value, list) else repr(value)
