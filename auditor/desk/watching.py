"""The watchlist's tab: the list sorted, a listing opened with its history, questions marked, notes and decision written."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping
from pathlib import Path
from typing import Any, Final, get_args

from starlette.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import HTMLResponse, RedirectResponse, Response
from starlette.routing import Route

from auditor.intake import money
from auditor.knowledge.shelf import Shelf
from auditor.reports.page.detail import detail, points_data
from auditor.reports.page.island import island
from auditor.reports.screen import safe
from auditor.values import Listing, Reject
from auditor.watchlist import keeping
from auditor.watchlist.asked import to_mark
from auditor.watchlist.elsewhere import elsewhere
from auditor.watchlist.order import ORDERS, Row, in_order, row
from auditor.watchlist.store import Store, Unusable, opened
from auditor.watchlist.telling import changed_in_words, questions_in_words
from auditor.watchlist.values import ActKind, Watched, day_of, moment

Page = Callable[..., HTMLResponse]
Form = Mapping[str, str]

# How the list may be sorted, in words for its links.
_ORDERS: Final = {
    "changed": "last change",
    "standing": "standing",
    "asking": "price against its figures",
    "work": "work",
    "missing": "missing evidence",
    "contradiction": "contradiction",
    "overclaim": "overclaim",
    "added": "when added",
}


class _Wrong(Exception):
    """What was asked can't be done; the message is for the page, ``status`` for the browser."""

    def __init__(self, message: str, status: int = 400) -> None:
        super().__init__(message)
        self.status = status


def routes(shelf: Shelf, path: Path, page: Page) -> list[Route]:
    """The tab's pages, on the watchlist of the file ``path``; each request opens it anew, as other processes may write to it."""

    def answering(work: Callable[[Store, Request, Form], Response]) -> Callable[[Request], Awaitable[Response]]:
        def answer(request: Request, form: Form) -> Response:
            try:
                with opened(path) as store:
                    return work(store, request, form)
            except Unusable as error:
                return page("sorry.html", 500, here="watch", wrong=safe(str(error)))
            except _Wrong as error:
                return page("sorry.html", error.status, here="watch", wrong=safe(str(error)))

        async def endpoint(request: Request) -> Response:
            form: Form = {}
            if request.method == "POST":
                async with request.form(max_files=0, max_fields=10) as fields:
                    form = {name: str(value).replace("\r\n", "\n") for name, value in fields.items()}
            return await run_in_threadpool(answer, request, form)

        return endpoint

    def the_list(store: Store, request: Request, form: Form) -> Response:
        by = request.query_params.get("by", "changed")
        others = elsewhere(store)
        rows = in_order([row(each, shelf.sets, others) for each in store.all()], by if by in ORDERS else "changed")
        return page("watch.html", here="watch", rows=[_row(each) for each in rows], by=by, orders=_ORDERS)

    def one(store: Store, request: Request, form: Form) -> Response:
        found = row(_get(store, request), shelf.sets, elsewhere(store))
        maybe = request.query_params.get("maybe", "")
        return page("watched.html", here="watch", one=_one(found), maybe=int(maybe) if maybe.isdecimal() else None)

    def act(store: Store, request: Request, form: Form) -> Response:
        kind = request.path_params["kind"]
        if kind not in get_args(ActKind):
            raise _Wrong("There is no such page on this desk.", 404)
        with store.change():
            watched = _get(store, request)
            if kind in ("asked", "answered"):
                try:
                    questions = to_mark(watched, kind, [form.get("place", "")], shelf.sets)
                except ValueError as error:
                    raise _Wrong(str(error)) from error
                for each in questions:
                    words = form.get("words", "").strip() or (each.text if kind == "asked" else "")
                    store.act(watched.key, kind, moment(), words, each.place)
            elif words := form.get("words", "").strip():
                store.act(watched.key, kind, moment(), words)
        return RedirectResponse(f"/watch/{watched.key}#{'questions' if kind in ('asked', 'answered') else 'yours'}", 303)

    def add(store: Store, request: Request, form: Form) -> Response:
        told = {name: form.get(name, "").strip() or None for name in ("title", "asking", "seller", "url")}
        price = money.asking(told["asking"]) if told["asking"] else None
        if told["asking"] and not price:
            raise _Wrong(f"The price “{told['asking']}” is no single clear amount: expected something like 45.00 USD.")
        if not (form.get("text", "").strip() or told["title"]):
            raise _Wrong("There are no words to keep: expected a listing's text or its title.")
        listing = Listing("pasted", form.get("text", ""), **{**told, "asking": price, "source": "the desk"})
        into = form.get("into", "")
        item = keeping.pasted(listing)
        assert isinstance(item, Listing)
        result = keeping.keep(store, shelf, item, moment(), into=int(into) if into.isdecimal() else None)
        if isinstance(result, Reject):
            raise _Wrong(result.reason)
        return RedirectResponse(f"/watch/{result.key}{f'?maybe={result.maybe.key}' if result.maybe else ''}", 303)

    def recheck(store: Store, request: Request, form: Form) -> Response:
        wrong = [
            result.reason
            for key, _ in store.latest()
            if isinstance(result := keeping.reread(store, shelf, key, moment()), Reject)
        ]
        if wrong:
            raise _Wrong(f"Some stay as they were: {'; '.join(wrong)}.")
        return RedirectResponse("/watch?by=changed", 303)

    def merge(store: Store, request: Request, form: Form) -> Response:
        key, into = request.path_params["key"], form.get("into", "")
        result = keeping.merge(store, shelf, key, int(into)) if into.isdecimal() and int(into) != key else None
        if result is None or isinstance(result, Reject):
            raise _Wrong(
                result.reason if result else f"#{key} can't be made one with #{into}: expected another number of the list."
            )
        return RedirectResponse(f"/watch/{into}", 303)

    def drop(store: Store, request: Request, form: Form) -> Response:
        with store.change():
            store.drop(_get(store, request).key)
        return RedirectResponse("/watch", 303)

    return [
        Route("/watch", answering(the_list)),
        Route("/watch", answering(add), methods=["POST"]),
        Route("/watch/recheck", answering(recheck), methods=["POST"]),
        Route("/watch/{key:int}", answering(one)),
        Route("/watch/{key:int}/merge", answering(merge), methods=["POST"]),
        Route("/watch/{key:int}/drop", answering(drop), methods=["POST"]),
        Route("/watch/{key:int}/{kind}", answering(act), methods=["POST"]),
    ]


