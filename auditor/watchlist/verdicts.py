"""Verdicts as the file keeps them: the JSON of the contract, whose names and values stay, and back."""

from __future__ import annotations

import json
from functools import cache

from pydantic import TypeAdapter

from auditor.values import Verdict


def to_json(verdict: Verdict) -> str:
    return json.dumps(verdict.to_dict(), ensure_ascii=False, separators=(",", ":"))


def from_json(text: str) -> Verdict:
    """The verdict again, but for the traces of its claims, which aren't kept. Raises ValueError where it is none."""
    kept = json.loads(text)
    return _shape().validate_python({**kept, **kept["candidates"]})


@cache
def _shape() -> TypeAdapter[Verdict]:
    return TypeAdapter(Verdict)
