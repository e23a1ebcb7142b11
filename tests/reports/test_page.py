"""The report page without a browser: its policy names just what it holds, its data can't break out, its cuts lose nothing."""

import json
import re
from base64 import b64encode
from collections import Counter
from hashlib import sha256

import pytest
from hypothesis import given
from hypothesis import strategies as st
from selectolax.lexbor import LexborHTMLParser

from auditor.auditing import audit_on, open_shelf
from auditor.reports import files
from auditor.reports.page.bars import ruler_data
from auditor.reports.page.cutting import cut
from auditor.reports.page.detail import detail, link
from auditor.reports.page.island import island
from auditor.reports.page.picture import pictures
from auditor.reports.run import Run
from auditor.reports.screen import safe
from auditor.values import Claim, Finding, Listing, Reject, Verdict
from tests.commands import DEMO

NOTHING = Verdict(None, (), "unclaimed")
ORE_DOCK = (
    "First edition, first printing. Gray cloth, number line 10 9 8 7 6 5 4 3 2 1. In the jacket, $7.95, with the Ledger quote. "
    "Not a book club edition."
)


@pytest.fixture(scope="module")
def shelf():
    return open_shelf(DEMO / "points")


@pytest.fixture
def page(tmp_path, shelf):
    path = tmp_path / "report.html"
    with files.writing(path, Run(shelf.sets, [Reject("shop.csv", "row 9", "holds no words")])) as write:
        for number, text in enumerate((ORE_DOCK, "Nice old book.")):
            title = "The Ore Dock, Ilse Varnum"
            listing = Listing(
                str(number), text, title, "45.00 USD", "a shop", "https://shop.example/1", f"shop.csv, row {number}"
            )
            write(listing, audit_on(shelf, text, title, listing.asking))
    return path.read_text(encoding="utf-8")


def digest(text):
    return f"'sha256-{b64encode(sha256(text.encode()).digest()).decode()}'"


def test_the_policy_names_the_style_and_the_script_that_are_there(page):
    tree = LexborHTMLParser(page)
    policy = tree.css_first("meta[http-equiv]").attributes["content"]
    scripts = [node.text() for node in tree.css("script") if node.attributes.get("type") != "application/json"]
    styles = [node.text() for node in tree.css("style")]
    assert len(scripts) == len(styles) == 1
    assert f"script-src {digest(scripts[0])};" in policy
    assert f"style-src {digest(styles[0])};" in policy
    assert policy.startswith("default-src 'none'")
    assert "unsafe" not in policy


def test_it_loads_nothing_and_has_no_code_in_attributes(page):
    tree = LexborHTMLParser(page)
    for node in tree.css("*"):
        loads = node.attributes.keys() & {"src", "srcset", "action", "formaction", "poster", "data", "background", "style"}
        assert not loads, (node.tag, loads)
        assert not [name for name in node.attributes if name.startswith("on")]
    assert not tree.css("link, img, iframe, object, embed")
    assert "url(" not in page
    assert "@import" not in page


def test_what_could_not_be_read_is_told(page):
    told = LexborHTMLParser(page).css_first(".read").text()
    assert "shop.csv: 2 listings" in " ".join(told.split())
    assert "row 9" in told
    assert "holds no words" in told


def test_a_listing_holds_all_that_it_opens_to(page):
    tree = LexborHTMLParser(page)
    data = json.loads(tree.css_first("#listing-0").text())
    points = json.loads(tree.css_first("#points-data").text())[data["set"]]
    assert "".join(piece[0] for piece in data["text"]) == ORE_DOCK
    assert data["standing"] == "supported"
    married = next(finding for finding in data["findings"] if finding[1] == "married jacket")
    assert all(points[name]["source"] for name in married[3])
    assert data["link"] == "https://shop.example/1"


TEXTS = st.text(max_size=60)
NESTED = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False) | TEXTS,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(TEXTS.map(safe), inner, max_size=4),
    max_leaves=12,
)


def shown(data):
    if isinstance(data, str):
        return safe(data)
    if isinstance(data, list):
        return [shown(each) for each in data]
    return {name: shown(each) for name, each in data.items()} if isinstance(data, dict) else data


@given(NESTED)
def test_an_island_is_its_data_and_can_hold_no_tag(data):
    told = island(data)
    assert json.loads(told) == shown(data)
    assert not re.search(r"[<>&\u2028\u2029]|[^\x00-\x7f]", told)


