"""The desk in a real browser: a draft typed, marks that move, a line copied, a batch, the books."""

import pytest
from playwright.sync_api import expect

from auditor.desk.guard import MOST_BYTES
from tests.browser.conftest import DEMO
from tests.browser.test_report import PHONE, complaints

pytestmark = pytest.mark.browser

DRAFT = (
    "First edition, first printing. Gray cloth, number line 10 9 8 7 6 5 4 3 2 1. A fine copy with a small stain, "
    "in a very good unclipped jacket, $6.95. Rare! Not a book club edition."
)


def marks(page):
    return page.locator("#mirror mark").all_inner_texts()


SAME_PLACE = """() => {
    const [field, mirror] = ["text", "mirror"].map((name) => document.getElementById(name));
    const [one, other] = [field, mirror].map((element) => getComputedStyle(element));
    const alike = ["font", "letterSpacing", "lineHeight", "padding", "width", "whiteSpace", "overflowWrap", "tabSize"];
    return alike.every((name) => one[name] === other[name]) && field.scrollHeight <= mirror.offsetHeight + 1
        && field.getBoundingClientRect().top === mirror.getBoundingClientRect().top; }"""


def test_claims_are_marked_as_one_types_and_the_marks_move(tab, desk):
    page = tab(desk)
    page.locator("#text").press_sequentially("First edition.", delay=10)
    expect(page.locator("#mirror mark")).to_have_text(["First edition"])
    where = page.locator("#mirror mark").bounding_box()["x"]
    page.locator("#text").press("Home")
    page.locator("#text").press_sequentially("Here is a ", delay=10)
    expect(page.locator("#mirror mark")).to_have_text(["First edition"])
    assert page.locator("#mirror mark").bounding_box()["x"] > where + 20
    page.locator("#text").press("End")
    page.locator("#text").press_sequentially(" Not a book club edition.", delay=10)
    page.locator("#mirror mark.denied").wait_for()


def test_until_the_next_answer_marks_stay_on_their_words(tab, desk):
    page = tab(desk)
    field = page.locator("#text")
    field.fill("First edition. Not a book club edition.")
    expect(page.locator("#mirror mark")).to_have_text(["First edition", "book club edition"])
    page.route("**/draft", lambda route: None)  # no answer comes
    field.press("Home")
    field.press_sequentially("Here is a ")
    field.press("End")
    field.press_sequentially(" Fine.")
    assert page.locator("#mirror").inner_text().rstrip("\u200b") == "Here is a First edition. Not a book club edition. Fine."
    assert marks(page) == ["First edition", "book club edition"]


def test_marks_lie_just_behind_the_words(tab, desk):
    page = tab(desk)
    page.locator("#text").fill(DRAFT * 4)
    page.locator("#mirror mark").first.wait_for()
    assert page.evaluate(SAME_PLACE)


def test_the_draft_is_read_back_with_what_to_look_at(tab, desk):
    page = tab(desk)
    page.locator("[name=title]").fill("The Ore Dock by Ilse Varnum")
    page.locator("#text").fill(DRAFT)
    page.get_by_role("heading", name="Words to avoid").wait_for()
    told = page.locator("#advice").inner_text()
    for part in ("Grade against faults", "What a buyer would miss", "Words to avoid", "rare"):
        assert part in told
    assert "The Ore Dock, Ilse Varnum" in page.locator("#state").inner_text()
    assert page.locator("#view .ruler svg").count() == 1


def test_the_facts_line_is_copied(tab, desk):
    page = tab(desk, permissions=["clipboard-read", "clipboard-write"])
    page.locator("#text").fill(
        "Fine in a near fine, unclipped dust jacket ($21.95). First edition, first printing, number line 1-10."
    )
    page.locator("#facts").get_by_role("button", name="Copy").click()
    page.locator("#facts").get_by_text("Copied.").wait_for()
    assert page.evaluate("navigator.clipboard.readText()") == (
        "First edition, first printing (number line 1-10). Fine in near fine unclipped jacket, $21.95."
    )


def test_a_book_that_is_picked_is_the_book(tab, desk):
    page = tab(desk)
    page.locator("#text").fill("Third printing in black boards.")
    page.locator("[name=book]").select_option("ore-dock")
    page.locator("#view .ruler").wait_for()
    assert "The Ore Dock" in page.locator("#state").inner_text()


def test_a_price_that_is_none_is_told(tab, desk):
    page = tab(desk)
    page.locator("[name=asking]").fill("lots")
    page.get_by_text("expected something like 45.00 USD").wait_for()
    page.locator("[name=asking]").fill("45")
    expect(page.locator("#price-told")).to_be_empty()


def test_an_answer_follows_a_pause_at_once(tab, desk):
    page = tab(desk)
    page.locator("#text").fill(DRAFT)
    page.locator("#mirror mark").first.wait_for()
    times = []
    for number in range(7):
        with page.expect_response("**/draft") as answer:
            page.locator("#text").fill(f"{DRAFT} {number}")
        answer.value.finished()
        times.append(answer.value.request.timing["responseEnd"])  # milliseconds from the asking
    assert sorted(times)[1] < 100, times  # the machine may be busy with other things


def test_a_batch_is_dropped_and_its_report_opens(tab, desk):
    page = tab(f"{desk}batch")
    assert complaints(page) == []
    page.locator("[name=files]").set_input_files([DEMO / "listings.csv", DEMO / "pages" / "gullwing-ore-dock.html"])
    assert page.locator("#state").inner_text() == "2 files"
    page.get_by_role("button", name="Read them").click()
    page.wait_for_url("**/reports/*")
    assert page.get_by_role("heading", level=1).inner_text() == "69 listings read"
    read = page.locator(".read").inner_text()
    assert "listings.csv: 68 listings" in read
    assert "/tmp" not in read


def test_too_large_a_batch_is_not_even_sent(tab, desk, tmp_path):
    page = tab(f"{desk}batch")
    large = tmp_path / "large.txt"
    with large.open("wb") as stream:
        stream.truncate(MOST_BYTES + 1)
    page.locator("[name=files]").set_input_files(large)
    page.get_by_role("button", name="Read them").click()
    expect(page.locator("#state")).to_contain_text("too much at a time")
    assert page.url == f"{desk}batch"


def test_books_are_found_and_each_has_a_guide(tab, desk):
    page = tab(f"{desk}books")
    page.get_by_role("searchbox").fill("varnum ore")
    page.get_by_text("1 work.").wait_for()
    page.get_by_role("link", name="The Ore Dock").click()
    assert page.get_by_role("heading", level=1).inner_text() == "The Ore Dock"
    expect(page.locator(".guide-point .ruler")).to_have_count(5)
    assert "Source: invented for the demo" in page.locator("main").inner_text()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("wishes", [{}, PHONE], ids=["wide", "phone"])
def test_axe_finds_nothing_on_the_desk(tab, desk, scheme, wishes):
    page = tab(desk, color_scheme=scheme, **wishes)
    assert complaints(page) == []
    page.locator("#text").fill(DRAFT)
    page.locator("#view .listing").wait_for()
    assert complaints(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
    for place in ("books", "books/ore-dock", "batch"):
        page.goto(desk + place)
        assert complaints(page) == []
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]


def test_the_draft_by_keyboard_alone(tab, desk):
    page = tab(desk)
    for _ in range(12):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.id") == "text":
            break
    page.keyboard.type("First edition, fine.")
    page.locator("#facts button").wait_for()
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Copy"


def test_no_cookie_is_set(tab, desk):
    page = tab(desk)
    assert page.context.cookies() == []
