"""JSON lines: one object a listing, by auditor/schema.json."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Any

from auditor.reports.run import Result
from auditor.reports.words import BRIEF_CAUTION
from auditor.values import Listing, Verdict


def record(listing: Listing, verdict: Verdict) -> dict[str, Any]:
    """One result as plain lists and dicts."""
    return {"id": listing.id, "listing": listing.to_dict(), **verdict.to_dict(), "caution": BRIEF_CAUTION}


def line(listing: Listing, verdict: Verdict) -> str:
    """One result as a line of JSON, without the line's end."""
    return json.dumps(record(listing, verdict), ensure_ascii=False)


def piece(results: Sequence[Result]) -> bytes:
    """Some results as they stand in the file, in UTF-8; a file's name need not be valid text."""
    return "".join(f"{line(*result)}\n" for result in results).encode("utf-8", "replace")
