"""Nothing is sent anywhere, and the caution stands on everything that goes out: every command run with the network taken away."""

import html
import json
import os
import subprocess
import sys

import pytest

from auditor.reports.words import CAUTION
from tests.commands import DEMO, ROOT, WORDS

# Put before the command in its own process: any way out of this computer ends it, names that are looked up as well.
BLOCKED = """
import socket, sys
def refused(*given, **named):
    raise SystemExit(f"the network was asked for: {given} {named}")
class Closed(socket.socket):
    def connect(self, address):
        refused(address) if self.family != getattr(socket, "AF_UNIX", None) else super().connect(address)
    connect_ex = connect
    def sendto(self, *given):
        refused(*given)
socket.socket = Closed
socket.create_connection = socket.getaddrinfo = socket.gethostbyname = socket.gethostbyaddr = refused
from auditor.cli import main
sys.argv = ["auditor", *sys.argv[1:]]
main()
"""
CAUTIOUS = "neither an authentication nor an appraisal"


def offline(*arguments, words=WORDS):
    return subprocess.run(
        [sys.executable, "-c", BLOCKED, *map(str, arguments)],
        input=words.encode(),
        capture_output=True,
        env={**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "utf-8"},
        timeout=120,
    )


def test_the_block_blocks():
    probe = BLOCKED.replace("from auditor.cli import main", "main = lambda: socket.create_connection(('127.0.0.1', 9))")
    done = subprocess.run([sys.executable, "-c", probe], capture_output=True, timeout=60)
    assert b"the network was asked for" in done.stderr


@pytest.mark.parametrize("arguments", [("check",), ("check", "--explain"), ("draft",)], ids=" ".join)
def test_one_listing(arguments):
    done = offline(*arguments, "--title", "The Ore Dock by Ilse Varnum", "--points", DEMO / "points")
    assert done.returncode == 0, done.stderr.decode()
    assert CAUTIOUS in " ".join(done.stdout.decode("utf-8").split())


def test_a_check_as_json():
    done = offline("check", "--json", "--points", DEMO / "points")
    assert CAUTIOUS in json.loads(done.stdout)["caution"]


def test_a_scan_and_all_that_it_writes(tmp_path):
    files = [tmp_path / f"result{suffix}" for suffix in (".html", ".jsonl", ".csv")]
    outs = [part for file in files for part in ("--out", file)]
    done = offline("scan", DEMO / "listings.csv", DEMO / "pages", "--points", DEMO / "points", *outs)
    assert done.returncode == 0, done.stderr.decode()
    assert CAUTIOUS in " ".join(done.stdout.decode("utf-8").split())
    assert CAUTION in html.unescape(files[0].read_text(encoding="utf-8"))
    for file in files[1:]:
        assert CAUTIOUS in file.read_text(encoding="utf-8"), file.suffix


def test_point_sets_are_checked():
    assert offline("points", "check", DEMO / "points").returncode == 0
