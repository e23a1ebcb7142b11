"""The smallest set of statements that cannot all be true, by exact search over bit masks."""

from __future__ import annotations

from collections.abc import Sequence


def smallest_conflict(masks: Sequence[int], start: int) -> tuple[int, ...] | None:
    """The indices of a smallest subset of ``masks`` whose intersection with ``start`` is empty, ascending; None if there is none.

    Exact: a statement that leaves all that another leaves never helps where the other is there, so only the tightest are
    searched, by growing size, each time branching over those that exclude the cell which fewest of them exclude. ``start`` empty
    needs no statement: ``()``.
    """
    tightest: dict[int, int] = {}
    for index, mask in enumerate(masks):
        tightest.setdefault(mask & start, index)
    kept = {
        mask: index for mask, index in tightest.items() if not any(other != mask and other & mask == other for other in tightest)
    }
    left = start
    for mask in kept:
        left &= mask
    if left:
        return None
    ordered = sorted(kept, key=lambda mask: (mask.bit_count(), kept[mask]))
    for size in range(len(ordered) + 1):
        found = _within(ordered, start, size)
        if found is not None:
            return tuple(sorted(kept[mask] for mask in found))
    raise AssertionError("all statements together leave nothing, so some size must do")


def _within(masks: list[int], left: int, size: int) -> list[int] | None:
    """At most ``size`` of ``masks`` that empty ``left``."""
    if not left:
        return []
    if size == 0 or size * max((left & ~mask).bit_count() for mask in masks) < left.bit_count():
        return None
    excluders: list[int] | None = None
    rest = left
    while rest:
        bit = rest & -rest
        rest ^= bit
        here = [mask for mask in masks if not mask & bit]
        if excluders is None or len(here) < len(excluders):
            excluders = here
    for mask in excluders or ():
        found = _within(masks, left & mask, size - 1)
        if found is not None:
            return [mask, *found]
    return None
