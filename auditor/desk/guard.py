"""What stands before every request: whose page asks, how much it sends, and what the answer may do in a browser."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import PlainTextResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from auditor.reports.page.assets import REPORT, STYLES, policy

MOST_BYTES: Final = 40_000_000  # a batch; some thousand listings, or a folder of saved pages
MOST_DRAFT_BYTES: Final = 200_000

_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; "
    "frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types 'none'"
)
_HEADERS: Mapping[str, str] = {
    "x-content-type-options": "nosniff",
    "referrer-policy": "same-origin",  # under no-referrer a browser tells no Origin with a form
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "x-frame-options": "DENY",
    "cache-control": "no-store",
}


class _TooLarge(Exception):
    pass


class Guard:
    """ASGI middleware. A request under another name than this desk's (rebound DNS) or from another site's page is refused."""

    def __init__(self, app: ASGIApp, port: int) -> None:
        self._app = app
        self._hosts = {f"127.0.0.1:{port}", f"localhost:{port}"}

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        headers = Headers(scope=scope)
        host, origin = headers.get("host", ""), headers.get("origin")
        most = MOST_BYTES if scope["path"] == "/batch" else MOST_DRAFT_BYTES
        changes = scope["method"] not in ("GET", "HEAD")
        size = headers.get("content-length", "0")
        taken = 0
        started = False

        async def counted() -> Message:
            nonlocal taken
            message = await receive()
            taken += len(message.get("body", b""))
            if taken > most:
                raise _TooLarge
            return message

        async def headed(message: Message) -> None:
            nonlocal started
            if message["type"] == "http.response.start":
                started = True
                answer = MutableHeaders(scope=message)
                answer.update(_HEADERS)
                is_report = scope["path"].startswith("/reports/")
                answer["content-security-policy"] = f"{policy(REPORT, STYLES)}; frame-ancestors 'none'" if is_report else _POLICY
            await send(message)

        async def refuse(status: int, why: str) -> None:
            await PlainTextResponse(f"{why}\n", status)(scope, receive, headed)

        if host not in self._hosts:
            await refuse(421, "This desk answers only under its own address.")
        elif origin != f"http://{host}" if changes else origin not in (None, f"http://{host}"):
            await refuse(403, "This desk answers only to its own pages.")
        elif not size.isdigit() or int(size) > most:
            await refuse(413, f"Too large: at most {most:,} bytes at a time.")
        else:
            try:
                await self._app(scope, counted, headed)
            except _TooLarge:
                if not started:
                    await refuse(413, f"Too large: at most {most:,} bytes at a time.")
