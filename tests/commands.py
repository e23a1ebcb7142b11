"""The program run as a user runs it: for tests of commands in any room."""

import json
import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[1]
DEMO = ROOT / "corpora_demo"
SCHEMA = json.loads((ROOT / "auditor" / "schema.json").read_text(encoding="utf-8"))
WORDS = (
    "First edition, first printing. Gray cloth, number line 10 9 8 7 6 5 4 3 2 1. Not a book club edition. "
    "Very good in a very good jacket. It may be signed; later printings are in black boards."
)


def auditor(*arguments, words="", **environment):
    """Runs the command with ``words`` on standard input; ``environment`` stands beside ours."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "utf-8", **environment}
    return subprocess.run(
        [sys.executable, "-m", "auditor", *map(str, arguments)],
        input=words.encode(),
        capture_output=True,
        env=environment,
        timeout=120,
    )


def out(done):
    return done.stdout.decode("utf-8")


def errors(done):
    return done.stderr.decode("utf-8")


def one_line(text):
    return " ".join(text.split())
