"""What is fuzzed: each target takes bytes, does what the product does with such input, and raises on what must not happen.

An error that the product means for people (a ValueError of intake, an answer of 400) is no finding; any other is, and so are
offsets outside the text, a server's error, and an answer that can't be written as UTF-8.
"""

from __future__ import annotations

import asyncio
import json
import tempfile
from functools import cache
from pathlib import Path
from urllib.parse import quote_from_bytes

import httpx

from auditor.auditing import audit_on, open_shelf
from auditor.desk.app import create
from auditor.intake import open_paths
from auditor.knowledge.checks import review
from auditor.reading import read
from auditor.values import Listing, Reject
from auditor.weighing import weigh

ROOT = Path(__file__).parents[2]
_SEEDS = Path(__file__).parent / "seeds"
_DEMO = {"page": ROOT / "corpora_demo" / "pages", "points": ROOT / "corpora_demo" / "points"}


def seed_folders(target: str) -> list[Path]:
    """Where a target's seeds lie: its own, cured findings among them, and the demo's files of that kind."""
    return [_SEEDS / target, *([_DEMO[target]] if target in _DEMO else [])]


WORDS = "First edition, first printing, 10 9 8 7 6 5 4 3 2 1, $9.95 on the flap. Very good in a near fine jacket, no tears."


@cache
def _shelf():
    return open_shelf(ROOT / "corpora_demo" / "points")


def reader(data: bytes) -> None:
    """The words of a listing, with a title before a zero byte: claims within the text, a verdict that JSON can hold."""
    title, _, text = data.decode("utf-8", "replace").rpartition("\0")
    verdict = audit_on(_shelf(), text, title or None, "45.00 USD")
    for told, claims in ((text, verdict.claims), (title, verdict.title_claims)):
        for claim in claims:
            assert 0 <= claim.start < claim.end <= len(told), claim
    for finding in verdict.findings:
        for start, end in finding.spans:
            assert 0 <= start < end <= len(text), finding
    assert all(0 <= score <= 100 for score in verdict.scores.to_dict().values())
    json.dumps(verdict.to_dict(), ensure_ascii=False).encode()
    assert audit_on(_shelf(), text, title or None, "45.00 USD") == verdict


def _file(data: bytes, *suffixes: str) -> None:
    with tempfile.TemporaryDirectory() as folder:
        for suffix in suffixes:
            path = Path(folder) / f"a{suffix}"
            path.write_bytes(data)
            items = list(open_paths([path]))
            assert items or not data.strip(), "what came vanished"
            for item in items:
                if isinstance(item, Listing):
                    json.dumps(item.to_dict(), ensure_ascii=False).encode()
                    assert item.id
                elif isinstance(item, Reject):
                    assert "Error" not in item.reason or b"Error" in data, item


def page(data: bytes) -> None:
    """A saved page, and a mail with one."""
    _file(data, ".html", ".eml")


def table(data: bytes) -> None:
    """Tables and JSON."""
    _file(data, ".csv", ".tsv", ".json", ".jsonl")


def points(data: bytes) -> None:
    """A point set: mistakes with a line of the file, and what is sound in it bears weighing."""
    text = data.decode("utf-8", "replace")
    found = review(text, "fuzzed", "fuzzed.toml")
    assert found.set is not None or found.mistakes
    for mistake in (*found.mistakes, *found.remarks):
        assert mistake.line is None or 1 <= mistake.line <= text.count("\n") + 2, mistake
        str(mistake).encode()
    if found.set is not None:
        json.dumps(weigh(read(WORDS, found.set), found.set, asking="45.00 USD").to_dict(), ensure_ascii=False).encode()


@cache
def _desk() -> httpx.ASGITransport:
    folder = Path(tempfile.mkdtemp())
    return httpx.ASGITransport(app=create(_shelf(), 8431, folder, folder / "watchlist.sqlite"))


def _url(path: bytes) -> httpx.URL:
    return httpx.URL("http://127.0.0.1:8431/", raw_path=b"/" + quote_from_bytes(path, safe="/%?&=").encode())


def desk(data: bytes) -> None:
    """The desk's endpoints: the first byte chooses one, the rest is what is sent to it."""
    kind, rest = (data[0] % 6, data[1:]) if data else (0, b"")

    async def ask() -> httpx.Response:
        async with httpx.AsyncClient(transport=_desk(), base_url="http://127.0.0.1:8431") as client:
            headers = {"origin": "http://127.0.0.1:8431"}
            if kind == 0:
                return await client.post("/draft", content=rest, headers=headers)
            if kind == 1:
                fields = dict(zip(("text", "title", "asking", "book"), rest.decode("utf-8", "replace").split("\0"), strict=False))
                return await client.post("/draft", json=fields, headers=headers)
            if kind == 2:
                name, _, body = rest.partition(b"\0")
                files = {"files": (name.decode("utf-8", "replace") or "a.txt", body)}
                return await client.post("/batch", files=files, headers=headers)
            if kind == 3:
                headers["content-type"] = "multipart/form-data; boundary=a"
                return await client.post("/batch", content=rest, headers=headers)
            if kind == 4:
                path, _, fields = rest.partition(b"\0")
                headers["content-type"] = "application/x-www-form-urlencoded"
                return await client.post(_url(b"watch" + path), content=fields, headers=headers)
            return await client.request("GET", _url(rest))

    try:
        answer = asyncio.run(ask())
    except (httpx.InvalidURL, httpx.LocalProtocolError):
        return
    assert answer.status_code < 500, answer.status_code
    assert answer.headers["x-content-type-options"] == "nosniff"


TARGETS = {"reader": reader, "page": page, "table": table, "points": points, "desk": desk}
