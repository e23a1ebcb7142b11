"""The watchlist's file: SQLite in WAL mode, so that one may write while others read.

Each change is one transaction that waits for its turn: two processes at once lose nothing of each other's, and a process that
is killed leaves all of a change or nothing of it. What the collector wrote is only ever added to.
"""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

import platformdirs

from auditor.values import Listing
from auditor.watchlist.schema import WrongFile, bring_up_to_date
from auditor.watchlist.values import Act, ActKind, Reading, Watched
from auditor.watchlist.verdicts import from_json, to_json

PATIENCE: Final = 30.0  # seconds that a change waits for another process
_LISTING: Final = "id, text, title, asking, seller, url, source"  # as Listing has them


class Unusable(Exception):
    """The file can't be used as a watchlist; the message tells the file and what is wrong."""


def default_path() -> Path:
    """The watchlist in the user's data folder."""
    return platformdirs.user_data_path("listing-text-auditor", appauthor=False) / "watchlist.sqlite"


class Store:
    """An open watchlist. Made by ``opened``; one thread's alone."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self._connection = connection

    def all(self) -> list[Watched]:
        """Every listing in the order they were added."""
        return self._watched("")

    def get(self, key: int) -> Watched | None:
        return next(iter(self._watched("WHERE key = ?", key)), None) if key.bit_length() < 64 else None  # SQLite's largest

    def latest(self) -> list[tuple[int, Listing]]:
        """Each listing's key and its words as last read."""
        rows = self._connection.execute(
            f"SELECT listing, {_LISTING} FROM reading AS r "
            "WHERE number = (SELECT max(number) FROM reading WHERE listing = r.listing) ORDER BY listing"
        )
        return [(key, Listing(*words)) for key, *words in rows]

    def descriptions(self) -> list[tuple[int, str, str | None]]:
        """Each listing's key, its text as last read, and what it is about: its work, else its title."""
        return self._connection.execute(
            "SELECT listing, text, coalesce(json_extract(verdict, '$.work'), title) FROM reading AS r "
            "WHERE number = (SELECT max(number) FROM reading WHERE listing = r.listing) ORDER BY listing"
        ).fetchall()

    def add(self, reading: Reading) -> int:
        """A listing not kept yet; its key, which no other listing ever gets."""
        key = self._connection.execute("INSERT INTO listing (seen) VALUES (?)", (reading.at,)).lastrowid or 0
        self.read_again(key, reading)
        return key

    def read_again(self, key: int, reading: Reading) -> None:
        listing = reading.listing
        words = (getattr(listing, name) for name in _LISTING.split(", "))
        self._connection.execute(
            f"INSERT INTO reading (listing, at, {_LISTING}, verdict) VALUES ({', '.join('?' * 10)})",
            (key, reading.at, *map(_plain, words), _plain(to_json(reading.verdict))),
        )
        self.seen(key, reading.at)

    def seen(self, key: int, at: str) -> None:
        """Looked at again, whether it changed or not."""
        self._connection.execute("UPDATE listing SET seen = max(seen, ?) WHERE key = ?", (at, key))

    def act(self, key: int, kind: ActKind, at: str, words: str = "", place: str = "") -> None:
        self._connection.execute(
            "INSERT INTO act (listing, at, kind, place, words) VALUES (?, ?, ?, ?, ?)", (key, at, kind, place, words)
        )

    def drop(self, key: int) -> None:
        """The listing with all of its history."""
        self._connection.execute("DELETE FROM listing WHERE key = ?", (key,))

    @contextmanager
    def change(self) -> Iterator[None]:
        """All that the block does, or nothing; what it reads stays so until it ends."""
        self._connection.execute("BEGIN IMMEDIATE")
        with self._connection:
            yield

    def _watched(self, which: str, *values: int) -> list[Watched]:
        with self._snapshot():
            keys = self._connection.execute(f"SELECT key, seen FROM listing {which} ORDER BY key", values).fetchall()
            return [Watched(key, self._readings(key), self._acts(key), seen) for key, seen in keys]

    @contextmanager
    def _snapshot(self) -> Iterator[None]:
        """Several look-ups at one state of the file."""
        if self._connection.in_transaction:
            yield
            return
        self._connection.execute("BEGIN")
        with self._connection:
            yield

    def _readings(self, key: int) -> tuple[Reading, ...]:
        rows = self._connection.execute(f"SELECT at, verdict, {_LISTING} FROM reading WHERE listing = ? ORDER BY number", (key,))
        return tuple(Reading(at, Listing(*words), from_json(verdict)) for at, verdict, *words in rows)

    def _acts(self, key: int) -> tuple[Act, ...]:
        rows = self._connection.execute("SELECT at, kind, words, place FROM act WHERE listing = ? ORDER BY at, number", (key,))
        return tuple(Act(*row) for row in rows)


@contextmanager
def opened(path: Path) -> Iterator[Store]:
    """The watchlist of that file, made or brought up to date where needed. Raises Unusable."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        connection = sqlite3.connect(path, timeout=PATIENCE, isolation_level=None)
    except (OSError, sqlite3.Error) as error:
        raise Unusable(f"{path}: it can't be opened ({error})") from error
    try:
        connection.execute("PRAGMA foreign_keys = ON")
        bring_up_to_date(connection)
        _patiently(lambda: connection.execute("PRAGMA journal_mode = WAL").fetchone())
        yield Store(connection)
    except WrongFile as error:
        raise Unusable(f"{path}: {error}") from error
    except sqlite3.Error as error:
        raise Unusable(f"{path}: {error}") from error
    finally:
        connection.close()


def _plain(words: str | None) -> str | None:
    """Words that can be written: bytes that were no text when they came (a file's name may hold such) become question marks."""
    return words.encode("utf-8", "replace").decode("utf-8") if words is not None else None


def _patiently(step: Callable[[], object]) -> None:
    """The change to WAL doesn't wait for another process by itself."""
    end = time.monotonic() + PATIENCE
    while True:
        try:
            step()
        except sqlite3.OperationalError:
            if time.monotonic() > end:
                raise
            time.sleep(0.05)
        else:
            return
