"""The desk without a browser: who may ask, how much, what every answer carries; and how it starts and stops."""

import asyncio
import os
import re
import signal
import subprocess
import sys

import httpx
import pytest

from auditor.auditing import open_shelf
from auditor.desk.app import create
from auditor.desk.guard import MOST_BYTES, MOST_DRAFT_BYTES
from tests.commands import DEMO, ROOT, auditor, errors, one_line, out

HOME = "http://127.0.0.1:8431"
OWN = {"origin": HOME}


class Desk:
    """The desk asked in this process, each request by itself."""

    def __init__(self, app):
        self.transport = httpx.ASGITransport(app=app)

    def ask(self, method, path, **more):
        async def answer():
            async with httpx.AsyncClient(transport=self.transport, base_url=HOME) as client:
                return await client.request(method, path, **more)

        return asyncio.run(answer())

    def get(self, path, **more):
        return self.ask("GET", path, **more)

    def post(self, path, **more):
        return self.ask("POST", path, **more)


@pytest.fixture
def desk(tmp_path, tmp_path_factory):
    watchlist = tmp_path_factory.mktemp("data") / "watchlist.sqlite"
    return Desk(create(open_shelf(DEMO / "points"), 8431, tmp_path, watchlist))


def test_a_draft_is_read(desk):
    told = desk.post(
        "/draft", json={"text": "First edition, fine. Rare!", "title": "", "asking": "", "book": ""}, headers=OWN
    ).json()
    assert "".join(piece[0] for piece in told["detail"]["text"]) == "First edition, fine. Rare!"
    assert told["facts"] == "First edition. Fine."
    assert [word for word, _ in told["avoid"]] == ["rare"]


def test_a_book_that_is_picked_is_not_looked_for(desk):
    ask = {"text": "Black boards.", "title": "", "asking": ""}
    assert desk.post("/draft", json={**ask, "book": "ore-dock"}, headers=OWN).json()["detail"]["set"] == "ore-dock"
    assert desk.post("/draft", json={**ask, "book": "no-such-book"}, headers=OWN).json()["detail"]["set"] is None


@pytest.mark.parametrize(
    "body", [b"", b"no json", b"[]", b'{"text": 1}', b"\xff\xfe", b"[" * 100_000], ids=lambda body: str(body[:12])
)
def test_what_is_no_draft_is_told_so(desk, body):
    answer = desk.post("/draft", content=body, headers=OWN)
    assert answer.status_code == 400
    assert "expected" in answer.json()["wrong"]


@pytest.mark.parametrize(
    "host", ["evil.example", "evil.example:8431", "127.0.0.1", "127.0.0.1:80", "localhost.evil.example:8431", ""]
)
def test_under_another_name_it_does_not_answer(desk, host):
    for path in ("/", "/books", "/watch", "/view/dom.js"):
        assert desk.get(path, headers={"host": host}).status_code == 421


def test_under_its_own_names_it_does(desk):
    for host in ("127.0.0.1:8431", "localhost:8431"):
        assert desk.get("/", headers={"host": host}).status_code == 200


@pytest.mark.parametrize(
    "origin", ["https://evil.example", "null", "http://127.0.0.1:80", "http://127.0.0.1", "http://localhost:8431", ""]
)
def test_another_sites_page_can_ask_nothing(desk, origin):
    for path in ("/draft", "/batch", "/watch", "/watch/recheck", "/watch/1/drop"):
        assert desk.post(path, content=b"{}", headers={"origin": origin}).status_code == 403
    assert desk.get("/", headers={"origin": origin}).status_code == 403


def test_a_change_without_an_origin_is_refused(desk):
    assert desk.post("/draft", content=b"{}").status_code == 403


def test_too_much_is_refused_by_its_length_and_by_what_comes(desk):
    assert desk.post("/draft", content=b" " * (MOST_DRAFT_BYTES + 1), headers=OWN).status_code == 413

    async def endless():
        for _ in range(1000):
            yield b" " * 1000

    assert desk.post("/draft", content=endless(), headers=OWN).status_code == 413
    claimed = {**OWN, "content-length": str(MOST_BYTES + 1), "content-type": "multipart/form-data; boundary=x"}
    assert desk.post("/batch", content=b"", headers=claimed).status_code == 413
    assert desk.post("/batch", content=b"", headers={**OWN, "content-length": "-1"}).status_code in (400, 413)


