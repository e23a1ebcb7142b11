"""Any number of processes gives the same lines; faults around a scan are told and leave no half file."""

import csv
import os
import resource
import signal
import subprocess
import sys

import psutil
import pytest

from tests.scan.running import DEMO, command, environment, scan, started, table
from tests.scan.test_resume import when_some_is_done


def test_any_number_of_workers_gives_the_same_files(tmp_path):
    table(tmp_path / "shop.csv", 200, bad=(3,))
    told = set()
    for workers in (1, 3):
        out = tmp_path / str(workers)
        out.mkdir()
        names = [out / f"r{suffix}" for suffix in (".jsonl", ".csv", ".html")]
        more = [word for name in names for word in ("--out", name)]
        done = scan(tmp_path / "shop.csv", DEMO / "pages", "--points", DEMO / "points", "--workers", workers, *more)
        assert done.returncode == 3
        told.add((done.stdout, done.stderr, *(name.read_bytes() for name in names)))
    assert len(told) == 1


def test_a_worker_that_is_killed_is_told_and_its_work_taken_up(tmp_path):
    table(tmp_path / "shop.csv", 400)
    run = started(tmp_path / "shop.csv", "--out", tmp_path / "r.jsonl", "--workers", 2)
    when_some_is_done(run, tmp_path / ".r.jsonl.scan", 10_000)
    workers = [each for each in psutil.Process(run.pid).children() if "spawn_main" in " ".join(each.cmdline())]
    workers[0].kill()
    _, told = run.communicate(timeout=60)
    assert run.returncode == 4, told
    assert "A worker process was ended from outside" in told
    assert not (tmp_path / "r.jsonl").exists()
    assert scan(tmp_path / "shop.csv", "--out", tmp_path / "r.jsonl", "--resume").returncode == 0
    assert len((tmp_path / "r.jsonl").read_bytes().splitlines()) == 400


@pytest.mark.parametrize("suffix", [".jsonl", ".xlsx"])
def test_a_full_disk_is_told_and_leaves_no_half_file(tmp_path, suffix):
    table(tmp_path / "shop.csv", 300)
    out = tmp_path / f"r{suffix}"
    out.write_text("old", encoding="utf-8")

    def little_room():
        resource.setrlimit(resource.RLIMIT_FSIZE, (100_000, resource.RLIM_INFINITY))  # Python ignores SIGXFSZ: writes then fail

    told = subprocess.run(
        command(tmp_path / "shop.csv", "--out", out),
        preexec_fn=little_room,
        capture_output=True,
        encoding="utf-8",
        env=environment(),
        timeout=120,
        check=False,
    )
    assert told.returncode == 4, told.stderr
    assert "File too large" in told.stderr
    assert "--resume goes on from there" in told.stderr
    assert "Traceback" not in told.stderr
    assert out.read_text(encoding="utf-8") == "old"
    assert not list(tmp_path.glob(".*.part"))
    assert scan(tmp_path / "shop.csv", "--out", out, "--resume").returncode == 0
    assert out.stat().st_size > 1000


def test_a_folder_that_takes_no_file_is_told(tmp_path):
    if os.geteuid() == 0:
        pytest.skip("root may write anywhere")
    table(tmp_path / "shop.csv", 3)
    (tmp_path / "closed").mkdir(mode=0o500)
    done = scan(tmp_path / "shop.csv", "--out", tmp_path / "closed" / "r.jsonl")
    assert done.returncode == 4
    assert "Permission denied" in done.stderr


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="Linux has it")
def test_a_full_disk_behind_standard_output_is_told(tmp_path):
    table(tmp_path / "shop.csv", 3)
    with open("/dev/full", "w", encoding="utf-8") as full:
        done = subprocess.run(
            command(tmp_path / "shop.csv"), stdout=full, stderr=subprocess.PIPE, encoding="utf-8", env=environment(), check=False
        )
    assert done.returncode == 4
    assert "standard output: No space left on device" in done.stderr
    assert "Traceback" not in done.stderr


def test_a_closed_pipe_costs_no_file(tmp_path):
    table(tmp_path / "shop.csv", 300)
    run = started(tmp_path / "shop.csv", "--out", tmp_path / "r.jsonl")
    run.stdout.close()
    told = run.stderr.read()
    run.wait(60)
    assert "Traceback" not in told
    assert "rror" not in told
    assert len((tmp_path / "r.jsonl").read_bytes().splitlines()) == 300


def test_two_scans_for_one_file_do_not_mix(tmp_path):
    table(tmp_path / "shop.csv", 400)
    first = started(tmp_path / "shop.csv", "--out", tmp_path / "r.jsonl")
    when_some_is_done(first, tmp_path / ".r.jsonl.scan", 1000)
    first.send_signal(signal.SIGSTOP)
    second = scan(tmp_path / "shop.csv", "--out", tmp_path / "r.jsonl")
    first.send_signal(signal.SIGCONT)
    _, told = first.communicate(timeout=60)
    assert second.returncode == 4, second.stderr
    assert "another scan is writing it" in second.stderr
    assert first.returncode == 0, told
    assert len((tmp_path / "r.jsonl").read_bytes().splitlines()) == 400


def test_reading_the_command_loads_nothing_heavy():
    code = "import sys, auditor.cli; print({'pyarrow', 'openpyxl', 'dask', 'distributed', 'sqlite3'} & sys.modules.keys())"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, env=environment(), check=True)
    assert done.stdout.strip() == "set()"


def test_words_that_also_stand_elsewhere_are_told(tmp_path):
    words = (
        "Publisher's grey cloth lettered in copper on the spine, the endpapers printed with a plan of the harbour. A touch of "
        "sunning along the upper edge, a pencilled price rubbed out of the front free endpaper, otherwise remarkably fresh."
    )
    with (tmp_path / "shop.csv").open("w", newline="", encoding="utf-8") as stream:
        rows = csv.writer(stream)
        rows.writerow(["id", "title", "text", "seller"])
        for number in range(50):
            rows.writerow([f"n{number}", f"Title {number}", f"A book of {number} pages, {number * 7} of them cut.", "Some Shop"])
        rows.writerow(["=first", "Ore Dock", words, "Harbour Books"])
        rows.writerow(["second", "The Ore Dock", words.replace("copper", "gilt"), ""])
    for workers in (1, 2):
        done = scan(tmp_path / "shop.csv", "--same-words", tmp_path / f"{workers}.csv", "--workers", workers)
        assert done.returncode == 0, done.stderr
        assert "2 listings in words that also stand in another listing." in " ".join(done.stdout.split())
    with (tmp_path / "1.csv").open(newline="", encoding="utf-8") as stream:
        one, two = csv.DictReader(stream)
    assert (one["id"], one["note"]) == ("'=first", "these words also stand in second: they may describe another copy")
    assert two["note"] == "these words also stand in =first (Harbour Books): they may describe another copy"
    assert (tmp_path / "1.csv").read_bytes() == (tmp_path / "2.csv").read_bytes()
