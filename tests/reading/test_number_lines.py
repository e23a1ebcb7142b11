"""Number lines in every arrangement and as told in words, and what only looks like one."""

import pytest

from tests.reading.claimed import claimed, said

DOWN = "10 9 8 7 6 5 4 3 2 1"
UP = "1 2 3 4 5 6 7 8 9 10"
ODD_EVEN = "1 3 5 7 9 10 8 6 4 2"

ROWS = [
    (f"Number line: {DOWN}.", DOWN),
    (f"Copyright page reads {UP}", UP),
    (f"First printing with {ODD_EVEN} on the verso.", ODD_EVEN),
    ("Row reads 2 4 6 8 10 9 7 5 3 1.", "2 4 6 8 10 9 7 5 3 1"),
    ("Number line 5 7 9 10 8 6.", "5 7 9 10 8 6"),
    ("10-9-8-7-6-5-4-3-2-1 on the copyright page", DOWN),
    ("Number line 1,2,3,4,5,6,7,8,9,10.", UP),
    ("1 3 5 7 9 / 10 8 6 4 2", ODD_EVEN),
    ("Printer's key 3 4 5 6 7 8 9 10.", "3 4 5 6 7 8 9 10"),
    ("Number line 12345678910.", UP),
    ("number line 1234567890", UP),
    ("13579108642", ODD_EVEN),
    ("Numbers run 10987654321.", DOWN),
    ("Number line 1-10.", UP),
    ("numbers go 10-1", DOWN),
    ("Number line 1 2 3...10.", UP),
    ("Number line 10 9 8 ... 1.", DOWN),
    ("number line goes 10 through 3", "10 9 8 7 6 5 4 3"),
    ("The numbers start at 10 and stop at 4.", "10 9 8 7 6 5 4"),
    ("The number line runs from ten down to three.", "10 9 8 7 6 5 4 3"),
    ("First printing, ten down to one.", DOWN),
    ("Number row ten nine eight seven six five four three two one.", DOWN),
    ("Number line 10 9 8 7 6 5 4 3 2 1 91 92 93 94 95.", f"{DOWN} 91 92 93 94 95"),
    ("97 98 99 00 01 10 9 8 7 6 5 4 3 2", "97 98 99 00 01 10 9 8 7 6 5 4 3 2"),
    ("Number line 1 2 3 4 5 6 7 8 9 10 RRD.", f"{UP} RRD"),
    ("Letter line A B C D E.", "A B C D E"),
    ("Letter line A-E.", "A B C D E"),
    ("Copyright page has C D E F G", "C D E F G"),
    (f"Full number line, {DOWN}.", DOWN),
    (f"{DOWN}, 1994.", DOWN),
]
ROWS += [
    ("Figures along the foot of the copyright page: 9 8 7 6 5 4 3 2 1", "9 8 7 6 5 4 3 2 1"),
    ("Printer's code RRD-H 10 9 8 7 6 5 4 3 2 1", f"RRD-H {DOWN}"),
    ("Printer's key: HH 1.3.5.7.9.10.8.6.4.2, in tiny type", f"HH {ODD_EVEN}"),
    ("99 00 01 02 HC 10 9 8 7 6 5", "99 00 01 02 HC 10 9 8 7 6 5"),
    ("Number line: 04 05 06 07 08 CCL 5 4 3 2 1", "04 05 06 07 08 CCL 5 4 3 2 1"),
    ("Verso shows LP 10 9 8 7 6 5 4 3 2 1 and no other statement", f"LP {DOWN}"),
    ("numberline is one through ten", UP),
    ("Number row counts down from ten and stops at four.", "10 9 8 7 6 5 4"),
    ("The row counts from ten and gets as far as two.", "10 9 8 7 6 5 4 3 2"),
    ("There's a string of numbers running 2 to 10.", "2 3 4 5 6 7 8 9 10"),
    # shortened, however the dots are set: the row's end is told, and its lowest number is not the one before the dots
    ("Number line: 10, 9, 8, ... 1", DOWN),
    ("Number line: 1, 2, 3, ..., 10.", UP),
    ("Number line 10 9 8 . . . 1.", DOWN),
    ("Number line 1, 2, 3, …, 10", UP),
    ("Number line 1 3 5 ... 6 4 2.", "1 3 5 7 9 10 8 6 4 2"),
    # years before or behind the printings, the century's turn among them
    ("Number line 98 99 00 01 10 9 8 7 6 5 4 3 2 1.", f"98 99 00 01 {DOWN}"),
    ("Number line 2 3 4 5 6 7 8 9 98 99 00 01 02.", "2 3 4 5 6 7 8 9 98 99 00 01 02"),
]
TOLD = [
    ("The row of numbers drops away to a 3.", "to 3"),
    ("lowest number showing is a 2", "to 2"),
    ("the smallest number i could find on the page with the copyright was 6", "to 6"),
    ("On the imprint page is a row of figures of which 4 is the lowest.", "to 4"),
    ("Counts down to 1 on the copyright page.", "to 1"),
    ("copyright page goes down to 2", "to 2"),
    ("counting-down row goes all the way to the number one", "to 1"),
    ("With the figure 1 present in the row", "to 1"),
    ("This publisher did not use number lines.", "none"),
    ("This house never used a print code.", "none"),
    ("Number line ends in 3.", "to 3"),
    ("NUMBER LINE TO 1", "to 1"),
    ("number line starts at 2", "to 2"),
    ("Number string down to the 4.", "to 4"),
    ("numberline begins with a 1", "to 1"),
    ("Lowest number is 6.", "to 6"),
    ("First printing with the 1 present in the number line.", "to 1"),
    ("1 in the number line", "to 1"),
    ("The line ends with a 2.", "to 2"),
    ("The numbers go down to 5.", "to 5"),
    ("The row starts at 3 and ends at 2.", "to 2"),
    ("The row of figures on the imprint page bottoms out at 1.", "to 1"),
    ("A figure row whose smallest number is 3.", "to 3"),
    ("The 1 sits at the left end of the row.", "to 1"),
    ("Numbers on imprint page start from 4.", "to 4"),
    ("The printing key stops short at 3.", "to 3"),
    ("The sequence of numbers is down to 5.", "to 5"),
    ("Copyright page has a number line with a 6 as its lowest figure.", "to 6"),
    ("Full number line.", "full"),
    ("Complete row of numbers.", "full"),
    ("Number line is complete.", "full"),
    ("number line intact", "full"),
    ("All the numbers on the copyright page.", "full"),
    ("No number line.", "none"),
    ("Without a number line.", "none"),
    ("There is no row of numbers.", "none"),
    ("no date or number line", "none"),
    ("Number line: none.", "none"),
    ("It doesn't have a number line.", "none"),
    ("I can't find a number line.", "none"),
]
NOTHING = [
    "My phone number is 0123456789 if you want to ring.",
    "Item number 987654321 please quote",
    "Order no. 0987654321 - please quote it when you collect.",
    "Lot closes at eight, and 7 6 5 4 3 2 are the last digits of my phone",
    "Volumes 1 2 3 4 5 6 of the set of eight.",
    "Chapters 1 2 3 4 5 deal with the siege, 6 7 8 9 10 with the peace.",
    "Sizes 10, 9, 8, 7 in stock.",
    "Countdown on page 10: ten, nine, eight... and the rocket blows up.",
    "Last page carries the printer's code 10 8 6, a job number.",
    "A rocket counts down to zero on page 5.",
    "The film goes down to 2 stars in my book.",
    "Telephone 555 1 2 3 4 5.",
    "Call 1 800 555 0199.",
    "8 x 10 inches, 9 7 8.",
    "ISBN 0 306 40615 2.",
    "Dated 3/4/56.",
    "Pages 1-10 are creased.",
    "Volumes 1, 2, 3, 4 and 5.",
    "Lot 1 2 3 4.",
    "Chapters 1 - 10 are clean.",
    "Condition 9/10, jacket 8/10.",
    "Line 3 of page 87 has the error.",
    "Ships from warehouse 7, aisle 12345678910.",
    "Order qty 1 2 3 4 5 max.",
    "Tear by line 4 of page 12.",
    "Last page carries a job number, not an impression line.",
]


