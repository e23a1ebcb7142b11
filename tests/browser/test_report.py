"""The report in a real browser: sort, filter, open, copy, keyboard, phone, dark, print, 5,000 rows."""

import pytest
from axe_playwright_python.sync_playwright import Axe

pytestmark = pytest.mark.browser

UNTAGGED = """e => { const copy = e.cloneNode(true); copy.querySelectorAll(".tag").forEach((tag) => tag.remove());
    return copy.textContent; }"""
LOOK = "e => { const look = getComputedStyle(e); return `${look.textDecorationLine} ${look.textDecorationStyle}`; }"
PHONE = {"viewport": {"width": 360, "height": 740}, "has_touch": True}


def rows(page):
    return page.locator("#rows tbody tr:not(.inside)")


def head(page, name):
    return page.get_by_role("columnheader", name=name).get_by_role("button")


def open_listing(page, name):
    page.get_by_role("searchbox", name="Words").fill(name)
    page.locator("#rows .opener").first.click()
    return page.locator(".inside .listing")


def complaints(page):
    return [(found["id"], [node["target"] for node in found["nodes"]]) for found in Axe().run(page).response["violations"]]


def test_it_tells_what_was_scanned_and_how_many_stand_how(tab, demo):
    path, listings = demo
    page = tab(path.as_uri())
    assert page.get_by_role("heading", level=1).inner_text() == f"{len(listings)} listings read"
    for standing in ("supported", "unproven", "contradicted", "unclaimed"):
        count = sum(verdict.standing == standing for _, verdict in listings.values())
        assert page.locator(f'.tile[data-value="{standing}"] .number').inner_text() == str(count)
    assert "listings.csv: 68 listings" in page.locator(".read").inner_text()
    assert page.locator(".picture svg").get_attribute("aria-label")


def test_sorting_by_price_goes_both_ways_and_keeps_currencies_apart(tab, demo):
    page = tab(demo[0].as_uri())
    head(page, "Asked").click()
    assert page.get_by_role("columnheader", name="Asked").get_attribute("aria-sort") == "ascending"
    shown = [cell.split() for cell in page.locator("td.cell-3").all_inner_texts() if cell]
    for currency in ("GBP", "USD"):
        prices = [float(amount.replace(",", "")) for amount, code in shown if code == currency]
        assert prices == sorted(prices)
        assert len(prices) > 2
    codes = [code for _, code in shown]
    assert codes == sorted(codes)
    head(page, "Asked").click()
    assert page.get_by_role("columnheader", name="Asked").get_attribute("aria-sort") == "descending"
    falling = [cell.split() for cell in page.locator("td.cell-3").all_inner_texts() if cell]
    prices = [float(amount.replace(",", "")) for amount, code in falling if code == "USD"]
    assert prices == sorted(prices, reverse=True)


def test_the_worst_stand_first_at_the_start(tab, demo):
    page = tab(demo[0].as_uri())
    grave = page.locator("td.cell-2").all_inner_texts()
    ranks = [("grave", "weighty", "note", "none").index(cell.split()[0]) for cell in grave]
    assert ranks == sorted(ranks)
    assert ranks[0] == 0


@pytest.mark.parametrize(
    ("label", "value", "passes"),
    [
        ("Standing", "unproven", lambda listing, verdict: verdict.standing == "unproven"),
        ("Finding", "married jacket", lambda listing, verdict: any(f.kind == "married jacket" for f in verdict.findings)),
        ("Work", "The Ore Dock", lambda listing, verdict: verdict.work == "ore-dock"),
        ("Currency", "GBP", lambda listing, verdict: (listing.asking or "").endswith("GBP")),
    ],
)
def test_a_filter_shows_just_what_passes(tab, demo, label, value, passes):
    path, listings = demo
    page = tab(path.as_uri())
    page.get_by_role("combobox", name=label).select_option(value)
    wanted = {name for name, (listing, verdict) in listings.items() if passes(listing, verdict)}
    assert wanted
    page.get_by_text(f"{len(wanted)} of {len(listings)} listings.").wait_for()
    assert set(page.locator("td.cell-0 .sub").all_inner_texts()) == wanted


def test_prices_sellers_and_words_filter_together(tab, demo):
    path, listings = demo
    page = tab(path.as_uri())
    page.locator("#filters [name=least]").fill("100")
    page.locator("#filters [name=most]").fill("200")
    page.locator("#filters [name=seller]").fill("penrose")
    wanted = {
        name
        for name, (listing, _) in listings.items()
        if listing.asking and 100 <= float(listing.asking.split()[0]) <= 200 and "penrose" in (listing.seller or "").lower()
    }
    page.get_by_text(f"{len(wanted)} of {len(listings)} listings.").wait_for()
    assert set(page.locator("td.cell-0 .sub").all_inner_texts()) == wanted
    page.get_by_role("button", name="Show all").click()
    page.get_by_text(f"All {len(listings)} listings.").wait_for()


def test_a_tile_is_a_filter_and_says_so(tab, demo):
    page = tab(demo[0].as_uri())
    tile = page.locator('.tile[data-value="contradicted"]')
    tile.click()
    assert tile.get_attribute("aria-pressed") == "true"
    assert page.get_by_role("combobox", name="Standing").input_value() == "contradicted"
    assert {cell.strip() for cell in page.locator("td.cell-1").all_inner_texts()} == {"contradicted"}
    tile.click()
    assert tile.get_attribute("aria-pressed") == "false"
    assert page.locator("#shown").inner_text().startswith("All ")


