"""The watchlist as files: tables and JSON lines with all that is kept beside the report, and the other report formats."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any, Final

from auditor.knowledge.points import PointSet
from auditor.reports import files, jsonlines, records
from auditor.reports.flat import flat
from auditor.reports.run import Run
from auditor.reports.words import BRIEF_CAUTION
from auditor.watchlist.order import Row
from auditor.watchlist.values import day_of


def write(path: Path, rows: Sequence[Row], sets: Mapping[str, PointSet]) -> None:
    """Raises KeyError for a suffix that is no report's, OSError when the folder can't be written to."""
    if own := _KINDS.get(path.suffix.lower()):
        told = [own(row) for row in rows]
        with records.writing(path, list(told[0]) if told else ()) as add:
            add(told)
        return
    with files.writing(path, Run(sets)) as add:
        for row in rows:
            add(row.watched.listing, row.watched.verdict)


def record(row: Row) -> dict[str, Any]:
    """One listing: an object of auditor/schema.json with ``watch`` beside it."""
    watched = row.watched
    return {
        **jsonlines.record(watched.listing, watched.verdict),
        "watch": {
            "number": watched.key,
            "added": watched.readings[0].at,
            "seen": watched.seen,
            "history": [{"at": entry.at, "head": entry.head, "lines": list(entry.lines)} for entry in row.entries],
            "questions": [
                {"place": each.question.place, "text": each.question.text, "state": each.state, "how": each.how}
                for each in row.questions
            ],
            "same_words": list(row.elsewhere),
            "notes": list(watched.notes),
            "decision": watched.decision,
        },
    }


def _cells(row: Row) -> dict[str, Any]:
    watched = row.watched
    return {
        "number": watched.key,
        "id": watched.listing.id,
        **watched.listing.to_dict(),
        **flat(watched.verdict),
        "added": day_of(watched.readings[0].at),
        "seen": day_of(watched.seen),
        "figures_shown": row.prices.shown,
        "figures_claimed": row.prices.claimed,
        "history": "\n".join(f"{day_of(e.at)} {e.head}: {' '.join(e.lines)}" for e in row.entries),
        "asked": "\n".join(f"{each.state}: {each.question.place}" for each in row.questions),
        "same_words": ", ".join(f"#{key}" for key in row.elsewhere),
        "notes": "\n".join(watched.notes),
        "decision": watched.decision,
        "caution": BRIEF_CAUTION,
    }


_KINDS: Final[Mapping[str, Callable[[Row], dict[str, Any]]]] = {".jsonl": record, ".csv": _cells}
