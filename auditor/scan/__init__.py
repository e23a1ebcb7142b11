"""Many listings: read in chunks, audited by one process or several, kept in a journal, made into files when all is done."""

from auditor.scan.chunk import Part, run
from auditor.scan.drive import Job, scan
from auditor.scan.errors import CannotStart, ScanFailed

__all__ = ["CannotStart", "Job", "Part", "ScanFailed", "run", "scan"]
