"""Scans as real processes, and listings for them."""

import csv
import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]
DEMO = ROOT / "corpora_demo"
WORDS = (
    "First edition, first printing. Number line {0} 9 8 7 6 5 4 3 2 1.",
    "Second printing, price clipped, owner's name {0}. Very good in a good jacket.",
    "Fine copy, not ex-library. Book club edition? Signed by the author, one of {0} copies.",
    "Tin Meridian, 4th impression, small chip to the jacket, stock number {0}.",
)


def table(path, count, bad=()):
    """``count`` listings, those with a number in ``bad`` without words."""
    with path.open("w", newline="", encoding="utf-8") as stream:
        rows = csv.writer(stream)
        rows.writerow(["id", "title", "text", "price"])
        for number in range(count):
            words = "" if number in bad else WORDS[number % len(WORDS)].format(number)
            rows.writerow([f"n{number}", "" if number in bad else "The Ore Dock, Ilse Varnum", words, f"${number % 90 + 5}"])
    return path


def command(*arguments):
    """The command with small chunks, so that a few hundred listings are many of them."""
    code = "import auditor.scan.chunk as chunk; chunk.SIZE = 20; from auditor.cli import main; main()"
    return [sys.executable, "-c", code, "scan", *map(str, arguments)]


def environment(**more):
    return {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "utf-8", **more}


def scan(*arguments, **more):
    """A scan to its end, its output as text."""
    return subprocess.run(
        command(*arguments), capture_output=True, encoding="utf-8", env=environment(**more), timeout=120, check=False
    )


def started(*arguments):
    """A scan under way, in a session of its own so that a signal can reach all its processes, as Ctrl-C does."""
    return subprocess.Popen(
        command(*arguments),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        encoding="utf-8",
        env=environment(),
        start_new_session=True,
    )
