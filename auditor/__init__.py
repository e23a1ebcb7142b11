"""Reads what a bookseller's listing claims and weighs it against the known points of the book.

>>> import auditor
>>> verdict = auditor.audit("First edition, first printing. Number line to 3.")

Names are loaded when they are first used, so that ``import auditor`` costs next to nothing.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from auditor.auditing import audit, audit_frame
    from auditor.values import Claim, Verdict

__all__ = ["Claim", "Verdict", "audit", "audit_frame"]

_HOMES = {"audit": "auditor.auditing", "audit_frame": "auditor.auditing", "Claim": "auditor.values", "Verdict": "auditor.values"}


def __getattr__(name: str) -> object:
    if name not in _HOMES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    value = globals()[name] = getattr(import_module(_HOMES[name]), name)
    return value