def _get(store: Store, request: Request) -> Watched:
    found = store.get(request.path_params["key"])
    if found is None:
        raise _Wrong(f"There is no #{request.path_params['key']} on the list.", 404)
    return found


def _row(row: Row) -> dict[str, Any]:
    """A line of the list, as words."""
    watched = row.watched
    return {
        "key": watched.key,
        "name": safe(watched.name),
        "seller": safe(watched.listing.seller or ""),
        "asking": watched.listing.asking or "",
        "figures": str(row.prices.shown or ""),
        "standing": watched.verdict.standing,
        "scores": list(watched.verdict.scores.to_dict().items()),
        "questions": questions_in_words(row),
        "changed": changed_in_words(row),
        "decision": safe(watched.decision),
        "elsewhere": list(row.elsewhere),
    }


def _one(row: Row) -> dict[str, Any]:
    """A listing opened: its line, what only its page shows, and the data that its report is drawn from."""
    watched = row.watched
    return {
        **_row(row),
        "claimed_figures": str(row.prices.claimed or ""),
        "added": day_of(watched.readings[0].at),
        "seen": day_of(watched.seen),
        "history": [
            {"day": day_of(entry.at), "head": safe(entry.head), "lines": [safe(line) for line in entry.lines]}
            for entry in reversed(row.entries)
        ],
        "asked": [
            {"place": each.question.place, "text": safe(each.question.text), "state": each.state, "how": safe(each.how)}
            for each in row.questions
        ],
        "detail": island(detail(watched.listing, watched.verdict, row.work)),
        "points": island(points_data(row.work) if row.work else {}),
    }
