"""The file: two processes at once, kill -9 at any moment, files of earlier and later versions, files that are none."""

import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import time
from pathlib import Path

import pytest

from auditor.auditing import open_shelf
from auditor.values import Listing, Verdict
from auditor.watchlist.history import history
from auditor.watchlist.keeping import Kept, keep
from auditor.watchlist.schema import NEWEST
from auditor.watchlist.store import Unusable, opened
from auditor.watchlist.values import Reading, moment
from tests.commands import DEMO, ROOT, auditor, errors, out

HERE = Path(__file__).parent
SHELF = open_shelf(DEMO / "points")
ENVIRONMENT = {**os.environ, "PYTHONPATH": str(ROOT)}


def table(path, rows):
    """Listings that are all different, as a table; each fits no other."""
    lines = [
        f's{n:04},Book {n},"Copy {n}. First edition, number {n * 7919 % 1000} of a series. {"word " * (n % 40)}"' for n in rows
    ]
    path.write_text("id,title,text\n" + "\n".join(lines), encoding="utf-8")
    return path


def start(*arguments):
    command = [sys.executable, "-m", "auditor", "watch", *map(str, arguments)]
    return subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=ENVIRONMENT)


def whole(path):
    """Every listing of a file that SQLite finds sound, each with a reading; their ids."""
    with sqlite3.connect(path) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
    with opened(path) as store:
        return [watched.listing.id for watched in store.all() if watched.readings]


def test_two_processes_that_bring_the_same_and_other_listings(tmp_path):
    path = tmp_path / "list.sqlite"
    one, other = table(tmp_path / "one.csv", range(120)), table(tmp_path / "other.csv", range(60, 180))
    runs = [start("add", each, "--file", path) for each in (one, other)]
    for run in runs:
        told, wrong = run.communicate(timeout=120)
        assert run.returncode == 0, wrong
        assert "Traceback" not in told + wrong
    assert sorted(whole(path)) == [f"s{n:04}" for n in range(180)]


def test_notes_of_two_processes_are_all_kept_while_a_third_reads(tmp_path):
    path = tmp_path / "list.sqlite"
    with opened(path) as store:
        keep(store, SHELF, Listing("a", "First edition."), moment())
    code = (
        "import sys; from pathlib import Path\n"
        "from auditor.watchlist.store import opened; from auditor.watchlist.values import moment\n"
        "for n in range(60):\n"
        "    with opened(Path(sys.argv[1])) as store, store.change(): store.act(1, 'note', moment(), f'{sys.argv[2]} {n}')\n"
    )
    runs = [subprocess.Popen([sys.executable, "-c", code, str(path), name], env=ENVIRONMENT) for name in ("one", "other")]
    seen = 0
    while any(run.poll() is None for run in runs):
        with opened(path) as store:
            now = len(store.get(1).notes)
        assert now >= seen
        seen = now
    assert [run.wait(60) for run in runs] == [0, 0]
    with opened(path) as store:
        notes = store.get(1).notes
    assert sorted(notes) == sorted(f"{name} {n}" for name in ("one", "other") for n in range(60))


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="POSIX's kill")
def test_killed_at_any_moment_it_leaves_whole_listings_and_goes_on(tmp_path):
    path = tmp_path / "list.sqlite"
    every = table(tmp_path / "all.csv", range(90))
    chance = random.Random(20250902)
    counts = []
    for _ in range(4):
        run = start("add", every, "--file", path)
        for _ in range(chance.randint(1, 30)):  # killed after some listings were told, in the middle of a later one
            run.stdout.readline()
        time.sleep(chance.random() / 200)
        run.kill()
        run.communicate(timeout=60)
        kept = whole(path)
        assert len(kept) == len(set(kept))
        counts.append(len(kept))
    assert counts == sorted(counts)
    assert counts[0] < 90
    done = auditor("watch", "add", every, "--file", path)
    assert done.returncode == 0, errors(done)
    assert sorted(whole(path)) == [f"s{n:04}" for n in range(90)]


def test_a_change_that_fails_leaves_nothing(tmp_path):
    reading = Reading(moment(), Listing("a", "words"), Verdict(None, (), "unclaimed"))

    def add_and_fail(store):
        with store.change():
            store.add(reading)
            raise RuntimeError

    with opened(tmp_path / "list.sqlite") as store:
        with pytest.raises(RuntimeError):
            add_and_fail(store)
        assert store.all() == []


def test_a_file_of_the_first_version_is_brought_up_to_date(tmp_path):
    path = tmp_path / "old.sqlite"
    shutil.copy(HERE / "version-1.sqlite", path)
    with sqlite3.connect(path) as connection:
        assert connection.execute("PRAGMA user_version").fetchone() == (1,)
        assert NEWEST > 1
    with opened(path) as store:
        [one, other] = store.all()
        assert one.notes == ("ask for the number line",)
        assert [entry.head for entry in history(one, SHELF.sets)][:3] == [
            "Put on the list",
            "You asked about: copyright page",
            "Note",
        ]
        assert one.seen == one.readings[-1].at
        assert other.decision == "pass"
        assert isinstance(keep(store, SHELF, one.listing, moment()), Kept)
        assert store.get(1).seen > one.seen
    with sqlite3.connect(path) as connection:
        assert connection.execute("PRAGMA user_version").fetchone() == (NEWEST,)
        assert connection.execute("PRAGMA journal_mode").fetchone() == ("wal",)


def test_two_processes_bring_one_old_file_up_to_date(tmp_path):
    path = tmp_path / "old.sqlite"
    shutil.copy(HERE / "version-1.sqlite", path)
    runs = [start("list", "--file", path) for _ in range(3)]
    for run in runs:
        told, wrong = run.communicate(timeout=60)
        assert run.returncode == 0, wrong
        assert "The Ore Dock" in told


def test_a_file_of_a_later_version_is_left_alone(tmp_path):
    path = tmp_path / "new.sqlite"
    with opened(path):
        pass
    with sqlite3.connect(path) as connection:
        connection.execute(f"PRAGMA user_version = {NEWEST + 1}")
    done = auditor("watch", "list", "--file", path)
    assert done.returncode == 2
    assert "later version" in " ".join(errors(done).split())
    assert not out(done)


def test_another_programs_database_is_left_alone(tmp_path):
    path = tmp_path / "other.sqlite"
    with sqlite3.connect(path) as connection:
        connection.execute("CREATE TABLE bookmarks (address TEXT)")
    before = path.read_bytes()
    with pytest.raises(Unusable, match="no watchlist"), opened(path):
        pass
    assert path.read_bytes() == before
