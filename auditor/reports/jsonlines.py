"""JSON lines: one object a listing, by auditor/schema.json."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any, TextIO

from auditor.values import Listing, Verdict


def record(listing: Listing, verdict: Verdict) -> dict[str, Any]:
    """One result as plain lists and dicts."""
    return {"id": listing.id, "listing": listing.to_dict(), **verdict.to_dict()}


def line(listing: Listing, verdict: Verdict) -> str:
    """One result as a line of JSON, without the line's end."""
    return json.dumps(record(listing, verdict), ensure_ascii=False)


@contextmanager
def writing(stream: TextIO) -> Iterator[Callable[[Listing, Verdict], None]]:
    yield lambda listing, verdict: print(line(listing, verdict), file=stream)