@pytest.mark.parametrize(("text", "value"), ROWS + TOLD)
def test_says(text, value):
    assert claimed(text, "number_line") == said("book", value)


@pytest.mark.parametrize("text", NOTHING)
def test_is_no_line(text):
    assert claimed(text, "number_line") == set()


@pytest.mark.parametrize(
    "text",
    [
        "The 1 is missing from the number line.",
        "Number line lacks the 1.",
        "No 1 in the number line.",
        "The number line is without the 1.",
    ],
)
def test_a_missing_one_is_denied(text):
    assert claimed(text, "number_line") == said("book", "to 1", stance="denied")


@pytest.mark.parametrize(
    ("text", "value", "stance"),
    [
        ("I haven't checked the number line.", "unknown", "unchecked"),
        ("Not had time to look at the numbers.", "unknown", "unchecked"),
        (f"Later printings have {UP[2:]}.", UP[2:], "elsewhere"),
        ("I think the number line goes down to 2.", "to 2", "hedged"),
        ("Number line appears to be complete.", "full", "hedged"),
        ("The number row may start with a 2, it's smudged.", "to 2", "hedged"),
        ("Lowest number in that row is, I think, a 2.", "to 2", "hedged"),
        ("The number line is under a sticker.", "unknown", "unchecked"),
        ("Line of digits: not recorded.", "unknown", "unchecked"),
    ],
)
def test_stance(text, value, stance):
    assert claimed(text, "number_line") == said("book", value, stance=stance)


