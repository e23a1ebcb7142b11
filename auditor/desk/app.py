"""The desk's pages and what they ask for, put together."""

from __future__ import annotations

from pathlib import Path

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.middleware import Middleware
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, JSONResponse, PlainTextResponse, RedirectResponse, Response
from starlette.routing import Mount, Route
from starlette.staticfiles import StaticFiles

from auditor.desk import batch, watching
from auditor.desk.draft import BadDraft, Draft, checked
from auditor.desk.guard import MOST_BYTES, Guard
from auditor.knowledge.shelf import Shelf
from auditor.reports.page import assets, guide
from auditor.reports.words import CAUTION

HOME = Path(__file__).parent


def create(shelf: Shelf, port: int, folder: Path, watchlist: Path) -> Starlette:
    """The desk on ``port`` with that watchlist; reports of batches are kept in ``folder``, which the caller clears away."""
    templates = assets.templates(HOME / "templates")
    works = shelf.by_author()

    def page(name: str, status: int = 200, **told: object) -> HTMLResponse:
        return HTMLResponse(templates.get_template(name).render(caution=CAUTION, **told), status)

    async def draft_page(request: Request) -> Response:
        return page("draft.html", here="draft", works=works)

    async def draft(request: Request) -> Response:
        try:
            asked = Draft.of(await request.body())
        except BadDraft as error:
            return JSONResponse({"wrong": str(error)}, 400)
        return JSONResponse(await run_in_threadpool(checked, shelf, asked))

    async def batch_page(request: Request) -> Response:
        return page("batch.html", here="batch", kinds=batch.KNOWN, most=MOST_BYTES, wrong=None)

    async def take_batch(request: Request) -> Response:
        async with request.form(max_files=1000, max_fields=10) as form:
            files = [each for each in form.getlist("files") if not isinstance(each, str) and each.filename]
            if not files:
                return page("batch.html", 400, here="batch", kinds=batch.KNOWN, most=MOST_BYTES, wrong="No file was chosen.")
            name = await run_in_threadpool(batch.read, shelf, [(each.filename or "", each.file) for each in files], folder)
        return RedirectResponse(f"/reports/{name}", 303)

    async def report(request: Request) -> Response:
        path = batch.kept(folder, request.path_params["name"])
        return FileResponse(path, media_type="text/html") if path else missing()

    async def books_page(request: Request) -> Response:
        return page("books.html", here="books", works=works, mistakes=shelf.mistakes)

    async def book(request: Request) -> Response:
        work = shelf.sets.get(request.path_params["stem"])
        return page("book.html", here="books", **guide.content(work)) if work else missing()

    def missing() -> Response:
        return PlainTextResponse("There is no such page on this desk.\n", 404)

    return Starlette(
        routes=[
            Route("/", draft_page),
            Route("/draft", draft, methods=["POST"]),
            Route("/batch", batch_page),
            Route("/batch", take_batch, methods=["POST"]),
            Route("/reports/{name}", report),
            Route("/books", books_page),
            Route("/books/{stem}", book),
            *watching.routes(shelf, watchlist, page),
            Mount("/view", StaticFiles(directory=assets.STATIC)),
            Mount("/static", StaticFiles(directory=HOME / "static")),
        ],
        middleware=[Middleware(Guard, port=port)],
    )
