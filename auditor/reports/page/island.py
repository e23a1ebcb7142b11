"""Data inside a page: JSON that can neither end the element it stands in nor steer the reader's eye."""

from __future__ import annotations

import json

from markupsafe import Markup

from auditor.reports.screen import safe

# In JSON these stand only inside strings, where \u escapes mean the same; so no tag or comment can begin or end.
_ESCAPES = {ord(sign): f"\\u{ord(sign):04x}" for sign in "<>&"}


def island(data: object) -> Markup:
    """``data`` as JSON for a script element of type application/json: pure ASCII, ready to stand in a template."""
    return Markup(json.dumps(_shown(data), separators=(",", ":")).translate(_ESCAPES))


def _shown(data: object) -> object:
    """The data with characters that would reverse or hide text replaced by ones that show."""
    if isinstance(data, str):
        return safe(data)
    if isinstance(data, dict):
        return {safe(name): _shown(value) for name, value in data.items()}
    if isinstance(data, list | tuple):
        return [_shown(value) for value in data]
    return data