def test_an_island_in_a_page_is_read_back_whole():
    words = "</script><script>x</script><!-- ]]> &lt; \u2028 \ud800"
    tree = LexborHTMLParser(f'<script type="application/json">{island([words])}</script>')
    assert json.loads(tree.css_first("script").text()) == [words]
    assert len(tree.css("script")) == 1


SPANS = st.tuples(st.integers(-3, 30), st.integers(-3, 34))
CLAIMS = st.builds(
    lambda span, stance: Claim("edition", "1", "book", stance, *span),
    SPANS,
    st.sampled_from(["asserted", "denied", "hedged", "unchecked", "elsewhere"]),
)
FINDINGS = st.lists(SPANS, max_size=3).map(lambda spans: Finding("overclaim", "note", "x", tuple(spans)))


@given(st.text(alphabet="ab \r\n\N{GRINNING FACE}", max_size=30), st.lists(CLAIMS, max_size=6), st.lists(FINDINGS, max_size=3))
def test_cuts_lose_no_letter_and_each_span_is_whole_pieces(text, claims, findings):
    cuts = cut(text, claims, findings)
    joined = "".join(words for words, _, _ in cuts)
    assert joined == text.replace("\r\n", " \n").replace("\r", "\n")
    at = 0
    for words, stance, on in cuts:
        inside = range(at, at + len(words))
        for number, finding in enumerate(findings):
            covered = [any(start <= place < end for start, end in finding.spans) for place in inside]
            assert all(covered) or not any(covered)
            assert (number in on) == (bool(covered) and all(covered))
        sound = [claim for claim in claims if 0 <= claim.start < claim.end <= len(text)]
        claimed = [any(claim.start <= place < claim.end for claim in sound) for place in inside]
        assert all(claimed) or not any(claimed)
        assert bool(stance) == (bool(claimed) and all(claimed))
        at = inside.stop


@pytest.mark.parametrize(
    "address",
    [
        "javascript:x",
        "JAVASCRIPT:x//http://a",
        "data:text/html,x",
        "file:///etc",
        "//a.example",
        "https:",
        "http://[",
        "",
        None,
        "a",
    ],
)
def test_nothing_but_a_web_address_is_a_link(address):
    assert link(address) is None


def test_a_web_address_is():
    assert link("https://a.example/b?c=d") == "https://a.example/b?c=d"


def test_the_ruler_has_a_bar_for_each_claim_that_narrows_and_one_for_what_they_leave(shelf):
    verdict = audit_on(shelf, ORE_DOCK, "The Ore Dock, Ilse Varnum")
    data = ruler_data(verdict, shelf.sets["ore-dock"])
    assert data["editions"] == [["First edition", 4]]
    assert data["labels"] == ["1", "2", "3", "4"]
    assert data["book"] == [0]
    assert data["jacket"] == [2, 3]
    assert data["claimed"] == [0]
    bars = dict(data["book_bars"])
    assert bars["gray cloth"] == [0, 1]
    assert [0] in bars.values()
    assert dict(data["jacket_bars"])["Port City Ledger review"] == [1, 2, 3]


def test_without_a_point_set_there_is_no_ruler():
    assert ruler_data(NOTHING, None) is None


def test_an_unmatched_listing_says_what_was_weighed():
    told = detail(Listing("1", "Nice old book."), NOTHING, None)
    assert told["work"] is None
    assert told["text"] == [("Nice old book.", "", [])]


@given(
    st.lists(
        st.tuples(st.sampled_from(["supported", "unproven"]), st.floats(0.01, 1e7), st.sampled_from(["USD", "GBP", ""])),
        max_size=60,
    )
)
def test_the_picture_counts_every_price_of_its_currency(priced):
    for picture in pictures(Counter(priced)):
        own = [each for each in priced if each[2] == picture.currency]
        assert picture.count == len(own)
        counted = {lane.standing: sum(int(bar.told.split()[0]) for bar in lane.bars) for lane in picture.lanes}
        assert sum(counted.values()) == len(own)
        for lane in picture.lanes:
            assert lane.count == counted[lane.standing] == sum(standing == lane.standing for standing, _, _ in own)
            assert all(picture.left <= bar.x and bar.x + bar.width <= picture.width for bar in lane.bars)
            assert all(bar.y >= 0 and bar.y + bar.height <= picture.height for bar in lane.bars)


def test_a_small_currency_is_told_and_not_drawn():
    priced = [("supported", 10.0, "USD")] * 30 + [("unproven", 9.0, "GBP")] * 3 + [("unproven", 9.0, "EUR")] * 10
    assert [picture.currency for picture in pictures(Counter(priced))] == ["USD", "EUR"]
