"""A real Chromium for the tests of both pages; it fetches nothing and its profile is thrown away."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

from auditor.auditing import open_shelf
from auditor.intake import open_paths
from auditor.reports import files
from auditor.reports.run import Run
from auditor.scan import run
from auditor.values import Reject

ROOT = Path(__file__).parents[2]
DEMO = ROOT / "corpora_demo"
FLAGS = [
    "--no-sandbox",  # as root there is none
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


def pytest_configure(config):
    config.addinivalue_line("markers", "browser: needs Chromium on the path (Debian's package chromium)")


@pytest.fixture(scope="package")  # its event loop would be in the way of other tests
def chromium():
    path = shutil.which("chromium")
    if path is None:
        told = "no chromium on the path: apt-get install chromium"
        if os.environ.get("CI"):
            pytest.fail(told)
        pytest.skip(told)
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=path, args=FLAGS)
        yield browser
        browser.close()


@pytest.fixture
def tab(chromium):
    """Opens pages; at the end none may have told an error, called anything outside, or run what a listing brought."""
    contexts = []
    wrong = []

    def open_tab(address, **wishes):
        context = chromium.new_context(**{"viewport": {"width": 1280, "height": 900}, **wishes})
        contexts.append(context)
        page = context.new_page()
        home = address.split("/")[2]
        page.on("pageerror", lambda error: wrong.append(f"error: {error}"))
        page.on("console", lambda line: wrong.append(f"console: {line.text}") if line.type in ("error", "warning") else None)
        page.on("dialog", lambda dialog: (wrong.append(f"dialog: {dialog.message}"), dialog.dismiss()))
        page.on(
            "request",
            lambda request: (
                wrong.append(f"asked for {request.url}")
                if not request.url.startswith(("file://", f"http://{home}/", "blob:"))
                else None
            ),
        )
        page.goto(address)
        return page

    open_tab.wrong = wrong
    yield open_tab
    for context in contexts:
        context.close()
    assert not wrong


@pytest.fixture(scope="session")
def demo(tmp_path_factory):
    """The demo's report, and its listings by id."""
    shelf = open_shelf(DEMO / "points")
    path = tmp_path_factory.mktemp("demo") / "report.html"
    told = Run(shelf.sets)
    listings = {}
    with files.writing(path, told) as write:
        for item in run(open_paths([DEMO / "listings.csv"]), shelf):
            assert not isinstance(item, Reject), item
            if isinstance(item, tuple):
                write(*item)
                listings[item[0].id] = item
    return path, listings


@pytest.fixture(scope="session")
def desk(tmp_path_factory):
    """The address of a desk that runs as a user runs it; it must end cleanly and leave nothing behind."""
    from tests.browser.hostile import write_point_set

    points = tmp_path_factory.mktemp("points")
    for each in (DEMO / "points").glob("*.toml"):
        shutil.copy(each, points)
    write_point_set(points / "hostile.toml")
    room = tmp_path_factory.mktemp("room")
    watchlist = tmp_path_factory.mktemp("data") / "watchlist.sqlite"
    process = subprocess.Popen(
        [sys.executable, "-m", "auditor", "desk", "--no-browser", "--points", str(points), "--watchlist", str(watchlist)],
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT), "TMPDIR": str(room)},
    )
    told = process.stdout.readline()
    address = next(word for word in told.split() if word.startswith("http://"))
    yield address
    process.terminate()
    assert process.wait(20) == 0
    assert list(room.iterdir()) == []
