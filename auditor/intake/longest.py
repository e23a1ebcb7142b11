"""How long each part of a listing may be. What goes beyond is cut, and the rest told as something that was not read."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from auditor.intake.item import Item
from auditor.values import Listing, Reject

# Characters. Sellers' own words rarely pass 5,000; far beyond it a text is a page saved whole, a catalogue, or no listing.
LONGEST = {"text": 50_000, "title": 2_000, "id": 500, "seller": 500, "url": 4_000}


def cut(items: Iterable[Item]) -> Iterator[Item]:
    """The items. A listing with too long a part is cut there, at its end, and followed by a reject for what was left away."""
    for item in items:
        if not isinstance(item, Listing):
            yield item
            continue
        whole = {name: getattr(item, name) or "" for name in LONGEST}
        kept = {name: words[: LONGEST[name]] for name, words in whole.items() if len(words) > LONGEST[name]}
        listing = replace(item, **kept) if kept else item
        yield listing
        for name, words in kept.items():
            place = f"listing {listing.id}: {name}, characters {len(words) + 1:,} to {len(whole[name]):,}"
            yield Reject(item.source or "listing", place, f"beyond the {len(words):,} characters that are read")
