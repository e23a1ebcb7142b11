"""Hostile words in every place that a stranger can write to, in a real browser: nothing runs, breaks out or becomes a link."""

import json

import pytest
from playwright.sync_api import expect

from auditor.auditing import audit_on, open_shelf
from auditor.reports import files
from auditor.reports.run import Run
from auditor.values import Claim, Finding, Listing, Question, Reject, Scores, Verdict
from tests.browser.hostile import ADDRESSES, STRINGS, write_point_set

pytestmark = pytest.mark.browser


def verdict(words, work=None):
    """A verdict that carries the words wherever a verdict carries words."""
    return Verdict(
        work,
        (Claim("edition", words, "book", "asserted", 0, len(words)), Claim("point", f"x={words}", "book", "denied", 3, 9)),
        "contradicted",
        book=(),
        claimed=("trade:1",),
        findings=(Finding("contradiction", "grave", words, ((0, len(words)), (2, 4)), ("constructor", words)),),
        scores=Scores(1, 2, 3),
        questions=(Question(words, words),),
        title_claims=(Claim("printing", words, "book", "hedged", 0, 5),),
    )


@pytest.fixture(scope="module")
def report(tmp_path_factory):
    folder = tmp_path_factory.mktemp("hostile")
    write_point_set(folder / "hostile.toml")
    shelf = open_shelf(folder)
    path = folder / "report.html"
    run = Run(shelf.sets, [Reject(words, words, words) for words in STRINGS] + [Reject("bad\udcff.csv", "row 1", "\ud800")])
    with files.writing(path, run) as write:
        for number, words in enumerate(STRINGS):
            address = ADDRESSES[number % len(ADDRESSES)]
            listing = Listing(words, words, words, f"{number + 1}.00 {words}", words, address, f"{words}, row {number}")
            write(listing, verdict(words, "hostile"))
        write(Listing("real", f"{STRINGS[1]} First edition.", STRINGS[0]), audit_on(shelf, STRINGS[1], STRINGS[0]))
        write(Listing("half", "\ud800 half a letter\x00", "\udfff"), verdict("\ud800 half a letter"))
    return path


def test_the_report_runs_nothing_and_shows_the_words_as_they_are(tab, report):
    page = tab(report.as_uri())
    elements = page.evaluate("document.querySelectorAll('script,iframe,link,base,meta,form,img,math,object').length")
    for number, words in enumerate(STRINGS):
        opener = page.locator(f'tr[data-number="{number}"] .opener')
        opener.click()
        shown = page.locator(f"#inside-{number}")
        if "\u202e" not in words:
            assert words in shown.locator(".finding p").nth(1).text_content()
            assert words in shown.get_by_label("Message to the seller").input_value()
        assert "\u202e" not in shown.text_content()
        assert [link.get_attribute("href") for link in shown.locator("a").all()] == []
    for place in ("#inside-0 summary", "#inside-1 summary"):
        for summary in page.locator(place).all():
            summary.click()
    assert page.evaluate("document.querySelectorAll('script,iframe,link,base,meta,form,img,math,object').length") == elements
    assert page.evaluate("window.hit") is None
    assert page.evaluate("document.body.checkVisibility()")
    assert page.url == report.as_uri()
    page.locator("#filters [name=words]").fill("constructor")
    assert page.evaluate("window.hit") is None


def test_the_policy_of_the_report_lets_nothing_else_run(tab, report):
    page = tab(report.as_uri())
    tried = page.evaluate(
        """() => { const told = [];
        const script = document.createElement('script'); script.textContent; document.body.append(script);
        try { document.body.innerHTML = '<b>x</b>'; told.push('markup made'); } catch { told.push('no markup'); }
        try { script.textContent = 'window.hit = 1'; told.push('script made'); } catch { told.push('no script'); }
        return told; }"""
    )
    assert tried == ["no markup", "no script"]
    assert page.evaluate("window.hit") is None
    tab.wrong.clear()  # the browser rightly complains of what was tried here


def test_a_plain_address_is_a_link_that_tells_nothing(tab, tmp_path):
    path = tmp_path / "report.html"
    with files.writing(path) as write:
        write(Listing("1", "words", url="https://shop.example/item?a=1&b=<2>"), Verdict(None, (), "unclaimed"))
    page = tab(path.as_uri())
    page.locator(".opener").click()
    link = page.locator(".inside a")
    assert link.get_attribute("href") == "https://shop.example/item?a=1&b=<2>"
    assert "noopener" in link.get_attribute("rel")


def test_the_desk_runs_nothing_that_is_typed(tab, desk):
    page = tab(desk)
    for words in STRINGS:
        page.locator("[name=title]").fill(words)
        page.locator("#text").fill(f"First edition. {words}")
        if "\u202e" not in words:
            expect(page.locator("#view .words-text")).to_contain_text(words)
    assert page.evaluate("window.hit") is None
    assert page.locator("iframe, img, base, main form form, math").count() == 0


def test_guide_pages_show_a_hostile_point_set_as_words(tab, desk):
    page = tab(f"{desk}books/hostile")
    told = page.locator("main").text_content()
    for words in (STRINGS[0], STRINGS[1], STRINGS[5], "javascript:window.hit=1"):
        assert words in told
    assert page.locator("main a").all_inner_texts() == ["All books"]
    assert page.locator("iframe, img, base, math, main form").count() == 0
    assert page.evaluate("window.hit") is None
    page.goto(f"{desk}books")
    assert page.evaluate("window.hit") is None


def test_a_hostile_batch_is_read_like_any_other(tab, desk, tmp_path):
    batch = tmp_path / "batch.jsonl"
    batch.write_text("\n".join(json.dumps({"id": w, "title": w, "text": f"{w} First edition.", "seller": w}) for w in STRINGS))
    page = tab(f"{desk}batch")
    page.locator("[name=files]").set_input_files(
        [
            {"name": "<img src=x onerror=window.hit=1>.txt", "mimeType": "text/plain", "buffer": b"First edition. Fine."},
            {"name": "../../../etc/cron.txt", "mimeType": "text/plain", "buffer": b"Second printing."},
            {"name": "batch.jsonl", "mimeType": "text/plain", "buffer": batch.read_bytes()},
        ]
    )
    page.get_by_role("button", name="Read them").click()
    page.wait_for_url("**/reports/*")
    page.locator(".opener").first.click()
    assert page.evaluate("window.hit") is None
    assert page.locator("iframe, img, base, math").count() == 0
    assert page.get_by_role("heading", level=1).inner_text() == f"{len(STRINGS) + 2} listings read"
