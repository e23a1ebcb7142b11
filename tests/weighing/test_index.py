"""What a point set is made into: the sums that price readings name, and copies told apart by a letter."""

from __future__ import annotations

import pytest

from auditor.weighing.index import amounts_in, says_none

from .builders import make_set, verdict


@pytest.mark.parametrize(
    ("words", "sums"),
    [
        ("$3.95", ((3.95, "USD"),)),
        ("£12.99", ((12.99, "GBP"),)),
        ("€ 14", ((14.0, "EUR"),)),
        ("$3.95 or £1.50", ((3.95, "USD"), (1.5, "GBP"))),
        ("18s", ((0.9, "GBP"),)),  # twenty shillings to the pound
        ("7/-", ((0.35, "GBP"),)),
        ("21s. net", ((1.05, "GBP"),)),
        ("12s 6d", ((0.625, "GBP"),)),
        ("9d", ((0.0375, "GBP"),)),  # 240 pence to the pound
        ("no price", ()),
    ],
)
def test_the_sums_of_a_price_reading(words, sums):
    assert amounts_in(words) == sums


@pytest.mark.parametrize(("told", "left"), [("0.625 GBP", ("t:1",)), ("0.75 GBP", ("t:2",)), ("0.9 GBP", ("t:1-2",))])
def test_a_jacket_price_in_shillings_and_pence(told, left):
    price = {"id": "price", "part": "jacket", "feature": "price", "readings": {"12s 6d": ["t:1"], "15s": ["t:2"]}}
    assert verdict(make_set([{"id": "t", "printings": 2}], [price]), f"jacket_price={told}").jacket == left


def test_a_letter_with_a_cell_of_its_own_is_removed_by_a_denial():
    cloth = {"id": "cloth", "readings": {"gray": ["t:1a"], "black": ["t:1b"]}}
    work = make_set([{"id": "t", "printings": 2}], [cloth])
    assert verdict(work, "~point=cloth=gray").book == ("t:1b", "t:2")
    assert verdict(work, "point=cloth=gray").book == ("t:1a",)


# Two elements of one printing vary by themselves, so no letter has a cell: a copy may show the first of one and the second of
# the other. A denial then removes the printing only where the reading is that of every letter of its element.
ELEMENTS = [
    {"id": "cloth", "readings": {"gray": ["t:1a"], "black": ["t:1b"]}},
    {"id": "slip", "readings": {"mater": ["t:1a"], "master": ["t:1b", "t:2"]}},
]


@pytest.mark.parametrize(
    ("more", "denied", "left"),
    [
        ([], "cloth=gray", ("t:1-2",)),  # the first printing may be in black
        ([], "slip=master", ("t:1",)),  # it removes the second printing, not the first, which may have "mater"
        (
            [{"id": "size", "element": "cloth", "readings": {"octavo": ["t:1a", "t:1b"], "quarto": ["t:2"]}}],
            "size=octavo",
            ("t:2",),
        ),  # every letter of the element has it: no copy of the first printing can lack it
    ],
)
def test_a_letter_without_a_cell_of_its_own_goes_only_with_its_whole_printing(more, denied, left):
    work = make_set([{"id": "t", "printings": 2}], ELEMENTS + more)
    assert verdict(work, f"~point={denied}").book == left


def test_printings_in_words():
    slip = {"id": "slip", "readings": {"mater": ["t:1"], "master": ["t:2-"]}}
    found = verdict(make_set([{"id": "t"}], [slip]), "printing=1", "point=slip=master")
    assert "is a mark of printings 2 and later of “the t edition”" in found.findings[0].text


@pytest.mark.parametrize(
    ("words", "none"),
    [("no price", True), ("Without price", True), ("unpriced", True), ("none", True), ("$3", False), ("priced", False)],
)
def test_a_reading_that_no_price_was_printed(words, none):
    assert says_none(words) == none
    price = {"id": "price", "part": "jacket", "feature": "price", "readings": {words: ["t:1"], "£9": ["t:2"]}}
    left = verdict(make_set([{"id": "t", "printings": 2}], [price]), "jacket_price=none").jacket
    assert left == (("t:1",) if none else ("t:1-2",))


@pytest.mark.parametrize(("editions", "claimed"), [(["t"], ("t:1",)), (["t", "uk"], ())])
def test_a_first_hardcover_edition_is_the_only_one_there_is(editions, claimed):
    work = make_set([{"id": name, "printings": 1} for name in editions], [])
    assert verdict(work, "edition=1 hardcover").claimed == claimed


def test_the_first_edition_is_the_first_trade_edition_wherever_it_stands():
    work = make_set([{"id": "bce", "kind": "book club", "printings": 1}, {"id": "t", "printings": 2}], [])
    assert verdict(work, "edition=1").claimed == ("t:1-2",)


def test_a_price_printed_in_the_book_is_none_of_the_jacket():
    price = {"id": "price", "feature": "price", "readings": {"$3": ["t:1"], "$4": ["t:2"]}}
    found = verdict(make_set([{"id": "t", "printings": 2}], [price]), "jacket_price=3 USD")
    assert (found.book, found.jacket) == (("t:1-2",), ("t:1-2",))


def test_letters_of_another_printing_remove_nothing_of_this_one():
    boards = {"id": "boards", "readings": {"teal": ["t:2a"], "red": ["t:2b"]}}  # here the letters have cells
    size = {"id": "size", "element": "cloth", "readings": {"octavo": ["t:1a", "t:2b"], "quarto": ["t:1b"]}}
    work = make_set([{"id": "t", "printings": 2}], [*ELEMENTS, boards, size])
    for denied in ("cloth=gray", "size=octavo"):
        assert "t:1" in verdict(work, f"~point={denied}").book[0]
