"""What the seller's own words leave open: of which printing the jacket is said to be, whose imprint, what gives way to points."""

from __future__ import annotations

import pytest

from auditor.weighing.bearings import Bearing, Beside, bearings
from auditor.weighing.index import index_of

from .builders import make_set, verdict

EDITIONS = [
    {"id": "t", "printings": 3, "publisher": "Harrow & Pike", "year": 1979},
    {"id": "deluxe", "printings": 1, "kind": "limited"},
    {"id": "bce", "printings": 1, "kind": "book club", "publisher": "The Lantern Guild"},
]
SLIP = {"id": "slip", "readings": {"mater": ["t:1"], "master": ["t:2-3"], "mister": ["bce:1"]}}
WORK = make_set(EDITIONS, [SLIP])


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ("printing=later@jacket", ("t:2-3", "bce:1")),  # every jacket but a first printing's; a limited edition is one too
        ("printing=2@jacket", ("t:2", "bce:1")),  # a club jacket has printings of its own
        ("printing=3@jacket", ("t:3", "bce:1")),
        ("printing=1@jacket", ("t:1-3", "deluxe:1", "bce:1")),  # a first one is a claim
        ("~printing=later@jacket", ("t:1-3", "deluxe:1", "bce:1")),
        ("?printing=later@jacket", ("t:1-3", "deluxe:1", "bce:1")),
        ("~printing=2@jacket", ("t:1-3", "deluxe:1", "bce:1")),
    ],
)
def test_a_jacket_said_to_be_of_a_later_printing(words, left):
    found = verdict(WORK, words)
    assert (found.jacket, found.book) == (left, ("t:1-3", "deluxe:1", "bce:1"))


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ("printing=later", ("t:2-3", "bce:1")),
        ("~printing=1", ("t:2-3", "bce:1")),
        ("printing=1", ("t:1-3", "deluxe:1", "bce:1")),
        ("~printing=2", ("t:1-3", "deluxe:1", "bce:1")),
        ("edition=reprint", ("t:2-3", "bce:1")),
        ("~edition=1", ("t:2-3", "bce:1")),
        ("edition=limited", ("deluxe:1",)),
        ("~edition=limited", ("t:1-3", "bce:1")),
        ("edition=2", ("t:2-3", "deluxe:1", "bce:1")),
        ("edition=later@jacket", ("t:1-3", "deluxe:1", "bce:1")),
        # an edition whose publisher the set doesn't name stays open
        ("publisher=Harrow and Pike", ("t:1-3", "deluxe:1")),
        ("publisher=Lantern Guild", ("deluxe:1", "bce:1")),
        ("publisher=Quill Row", ("t:1-3", "deluxe:1", "bce:1")),
        ("~publisher=Harrow & Pike", ("t:1-3", "deluxe:1", "bce:1")),
        # the trade edition is of 1979; editions without a year stay open
        ("year=1978", ("deluxe:1", "bce:1")),
        ("year=1979", ("t:1-3", "deluxe:1", "bce:1")),
        ("limitation=7 of 50", ("deluxe:1",)),
    ],
)
def test_what_the_sellers_words_leave_of_the_book(words, left):
    assert verdict(WORK, words).book == left


@pytest.mark.parametrize(
    ("feature", "value", "part", "stance", "why"),
    [
        ("printing", "later", "jacket", "asserted", "the jacket is said to be of a later printing"),
        ("printing", "2", "jacket", "asserted", "the jacket is said to be of printing 2"),
        ("printing", "later", "book", "asserted", "it is said to be a later printing"),
        ("printing", "1", "book", "denied", "it is said not to be a first printing"),
        ("edition", "1", "book", "denied", "it is said not to be a first edition"),
        ("edition", "reprint", "book", "asserted", "a reprint is no first printing"),
        ("edition", "2", "book", "asserted", "edition “2” is not the first printing of the first"),
        ("edition", "limited", "book", "asserted", "the limited edition is any printing of “the deluxe edition”"),
        ("year", "1978", "book", "asserted", "any printing of “the t edition” did not exist in 1978"),
    ],
)
def test_the_reason_is_one_that_a_person_can_follow(feature, value, part, stance, why):
    (found,) = bearings(index_of(WORK), feature, value, part, stance, beside=Beside(False, False))
    assert isinstance(found, Bearing)
    assert found.why == why


@pytest.mark.parametrize(
    "words",
    ["book_club=yes", "publisher=The Lantern Guild", "year=1978", "printing=later", "edition=2", "edition=reprint"],
)
def test_what_the_seller_calls_the_copy_gives_way_to_two_points_that_agree(words):
    line = {"id": "line", "readings": {"1 2 3": ["t:1"], "2 3": ["t:2-3"], "club notice": ["bce:1"], "numbered": ["deluxe:1"]}}
    work = make_set([*EDITIONS], [SLIP, line])
    found = verdict(work, words, "point=slip=mater", "point=line=1 2 3")
    assert found.book == ("t:1",)
    assert "contradiction" not in {f.kind for f in found.findings}


def test_the_words_first_edition_count_for_the_line_only_where_they_are_asserted():
    # Random House let the words stand for the 1 (Stark, BookThink no. 91)
    work = make_set([{"id": "t", "printings": 3, "publisher": "Random House", "year": 1984}], [SLIP | {"readings": {}}])
    line = "number_line=2 3 4 5 6 7 8 9"
    assert verdict(work, line, "edition=1").book == ("t:1",)
    for words in ("?edition=1", "^edition=1"):
        assert verdict(work, line, words).book == ("t:1-3",)


def test_a_clipped_corner_is_no_jacket_without_a_price():
    price = {"id": "price", "part": "jacket", "feature": "price", "readings": {"$3": ["t:1"], "no price": ["bce:1"]}}
    work = make_set(EDITIONS, [price])
    assert verdict(work, "jacket_price=none").jacket != verdict(work, "jacket_price=none", "price_clipped=yes").jacket
    for words in ("?price_clipped=yes", "^price_clipped=yes"):
        assert verdict(work, "jacket_price=none", words).jacket == verdict(work, "jacket_price=none").jacket


@pytest.mark.parametrize(("words", "left"), [("P6", ("t:1",)), ("p7", ("t:2",)), ("Q1", ("t:1-2",))])
def test_a_gutter_code_of_the_set_names_its_printing_and_another_says_nothing(words, left):
    gutter = {"id": "gutter", "readings": {"P6": ["t:1"], "P7": ["t:2"]}}
    assert verdict(make_set([{"id": "t", "printings": 2}], [gutter]), f"gutter_code={words}").book == left


def test_a_publishers_ampersand_as_a_web_page_writes_it():
    editions = [{"id": "t", "printings": 1, "publisher": "B & C"}, {"id": "uk", "printings": 1, "publisher": "Quill Row"}]
    for name in ("B &amp; C", "B and C", "b & c"):
        assert verdict(make_set(editions, []), f"publisher={name}").book == ("t:1",)
