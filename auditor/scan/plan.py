"""What a scan's lines depend on. A scan is taken up again only where all of it is as it was."""

from __future__ import annotations

import hashlib
from collections.abc import Collection, Iterable, Sequence
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import NamedTuple

from auditor.intake import measure
from auditor.knowledge import lexicon
from auditor.scan.chunk import SAME_WORDS, SIZE, Wanted


class Plan(NamedTuple):
    """``size`` is the bytes of the input. The others are said in words by ``changed`` where they differ."""

    size: int
    input: str
    words: str
    points: str
    authority: str | None
    columns: dict[str, str]
    kinds: list[str]
    program: str


_TOLD = {
    "input": "the files to read",
    "words": "the lexicon",
    "points": "the point sets",
    "authority": "the authority",
    "columns": "the columns chosen",
    "kinds": "the kinds of file wanted",
    "program": "the program",
}


def plan(paths: Sequence[Path], wanted: Wanted, leave_out: Collection[Path]) -> Plan:
    """The plan of a scan; files are known by name, size and time of change, lexicon and point sets by what they hold."""
    digest = hashlib.sha256()
    total = 0
    for name, size, changed in measure(paths, leave_out):
        digest.update(f"{name}\0{size}\0{changed}\n".encode("utf-8", "surrogateescape"))
        total += size
    return Plan(
        total,
        digest.hexdigest(),
        digest_of(lexicon.root().rglob("*.toml")),
        digest_of(file for folder in wanted.points for file in (folder.rglob("*.toml") if folder.is_dir() else [folder])),
        wanted.authority,
        dict(wanted.columns),
        [*wanted.suffixes, *([SAME_WORDS] if wanted.same_words else [])],
        f"{program()}, {SIZE} to a chunk",
    )


def program() -> str:
    """The program's version."""
    try:
        return version("listing-text-auditor")
    except PackageNotFoundError:
        return "of a checkout"


def digest_of(files: Iterable[Path]) -> str:
    """What some files hold, as one number in hexadecimal digits."""
    digest = hashlib.sha256()
    for file in sorted(files):
        digest.update(f"{file.name}\0{hashlib.sha256(file.read_bytes()).hexdigest()}\n".encode("utf-8", "surrogateescape"))
    return digest.hexdigest()


def changed(old: object, new: Plan) -> list[str]:
    """In words, what differs between a journal's plan and this one."""
    known = old if isinstance(old, dict) else {}
    return [words for name, words in _TOLD.items() if known.get(name) != new._asdict()[name]]
