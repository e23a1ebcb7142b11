"""A scan on a Dask cluster: the same chunks, partition by partition on its workers, in folders of part files.

Workers must see the same files under the same names (a shared disk) and have the program installed; lexicon and point sets are
shipped. A worker that is lost costs its partition's work: Dask gives it to another.
"""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable, Iterator
from concurrent.futures import CancelledError
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

from auditor.knowledge.shelf import Shelf
from auditor.reports.files import KINDS, PAGE, write_page
from auditor.reports.tally import Tally
from auditor.scan.chunk import Part
from auditor.scan.drive import Heard, Job
from auditor.scan.errors import CannotStart, ScanFailed
from auditor.scan.partition import Places, audit_partition, partitions
from auditor.scan.plan import Plan, changed, plan, program
from auditor.scan.shipment import Shipment
from auditor.whole import whole

if TYPE_CHECKING:
    from distributed import Client

_RETRIES = 3


def scan_on(address: str, job: Job, shelf: Shelf, heard: Heard, begun: Callable[[Plan], None] = lambda _: None) -> Tally:
    """As ``scan``, on the cluster at ``address``; but for a page, each out is a folder, its part files in the order of the lines.

    Raises CannotStart, ScanFailed, OSError. What is done by then needn't be done again by a job that resumes.
    """
    with _connected(address) as client:
        found = plan(job.paths, job.wanted, ())
        begun(found._replace(size=0))
        places = _places(job)
        _begin(job, places, found)
        todo = list(partitions(job.paths))
        ready = {number: places.done(number) for number in range(len(todo)) if places.done(number).exists()}
        shipment = client.submit(_same, Shipment.of(job.wanted), key=f"auditor-shipment-{found.input[:8]}-{found.words[:8]}")
        futures = {
            number: client.submit(audit_partition, number, partition, shipment, places, pure=False, retries=_RETRIES)
            for number, partition in enumerate(todo)
            if number not in ready
        }
        tally = Tally(job.wanted.most)
        for number in range(len(todo)):
            data = ready[number].read_bytes() if number in ready else _result(futures.pop(number))
            part = Part.of(data, job.wanted.most)
            tally.merge(part.tally)
            heard(part, 0)
        for path in job.outs:
            if path.suffix.lower() == PAGE:
                write_page(path, tally, shelf.sets)
        shutil.rmtree(places.tallies)
        return tally


@contextmanager
def _connected(address: str) -> Iterator[Client]:
    try:
        from distributed import Client
    except ImportError as error:
        raise CannotStart("needs Dask: pip install 'listing-text-auditor[cluster]'") from error
    try:
        client = Client(address, timeout="10s")  # type: ignore[no-untyped-call]
    except (OSError, ValueError) as error:
        raise CannotStart(f"no cluster answers at {address}: {error}") from error
    with client:
        _check(client)
        yield client


def _check(client: Client) -> None:
    """Raises CannotStart where there is no worker, or one has another version of the program, or none."""
    try:
        versions: dict[str, str] = client.run(program)
    except ModuleNotFoundError as error:
        raise CannotStart(f"a worker can't run the program ({error}): install it there as it is here") from error
    if not versions:
        raise CannotStart("the cluster has no workers")
    for worker, other in versions.items():
        if other != program():
            raise CannotStart(f"worker {worker} has version {other} of the program, here it is {program()}")


def _places(job: Job) -> Places:
    outs = tuple(path for path in job.outs if path.suffix.lower() != PAGE)
    if job.same_words:
        raise CannotStart("--same-words compares all listings of a scan, which a cluster does not: leave one of the two out")
    first = next(iter((*outs, *([job.rejects] if job.rejects else []))), None)
    if first is None:
        raise CannotStart(f"needs an --out or --rejects for its parts: {' or '.join(KINDS)}")
    return Places(Path.cwd(), outs, job.rejects, first / ".scan")


def _begin(job: Job, places: Places, found: Plan) -> None:
    """Makes the folders. Raises CannotStart where they hold something that doesn't belong to this scan."""
    folders = [*places.outs, *([places.rejects] if places.rejects else [])]
    for path in job.paths:
        for folder in folders:
            if path.is_dir() and folder.resolve().is_relative_to(path.resolve()):
                raise CannotStart(f"{folder} lies inside {path}, which is read: keep the results elsewhere")
    mark = places.tallies / "plan.json"
    old: Any = json.loads(mark.read_bytes()) if mark.exists() else None
    if old is not None and job.resume:
        if differs := changed(old, found):
            raise CannotStart(f"--resume: {' and '.join(differs)} changed since the scan into {folders[0]} stopped")
        return
    for folder in folders:
        if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
            hint = "add --resume to go on with the scan that stopped, or " if old is not None else ""
            raise CannotStart(f"{folder} is there already: {hint}remove it to begin anew")
        folder.mkdir(exist_ok=True)
    places.tallies.mkdir()
    with whole(mark) as stream:
        stream.write(json.dumps(found._asdict()).encode())


def _result(future: Any) -> bytes:  # noqa: ANN401  # distributed has no types
    from distributed.scheduler import KilledWorker

    try:
        data: bytes = future.result()
    except (RuntimeError, CancelledError, KilledWorker) as error:
        raise ScanFailed(f"The cluster could not do it: {error}") from error
    return data


def _same(shipment: Shipment) -> Shipment:
    """A task of its own, so that Dask sends the shipment once to each worker and can make it again when a worker is lost."""
    return shipment
