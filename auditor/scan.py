"""Many listings, one after the other: each is audited as it comes in and handed on, so memory doesn't grow with their number."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from auditor.auditing import audit_on
from auditor.intake import Item, Note
from auditor.knowledge.shelf import Shelf
from auditor.values import Listing, Reject, Verdict


def run(items: Iterable[Item], shelf: Shelf) -> Iterator[tuple[Listing, Verdict] | Reject | Note]:
    """Each listing with its verdict; rejects and notes pass through. A listing whose audit fails is a reject, not the end."""
    for item in items:
        if isinstance(item, Listing):
            try:
                yield item, audit_on(shelf, item.text, item.title, item.asking)
            except Exception as error:  # one listing that trips a fault of ours must not cost the user the others
                yield Reject(
                    item.source or "listing",
                    item.id,
                    f"the audit itself failed ({type(error).__name__}: {error}): please report it",
                )
        else:
            yield item
