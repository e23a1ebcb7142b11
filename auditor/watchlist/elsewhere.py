"""Where else on the list a listing's words stand: such words may have been written for another copy."""

from __future__ import annotations

from collections.abc import Mapping

from auditor.samewords import find, print_of
from auditor.watchlist.store import Store


def elsewhere(store: Store) -> Mapping[int, tuple[int, ...]]:
    """For each listing whose words also stand in others the keys of those, the likest first."""
    kept = store.descriptions()
    found = find(print_of(text, subject) for _, text, subject in kept)
    return {kept[number][0]: tuple(kept[other][0] for other in others.numbers) for number, others in found.items()}
