"""Coverage-guided fuzzing by hand: ``python -m tests.fuzz.run reader 1800`` fuzzes a target for so many seconds.

Needs ``pip install atheris``. It begins with the seeds and the phrases of the lexicon, keeps what it finds new below the system's
temporary folder, and stops at the first finding, whose input it names. A finding that is cured becomes a file of
``seeds/TARGET``, which the tests run.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["auditor"]):
    from auditor.reading.rows import rows
    from tests.fuzz.targets import TARGETS, seed_folders

SYNTAX = (
    "<div itemscope>",
    "</p>",
    'type="application/ld+json"',
    '{"@type":"Product"',
    "[[points]]",
    "[[points.readings]]",
    "trade:1-",
)


def main(target: str, seconds: str) -> None:
    found = Path(tempfile.gettempdir()) / "auditor-fuzz" / target
    found.mkdir(parents=True, exist_ok=True)
    words = found.parent / f"{target}.dict"
    phrases = sorted(
        {phrase for row in rows() for phrase in row.phrases if phrase.isascii() and phrase.replace(" ", "").isalpha()}
    )
    quoted = (word.replace("\\", r"\\").replace('"', r"\"") for word in (*SYNTAX, *phrases))
    words.write_text("".join(f'"{word}"\n' for word in quoted), encoding="utf-8")
    atheris.Setup(
        [
            sys.argv[0],
            str(found),
            *map(str, seed_folders(target)),
            f"-dict={words}",
            f"-max_total_time={seconds}",
            "-max_len=4096",
            "-timeout=20",
            "-rss_limit_mb=2048",
            f"-artifact_prefix={found.parent}/{target}-",
        ],
        TARGETS[target],
    )
    atheris.Fuzz()


if __name__ == "__main__":
    main(*sys.argv[1:])
