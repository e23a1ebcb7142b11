"""What to ask: the fewest photographs that would settle what is claimed, whichever printing the copy turns out to be.

Two printings, one claimed and one not, are told apart by a place if a point there shows each copy of the one something that the
other can't show. The places that tell each such pair apart make a set cover, solved exactly up to ``EXACT_PLACES`` places and
greedily beyond; pairs that no untold point of the set tells apart stay out, as no photograph would help. Of the smallest sets
that one is asked for whose photographs settle most the soonest, and in that order; where all print runs are known a printing
counts with its copies, so that what rules out many copies is asked first.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import lru_cache
from itertools import combinations

from auditor.values import Question
from auditor.weighing.case import Case
from auditor.weighing.index import Index, PointMasks

EXACT_PLACES = 14


def questions(case: Case) -> tuple[Question, ...]:
    """The photographs to ask for, book before jacket; none where nothing is claimed or all is settled or ruled out."""
    cells, said = case.index.cells, cells_whole(case, case.claimed.mask)
    if not said or case.standing == "contradicted":
        return ()
    asked = _plan(case.index, "book", case.open & said, case.open & ~said, case.told)
    has_jacket = case.jacket and any(c.part == "jacket" and c.stance in ("asserted", "hedged") for c in case.claims)
    if has_jacket and case.jacket and case.jacket.cells & said:
        told = case.told
        if case.has("price_clipped"):
            told |= {masks.point.id for masks in case.index.of_feature("price", "jacket")}
        asked += _plan(case.index, "jacket", cells.whole(case.jacket.cells & said), case.jacket.cells & ~said, told)
    return asked


def cells_whole(case: Case, mask: int) -> int:
    return case.index.cells.whole(mask)


def deciding(case: Case) -> tuple[PointMasks, ...]:
    """The points of the book, not told, that would tell some claimed printing from some other that is still open."""
    said = case.index.cells.whole(case.claimed.mask)
    pairs = _pairs(case.index, case.open & said, case.open & ~said)
    points = _asked(case.index, "book", case.told)
    return tuple(masks for masks in points if any(_tells_apart(masks, one, other) for one, other in pairs))


@lru_cache(maxsize=4096)
def _plan(index: Index, part: str, inside: int, outside: int, told: frozenset[str]) -> tuple[Question, ...]:
    """The questions of one part, to tell the cells ``inside`` what is claimed from those ``outside``."""
    places: dict[str, list[PointMasks]] = {}
    for masks in _asked(index, part, told):
        places.setdefault(masks.place.name, []).append(masks)
    names = list(places)
    pairs = _pairs(index, inside, outside)
    needed: dict[int, int] = {}  # the places that tell some pairs apart, and how many copies those pairs rule out
    for one, other in pairs:
        showing = sum(1 << n for n, name in enumerate(names) if any(_tells_apart(masks, one, other) for masks in places[name]))
        if showing:
            needed[showing] = needed.get(showing, 0) + _weight(index, outside, other)
    asked = []
    for n in _cover(needed, len(names)):
        shown = [masks for masks in places[names[n]] if any(_tells_apart(masks, *pair) for pair in pairs)]
        text = _ask(index, shown, inside | outside)
        asked.append(Question(names[n], text, tuple(masks.point.id for masks in shown)))
    return tuple(asked)


def _weight(index: Index, outside: int, block: int) -> int:
    """The copies of a printing where the runs of all that is to be ruled out are known, else 1."""
    runs = {
        mask: index.work.edition(name).print_runs.get(str(printing))
        for (name, printing), mask in index.cells.printings.items()
        if mask & outside
    }
    return 1 if None in runs.values() else runs.get(block) or 1


def _asked(index: Index, part: str, told: frozenset[str]) -> list[PointMasks]:
    return [masks for masks in index.points.values() if masks.point.part == part and masks.point.id not in told]


def _pairs(index: Index, inside: int, outside: int) -> list[tuple[int, int]]:
    blocks = index.cells.printings.values()
    return [(one, other) for one in blocks if one & inside for other in blocks if other & outside and one != other]


def _tells_apart(masks: PointMasks, one: int, other: int) -> bool:
    readings = [shown for shown in masks.readings if shown.own & one]
    return bool(readings) and not any(shown.told & other for shown in readings)


def _cover(needed: Mapping[int, int], size: int) -> tuple[int, ...]:
    """The fewest places that hit every mask of ``needed``, the most settling first; greedily beyond EXACT_PLACES places."""
    useful = [n for n in range(size) if any(mask >> n & 1 for mask in needed)]
    if len(useful) > EXACT_PLACES:
        return _in_order(needed, useful)
    for count in range(len(useful) + 1):
        covers = [chosen for chosen in combinations(useful, count) if all(any(m >> n & 1 for n in chosen) for m in needed)]
        if covers:
            orders = [_in_order(needed, cover) for cover in covers]
            return max(orders, key=lambda order: _settled(needed, order))
    raise AssertionError("all useful places together hit every pair")


def _in_order(needed: Mapping[int, int], places: Sequence[int]) -> tuple[int, ...]:
    """Of ``places`` each time the one that settles most of what is left, until nothing is."""
    chosen: list[int] = []
    left = dict(needed)
    while left:
        best = max(places, key=lambda n: sum(weight for mask, weight in left.items() if mask >> n & 1))
        chosen.append(best)
        left = {mask: weight for mask, weight in left.items() if not mask >> best & 1}
    return tuple(chosen)


def _settled(needed: Mapping[int, int], order: Sequence[int]) -> tuple[int, ...]:
    """How much the first photograph settles, the first two, and so on."""
    first = [order[: n + 1] for n in range(len(order))]
    return tuple(sum(weight for mask, weight in needed.items() if any(mask >> n & 1 for n in places)) for places in first)


def _ask(index: Index, shown: list[PointMasks], left: int) -> str:
    """One short line that asks without leading: at each point of a place what may stand there, and which printings that means."""
    seen = 0
    for masks in shown:
        seen |= masks.covered & left
    one_edition = sum(1 for cells in index.cells.editions.values() if cells & seen) == 1
    asked = []
    for masks in shown:
        found = zip(masks.point.readings, masks.readings, strict=True)
        told = [f"“{reading.value}” ({_brief(index, one.own & left, one_edition)})" for reading, one in found if one.own & left]
        place = masks.point.place
        asked.append(f"{place[0].upper()}{place[1:]}: {'is it ' if len(told) == 1 else ''}{' or '.join(told)}?")
    return " ".join(asked)


def _brief(index: Index, mask: int, one_edition: bool) -> str:
    """The printings in words, without the edition's name where all are of one."""
    said = index.describe(mask)
    return re.sub(r" of “[^”]*”", "", said) if one_edition else said
