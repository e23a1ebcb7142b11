"""What a cluster's workers get of this machine: the lexicon and the user's point sets, as bytes."""

from __future__ import annotations

import hashlib
import os
import shutil
import tempfile
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from auditor.knowledge import lexicon
from auditor.scan.chunk import Wanted


@dataclass(frozen=True)
class Shipment:
    """``files`` are contents by path: ``lexicon/grades.toml``, ``points-0/ore-dock.toml``. ``key`` names what they hold."""

    files: Mapping[str, bytes]
    key: str
    wanted: Wanted

    @classmethod
    def of(cls, wanted: Wanted) -> Shipment:
        """Packs the lexicon and the point sets that are ``wanted``."""
        files = {f"lexicon/{name}": data for name, data in _files(lexicon.root())}
        points = []
        for number, folder in enumerate(wanted.points):
            place = Path(f"points-{number}")
            points.append(place / folder.name if folder.is_file() else place)
            files.update({f"{place}/{name}": data for name, data in _files(folder)})
        digest = hashlib.sha256()
        for name, data in sorted(files.items()):
            digest.update(f"{name}\0{hashlib.sha256(data).hexdigest()}\n".encode())
        return cls(files, digest.hexdigest()[:16], replace(wanted, points=tuple(points)))

    def unpacked(self) -> Wanted:
        """On a worker: puts the files into a temporary folder, once a machine, and takes the lexicon from there.

        Returns what is wanted with the point sets where they are now. Raises RuntimeError where the worker has read another
        lexicon before.
        """
        folder = Path(tempfile.gettempdir()) / f"auditor-{os.getuid() if hasattr(os, 'getuid') else 'user'}-{self.key}"
        if not folder.exists():
            own = Path(tempfile.mkdtemp(prefix=f"{folder.name}-", dir=folder.parent))
            for name, data in self.files.items():
                path = own / name
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_bytes(data)
            try:
                own.rename(folder)
            except OSError:  # another worker of this machine was quicker
                shutil.rmtree(own)
        lexicon.use(folder / "lexicon")
        return replace(self.wanted, points=tuple(folder / points for points in self.wanted.points))


def _files(folder: Path) -> Iterator[tuple[str, bytes]]:
    if folder.is_file():
        yield folder.name, folder.read_bytes()
        return
    for file in sorted(folder.rglob("*")):
        if file.is_file() and not file.name.startswith("."):
            yield file.relative_to(folder).as_posix(), file.read_bytes()
