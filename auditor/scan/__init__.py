"""Many listings: read in chunks, audited by one process or several, kept in a journal, made into files when all is done."""

from auditor.scan.chunk import Part, run
from auditor.scan.drive import CannotResume, Job, scan
from auditor.scan.workers import WorkerLost

__all__ = ["CannotResume", "Job", "Part", "WorkerLost", "run", "scan"]
