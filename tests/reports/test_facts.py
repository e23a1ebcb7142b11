"""The facts line in the trade's order, and what a seller is told of a draft."""

import pytest

from auditor.auditing import audit_on, open_shelf
from auditor.reports.drafting import advise
from auditor.reports.facts import facts
from auditor.values import Claim, Listing, Verdict
from tests.commands import DEMO


def said(*claims, text=""):
    """A verdict of (feature, value, part, stance) claims; their words are not looked at where they have no place."""
    made = tuple(Claim(feature, value, part, stance, 0, 0) for feature, value, part, stance in claims)
    return facts(Listing("draft", text), Verdict(None, made, "unclaimed"))


BOOK = ("book", "asserted")
JACKET = ("jacket", "asserted")


def test_the_line_of_the_task():
    assert (
        said(
            ("grade", "near fine", *JACKET),
            ("grade", "fine", *BOOK),
            ("price_clipped", "yes", "jacket", "denied"),
            ("jacket_price", "21.95 USD", *JACKET),
            ("number_line", "1 2 3 4 5 6 7 8 9 10", *BOOK),
            ("printing", "1", *BOOK),
            ("edition", "1", *BOOK),
        )
        == "First edition, first printing (number line 1-10). Fine in near fine unclipped jacket, $21.95."
    )


@pytest.mark.parametrize(
    ("claims", "line"),
    [
        ([("edition", "1 american", *BOOK), ("year", "1962", *BOOK)], "1962. First American edition."),
        ([("printing", "23", *BOOK)], "23rd printing."),
        ([("printing", "111", *BOOK)], "111th printing."),
        ([("printing", "later", *BOOK)], "Later printing."),
        ([("number_line", "10 9 8 7 6 5 4 3", *BOOK)], "Number line 3-10."),
        ([("number_line", "1 3 5 7 9 10 8 6 4 2", *BOOK)], "Number line 1-10."),
        ([("number_line", "1 3 5 7 9", *BOOK)], "Number line 1 3 5 7 9."),
        ([("number_line", "to 3", *BOOK)], "Number line to 3."),
        ([("book_club", "yes", "copy", "asserted")], "Book club edition."),
        ([("grade", "very good", *BOOK), ("jacket", "lacking", *JACKET)], "Very good, lacking the jacket."),
        ([("grade", "good", *BOOK), ("jacket", "facsimile", *JACKET)], "Good in facsimile jacket."),
        ([("price_clipped", "yes", *JACKET)], "In price-clipped jacket."),
        ([("signed", "inscribed", *BOOK), ("limitation", "12 of 500", *BOOK)], "Inscribed by the author, number 12 of 500."),
        (
            [("defect", "foxing", *BOOK), ("defect", "bump", *BOOK), ("defect", "chip", *JACKET)],
            "Foxing and bumping to the book; chipping to the jacket.",
        ),
        (
            [("ex_library", "yes", "copy", "denied"), ("remainder_mark", "yes", "book", "denied")],
            "Not ex-library, no remainder mark.",
        ),
        (
            [("edition", "1", *BOOK), ("printing", "1", *BOOK), ("printing", "3", *BOOK)],
            "First edition, first printing, third printing.",
        ),
    ],
)
def test_each_fact_has_its_place_and_its_words(claims, line):
    assert said(*claims) == line


def test_what_is_doubted_or_said_of_other_copies_is_no_fact():
    assert said(*(("edition", "1", "book", stance) for stance in ("hedged", "unchecked", "elsewhere", "denied"))) == ""


def test_mint_is_no_grade_of_the_line():
    assert said(("grade", "mint", *BOOK), ("edition", "1", *BOOK)) == "First edition."


def test_old_money_stays_in_the_sellers_words():
    text = "Priced 12s 6d."
    claim = Claim("jacket_price", "0.625 GBP", "jacket", "asserted", 7, 13)
    assert facts(Listing("draft", text), Verdict(None, (claim,), "unclaimed")) == "In jacket, 12s 6d."


@pytest.fixture(scope="module")
def shelf():
    return open_shelf(DEMO / "points")


def advice(shelf, text, title=None):
    return advise(Listing("draft", text, title), audit_on(shelf, text, title))


def test_a_bare_draft_misses_what_every_buyer_asks_for(shelf):
    missed = " ".join(advice(shelf, "Nice old book.").missed)
    for words in ("edition and printing", "publisher", "jacket", "grade", "faults", "names"):
        assert words in missed


@pytest.mark.parametrize(
    ("draft", "missed"),
    [
        ("First edition, first printing.", "how you know the printing"),
        ("Fine in a fine jacket.", "the price on the jacket's flap"),
        ("Fine in the jacket.", "a grade for the jacket of its own"),
    ],
)
def test_one_claim_makes_another_wanted(shelf, draft, missed):
    assert missed in " ".join(advice(shelf, draft).missed)
    assert missed not in " ".join(advice(shelf, "Nice old book.").missed)


def test_a_full_draft_misses_nothing(shelf):
    text = (
        "Tamarack & Vane, 1974. First edition, first printing, number line 1-10. Gray cloth. Very good, corners bumped, no "
        "owner's name or writing, in a very good unclipped jacket, $6.95, with the author's photograph on the back."
    )
    told = advice(shelf, text, "The Ore Dock by Ilse Varnum")
    assert told.missed == ()
    assert told.avoid == told.grades == told.disagree == told.shown == ()


def test_no_one_asks_for_the_flap_of_a_jacket_that_is_not_there(shelf):
    missed = " ".join(advice(shelf, "First edition. Good, foxed, no jacket.").missed)
    assert "flap" not in missed
    assert "jacket" not in missed


def test_each_word_to_avoid_has_its_reason(shelf):
    told = advice(shelf, "RARE! Mint condition. A great investment.")
    assert {word for word, _ in told.avoid} == {"rare", "mint", "investment"}
    assert all(len(why) > 20 for _, why in told.avoid)


def test_a_grade_that_the_faults_rule_out_is_told(shelf):
    assert "stain" in advice(shelf, "A fine copy with a small stain.").grades[0]


def test_a_draft_that_contradicts_itself_hears_it(shelf):
    told = advice(shelf, "First edition, first printing. Number line to 3, black boards.", "The Ore Dock by Ilse Varnum")
    assert told.disagree
