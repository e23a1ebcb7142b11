"""ISBN, limitation, print run and gutter code."""

import pytest

from auditor.reading import find_isbns
from tests.reading.claimed import claimed, said

# 0-306-40615-2 is the example of the ISBN Users' Manual.
CASES = [
    ("isbn", "ISBN 0-306-40615-2.", "9780306406157"),
    ("isbn", "ISBN: 978-0-306-40615-7", "9780306406157"),
    ("isbn", "isbn 0306406152", "9780306406157"),
    ("isbn", "SBN: 306-40615-2.", "9780306406157"),
    ("limitation", "Number 123 of 500 copies.", "123 of 500"),
    ("limitation", "No. 34/250, signed by the author.", "34 of 250"),
    ("limitation", "#12/100", "12 of 100"),
    ("limitation", "Copy no. 45 of an edition of 300.", "45 of 300"),
    ("limitation", "Number 7 of an edition limited to 200 copies.", "7 of 200"),
    ("limitation", "Limited to 750 copies.", "of 750"),
    ("limitation", "One of 250 numbered copies.", "of 250"),
    ("limitation", "limited to 1,500.", "of 1500"),
    ("limitation", "One of forty copies on handmade paper.", "of 40"),
    ("limitation", "Limited to forty copies, this being no. 7.", "7 of 40"),
    ("limitation", "No. 7 of twenty.", "7 of 20"),
    ("limitation", "Number seven of forty, signed.", "7 of 40"),
    ("limitation", "Edition limited to 750 numbered copies; this is number 212.", "212 of 750"),
    ("limitation", "Limited edition of 300 copies, of which this is number 41.", "41 of 300"),
    ("limitation", "Limited signed edition (250 copies).", "of 250"),
    ("limitation", "250 signed copies were issued.", "of 250"),
    ("limitation", "Signed limited edition, one of 500.", "of 500"),
    ("limitation", "One of the 250 with the gilt top.", "of 250"),
    ("limitation", "Limited to two hundred and fifty copies.", "of 250"),
    ("limitation", "Limitation: 45/500", "45 of 500"),
    ("print_run", "Just 250 were run off.", "250"),
    ("print_run", "An edition of 1,500 printed.", "1500"),
    ("print_run", "Print run put at 3,000.", "3000"),
    ("print_run", "400,000 copies were printed.", "400000"),
    ("print_run", "They printed only 600 copies.", "600"),
    ("print_run", "The first impression ran to five thousand copies.", "5000"),
    ("print_run", "6,500 copies in the first printing.", "6500"),
    ("print_run", "A 2,000-copy first printing.", "2000"),
    ("print_run", "There were three thousand printed.", "3000"),
    ("print_run", "First and only printing, 750 copies.", "750"),
    ("print_run", "One of 5,000 copies printed.", "5000"),
    ("print_run", "Print run: 2,500.", "2500"),
    ("print_run", "First printing of 3,000 copies.", "3000"),
    ("print_run", "Only 1500 were printed.", "1500"),
    ("gutter_code", "Gutter code P6 on p. 305.", "P6"),
    ("gutter_code", "Code S12 in the gutter.", "S12"),
    ("gutter_code", "Turn to the gutter of 199 for the tiny P6.", "P6"),
    ("gutter_code", "Code down by the spine, Q37; I needed a loupe.", "Q37"),
    ("gutter_code", "Q37 on p. 180", "Q37"),
    ("gutter_code", "P14 on the last page.", "P14"),
    ("gutter_code", "gutter p31", "P31"),
    ("gutter_code", 'Code "52R" in the gutter of page 441.', "52R"),
]


@pytest.mark.parametrize(("feature", "text", "value"), CASES)
def test_says(feature, text, value):
    assert claimed(text, feature) == said("book", value)


@pytest.mark.parametrize(
    ("feature", "text"),
    [
        ("isbn", "ISBN 0-306-40615-3."),
        ("isbn", "Telephone 01904 123456."),
        ("limitation", "Volume 3 of 12 pages."),
        ("limitation", "Jacket is 3/6 on the spine."),
        ("print_run", "First edition of 1962."),
        ("print_run", "Second impression 1953."),
        ("gutter_code", "Map on page A4."),
        ("gutter_code", "Barcode K12."),
        ("gutter_code", "Postcode S12 4AB."),
        ("gutter_code", "Paper size A4, discount code 12."),
        ("limitation", "One of the 100 best novels of the century."),
        ("limitation", "No. 3 of 12 in the series."),
        ("limitation", "Photo 1 of 12."),
        ("limitation", "Hymn 14 numbered 41."),
        ("print_run", "320 pages, printed in 1962."),
        ("print_run", "The second printing of 1985."),
        ("print_run", "Only 500 sold."),
    ],
)
def test_says_nothing(feature, text):
    assert claimed(text, feature) == set()


def test_isbns_of_a_text():
    assert find_isbns("ISBN 0306406152 and again 978-0-306-40615-7.") == ("9780306406157",)


def test_stances_of_copies():
    assert claimed("Not one of the 250 with the gilt top.", "limitation") == said("book", "of 250", stance="denied")
    assert claimed("The print run is thought to be about 4000.", "print_run") == said("book", "4000", stance="hedged")
    assert claimed("Those are for the five thousand firsts.", "print_run") == said("book", "5000", stance="elsewhere")


@pytest.mark.xfail(strict=True, reason='"only" is read as a contrast and ends the hedge, also before a number')
def test_a_run_told_by_others():
    assert claimed("I was told only 200 of these were run off.", "print_run") == said("book", "200", stance="hedged")


def test_the_print_run_was_not_looked_up():
    assert claimed("No idea of the print run.", "print_run") == said("book", "unknown", stance="unchecked")


def test_a_row_of_numbers_is_no_isbn():
    assert find_isbns("copyright page goes 2 3 4 5 73 72 71 70 69") == ()


def test_a_code_in_the_fold():
    assert claimed("HAS C14 DOWN IN THE FOLD OF PAGE 181", "gutter_code") == said("book", "C14")


def test_a_code_looked_for():
    assert {stance for _, _, stance in claimed("I looked for R49 in the gutter.", "gutter_code")} == {"unchecked"}


def test_a_batch():
    assert claimed("From the first batch of 2,000.", "print_run") == said("book", "2000")


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Letter Q of the 26 bound for friends of the press.", "Q of 26"),
        ("Copy letter F of 26 lettered copies.", "F of 26"),
        ("Ltd. ed. (350), no. 18, tissue guards all there.", "18 of 350"),
        ("Ltd. ed. of 350, this no. 18.", "18 of 350"),
        ("The limitation leaf calls for 750.", "of 750"),
        ("Edition: 1,000 copies, of which this bears 612.", "612 of 1000"),
    ],
)
def test_limitations_in_other_words(text, value):
    assert claimed(text, "limitation") == said("book", value)


def test_a_code_in_the_inner_margin():
    assert claimed("Last leaf, inner margin: 36S.", "gutter_code") == said("book", "36S")
