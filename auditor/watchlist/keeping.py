"""Takes in what was saved or pasted: finds the listing that it is, reads it, and keeps what is new."""

from __future__ import annotations

from dataclasses import dataclass, replace

from auditor.auditing import audit_on
from auditor.intake import Item
from auditor.knowledge.shelf import Shelf
from auditor.values import Listing, Reject
from auditor.watchlist.asked import states, waiting
from auditor.watchlist.compare import Change, compare
from auditor.watchlist.identity import Match, identify
from auditor.watchlist.store import Store
from auditor.watchlist.values import Reading, Watched, day_of, moment


@dataclass(frozen=True, slots=True)
class Kept:
    """What became of one save. ``changes`` are those since the reading before; ``maybe`` is another listing that it may be.

    ``new`` listings have no changes. ``key`` None: it isn't on the list, and only listings on it were asked for.
    """

    key: int | None
    listing: Listing
    new: bool = False
    changes: tuple[Change, ...] = ()
    maybe: Match | None = None


def keep(
    store: Store, shelf: Shelf, listing: Listing, at: str, *, into: int | None = None, known_only: bool = False
) -> Kept | Reject:
    """Keeps a save, as a further reading of the listing that it is or (unless ``known_only``) as a new one.

    ``into`` is the key of the listing that it is where the collector says so. One transaction: of two processes that bring the
    same listing one adds it and the other finds it there.
    """
    with store.change():
        match = Match(into, True, "") if into is not None else identify(listing, store.latest())
        if match and match.sure:
            watched = store.get(match.key)
            return _again(store, shelf, watched, listing, at) if watched else _missing(listing, match.key)
        if known_only:
            return Kept(None, listing, maybe=match)
        reading = _read(shelf, listing, at)
        return reading if isinstance(reading, Reject) else Kept(store.add(reading), listing, new=True, maybe=match)


def pasted(item: Item) -> Item:
    """A listing that came without a file, under an id of its own, so that two such ones aren't taken for one."""
    return replace(item, id=f"pasted {moment()}") if isinstance(item, Listing) else item


def reread(store: Store, shelf: Shelf, key: int, at: str) -> Kept | Reject | None:
    """The kept words of a listing read with today's lexicon; None where it isn't there any more."""
    with store.change():
        watched = store.get(key)
        return _again(store, shelf, watched, watched.listing, at) if watched else None


def merge(store: Store, shelf: Shelf, key: int, into: int) -> Kept | Reject | None:
    """Makes two listings one: the readings and acts of ``key`` become later ones of ``into``. None where either is missing.

    Where a reading can't be taken over both stay as they are.
    """
    try:
        with store.change():
            watched, target = store.get(key), store.get(into)
            if watched is None or target is None:
                return None
            before = target.readings[-1]
            for reading in watched.readings:
                result = _again(store, shelf, target, reading.listing, max(reading.at, before.at))
                if isinstance(result, Reject):
                    raise _Refused(result)
                target = store.get(into) or target
            for act in watched.acts:
                store.act(into, act.kind, act.at, act.words, act.place)
            store.drop(key)
            return result
    except _Refused as refused:
        return refused.reject


class _Refused(Exception):
    """Undoes a change that could not be made as a whole."""

    def __init__(self, reject: Reject) -> None:
        self.reject = reject


def _again(store: Store, shelf: Shelf, watched: Watched, listing: Listing, at: str) -> Kept | Reject:
    """A further reading, kept only where it is otherwise than the one before."""
    before = watched.readings[-1]
    known = before.listing
    # What a save doesn't tell (a pasted text has no price) is as it was.
    told = {name: getattr(listing, name) or getattr(known, name) for name in ("title", "text", "asking", "seller", "url")}
    listing = replace(listing, id=known.id, **told)
    if day_of(at) < day_of(before.at):
        return _reject(listing, f"#{watched.key} was read on {day_of(before.at)} already: expected a later day")
    if before.verdict.work and before.verdict.work not in shelf.sets:
        return _reject(
            listing, f"#{watched.key} was read with the point set {before.verdict.work!r}: give its folder by --points"
        )
    after = _read(shelf, listing, max(at, before.at))  # another process may have been a moment later
    if isinstance(after, Reject):
        return after
    if (told, after.verdict.to_dict()) != ({name: getattr(known, name) for name in told}, before.verdict.to_dict()):
        store.read_again(watched.key, after)
    store.seen(watched.key, at)
    return Kept(watched.key, listing, changes=changes_of(watched, after, shelf))


def changes_of(watched: Watched, after: Reading, shelf: Shelf) -> tuple[Change, ...]:
    """What a further reading of a listing changes."""
    work = shelf.sets.get(after.verdict.work or "")
    return compare(watched.readings[-1], after, work, waiting(states(watched, shelf.sets)))


def _read(shelf: Shelf, listing: Listing, at: str) -> Reading | Reject:
    """A reading; a listing whose audit fails is a reject, as in a scan."""
    try:
        return Reading(at, listing, audit_on(shelf, listing.text, listing.title, listing.asking))
    except Exception as error:  # one listing that trips a fault of ours must not cost the user the others
        return _reject(listing, f"the audit itself failed ({type(error).__name__}: {error}): please report it")


def _missing(listing: Listing, key: int) -> Reject:
    return _reject(listing, f"there is no #{key} on the list")


def _reject(listing: Listing, reason: str) -> Reject:
    return Reject(listing.source or "listing", listing.id, reason)