def test_every_answer_carries_the_policy_and_sets_no_cookie(desk):
    answers = [
        *(
            desk.get(path)
            for path in (
                "/",
                "/batch",
                "/watch",
                "/watch/1",
                "/books",
                "/books/ore-dock",
                "/books/none",
                "/none",
                "/view/dom.js",
                "/reports/x",
            )
        ),
        desk.get("/", headers={"host": "evil.example"}),
        desk.post("/draft", content=b"", headers=OWN),
        desk.ask("PUT", "/draft", headers=OWN),
    ]
    for answer in answers:
        policy = answer.headers["content-security-policy"]
        assert policy.startswith("default-src 'none'; script-src 'self'") or "sha256-" in policy
        assert "unsafe" not in policy
        assert "frame-ancestors 'none'" in policy
        assert answer.headers["x-content-type-options"] == "nosniff"
        assert answer.headers["cross-origin-resource-policy"] == "same-origin"
        assert answer.headers["cache-control"] == "no-store"
        assert "set-cookie" not in answer.headers


@pytest.mark.parametrize(
    "path",
    ["/reports/..%2f..%2fetc%2fpasswd", "/view/..%2f__init__.py", "/view/../assets.py", "/static/%2e%2e/app.py", "/books/..%2fx"],
)
def test_no_path_leads_out(desk, path):
    assert desk.get(path).status_code == 404


def send(desk, *given):
    return desk.post("/batch", files=[("files", each) for each in given], headers=OWN)


def test_a_batch_becomes_a_report_under_a_name_of_its_own(desk, tmp_path):
    listings = (DEMO / "listings.csv").read_bytes()
    answer = send(
        desk, ("shop/listings.csv", listings), ("listings.csv", listings), ("a.txt", b"First edition."), ("b.png", b"\x89PNG")
    )
    assert answer.status_code == 303
    address = answer.headers["location"]
    assert re.fullmatch(r"/reports/[\w-]{16}\.html", address)
    page = desk.get(address)
    assert page.status_code == 200
    assert "sha256-" in page.headers["content-security-policy"]
    assert "137 listings read" in page.text
    assert "b.png" in page.text
    assert str(tmp_path) not in page.text
    assert len(list(tmp_path.iterdir())) == 1


def test_an_empty_batch_is_told_so(desk):
    answer = desk.post("/batch", files={"other": ("a.txt", b"x")}, headers=OWN)
    assert answer.status_code == 400
    assert "No file was chosen" in answer.text


def test_guides_tell_points_with_their_sources(desk):
    page = desk.get("/books/ore-dock").text
    for words in (
        "harbor mater",
        "page 61, line 8",
        "First edition, printings 1 to 2",
        "invented for the demo",
        "400 to 600 USD",
    ):
        assert words in page
    assert 'href="/books/ore-dock"' in desk.get("/books").text


def test_it_serves_this_computer_alone_and_stops_cleanly(tmp_path):
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "TMPDIR": str(tmp_path)}
    command = [sys.executable, "-m", "auditor", "desk", "--no-browser"]
    for ending in (signal.SIGINT, signal.SIGTERM):
        process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment)
        address = re.search(r"http://127\.0\.0\.1:\d+/", process.stdout.readline())[0]
        assert httpx.get(address).status_code == 200
        taken = subprocess.run(
            [*command, "--port", address.split(":")[2].strip("/")], capture_output=True, text=True, env=environment
        )
        assert taken.returncode == 2
        assert "in use" in taken.stderr
        process.send_signal(ending)
        assert process.wait(20) == 0
        assert process.stderr.read() == ""
    assert list(tmp_path.iterdir()) == []


def test_a_draft_in_the_terminal():
    words = "First edition, first printing, number line 1-10. Fine in a near fine, unclipped dust jacket, $21.95. Rare!"
    done = auditor("draft", words=words)
    told = one_line(out(done))
    assert done.returncode == 0, errors(done)
    assert "First edition, first printing (number line 1-10). Fine in near fine unclipped jacket, $21.95." in told
    assert "rare: “rare” has no measure" in told
    assert "the publisher, and the year" in told
    assert "neither an authentication nor an appraisal" in told
    assert auditor("draft", words="").returncode == 3
