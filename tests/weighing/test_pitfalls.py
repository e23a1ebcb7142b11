"""Pairs of statements that the trade says can't both hold: the sixteen rows of facts/pitfalls, `contradictions`, by their ids.

Without a test, as the contract of claims carries no such thing: `addon_vs_flap` (no claim for a price add-on beside a barcode),
`barcode_before_1980` (none for a barcode) and `isbn13_before_2007` (every ISBN is written with 13 digits, whatever the book has).
`reprint_note_and_first` and `first_us_and_true_first` need a point set: a lot of several books would be accused otherwise.
"""

from __future__ import annotations

import pytest

from .builders import SHELF, kinds, make_set, verdict

FIRST_AND_UK = make_set(
    [{"id": "uk", "printings": 2, "year": 1951}, {"id": "us", "printings": 2, "year": 1952, "name": "First American edition"}],
    [{"id": "boards", "readings": {"teal": ["uk:1-2"], "black": ["us:1-2"]}}],
)

ROWS = [
    ("first_and_line_3", ["printing=1", "number_line=3 4 5 6"], {"contradiction"}, "contradicted"),
    # a line down to 2 with nothing stated may be of a house that lets the words stand for the 1: perhaps they are only not told
    ("first_and_line_2_no_statement", ["printing=1", "number_line=2 3 4 5"], set(), "unproven"),
    (
        "first_and_line_2_no_statement",
        ["printing=1", "number_line=2 3 4 5", "publisher=Harrow & Pike"],
        {"contradiction"},
        "contradicted",
    ),
    ("first_and_line_2_no_statement", ["printing=1", "edition=1", "number_line=2 3 4 5"], set(), "unproven"),
    ("exlib_and_asnew", ["grade=as new", "ex_library=yes"], {"grade conflict"}, "unclaimed"),
    ("no_jacket_and_jacket_grade", ["grade=fine", "grade=fine@jacket", "jacket=lacking"], {"grade conflict"}, "unclaimed"),
    ("fine_and_torn_text", ["grade=fine", "defect=tear"], {"grade conflict"}, "unclaimed"),
    # the 1949 wording allows none in very good either, a point that sellers keep loosely: silence
    ("vg_and_tears", ["grade=very good", "defect=tear"], set(), "unclaimed"),
    # the price may be named from a reference, and a corner that kept it is told so: silence
    ("clipped_and_price", ["price_clipped=yes", "jacket_price=24.95 USD", "jacket=present"], set(), "unclaimed"),
    # a signed bookplate is a claim of its own, and a book can have both: silence
    ("signed_and_bookplate", ["signed=signed", "signed=bookplate"], set(), "unclaimed"),
    # "present" is claimed wherever a jacket is named, a facsimile too: silence
    ("facsimile_and_original", ["jacket=facsimile", "jacket=present"], set(), "unclaimed"),
    ("reprint_note_and_first", ["printing=1", "printing=2"], {"missing evidence"}, "unproven"),
]


@pytest.mark.parametrize(("row", "words", "weighty", "standing"), ROWS, ids=[row[0] for row in ROWS])
def test_without_a_point_set(row, words, weighty, standing):
    found = verdict(None, *words)
    weighed = kinds(found) if "missing evidence" in weighty else kinds(found) - {"missing evidence"}
    assert (weighed, found.standing) == (weighty, standing)


def test_bce_and_first():
    # said openly, a club copy called a first is told in a note; with a set the claim is contradicted
    assert "other edition" in kinds(verdict(None, "printing=1", "book_club=yes"), "note")
    work = make_set([{"id": "t", "printings": 2}, {"id": "club", "kind": "book club", "printings": 1}], [])
    found = verdict(work, "printing=1", "book_club=yes")
    assert (found.standing, found.book) == ("contradicted", ("club:1",))
    assert kinds(found, "note") == {"other edition"}


def test_reprint_note_and_first():
    # Lord of the Flies: "second impression" beside a first (knowthyshelf.com)
    told = ["edition=1", "printing=1", "point=statement=impressions listed in roman years, second also mcmliv"]
    found = verdict(SHELF.sets["lord-of-the-flies"], *told)
    assert "contradiction" in kinds(found, "grave")


def test_first_us_and_true_first():
    found = verdict(FIRST_AND_UK, "edition=1 american", "lapse=true first", "point=boards=black")
    assert "overclaim" in kinds(found, "weighty")
    assert "overclaim" not in kinds(verdict(FIRST_AND_UK, "edition=1 american", "point=boards=black"), "weighty", "note")


def test_an_edition_named_by_country_that_the_tells_rule_out():
    assert kinds(verdict(FIRST_AND_UK, "edition=1 american", "point=boards=teal")) == {"contradiction"}
    assert kinds(verdict(FIRST_AND_UK, "?edition=1 american", "point=boards=teal")) == set()


@pytest.mark.parametrize(
    ("code", "year", "told"),
    [
        ("P6", "1960", True),  # P is 1974 or 1985
        ("P6", "1972", True),
        ("P6", "1973", False),  # within a year: the code goes some weeks ahead and a printing lags
        ("P6", "1974", False),
        ("P6", "1990", False),  # made before: a remainder of sheets, or the year is another
    ],
)
def test_gutter_year_vs_book(code, year, told):
    # the code dates the making of the copy (isfdb.org, Gutter Codes); the year may be that of copyright, so it's a note
    found = verdict(None, "printing=1", f"year={year}", f"gutter_code={code}")
    assert ("other edition" in kinds(found, "note")) == told
    assert "other edition" not in kinds(verdict(None, "edition=1", f"year={year}", f"gutter_code={code}"), "note")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["edition=1", "publisher=Grosset & Dunlap"], True),  # mainly reprints, with its own firsts as well
        (["printing=1", "publisher=A. L. Burt Company"], True),
        (["?edition=1", "publisher=Grosset & Dunlap"], False),
        (["edition=1", "?publisher=Grosset & Dunlap"], False),
        (["edition=2", "publisher=Grosset & Dunlap"], False),
        (["edition=1", "publisher=Harper & Row"], False),
        (["publisher=Grosset & Dunlap"], False),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_a_first_edition_of_a_reprint_house_is_a_note(words, told):
    # BookThink, 'A Bookseller's Guide to Grosset & Dunlap' (14 June 2014), as lexicon/publishers.toml has it
    found = verdict(None, *words)
    assert ("other edition" in kinds(found, "note")) == told
    assert not kinds(found) & {"other edition", "contradiction"}


@pytest.mark.parametrize("stated", [True, False])
def test_a_line_down_to_two_of_an_unknown_house_is_no_second_printing(stated):
    # general rule random_house_exception (Stark, BookThink no. 91, 26 March 2007)
    words = ["number_line=2 3 4 5 6 7 8 9", *(["edition=1"] if stated else []), "printing=1"]
    assert not kinds(verdict(None, *words)) & {"contradiction", "overclaim"}
    assert not kinds(verdict(make_set([{"id": "t", "printings": 3}], []), *words)) & {"contradiction", "overclaim"}
