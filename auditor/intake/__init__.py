"""Intake: files, folders, tables and saved pages in, plain listings out."""

from auditor.intake.file import File
from auditor.intake.item import Item, Note
from auditor.intake.paths import KINDS, KNOWN, find, measure, open_one, open_paths, open_pieces, read

__all__ = ["KINDS", "KNOWN", "File", "Item", "Note", "find", "measure", "open_one", "open_paths", "open_pieces", "read"]
