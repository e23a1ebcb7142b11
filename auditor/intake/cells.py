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


def for_workbook(cell: str) -> str:
    """The cell with what XML can't hold, or would change, written as ``_x000D_`` (ECMA-376 part 1, 22.9.2.19)."""
    return re.sub("[\0-\x08\x0b-\x1f\ufffe\uffff]|_(?=x[0-9A-Fa-f]{4}_)", lambda sign: f"_x{ord(sign[0]):04X}_", cell)


def from_workbook(cell: str) -> str:
    """What ``for_workbook`` was given."""
    return re.sub("_x([0-9A-Fa-f]{4})_", lambda code: chr(int(code[1], 16)), cell)
