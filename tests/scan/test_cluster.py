"""A scan on a real local Dask cluster: a scheduler and workers as processes, a worker killed, a lexicon that they don't have."""

import csv
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import time

import pyarrow.csv
import pytest
from pyarrow import parquet

from tests.scan.running import DEMO, ROOT, environment, scan, table

PARTS = 6


def python(*arguments, folder, **more):
    return subprocess.Popen(
        [sys.executable, "-m", *map(str, arguments)],
        cwd=folder,
        env=environment(DASK_DISTRIBUTED__SCHEDULER__ALLOWED_FAILURES="10", **more),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
        encoding="utf-8",
    )


class Cluster:
    """Its workers run a copy of the program with a lexicon of their own that knows no word of condition."""

    def __init__(self, folder):
        self.folder = folder
        copied = folder / "installed"
        for name in ("auditor", "lexicon"):
            shutil.copytree(ROOT / name, copied / name, ignore=shutil.ignore_patterns("__pycache__"))
        (copied / "lexicon" / "reading" / "defects.toml").write_text("", encoding="utf-8")
        self.path = str(copied)
        self.scheduler = python(
            *("distributed.cli.dask_scheduler", "--port", "0", "--no-dashboard", "--host", "127.0.0.1"), folder=folder
        )
        for line in self.scheduler.stderr:
            if found := re.search(r"Scheduler at:\s+(tcp://\S+)", line):
                self.address = found[1]
                break
        self.workers = [self.worker(), self.worker()]

    def worker(self):
        more = "--nthreads", "1", "--no-nanny", "--no-dashboard", "--local-directory", self.folder
        return python("distributed.cli.dask_worker", self.address, *more, folder=self.folder, PYTHONPATH=self.path)

    def end(self):
        for each in (*self.workers, self.scheduler):
            each.kill()
            each.communicate()


@pytest.fixture(scope="module")
def cluster(tmp_path_factory):
    cluster = Cluster(tmp_path_factory.mktemp("cluster"))
    yield cluster
    cluster.end()


@pytest.fixture(scope="module")
def shop(tmp_path_factory):
    """A folder of partitioned tables, CSV and Parquet, with two pages between them; and its scan on one machine."""
    folder = tmp_path_factory.mktemp("shop")
    (folder / "in" / "data-7").mkdir(parents=True)
    for number in range(PARTS):
        path = table(folder / "in" / f"data-{number}.csv", 150, bad=(3,) if number == 2 else ())
        if number % 2:
            parquet.write_table(
                pyarrow.csv.read_csv(path, parse_options=pyarrow.csv.ParseOptions(newlines_in_values=True)),
                path.with_suffix(".parquet"),
            )
            path.unlink()
    for page in sorted((DEMO / "pages").glob("*.html"))[:2]:
        shutil.copy(page, folder / "in" / "data-7")
    (folder / "in" / "photo.jpg").write_bytes(b"")
    more = "--out", folder / "r.jsonl", "--out", folder / "r.csv", "--rejects", folder / "rejects.csv"
    done = scan(folder / "in", *more, "--points", DEMO / "points")
    assert done.returncode == 3, done.stderr
    return folder, done


def joined(folder, header=False):
    """The lines of a folder's part files in order; each part of a table has its column names."""
    lines = []
    for number, part in enumerate(sorted(folder.iterdir())):
        assert part.name == f"part-{number:06}{folder.suffix}"
        lines += part.read_bytes().splitlines(keepends=True)[bool(header and number) :]
    return b"".join(lines)


