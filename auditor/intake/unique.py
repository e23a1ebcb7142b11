"""Ids made unique within a file. The ids seen stand in a temporary database on disk, so that memory doesn't grow with them."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import closing
from dataclasses import replace

from auditor.intake.item import Item, Note
from auditor.values import Listing


def uniquely_named(items: Iterable[Item]) -> Iterator[Item]:
    """The items of one file; an id used before gets the next free number behind it, and that is told."""
    # An empty name is a private temporary database: SQLite keeps it in memory while it is small, then in an unlinked file.
    with closing(sqlite3.connect("", isolation_level=None)) as seen:
        seen.executescript(
            "PRAGMA journal_mode = OFF; CREATE TABLE seen (id TEXT PRIMARY KEY, times INTEGER) WITHOUT ROWID; BEGIN"
        )
        for item in items:
            if isinstance(item, Listing) and (unique := _unique(item.id, seen)) != item.id:
                yield Note(item.source or "", f"the id {item.id!r} was used before; this one is called {unique!r}")
                item = replace(item, id=unique)
            yield item


def _unique(name: str, seen: sqlite3.Connection) -> str:
    if seen.execute("INSERT OR IGNORE INTO seen VALUES (?, 1)", (name,)).rowcount:
        return name
    [count] = seen.execute("SELECT times FROM seen WHERE id = ?", (name,)).fetchone()
    while True:
        count += 1
        unique = f"{name}-{count}"
        if seen.execute("INSERT OR IGNORE INTO seen VALUES (?, 1)", (unique,)).rowcount:
            seen.execute("UPDATE seen SET times = ? WHERE id = ?", (count, name))
            return unique
