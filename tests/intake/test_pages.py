"""Saved pages: the listing is taken, and nothing else on the page."""

import json
from pathlib import Path

import pytest

from auditor.intake import Note, open_paths
from auditor.intake.plaintext import plain
from auditor.values import Listing, Reject

DEMO = Path(__file__).parents[2] / "corpora_demo"
WORDS = "First edition, first printing. Fine in a near fine jacket, $9.95 on the flap."
NOISE = """<nav><a href="/">Home</a> <a href="/firsts">Signed first editions</a></nav>
<div id="cookie-consent">We use cookies for signed copies and first edition alerts. Accept</div>
<aside class="relatedItems"><h3>Also</h3>
<p>Weir Song. Book club edition, jacket torn, remainder mark on the bottom edge.</p></aside>
<footer>All first editions in cloth are guaranteed. Terms and postage.</footer>"""


def page(tmp_path, head="", body="", name="page.html"):
    path = tmp_path / name
    title = "<title>Tin Ferry - A Shop</title>"
    path.write_text(f"<!doctype html><html><head>{title}{head}</head><body>{body}</body></html>", encoding="utf-8")
    items = list(open_paths([path]))
    return [[item for item in items if isinstance(item, kind)] for kind in (Listing, Reject, Note)]


def ld(*blocks):
    return "".join(
        f'<script type="application/ld+json">{block if isinstance(block, str) else json.dumps(block)}</script>'
        for block in blocks
    )


def product(**more):
    return {"@type": "Product", "name": "Tin Ferry", "description": WORDS, **more}


OFFER = {"@type": "Offer", "price": "45.00", "priceCurrency": "GBP", "seller": {"@type": "Organization", "name": "A Shop"}}


def test_the_demos_pages_give_the_listings_that_the_gold_was_made_for():
    if not (DEMO / "pages").is_dir():
        pytest.fail("the demo's pages are missing")
    gold = [json.loads(line) for line in (DEMO / "listings.jsonl").read_text(encoding="utf-8").splitlines()]
    wanted = {row["id"].removeprefix("page-"): row for row in gold if row["id"].startswith("page-")}
    found = {item.id: item for item in open_paths([DEMO / "pages"]) if isinstance(item, Listing)}
    assert found.keys() == wanted.keys()
    for name, row in wanted.items():
        assert (found[name].text, found[name].title, found[name].asking) == (row["text"], row["title"], row["asking"])


@pytest.mark.parametrize(
    "block",
    [
        product(offers=OFFER),
        [product(offers=[OFFER])],
        {"@graph": [{"@type": "WebSite", "name": "A Shop"}, product(offers={"@type": "AggregateOffer", "offers": [OFFER]})]},
        {"@type": "ItemPage", "mainEntity": product(offers=OFFER)},
        {"@graph": [product(offers={"@id": "#o"}), {**OFFER, "@id": "#o"}]},
        product(**{"@type": ["Book", "Product"]}, offers=OFFER),
        product(**{"@type": "http://schema.org/Book"}, offers=OFFER),
        {**OFFER, "itemOffered": product()},
        product(offers={**OFFER, "price": None, "priceSpecification": {"price": 45, "priceCurrency": "GBP"}}),
    ],
)
def test_every_shape_of_json_ld(tmp_path, block):
    [listing], rejects, notes = page(tmp_path, ld(block), f"{NOISE}<h1>Tin Ferry</h1><p>{WORDS}</p>")
    assert (listing.id, listing.title, listing.text) == ("page", "Tin Ferry", WORDS)
    assert (listing.asking, listing.seller) == ("45.00 GBP", "A Shop")
    assert not rejects
    assert "JSON-LD" in notes[-1].text


