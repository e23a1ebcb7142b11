"""The tables of a watchlist's file, by version. A step once landed is never changed: a change is a further step."""

from __future__ import annotations

import sqlite3
from typing import Final

MARK: Final = 0x4C744157  # PRAGMA application_id: this file is a watchlist, and not some other program's

# Step n brings a file of version n to version n + 1; PRAGMA user_version tells a file's version, 0 a new one's.
STEPS: Final[tuple[tuple[str, ...], ...]] = (
    (
        f"PRAGMA application_id = {MARK}",
        "CREATE TABLE listing (key INTEGER PRIMARY KEY AUTOINCREMENT)",
        """CREATE TABLE reading (
            number INTEGER PRIMARY KEY,
            listing INTEGER NOT NULL REFERENCES listing ON DELETE CASCADE,
            at TEXT NOT NULL, id TEXT NOT NULL, title TEXT, text TEXT NOT NULL, asking TEXT, seller TEXT, url TEXT, source TEXT,
            verdict TEXT NOT NULL)""",
        "CREATE INDEX reading_of ON reading (listing)",
        """CREATE TABLE act (
            number INTEGER PRIMARY KEY,
            listing INTEGER NOT NULL REFERENCES listing ON DELETE CASCADE,
            at TEXT NOT NULL, kind TEXT NOT NULL, place TEXT NOT NULL, words TEXT NOT NULL)""",
        "CREATE INDEX act_of ON act (listing)",
    ),
    # When a listing was last looked at, changed or not.
    (
        "ALTER TABLE listing ADD COLUMN seen TEXT NOT NULL DEFAULT ''",
        "UPDATE listing SET seen = coalesce((SELECT max(at) FROM reading WHERE reading.listing = listing.key), '')",
    ),
)
NEWEST: Final = len(STEPS)


class WrongFile(Exception):
    """The file is no watchlist, or one of a later version of the program; the message says which."""


def bring_up_to_date(connection: sqlite3.Connection) -> None:
    """Takes the steps that the file lacks, all or none. Raises WrongFile."""
    if _version(connection) == NEWEST:
        return
    connection.execute("BEGIN IMMEDIATE")
    with connection:
        for step in STEPS[_version(connection) :]:  # asked again: another process may have done it meanwhile
            for statement in step:
                connection.execute(statement)
        connection.execute(f"PRAGMA user_version = {NEWEST}")


def _version(connection: sqlite3.Connection) -> int:
    version, mark, tables = connection.execute(
        "SELECT user_version, application_id, (SELECT count(*) FROM sqlite_master) "
        "FROM pragma_user_version, pragma_application_id"
    ).fetchone()
    if tables and mark != MARK:
        raise WrongFile("it is no watchlist")
    if version > NEWEST:
        raise WrongFile(f"it was written by a later version of this program ({version}; this one knows up to {NEWEST})")
    return int(version)
