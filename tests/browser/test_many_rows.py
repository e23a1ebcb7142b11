"""The report with 5,000 rows, with three, and with none."""

import time
from dataclasses import replace

import pytest
from playwright.sync_api import expect

from auditor.auditing import open_shelf
from auditor.reports import files
from auditor.reports.run import Run
from auditor.values import Listing, Reject, Verdict
from tests.browser.conftest import DEMO
from tests.browser.test_report import complaints, rows

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def big(demo, tmp_path_factory):
    """5,000 rows: the demo's over and over, each with a price and a name of its own."""
    path = tmp_path_factory.mktemp("big") / "report.html"
    results = list(demo[1].values())
    with files.writing(path, Run(open_shelf(DEMO / "points").sets)) as write:
        for number in range(5000):
            listing, verdict = results[number % len(results)]
            price = f"{(number * 7919) % 90_000 / 10 + 1:.2f} USD"
            write(replace(listing, id=f"row-{number}", asking=price, seller=f"seller {number % 700}"), verdict)
    return path


def test_five_thousand_rows_without_lag(tab, big):
    began = time.perf_counter()
    page = tab(big.as_uri())
    rows(page).first.wait_for()
    assert time.perf_counter() - began < 30  # a hang, not a measurement
    assert rows(page).count() <= 200
    times = []
    for number in range(6):
        times.append(
            page.evaluate(
                """(number) => { const from = performance.now();
                document.querySelectorAll('#rows thead button')[number].click();
                document.body.getBoundingClientRect(); return performance.now() - from; }""",
                number,
            )
        )
    times.append(
        page.evaluate(
            """async () => { const from = performance.now(); const field = document.querySelector('[name=words]');
            field.value = 'seller 17'; field.dispatchEvent(new Event('input', { bubbles: true }));
            await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
            return performance.now() - from; }"""
        )
    )
    print(f"milliseconds: {[round(each) for each in times]}")
    assert max(times) < 3_000, times  # a hang, not a measurement
    assert rows(page).count() > 0


def test_scrolling_brings_the_rows_behind(tab, big):
    page = tab(big.as_uri())
    first = rows(page).count()
    page.locator("#more").scroll_into_view_if_needed()
    expect(rows(page)).not_to_have_count(first)
    assert rows(page).count() > first


def test_three_listings_and_none(tab, tmp_path):
    nothing = Verdict(None, (), "unclaimed")
    few = tmp_path / "few.html"
    run = Run(rejects=[Reject("shop.csv", "row 4", "holds no words")])
    with files.writing(few, run) as write:
        for number in range(3):
            write(Listing(str(number), "Nice old book."), nothing)
    page = tab(few.as_uri())
    assert rows(page).count() == 3
    assert "row 4: holds no words" in page.locator(".read").inner_text().replace("\n", " ")
    assert complaints(page) == []
    none = tmp_path / "none.html"
    with files.writing(none):
        pass
    page = tab(none.as_uri())
    assert page.get_by_role("heading", level=1).inner_text() == "0 listings read"
    assert complaints(page) == []