def test_related_products_are_not_the_listing(tmp_path):
    other = {"@type": "Product", "name": "Weir Song", "description": "Book club edition.", "offers": OFFER}
    [listing], _, _ = page(tmp_path, ld(product(isRelatedTo=[other], isSimilarTo=other, offers=OFFER)))
    assert listing.text == WORDS
    [listing], _, _ = page(
        tmp_path, ld(product(), {"@type": "ItemList", "itemListElement": [{"@type": "ListItem", "item": other}] * 3})
    )
    assert listing.text == WORDS
    [listing], _, _ = page(tmp_path, ld([other, product()]), "<h1>Tin Ferry</h1>")
    assert listing.text == WORDS
    url = "https://shop.example/tin-ferry"
    [listing], _, _ = page(tmp_path, f'<link rel="canonical" href="{url}">' + ld([other | {"url": "/weir"}, product(url=url)]))
    assert listing.text == WORDS


def test_a_page_of_equals_gives_several_listings(tmp_path):
    copies = [product(url=f"https://shop.example/{number}", description=f"Copy {number}, first edition.") for number in (1, 2, 3)]
    rows = [{"@type": "ListItem", "position": number, "item": copy} for number, copy in enumerate(copies)]
    listings, _, _ = page(tmp_path, ld({"@type": "ItemList", "itemListElement": rows}), NOISE)
    assert [item.text for item in listings] == [f"Copy {number}, first edition." for number in (1, 2, 3)]
    assert [item.id for item in listings] == ["page-1", "page-2", "page-3"]
    assert [item.url for item in listings] == [f"https://shop.example/{number}" for number in (1, 2, 3)]
    numbered = [product(sku=f"S{number}", description=f"Copy {number}.") for number in (1, 2)]
    assert [item.id for item in page(tmp_path, ld(numbered))[0]] == ["S1", "S2"]


def test_the_same_thing_told_twice_is_one_listing(tmp_path):
    [listing], _, _ = page(tmp_path, ld(product(sku="1"), {"@type": "Book", "name": "Tin Ferry", "sku": "1", "offers": OFFER}))
    assert (listing.text, listing.asking) == (WORDS, "45.00 GBP")
    said = '<b itemprop="name">Tin Ferry, 1st</b><i itemprop="description">First.</i>'
    micro = f'<div itemscope itemtype="https://schema.org/Product">{said}</div>'
    [listing], _, _ = page(tmp_path, ld(product(offers=OFFER)), micro)
    assert (listing.title, listing.text) == ("Tin Ferry", WORDS)


def test_a_broken_block_is_passed_over_and_told(tmp_path):
    [listing], rejects, notes = page(tmp_path, ld('{"@type": "Product", "name": "Broken",, }', product()))
    assert listing.text == WORDS
    assert not rejects
    assert "block 1 is no valid JSON" in notes[0].text


def test_html_inside_a_description_becomes_plain_text(tmp_path):
    written = "<p>First edition.</p><ul><li>Fine &amp; bright</li><li>No marks</li></ul>Jacket<br/>clipped"
    for description in (written, written.replace("<", "&lt;").replace(">", "&gt;")):
        [listing], _, _ = page(tmp_path, ld(product(description=description)))
        assert listing.text == "First edition.\n\nFine & bright\nNo marks\nJacket\nclipped"


@pytest.mark.parametrize("text", ["height < 20 cm, a > b", "AT&T, B&W plates", "7 <b and c> d", "line\nbreak"])
def test_text_that_is_no_html_stays(text):
    assert plain(text) == text


def test_marks_escaped_for_html_are_read(tmp_path):
    assert page(tmp_path, ld(json.dumps(product()).replace('"', "&quot;")))[0][0].text == WORDS


def test_strings_with_line_breaks_and_comment_wrappers_are_read(tmp_path):
    block = '<!--\n{"@type": "Product", "name": "Tin Ferry", "description": "First\nedition."}\n-->'
    assert page(tmp_path, ld(block))[0][0].text == "First\nedition."