def test_the_same_lines_as_on_one_machine_though_a_worker_is_killed(cluster, shop, tmp_path):
    folder, one = shop
    outs = [*("--out", tmp_path / "r.jsonl", "--out", tmp_path / "r.csv", "--out", tmp_path / "r.html")]
    more = *outs, "--rejects", tmp_path / "rejects.csv", "--points", DEMO / "points", "--cluster", cluster.address
    run = subprocess.Popen(
        [sys.executable, "-m", "auditor", "scan", str(folder / "in"), *map(str, more)],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        encoding="utf-8",
        env=environment(),
    )
    begun = tmp_path / "r.jsonl"
    while run.poll() is None and not list(begun.glob(".part-*")) + list(begun.glob("part-*")):
        time.sleep(0.01)
    assert run.poll() is None
    cluster.workers[0].kill()
    cluster.workers.append(cluster.worker())
    out, errors = run.communicate(timeout=100)
    assert run.returncode == 3, errors
    assert joined(tmp_path / "r.jsonl") == (folder / "r.jsonl").read_bytes()
    assert joined(tmp_path / "rejects.csv", header=True) == (folder / "rejects.csv").read_bytes()
    rows = [list(csv.reader(text.decode().splitlines())) for text in (joined(tmp_path / "r.csv", header=True),)]
    assert rows == [list(csv.reader((folder / "r.csv").read_text(encoding="utf-8").splitlines()))]
    assert out.replace(str(tmp_path), "") == one.stdout.replace(str(folder), "")
    assert errors.replace(str(tmp_path), "") == one.stderr
    assert "listings read</h1>" in (tmp_path / "r.html").read_text(encoding="utf-8")
    features = [claim["feature"] for line in (folder / "r.jsonl").open(encoding="utf-8") for claim in json.loads(line)["claims"]]
    assert "defect" in features  # which the workers' own lexicon doesn't know
    again = scan(tmp_path / "r.jsonl", "--out", tmp_path / "again.csv")
    assert again.returncode == 0, again.stderr


def test_a_scan_that_is_killed_is_taken_up(cluster, shop, tmp_path):
    folder, _ = shop
    more = [str(each) for each in (folder / "in", "--out", tmp_path / "r.jsonl", "--points", DEMO / "points")]
    command = [sys.executable, "-m", "auditor", "scan", *more, "--cluster", cluster.address]
    run = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, env=environment())
    while run.poll() is None and not list((tmp_path / "r.jsonl").glob(".scan/00*")):
        time.sleep(0.01)
    run.send_signal(signal.SIGKILL)
    run.wait(30)
    done = scan(*more, "--cluster", cluster.address)
    assert done.returncode == 2
    assert "add --resume to go on" in " ".join(done.stderr.replace("│", " ").split())
    before = {part.name: part.stat().st_mtime_ns for part in (tmp_path / "r.jsonl").glob("part-*")}
    done = scan(*more, "--cluster", cluster.address, "--resume")
    assert done.returncode == 3, done.stderr
    assert joined(tmp_path / "r.jsonl") == (folder / "r.jsonl").read_bytes()
    assert before
    assert any((tmp_path / "r.jsonl" / name).stat().st_mtime_ns == when for name, when in before.items())


@pytest.mark.parametrize(
    ("more", "told"),
    [
        (["--cluster", "tcp://127.0.0.1:1", "--out", "r.jsonl"], "no cluster answers at tcp://127.0.0.1:1"),
        (["--cluster", "ADDRESS"], "needs an --out"),
        (["--cluster", "ADDRESS", "--out", "in/r.jsonl"], "lies inside"),
        (["--cluster", "ADDRESS", "--out", "full.csv"], "is there already"),
    ],
)
def test_what_cannot_be_done_is_told(cluster, tmp_path, monkeypatch, more, told):
    monkeypatch.chdir(tmp_path)
    os.mkdir("in")
    os.mkdir("full.csv")
    table(tmp_path / "in" / "shop.csv", 3)
    (tmp_path / "full.csv" / "something").touch()
    done = scan("in", *(cluster.address if word == "ADDRESS" else word for word in more))
    assert done.returncode == 2, done.stderr
    assert told in " ".join(done.stderr.replace("│", " ").split())
    assert "Traceback" not in done.stderr