def test_a_doubt_about_the_printing_is_none_about_the_row():
    assert claimed(f"Not sure which printing, has the numbers {ODD_EVEN} inside.", "number_line") == said("book", ODD_EVEN)
    assert claimed(f"I think its the 3rd because numbers are {ODD_EVEN}.", "number_line") == said("book", ODD_EVEN)
    assert claimed("Numbers run 1-10 so first printing??", "number_line") == said("book", UP)


@pytest.mark.xfail(reason="settling drops 'to N' wherever a line is written out, also another book's of a lot")
def test_two_books_of_a_lot():
    text = "Cold Stair, number line to 4. Warm Iron, number line 10 9 8 7 6 5 4 3 2 1."
    assert claimed(text, "number_line") == said("book", "to 4", DOWN)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("The sequence on the verso opens at 10 and closes at 4.", "10 9 8 7 6 5 4"),
        ("The line at the foot of the copyright leaf runs all the way down to 1.", "to 1"),
        ("A number line-less copyright page.", "none"),
        ("Number line: 9 8 7 6 5 4 3 2 1, no ten.", "9 8 7 6 5 4 3 2 1"),
    ],
)
def test_lines_told_from_end_to_end(text, value):
    assert claimed(text, "number_line") == said("book", value)


@pytest.mark.parametrize("text", ["There may be a pencil line somewhere.", "A crease line across the rear panel."])
def test_lines_of_other_things(text):
    assert claimed(text, "number_line") == set()


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Both the 1 and the 2 have gone from the number line.", said("book", "to 1", "to 2", stance="denied")),
        ("Number line lacks both 1 and 2.", said("book", "to 1", "to 2", stance="denied")),
        (
            "The number line begins at 3 since the 1 and 2 have been struck off.",
            said("book", "to 1", "to 2", stance="denied") | said("book", "to 3"),
        ),
        ("Later batches lost the 1 from their row.", said("book", "to 1", stance="elsewhere")),
    ],
)
def test_numbers_that_are_gone(text, claims):
    assert claimed(text, "number_line") == claims
