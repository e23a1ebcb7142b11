"""The watchlist's tab in a real browser: by mouse, by keyboard, on a phone, with words that would run."""

import re

import pytest
from playwright.sync_api import expect

from tests.browser.hostile import ADDRESSES, STRINGS
from tests.browser.test_report import PHONE, complaints

pytestmark = pytest.mark.browser

WORDS = "First printing, gray cloth. Near fine in a very good jacket at $6.95, from a house where books were read."


def paste(page, desk, title, text=WORDS, **told):
    page.goto(f"{desk}watch")
    for name, value in {"title": title, "text": text, **told}.items():
        page.locator(f".keeping [name={name}]").fill(value)
    page.get_by_role("button", name="Keep it").click()
    page.wait_for_url(re.compile(r"/watch/\d+"))


def test_a_listing_kept_asked_about_answered_by_its_text_and_decided(tab, desk):
    page = tab(desk)
    page.get_by_role("link", name="Watchlist").click()
    paste(page, desk, "The Ore Dock by Ilse Varnum, one", asking="45.00 USD", seller="quietshelf")
    expect(page.locator("#view .listing .ruler svg")).to_have_count(1)
    page.get_by_role("button", name="Mark as asked: copyright page").click()
    expect(page.locator(".state.asked")).to_have_text("asked")
    paste(page, desk, "The Ore Dock by Ilse Varnum, one", WORDS + " Number line to 1.", asking="40.00 USD", seller="quietshelf")
    expect(page.locator(".state.answered")).to_have_text("answered")
    history = page.locator(".history").inner_text()
    assert "was added after you asked (copyright page)" in history
    assert "The price asked went from 45.00 USD to 40.00 USD (11% less)." in history
    page.get_by_label("A note").fill("the copy to beat")
    page.get_by_role("button", name="Write it down").click()
    page.get_by_label("Decision").fill("buy")
    page.get_by_role("button", name="Keep it as your decision").click()
    expect(page.locator(".history li").first).to_contain_text("buy")
    page.goto(f"{desk}watch")
    page.get_by_role("link", name="price against its figures").click()
    expect(page.locator(".watched tbody tr", has_text="Ilse Varnum, one")).to_contain_text("buy")


def test_an_answer_by_mail_is_marked_by_keyboard_alone(tab, desk):
    page = tab(desk)
    paste(page, desk, "The Ore Dock by Ilse Varnum, by keyboard", seller="keyed")
    answer = page.get_by_label("What the answer was: copyright page")
    for _ in range(30):
        page.keyboard.press("Tab")
        if answer.evaluate("field => field === document.activeElement"):
            break
    page.keyboard.type("line to 1, by mail")
    page.keyboard.press("Enter")
    expect(page.locator(".state.answered")).to_have_text("answered")
    expect(page.locator(".asking")).to_contain_text("line to 1, by mail")


def test_words_that_would_run_are_words(tab, desk):
    page = tab(desk)
    for number, (title, address) in enumerate(zip(STRINGS, ADDRESSES, strict=False)):
        page.request.post(
            f"{desk}watch",
            form={"title": title[:400], "text": " ".join(STRINGS), "seller": f"{STRINGS[1]} {number}", "url": address},
            headers={"origin": desk.rstrip("/")},
        )
    page.goto(f"{desk}watch")
    numbers = page.locator(".watched .what a").evaluate_all("links => links.map(link => link.getAttribute('href'))")
    page.request.post(f"{desk}{numbers[0][1:]}/note", form={"words": STRINGS[0]}, headers={"origin": desk.rstrip("/")})
    page.request.post(f"{desk}{numbers[0][1:]}/decision", form={"words": STRINGS[5]}, headers={"origin": desk.rstrip("/")})
    for place in ["watch", *(number[1:] for number in numbers[:4])]:
        page.goto(desk + place)
        page.locator("main h1").wait_for()
        assert page.evaluate("window.hit") is None
        links = page.locator("main a").evaluate_all("links => links.map(link => link.protocol)")
        assert set(links) <= {"http:", "https:"}


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("wishes", [{}, PHONE], ids=["wide", "phone"])
def test_axe_finds_nothing_on_the_watchlist(tab, desk, scheme, wishes):
    page = tab(f"{desk}watch", color_scheme=scheme, **wishes)
    paste(page, desk, f"The Ore Dock by Ilse Varnum, {scheme} {len(wishes)}", seller=f"{scheme} {len(wishes)}", asking="45 USD")
    asked = page.get_by_role("button", name="Mark as asked: copyright page")
    asked.click()
    expect(page.locator(".state.asked")).to_have_count(1)
    page.locator("#view .listing").wait_for()
    for place in (page.url, f"{page.url.partition('#')[0]}?maybe=1", f"{desk}watch"):
        page.goto(place)
        assert complaints(page) == []
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
