"""Which listing of the list is this? By its address or id where they speak, else by title and seller with near-same text.

Never merged on a guess: what is likely but not sure is a ``Match`` with ``sure`` False, which is kept apart and told.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final, NamedTuple
from urllib.parse import urlsplit

from rapidfuzz import fuzz, utils

from auditor.values import Listing

# Shares of 100 by rapidfuzz's ratio, set by hand on the demo's listings, edited and not; common practice has no figure.
SAME: Final = 85
ALIKE: Final = 60


class Match(NamedTuple):
    """``key`` of the listing that it is, or (not ``sure``) may be; ``why`` in words."""

    key: int
    sure: bool
    why: str


def identify(new: Listing, kept: Iterable[tuple[int, Listing]]) -> Match | None:
    """The listing of ``kept`` that ``new`` is a later save of; None where it is none of them."""
    found = [(match, rank) for key, old in kept if (told := _compare(key, old, new)) for match, rank in [told]]
    if not found:
        return None
    best = max(found, key=lambda each: (each[0].sure, each[1]))
    rivals = [match.key for match, rank in found if match.sure and rank == best[1]]
    if best[0].sure and len(rivals) > 1:
        return Match(best[0].key, False, f"fits {', '.join(f'#{key}' for key in rivals)} alike")
    return best[0]


def address(url: str | None) -> str:
    """A web address without what doesn't name the page: scheme, www, fragment, the last slash."""
    try:
        parts = urlsplit((url or "").strip())
    except ValueError:
        return (url or "").strip()
    host = parts.netloc.casefold().removeprefix("www.")
    return f"{host}{parts.path.rstrip('/')}{f'?{parts.query}' if parts.query else ''}"


def _compare(key: int, old: Listing, new: Listing) -> tuple[Match, float] | None:
    """How ``new`` fits ``old``, with a rank: the higher, the better it fits."""
    here, there = address(new.url), address(old.url)
    sellers = _folded(old.seller), _folded(new.seller)
    if (here and there and here != there) or (all(sellers) and sellers[0] != sellers[1]):
        return None  # two copies of one shop have two addresses, and a copied description has another seller
    title = _likeness(old.title, new.title)
    text = _likeness(old.text, new.text)
    near = max(title, text) >= ALIKE
    if here and here == there:
        return Match(key, near, "has the same address" if near else "has the same address, and other words"), 300 + text
    if old.id == new.id and near and title >= ALIKE * bool(old.title and new.title):
        return Match(key, True, "has the same id"), 200 + text
    if text >= SAME and (title >= SAME or not (old.title and new.title)):
        return _by_words(key, old, new, sellers), 100 + text
    if text >= SAME or (title >= SAME and text >= ALIKE):
        return Match(key, False, "has much the same words"), text
    return None


def _by_words(key: int, old: Listing, new: Listing, sellers: tuple[str, str]) -> Match:
    if all(sellers) and old.title and new.title:
        return Match(key, True, "has the same title and seller, and near-same text")
    if not (new.title or new.seller or new.url) and old.text.split() == new.text.split():
        return Match(key, True, "has the very same text")
    return Match(key, False, "has near-same text, and title or seller aren't told")


def _likeness(one: str | None, other: str | None) -> float:
    """0 to 100; 0 where either is missing or they aren't even alike."""
    return fuzz.ratio(one, other, processor=utils.default_process, score_cutoff=ALIKE) if one and other else 0.0


def _folded(words: str | None) -> str:
    return " ".join((words or "").casefold().split())
