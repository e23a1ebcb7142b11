"""One listing through the rooms: its work found, its words read, its claims weighed. The way in for other programs."""

from __future__ import annotations

import warnings
from collections.abc import Callable, Mapping, Sequence
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from auditor.intake import money
from auditor.intake.columns import recognise
from auditor.intake.rows import plain, price_words
from auditor.knowledge.shelf import Shelf
from auditor.reading import find_isbns, offers_several, read
from auditor.reading.clean import Clean
from auditor.reports.flat import flat
from auditor.values import Claim, Verdict
from auditor.weighing import weigh

if TYPE_CHECKING:
    import pandas as pd

    from auditor.knowledge.points import PointSet

_COMMON = ("number line", "statement")  # features that books of one house and time share
_ENOUGH = 2  # points that settle which work a listing speaks of
_NOTHING = Verdict(work=None, claims=(), standing="unclaimed")


def audit(
    text: str,
    title: str | None = None,
    asking: str | None = None,
    points: Sequence[Path | str] | Path | str = (),
    authority: str | None = None,
) -> Verdict:
    """What the words of one listing claim, and what they leave open.

    ``asking`` is a price such as ``"45.00 USD"`` or ``"£12.50"``; ``points`` are folders of point sets that stand beside the
    built-in ones and win over them; where authorities differ on a point, ``authority`` names the one whose account is taken.
    Raises ValueError for a price that is no single clear amount and for an authority of which no set has an account. Mistakes in
    point sets are told once as warnings; what is sound in them is used.
    """
    price = None if asking is None else money.asking(asking)
    if asking is not None and price is None:
        raise ValueError(f"asking={asking!r} is no single clear amount: expected something like '45.00 USD'")
    return audit_on(open_shelf(points, authority), text, title, price)


def audit_on(shelf: Shelf, text: str, title: str | None = None, asking: str | None = None) -> Verdict:
    """``audit`` with a shelf at hand; ``asking`` is an amount and an ISO currency, or an amount alone."""
    shown, named = Clean(text).text, Clean(title).text if title else title
    match = shelf.match(shown, named, find_isbns(f"{named or ''}\n{shown}"))
    work = shelf.sets[match.stem] if match else None
    claims = read(text, work)
    title_claims = read(title, work) if title else ()
    return weigh(
        claims,
        work,
        asking=asking,
        title_claims=title_claims,
        several=work is None and any(offers_several(words) for words in (named, shown) if words),
        doubtful_work=match is not None and match.doubtful and not _told_by_its_points(work, (*claims, *title_claims)),
    )


def _told_by_its_points(work: PointSet | None, claims: Sequence[Claim]) -> bool:
    """Whether what is told fits this work and hardly another of a like title: points of it, number lines and statements apart."""
    if work is None:
        return False
    told = {c.value.partition("=")[0] for c in claims if c.feature == "point" and c.stance == "asserted" and c.clear}
    return sum(work.point(name).feature not in _COMMON for name in told) >= _ENOUGH


def audit_frame(
    frame: pd.DataFrame, points: Sequence[Path | str] | Path | str = (), columns: Mapping[str, str] | None = None
) -> pd.DataFrame:
    """A copy of ``frame``, index kept, with what an audit of each row says.

    Columns are found as in a table file; ``columns`` (field -> column) goes before. Added are ``work``, ``standing``, ``book``,
    ``jacket``, ``claimed``, ``missing``, ``contradiction``, ``overclaim`` (0 to 100), ``gravest`` (the gravest finding's kind),
    ``findings`` and ``questions`` (texts, one a line) and ``verdict`` (the Verdict). A name that the frame has already gets
    ``audit_`` before it. Raises ValueError when no column holds words.
    """
    found, _ = recognise([str(head) for head in frame.columns], columns)
    if not {"text", "title"} & found.keys():
        heads = ", ".join(map(str, frame.columns))
        raise ValueError(f"no column holds the text: the columns are {heads}; name it with columns={{'text': ...}}")
    shelf = open_shelf(points)
    places = {str(head): place for place, head in enumerate(frame.columns)}

    def column(field: str, words: Callable[[Any], str | None] = plain) -> list[str | None]:
        if field not in found:
            return [None] * len(frame)
        series = frame.iloc[:, places[found[field]]]
        return [None if missing else words(value) for value, missing in zip(series, series.isna(), strict=True)]

    rows = zip(column("text"), column("title"), column("asking", price_words), column("currency"), strict=True)
    verdicts = [
        audit_on(shelf, text or "", title, money.asking(asking, currency) if asking else None)
        for text, title, asking, currency in rows
    ]
    flats = [flat(verdict) for verdict in verdicts]
    added: dict[str, list[Any]] = {name: [cells[name] for cells in flats] for name in flat(_NOTHING)}
    named = {f"audit_{name}" if name in places else name: values for name, values in {**added, "verdict": verdicts}.items()}
    return frame.assign(**named)


def open_shelf(points: Sequence[Path | str] | Path | str = (), authority: str | None = None) -> Shelf:
    """The built-in point sets and those of ``points``, opened once; mistakes in them are told as warnings.

    With an ``authority`` the disputed points are as that one has them; raises ValueError where it gives no account.
    """
    folders = (points,) if isinstance(points, str | Path) else tuple(points)
    return _shelf(tuple(Path(folder) for folder in folders), authority)


@lru_cache(maxsize=8)
def _shelf(folders: tuple[Path, ...], authority: str | None) -> Shelf:
    shelf = Shelf.open(folders)
    for mistake in shelf.mistakes:
        warnings.warn(str(mistake), stacklevel=4)
    return shelf.by(authority) if authority is not None else shelf