def test_an_opened_listing_has_its_words_untouched_and_every_claim_marked(tab, demo):
    path, listings = demo
    listing, verdict = listings["demo-006"]
    page = tab(path.as_uri())
    inside = open_listing(page, "demo-006")
    words = inside.locator(".words-text")
    assert " ".join(words.evaluate(UNTAGGED).split()) == " ".join(listing.text.split())
    for claim in verdict.claims:
        quoted = " ".join(listing.text[claim.start : claim.end].split())
        assert quoted in " ".join(words.locator("mark").all_inner_texts()).replace("\n", " ")
    assert inside.get_by_role("img").first.get_attribute("aria-label").startswith("Claimed: ")
    assert "married jacket" in inside.locator(".findings").inner_text()
    assert "neither an authentication nor an appraisal" in inside.inner_text()


def test_stances_differ_without_colour(tab, demo):
    page = tab(demo[0].as_uri())
    looks = {}
    for name in demo[1]:
        open_listing(page, name)
        for mark in page.locator(".inside mark").all():
            looks.setdefault(mark.get_attribute("class"), mark.evaluate(LOOK))
        page.locator(".opener").first.click()
        if len(looks) == 5:
            break
    assert {"said asserted", "said denied", "said hedged", "said elsewhere"} <= looks.keys()
    assert len(set(looks.values())) == len(looks)


def test_a_finding_leads_to_its_words_and_to_its_points_with_their_source(tab, demo):
    page = tab(demo[0].as_uri())
    inside = open_listing(page, "demo-006")
    finding = inside.locator(".finding", has_text="married jacket")
    finding.get_by_role("button", name="Show in the words").click()
    assert "$14.95" in inside.locator("mark.shown").all_inner_texts()
    assert page.evaluate("document.activeElement.matches('mark.shown')")
    finding.locator("summary").click()
    assert "Source: invented for the demo" in finding.locator(".point").first.inner_text()


def test_the_message_is_copied_word_for_word(tab, demo):
    page = tab(demo[0].as_uri(), permissions=["clipboard-read", "clipboard-write"])
    name = next(name for name, (_, verdict) in demo[1].items() if verdict.questions)
    inside = open_listing(page, name)
    inside.get_by_role("button", name="Copy").click()
    inside.get_by_text("Copied.").wait_for()
    copied = page.evaluate("navigator.clipboard.readText()")
    assert copied.startswith("Good day,")
    assert copied == inside.get_by_label("Message to the seller").input_value()


def test_without_a_clipboard_the_message_is_ready_for_the_keys(tab, demo):
    page = tab(demo[0].as_uri())
    page.evaluate("Object.defineProperty(navigator, 'clipboard', { value: undefined }); document.execCommand = () => false")
    inside = open_listing(page, next(name for name, (_, verdict) in demo[1].items() if verdict.questions))
    inside.get_by_role("button", name="Copy").click()
    inside.get_by_text("Selected").wait_for()
    assert page.evaluate("document.activeElement.selectionEnd - document.activeElement.selectionStart") > 50


def test_everything_by_keyboard(tab, demo):
    page = tab(demo[0].as_uri())
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "To the listings"
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "table"
    for _ in range(30):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.matches('.opener')"):
            break
    opener = page.evaluate_handle("document.activeElement").as_element()
    assert opener.evaluate("e => getComputedStyle(e).outlineStyle") == "solid"
    page.keyboard.press("Enter")
    assert opener.get_attribute("aria-expanded") == "true"
    for _ in range(12):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.textContent") == "Show in the words":
            break
    page.keyboard.press("Enter")
    assert page.locator(".shown").count() > 0


def test_a_phone_needs_no_sideways_scrolling(tab, demo):
    page = tab(demo[0].as_uri(), **PHONE)
    assert page.evaluate("document.documentElement.scrollWidth") <= 360
    open_listing(page, "demo-006")
    assert page.evaluate("document.documentElement.scrollWidth") <= 360
    page.locator(".claims summary").click()
    assert page.locator(".claims td").first.evaluate("e => getComputedStyle(e).display") == "table-cell"
    page.get_by_role("combobox", name="Sorted by").select_option("seller")
    assert page.locator("td.cell-0 .sub").count() > 0


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("wishes", [{}, PHONE], ids=["wide", "phone"])
def test_axe_finds_nothing(tab, demo, scheme, wishes):
    page = tab(demo[0].as_uri(), color_scheme=scheme, **wishes)
    inside = open_listing(page, "demo-006")
    for summary in inside.locator("summary").all():
        summary.click()
    assert complaints(page) == []
    page.get_by_role("button", name="Show all").click()
    assert complaints(page) == []


def test_dark_is_dark(tab, demo):
    ground = "getComputedStyle(document.body).backgroundColor.match(/\\d+/g).map(Number)"
    assert max(tab(demo[0].as_uri(), color_scheme="dark").evaluate(ground)) < 60
    assert min(tab(demo[0].as_uri(), color_scheme="light").evaluate(ground)) > 200


def test_printed_it_has_the_details_and_no_buttons(tab, demo, tmp_path):
    page = tab(demo[0].as_uri())
    inside = open_listing(page, "demo-006")
    page.emulate_media(media="print")
    assert not page.locator("#filters").is_visible()
    assert not inside.get_by_role("button", name="Show in the words").first.is_visible()
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    assert inside.locator(".point").first.is_visible()
    page.evaluate("dispatchEvent(new Event('afterprint'))")
    assert not inside.locator(".point").first.is_visible()
    pdf = page.pdf()
    assert pdf.startswith(b"%PDF")
    assert len(pdf) > 20_000