MICRO = f"""<div itemscope itemtype="http://schema.org/Book"><h1 itemprop="name">Tin Ferry</h1>
<div itemprop="description"><p>First edition, first printing.</p><p>Fine.</p></div>
<div itemprop="offers" itemscope itemtype="http://schema.org/Offer"><meta itemprop="priceCurrency" content="GBP">
<span itemprop="price" content="45.00">45 pounds</span><span itemprop="seller" itemscope itemtype="http://schema.org/Organization">
<b itemprop="name">A Shop</b></span></div>
<div itemprop="isRelatedTo" itemscope itemtype="http://schema.org/Product"><b itemprop="name">Weir Song</b>
<i itemprop="description">Book club edition.</i></div></div>{NOISE}"""
RDFA = MICRO.replace('itemscope itemtype="http://schema.org/', 'typeof="schema:').replace('itemprop="', 'property="schema:')


@pytest.mark.parametrize(("body", "via"), [(MICRO, "microdata"), (RDFA, "RDFa")])
def test_microdata_and_rdfa(tmp_path, body, via):
    [listing], rejects, notes = page(tmp_path, body=body)
    assert listing == Listing(
        "page", "First edition, first printing.\n\nFine.", "Tin Ferry", "45.00 GBP", "A Shop", None, str(tmp_path / "page.html")
    )
    assert not rejects
    assert via in notes[-1].text


def test_microdata_of_a_teaser_is_not_the_listing(tmp_path):
    said = '<b itemprop="name">Weir</b><i itemprop="description">BCE.</i>'
    teaser = f'<div class="teasers"><p itemscope itemtype="https://schema.org/Product">{said}</p></div>'
    [listing], _, _ = page(tmp_path, body=teaser + MICRO)
    assert listing.title == "Tin Ferry"


def test_a_cut_description_is_taken_in_full_from_the_page(tmp_path):
    [listing], _, notes = page(
        tmp_path, ld(product(description=WORDS[:45] + "…")), f"{NOISE}<div class=desc>{WORDS}</div><p>Terms.</p>"
    )
    assert listing.text == WORDS
    assert "in full" in notes[-1].text


@pytest.mark.parametrize(
    "wrap", ["<main>{}</main>", '<div id="content"><div class="body">{}</div></div>', "<table><tr><td>{}</td></tr></table>"]
)
def test_without_product_data_the_main_block_speaks(tmp_path, wrap):
    [listing], _, notes = page(tmp_path, body=NOISE + wrap.format(f"<div>{WORDS}</div>"))
    assert listing.text == WORDS
    assert listing.title == "Tin Ferry - A Shop"
    assert "main block" in notes[-1].text


@pytest.mark.parametrize(
    "body",
    [
        "",
        "<h1>404</h1><p>This page could not be found. Try the search above or go back to the front page of our shop.</p>",
        '<form><label>Name</label><input name="a"><label>Password</label><input name="b"></form>',
        NOISE,
        "<h1>Postage</h1><p>We send parcels twice a week. Parcels abroad take ten days and cost what the post office asks.</p>",
    ],
)
def test_a_page_without_a_listing_is_rejected_with_a_reason(tmp_path, body):
    listings, [reject], _ = page(tmp_path, body=body)
    assert not listings
    assert "no listing found" in reject.reason


def test_the_address_is_found(tmp_path):
    head = '<link rel="canonical" href="https://shop.example/tin-ferry">' + ld(product())
    assert page(tmp_path, head)[0][0].url == "https://shop.example/tin-ferry"
    assert (
        page(tmp_path, ld(product(url="/t/1")) + '<meta property="og:url" content="https://shop.example/x">')[0][0].url
        == "https://shop.example/t/1"
    )


def test_deep_nesting_and_odd_markup_end_no_scan(tmp_path):
    [listing], _, _ = page(tmp_path, ld(product()), "<div>" * 5000 + WORDS)
    assert listing.text == WORDS
    assert page(tmp_path, "", "<div>" * 3000 + WORDS)[0][0].text == WORDS
    assert page(tmp_path, ld("[" * 100_000), f"<main>{WORDS}</main>")[0][0].text == WORDS
