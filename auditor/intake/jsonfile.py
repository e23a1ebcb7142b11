"""JSON: one object, an array, ``{"listings": [...]}``, or an object a line (.jsonl). Our own result lines are read too."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from typing import Any, NamedTuple

from auditor.intake.columns import Columns, nameless, recognise
from auditor.intake.encoding import decode, detect
from auditor.intake.file import File
from auditor.intake.item import Item, Note
from auditor.intake.rows import Place, listing
from auditor.values import Reject

_FORMS = 1000  # sets of keys that are remembered


class _Entry(NamedTuple):
    """One value of the file and where it stands; ``fault`` says why there is none."""

    words: str
    value: Any = None
    fault: str | None = None


def read_lines(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields a listing a line. Raises ValueError for binary data, OSError when the file can't be read."""
    encoding = detect(file)
    if encoding.said:
        yield Note(file.name, encoding.said)
    with encoding.text(file.open()) as stream:
        lines = ((f"line {number}", line.removeprefix("\ufeff")) for number, line in enumerate(stream, 1))
        yield from _listings(file, (_parsed(words, line) for words, line in lines if line.strip()), columns)


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields the file's listings. Raises ValueError for a file that is no JSON, OSError when it can't be read."""
    text, said = decode(file.read())
    if said:
        yield Note(file.name, said)
    text = text.removeprefix("\ufeff")
    if not text.strip():
        raise ValueError("is empty: expected a JSON object or array")
    yield from _listings(file, _array(text) if text.lstrip().startswith("[") else _object(text), columns)


def _array(text: str) -> Iterator[_Entry]:
    """The array's values one by one, so that a fault further down loses nothing before it."""
    decoder = json.JSONDecoder()
    at, number = _past_blanks(text, text.index("[") + 1), 0
    while text[at : at + 1] != "]":
        number += 1
        try:
            value, at = decoder.raw_decode(text, at)
        except (ValueError, RecursionError) as error:
            yield _Entry(f"item {number}", fault=f"{_told(error)}; the rest of the file could not be read")
            return
        yield _Entry(f"item {number}", value)
        at = _past_blanks(text, at)
        if text[at : at + 1] == ",":
            at = _past_blanks(text, at + 1)
        elif text[at : at + 1] != "]":
            line = text.count("\n", 0, at) + 1
            yield _Entry(
                f"item {number + 1}", fault=f"expected a comma or ] in line {line}; the rest of the file could not be read"
            )
            return
    if text[at + 1 :].strip():
        yield _Entry("end", fault="expected nothing behind the array's ]; what stands there was not read")


def _object(text: str) -> Iterator[_Entry]:
    try:
        value = json.loads(text)
    except (ValueError, RecursionError) as error:
        lines = [line for line in text.splitlines() if line.strip()]
        if str(error).startswith("Extra data") and len(lines) > 1:  # an object a line, under the wrong suffix
            yield from (_parsed(f"line {number}", line) for number, line in enumerate(lines, 1))
            return
        raise ValueError(_told(error)) from error
    if isinstance(value, dict) and isinstance(value.get("listings"), list):
        yield from (_Entry(f"item {number}", item) for number, item in enumerate(value["listings"], 1))
    else:
        yield _Entry("item 1", value)


def _parsed(words: str, line: str) -> _Entry:
    try:
        return _Entry(words, json.loads(line))
    except (ValueError, RecursionError) as error:
        return _Entry(words, fault=_told(error))


def _told(error: Exception) -> str:
    if isinstance(error, json.JSONDecodeError):
        return f"no valid JSON: {error.msg.lower()} (line {error.lineno}, column {error.colno})"
    return (
        f"no valid JSON: {'nested too deep' if isinstance(error, RecursionError) else 'a number in it has thousands of digits'}"
    )


def _past_blanks(text: str, at: int) -> int:
    while at < len(text) and text[at] in " \t\r\n":
        at += 1
    return at


def _listings(file: File, entries: Iterator[_Entry], columns: Mapping[str, str]) -> Iterator[Item]:
    known: dict[tuple[str, ...], Columns] = {}
    told: set[str] = set()
    number = 0
    for number, (words, value, fault) in enumerate(entries, 1):
        if isinstance(value, dict) and isinstance(value.get("listing"), dict):
            value = {**value["listing"], **{name: part for name, part in value.items() if name == "id"}}
        if fault or not isinstance(value, dict):
            yield Reject(file.name, words, fault or f"expected an object, found {_kind(value)}")
            continue
        names = tuple(value)
        if len(known) > _FORMS:
            known.clear()
        found, said = known.get(names) or known.setdefault(names, recognise(names, columns))
        if not {"text", "title"} & found.keys():
            yield Reject(file.name, words, nameless(names, "key"))
            continue
        yield from (Note(file.name, note) for note in said if note not in told)
        told.update(said)
        yield from listing(value, found, Place(file.name, words, f"{file.stem}-{number}"))
    if not number:
        yield Note(file.name, "holds no listing: expected objects with text or title")  # as a part of a scan may


def _kind(value: object) -> str:
    return {list: "an array", str: "a string", bool: "true or false", type(None): "null"}.get(type(value), "a number")
