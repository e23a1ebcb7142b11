"""What could not be read, as a file: where it stands and why."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from dataclasses import asdict

from auditor.reports.table import rows
from auditor.values import Reject

HEADS = ("source", "place", "reason")


def _lines(rejects: Iterable[Reject]) -> bytes:
    return "".join(f"{json.dumps(asdict(each), ensure_ascii=False)}\n" for each in rejects).encode("utf-8", "replace")


def _rows(rejects: Iterable[Reject]) -> bytes:
    return rows((each.source, each.place, each.reason) for each in rejects)


KINDS: dict[str, tuple[bytes, Callable[[Iterable[Reject]], bytes]]] = {".csv": (rows([HEADS]), _rows), ".jsonl": (b"", _lines)}
"""By suffix: what the file begins with, and how some rejects stand in it."""
