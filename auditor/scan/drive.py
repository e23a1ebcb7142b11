"""A scan from its paths to its files: what a journal holds is not done again, and the files are made from it at the end."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import islice
from pathlib import Path

from auditor.intake import open_pieces
from auditor.knowledge.shelf import Shelf
from auditor.reports.files import PAGE, write_page
from auditor.reports.tally import Tally
from auditor.scan.chunk import SAME_WORDS, Part, Wanted, chunks
from auditor.scan.errors import CannotStart
from auditor.scan.filling import filling
from auditor.scan.journal import Journal, opened
from auditor.scan.plan import Plan, changed, plan
from auditor.scan.workers import audited

Heard = Callable[[Part, int], None]


@dataclass(frozen=True, slots=True)
class Job:
    """What to scan and where to keep it. ``rejects`` is the file for what could not be read, ``same_words`` that for listings
    whose words also stand in others."""

    paths: Sequence[Path]
    outs: Sequence[Path] = ()
    rejects: Path | None = None
    same_words: Path | None = None
    points: Sequence[Path] = ()
    authority: str | None = None
    columns: dict[str, str] | None = None
    workers: int = 1
    resume: bool = False

    @property
    def files(self) -> list[Path]:
        """All files that it writes."""
        return [*self.outs, *filter(None, (self.rejects, self.same_words))]

    @property
    def journal(self) -> Path | None:
        """Where its journal lies: beside its first file. None where it writes none, and so keeps none."""
        return self.files[0].with_name(f".{self.files[0].name}.scan") if self.files else None

    @property
    def wanted(self) -> Wanted:
        suffixes = sorted({path.suffix.lower() for path in self.outs})
        return Wanted(tuple(suffixes), tuple(self.points), self.authority, self.columns or {}, self.same_words is not None)


def scan(job: Job, shelf: Shelf, heard: Heard, begun: Callable[[Plan], None] = lambda _: None) -> Tally:
    """Does the job; the shelf is that of its points. ``heard`` is told of each part and how many bytes were read till it.

    Raises CannotStart, ScanFailed, OSError (a full disk); what is done by then stands in the journal. So it does after a kill
    or an interrupt.
    """
    found = plan(job.paths, job.wanted, job.files)
    begun(found)
    tally = Tally(job.wanted.most)
    if job.journal is None:
        for _ in _done(job, shelf, tally, heard, 0):
            pass
        return tally
    with opened(job.journal, job.wanted.most) as journal:
        done = 0
        for part in _taken_up(journal, found, job):
            tally.merge(part.tally)
            heard(part, 0)
            done += 1
        for data in _done(job, shelf, tally, heard, done):
            journal.append(data)
        _publish(job, journal, tally, shelf)
        job.journal.unlink()
    return tally


def _done(job: Job, shelf: Shelf, tally: Tally, heard: Heard, skip: int) -> Iterator[bytes]:
    """The parts as bytes, without the first ``skip``; each is in the tally when it comes."""
    read = 0

    def count(size: int) -> None:
        nonlocal read
        read += size

    items = open_pieces(job.paths, job.columns, leave_out=job.files, count=count)
    left = islice(chunks(items, lambda: read), skip, None)
    for chunk, data in audited(left, shelf, job.wanted, job.workers, lambda: tally.floor):
        part = Part.of(data, job.wanted.most)
        yield data
        tally.merge(part.tally)
        heard(part, chunk.read_to)


def _taken_up(journal: Journal, found: Plan, job: Job) -> Iterator[Part]:
    """The parts that needn't be done again."""
    differs = changed(journal.plan, found) if journal.plan is not None else []
    if journal.plan is not None and not differs:
        if not job.resume and next(journal.parts(), None):
            raise CannotStart(
                f"an earlier scan for {job.files[0]} stopped part way: add --resume to go on with it, "
                f"or delete {job.journal} to begin anew"
            )
        yield from journal.parts()
        return
    if job.resume and differs:
        raise CannotStart(
            f"--resume: {' and '.join(differs)} changed since the scan for {job.files[0]} stopped: "
            f"leave --resume out to begin anew"
        )
    journal.begin(found._asdict())
    yield from journal.parts()


def _publish(job: Job, journal: Journal, tally: Tally, shelf: Shelf) -> None:
    """Makes the files from the journal: all are written before the first takes its place."""
    with filling(job.outs, job.rejects) as add:
        for part in journal.parts():
            add(part)
        if job.same_words:
            from auditor.scan import sharing

            tally.same_words = sharing.write(job.same_words, lambda: (part.pieces[SAME_WORDS] for part in journal.parts()))
        for path in job.outs:
            if path.suffix.lower() == PAGE:
                write_page(path, tally, shelf.sets)
