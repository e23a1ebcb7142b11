"""A scan that is stopped, by Ctrl-C or by a kill at any moment, ends with the lines of one that wasn't."""

import json
import os
import random
import signal
import time

import pytest

from tests.scan.running import DEMO, scan, started, table

LISTINGS = 400
BAD = (5, 200, 201, 399)


@pytest.fixture(scope="module")
def whole(tmp_path_factory):
    """A table, and the files of a scan of it that ran through."""
    folder = tmp_path_factory.mktemp("whole")
    path = table(folder / "shop.csv", LISTINGS, BAD)
    done = scan(path, *files(folder), "--points", DEMO / "points")
    assert done.returncode == 3, done.stderr
    return path, folder, done


def files(folder):
    return [
        *("--out", folder / "r.jsonl", "--out", folder / "r.csv", "--out", folder / "r.html"),
        *("--rejects", folder / "rejects.csv"),
    ]


def when_some_is_done(run, journal, size):
    """Waits till the journal has grown to ``size`` bytes, or the run has ended."""
    while run.poll() is None and (not journal.exists() or journal.stat().st_size < size):
        time.sleep(0.005)


def ended(run):
    out, told = run.communicate(timeout=60)
    return out, told


@pytest.mark.parametrize(("stop", "workers"), [("kill", 1), ("kill", 2), ("interrupt", 2)])
def test_stopped_at_random_moments_it_ends_with_the_same_files(whole, tmp_path, workers, stop):
    path, good, done = whole
    chance = random.Random(f"{workers} {stop}")
    journal = tmp_path / ".r.jsonl.scan"
    most = os.path.getsize(good / "r.jsonl") + os.path.getsize(good / "r.csv")
    stops = 0
    command = path, *files(tmp_path), "--points", DEMO / "points", "--workers", workers, "--resume"
    for share in sorted(chance.uniform(0, 0.9) for _ in range(2)):
        run = started(*command)
        when_some_is_done(run, journal, share * most)
        time.sleep(chance.uniform(0, 0.05))
        if run.poll() is None:
            stops += 1
            if stop == "kill":
                run.kill()
            else:
                os.killpg(run.pid, signal.SIGINT)
        _, told = ended(run)
        if stop == "interrupt" and run.returncode == 4:
            assert "--resume goes on from there" in told
            assert "Traceback" not in told
        assert not (tmp_path / "r.jsonl").exists()
    assert stops
    last = scan(*command)
    assert last.returncode == done.returncode, last.stderr
    assert last.stdout.replace(str(tmp_path), "") == done.stdout.replace(str(good), "")
    for name in ("r.jsonl", "r.csv", "r.html", "rejects.csv"):
        assert (tmp_path / name).read_bytes() == (good / name).read_bytes(), name
    assert sorted(each.name for each in tmp_path.iterdir()) == ["r.csv", "r.html", "r.jsonl", "rejects.csv"]


def test_nothing_is_lost_or_told_twice(whole):
    _, folder, done = whole
    ids = [json.loads(line)["id"] for line in (folder / "r.jsonl").read_text(encoding="utf-8").splitlines()]
    assert ids == [f"n{number}" for number in range(LISTINGS) if number not in BAD]
    rejects = (folder / "rejects.csv").read_text(encoding="utf-8").splitlines()
    assert rejects[0] == "source,place,reason"
    assert [line.split(",")[1].split()[1] for line in rejects[1:]] == [str(number + 1) for number in BAD]
    assert all("neither text nor title" in line for line in rejects[1:])
    assert "4 things could not be read, told in" in done.stdout
    assert "could not be read" not in done.stderr


def test_a_killed_scan_leaves_no_worker_behind(whole, tmp_path):
    import psutil

    run = started(whole[0], "--out", tmp_path / "r.jsonl", "--workers", 2)
    when_some_is_done(run, tmp_path / ".r.jsonl.scan", 1000)
    children = psutil.Process(run.pid).children(recursive=True)
    run.kill()
    ended(run)
    assert children
    _, alive = psutil.wait_procs(children, timeout=30)
    assert not alive


@pytest.fixture
def stopped(whole, tmp_path):
    """A folder with a journal that holds something."""
    run = started(whole[0], "--out", tmp_path / "r.jsonl")
    when_some_is_done(run, tmp_path / ".r.jsonl.scan", 20_000)
    run.kill()
    ended(run)
    assert (tmp_path / ".r.jsonl.scan").exists()
    return tmp_path


def test_an_unfinished_scan_is_not_thrown_away_unasked(whole, stopped):
    done = scan(whole[0], "--out", stopped / "r.jsonl")
    assert done.returncode == 2
    told = " ".join(done.stderr.replace("│", " ").split())
    assert "add --resume to go on with it" in told
    assert scan(whole[0], "--out", stopped / "r.jsonl", "--resume").returncode == 3


def test_what_changed_since_is_told(whole, stopped):
    done = scan(whole[0], "--out", stopped / "r.jsonl", "--points", DEMO / "points", "--resume")
    assert done.returncode == 2
    assert "the point sets changed" in " ".join(done.stderr.replace("│", " ").split())
    other = table(stopped / "other.csv", 10)
    assert scan(other, "--out", stopped / "r.jsonl").returncode == 0
    assert len((stopped / "r.jsonl").read_text(encoding="utf-8").splitlines()) == 10


def test_a_journal_with_a_torn_end_is_taken_up_before_it(whole, stopped):
    journal = stopped / ".r.jsonl.scan"
    journal.write_bytes(journal.read_bytes()[:-7] + b"\0" * 40)
    assert scan(whole[0], "--out", stopped / "r.jsonl", "--resume").returncode == 3
    ids = [json.loads(line)["id"] for line in (stopped / "r.jsonl").read_text(encoding="utf-8").splitlines()]
    assert ids == [f"n{number}" for number in range(LISTINGS) if number not in BAD]
