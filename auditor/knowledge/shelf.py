"""Point sets on a shelf: the built-in ones and the user's own, with every mistake told, and the set that a listing speaks of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from rapidfuzz import fuzz, process

from auditor.knowledge import lexicon
from auditor.knowledge.checks import Mistake, Review, review
from auditor.knowledge.locate import Places
from auditor.knowledge.matching import Match, Matcher
from auditor.knowledge.points import PointSet
from auditor.knowledge.titles import core, normal

__all__ = ["Match", "Mistake", "Shelf"]


@dataclass(frozen=True)
class Shelf:
    """The loaded point sets by stem. ``mistakes`` left a file or a row out; ``remarks`` are only worth a look."""

    sets: dict[str, PointSet]
    mistakes: tuple[Mistake, ...] = ()
    remarks: tuple[Mistake, ...] = ()

    @classmethod
    def open(cls, folders: Sequence[Path] = ()) -> Shelf:
        """The built-in point sets, then those of ``folders`` (each a folder of .toml files, or one such file).

        Where two speak of one work (the same stem, or the same title and author) the later folder wins.
        """
        return cls.of((lexicon.root() / "points", *folders))

    @classmethod
    def of(cls, folders: Sequence[Path]) -> Shelf:
        """As ``open``, without the built-in ones."""
        sets: dict[str, PointSet] = {}
        stems: dict[tuple[str, str], str] = {}
        mistakes: list[Mistake] = []
        remarks: list[Mistake] = []
        for found in (found for folder in folders for found in _reviews(folder)):
            mistakes += found.mistakes
            remarks += found.remarks
            if found.set is None:
                continue
            work = normal(found.set.work.title), normal(found.set.work.author)
            sets.pop(stems.get(work, ""), None)
            stems[work] = found.set.stem
            sets[found.set.stem] = found.set
        return cls(sets, tuple(mistakes), tuple(remarks))

    def by(self, authority: str) -> Shelf:
        """The shelf with every set as ``authority`` has it, where it gives an account; raises ValueError where none does."""
        known = sorted({name for work in self.sets.values() for name in work.authorities()})
        if authority not in known:
            raise ValueError(f"{authority!r} gives no account in any point set; expected one of {', '.join(map(repr, known))}")
        sets = {stem: work.by(authority) if authority in work.authorities() else work for stem, work in self.sets.items()}
        return Shelf(sets, self.mistakes, self.remarks)

    def named(self, words: str) -> list[str]:
        """The stems of the works of that stem or title, whatever its case, punctuation and article; best none or one."""
        if words in self.sets:
            return [words]
        return [stem for stem, work in self.sets.items() if core(words) in {core(title) for title in titles(work)}]

    def by_author(self) -> list[tuple[str, PointSet]]:
        """(stem, set), by the author's last name and the title."""
        return sorted(
            self.sets.items(), key=lambda item: (item[1].work.author.casefold().split()[-1:], item[1].work.title.casefold())
        )

    def near(self, words: str) -> list[str]:
        """Up to three titles spelled almost so, or else that hold all these words."""
        known = sorted({title for work in self.sets.values() for title in titles(work)})
        asked = set(normal(words).split())
        return [
            title
            for title, _, _ in process.extract(
                words, known, scorer=fuzz.token_sort_ratio, processor=normal, score_cutoff=60, limit=3
            )
        ] or [title for title in known if asked and asked <= set(normal(title).split())][:3]

    def match(self, text: str, title: str | None = None, isbns: Sequence[str] = ()) -> Match | None:
        """The point set that a listing speaks of, or None: a wrong match is worse than none. See ``matching``."""
        return self._matcher.match(text, title, isbns)

    @cached_property
    def _matcher(self) -> Matcher:
        return Matcher(self.sets)


def titles(work: PointSet) -> tuple[str, ...]:
    """Every name that the work is sold under."""
    return (work.work.title, *work.work.also_titled)


def _reviews(folder: Path) -> Iterator[Review]:
    if not folder.exists():
        yield _unread(folder, "no such folder or file: expected a folder of .toml point sets")
        return
    for path in [folder] if folder.is_file() else sorted(folder.glob("*.toml")):
        try:
            text = path.read_text(encoding="utf-8-sig")
        except (OSError, UnicodeDecodeError) as error:
            yield _unread(path, f"it can't be read as UTF-8 text ({error}); the file is left out")
        else:
            yield review(text, path.stem, str(path))


def _unread(path: Path, message: str) -> Review:
    return Review(str(path), Places(""), mistakes=[Mistake(str(path), None, message)])
