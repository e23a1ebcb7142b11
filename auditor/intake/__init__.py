"""Intake: files, folders, tables and saved pages in, plain listings out."""

from auditor.intake.item import Item, Note
from auditor.intake.paths import KINDS, open_one, open_paths

__all__ = ["KINDS", "Item", "Note", "open_one", "open_paths"]
