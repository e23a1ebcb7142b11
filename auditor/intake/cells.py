"""Cells that a spreadsheet would run as a formula: written with a leading apostrophe, read without it."""

from __future__ import annotations

import re


def neutralised(cell: str) -> str:
    """The cell with an apostrophe before it where it begins with ``= + - @``, a tab or a carriage return.

    Source: OWASP, "CSV Injection". A cell that begins with apostrophes before such a sign gets one more, so ``restored``
    undoes it exactly.
    """
    return f"'{cell}" if re.match(r"'*[=+\-@\t\r]", cell) else cell


def restored(cell: str) -> str:
    """What ``neutralised`` was given."""
    return cell[1:] if re.match(r"'+[=+\-@\t\r]", cell) else cell
