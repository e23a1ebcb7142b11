"""Which listing of the list a save is: by address or id, else by title, seller and words; never merged on a guess."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.values import Listing
from auditor.watchlist.identity import address, identify

WORDS = (
    "First edition, first printing, in gray cloth with the misprint on page 61. Near fine in a very good jacket, a small closed "
    "tear at the foot of the spine. No remainder mark, not ex-library."
)
OTHER = "Paperback, fourth printing, a reading copy with notes in pencil throughout and a broken hinge. Sold as is."


def listing(**told):
    return Listing(**{"id": "a", "text": WORDS, "title": "Varnum: The Ore Dock", "seller": "Penrose Lane Rare", **told})


@pytest.mark.parametrize(
    ("old", "new", "sure"),
    [
        # the same address, the words changed a little, or the price's words were added
        ({"url": "https://x.example/ore"}, {"url": "http://www.x.example/ore/#top", "id": "b", "text": WORDS + " Offers?"}, True),
        # the same address under wholly other words: a shop may have put another copy there
        ({"url": "https://x.example/ore"}, {"url": "https://x.example/ore", "id": "b", "text": OTHER, "title": "Sale"}, False),
        # the same id
        ({}, {"text": WORDS + " Number line to 1."}, True),
        # title, seller and near-same text
        ({}, {"id": "b", "text": WORDS.replace("small", "tiny")}, True),
        # title and near-same text, and no seller told: likely, not sure
        ({}, {"id": "b", "seller": None, "text": WORDS.replace("small", "tiny")}, False),
        # a text pasted in alone: the very same words are that listing, near-same ones may be
        ({}, {"id": "stdin", "seller": None, "title": None}, True),
        ({}, {"id": "stdin", "seller": None, "title": None, "text": WORDS + " Offers?"}, False),
        # title and seller are the same and the text was rewritten: likely
        ({}, {"id": "b", "text": WORDS[:110] + " The jacket has a nick or two and the boards are clean."}, False),
    ],
)
def test_a_later_save(old, new, sure):
    match = identify(listing(**new), [(3, listing(**old)), (4, listing(id="z", text=OTHER, title="Ice Road"))])
    assert match is not None
    assert (match.key, match.sure) == (3, sure)
    assert match.why


@pytest.mark.parametrize(
    ("old", "new"),
    [
        # two copies of one shop have two addresses, whatever their words
        ({"url": "https://x.example/1"}, {"url": "https://x.example/2", "id": "b"}),
        # a description that another seller copied is another listing
        ({}, {"id": "b", "seller": "bigfish_collectibles"}),
        # rows of two tables without ids may have one number
        ({"id": "row 1"}, {"id": "row 1", "text": OTHER, "title": "Ice Road", "seller": "quietshelf"}),
        ({"id": "row 1", "seller": None}, {"id": "row 1", "text": OTHER, "title": "Ice Road", "seller": None}),
    ],
)
def test_another_listing(old, new):
    assert identify(listing(**new), [(3, listing(**old))]) is None


def test_two_that_fit_alike_are_a_doubt():
    match = identify(listing(id="c"), [(1, listing(id="a")), (2, listing(id="b"))])
    assert match is not None
    assert not match.sure
    assert "#1" in match.why
    assert "#2" in match.why


def test_an_address_names_the_page_and_nothing_else():
    assert address("HTTPS://www.Shop.example/a/?id=3#more") == address("http://shop.example/a?id=3")
    assert address("https://shop.example/a?id=3") != address("https://shop.example/a?id=4")
    assert address(None) == ""
    assert address("https://[broken")


@given(st.text(max_size=40), st.text(max_size=40), st.none() | st.text(max_size=20))
def test_a_listing_is_itself_and_an_empty_list_holds_nothing(text, title, url):
    one = Listing("a", text, title or None, url=url)
    assert identify(one, []) is None
    match = identify(one, [(1, one)])
    assert match is None or match.key == 1
    if len(text.split()) > 3 and text.isalnum():
        assert match
