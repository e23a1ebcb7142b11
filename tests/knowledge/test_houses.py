"""Number lines and the houses: worked examples with their source, and every arrangement of a line by brute force."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.knowledge.houses import House, houses, lowest, practice, printing_by_line

_STARK = "Craig Stark, 'A Guide to Understanding Number Lines in Books', BookThink no. 91, 26 March 2007"
_STARK_QA = "Craig Stark, 'Number Lines: Questions and Answers', BookThink no. 91, 26 March 2007"
_KEY = "Wikipedia, 'Printer's key'"
_RULE = "by the general rule: " + _STARK

# line, publisher, year, "First Edition" on the page, printing, source
EXAMPLES = [
    ("10 9 8 7 6 5 4 3 2 1", None, None, False, 1, _KEY),
    ("1 2 3 4 5 6 7 8 9 10", None, None, False, 1, _KEY),
    ("a b c d e f g h i j k", None, None, False, 1, _KEY),
    ("2 4 6 8 10 9 7 5 3 1", None, None, False, 1, _KEY),
    ("2 3 4 5 6     73 72 71 70", None, None, False, 2, _KEY),
    ("2 3 4 70 71 72", None, None, False, 2, _KEY),
    ("3 4 5 6 7 8 9 10   APC   00 99 98 97 96", None, None, False, 3, _KEY),
    ("1 3 5 7 9 10 8 6 4 2", None, None, False, 1, _STARK),
    ("80 81 82 83 10 9 8 7 6 5 4 3 2 1", "Harper & Row", None, False, 1, "'Print It Small', Warp 30, September 1982"),
    ("81 82 83 10 9 8 7 6 5 4 3 2", "Harper & Row", None, False, 2, "'Print It Small', Warp 30, September 1982"),
    ("10 9 8 7 6 5 4 3 2", "Elsevier / Nelson", None, False, 2, "'Print It Small', Warp 30, September 1982"),
    ("11 10 9 8 7 6 5 4 3 2", None, None, False, 2, _STARK),
    ("10 9 8 7 6 5 4 2 1", None, None, False, 1, "Santa Cruz Public Library, 'Number line', citing Zempel and Verkler, 1995"),
    ("9 8 7 6 5 4 3 2", "Random House", None, True, 1, _STARK_QA),
    ("9 8 7 6 5 4 3 2", "Random House", None, False, 2, _STARK_QA),
    ("24689753", "Random House", 1985, True, 1, "Bookporn.club, 'Blood Meridian', April 2015"),
    ("1 2 3 4 5 6 7 8 9", "Random House", None, True, 1, _STARK_QA),
    ("G6E4C", "Orchises Press", None, False, 3, _STARK_QA),
    ("1 2 3 4 5 6 7 8 9 10 11 12 R 78 77 76 75", "Children's Press", None, False, 1, _RULE),
    ("00 01 02 03 04 10 9 8 7 6 5 4 3 2", "Osprey", None, False, 2, _RULE),
    ("12 14 16 18 20 19 17 15 13 11", "Rodale Press", None, False, 11, _RULE),
    ("ABCDEFGHIJK 7987", "Addison-Wesley", None, False, 1, _RULE),
    ("123456789 99 98 97 96 95 94 93", None, None, False, 1, _RULE),
    ("9 8 7 6 5 4 3 2 1", "Picador (UK)", 1989, False, 1, "publishers.toml, Picador: Blood Meridian, first English edition"),
    ("B C D E", "Harcourt Brace Jovanovich", 1982, True, 1, "Biblio, 'First Edition Identification', The Color Purple"),
    ("A", "Charles Scribner's Sons", 1952, False, 1, "The Oxen of the Sun blog, 'The Old Man and the Sea', 2014"),
    ("A-8.65 [V]", "Charles Scribner's Sons", 1965, False, 1, "from memory"),
    ("3 5 7 9 10 8 6 4 2", None, None, False, 2, _RULE),
    ("1 3 5 7 9 11 13 15 17 19 V/C 20 18 16 14 12 10 8 6 4 2", "Charles Scribner's Sons", None, False, 1, "from memory"),
    ("0 9 8 7 6 5 4 3 2 1", "Tor", None, True, 1, "from memory"),
    ("BVG 10 9 8 7 6 5 4 3 2 1", "Bantam", None, False, 1, "from memory"),
    ("W 10 9 8 7 6 5 4 3 2 1", "Houghton Mifflin", None, False, 1, "from memory"),
    ("BCDEFG", "Golden Books", None, False, 2, "publishers.toml, Golden Books: letter row"),
    ("A100100", "Golden Books", None, False, 1, "publishers.toml, Golden Books: code inside the front"),
]


@pytest.mark.parametrize(("line", "publisher", "year", "stated", "printing", "source"), EXAMPLES)
def test_worked_examples(line, publisher, year, stated, printing, source):
    assert printing_by_line(line, publisher=publisher, year=year, stated_first=stated).printing == printing, source


@pytest.mark.parametrize(
    ("line", "publisher", "source"),
    [
        ("0 2 4 6 8 A 9 7 5 3 1", "Random House", _STARK_QA),  # much later printings share it
        ("76 2M 12735", "Brigham Young University Press", _STARK),  # a code
        ("1 2 3 4 5 6 7 8 9 0 9 8 7 6 5 4 3 2", "Arte Publico Press", _STARK),  # two rows, either could be the years
        ("I-G", "Harper & Brothers", "publishers.toml, Harper: month and year letters"),
        ("73 72 71 70 69", None, _RULE),
        ("8.65", None, _RULE),
        ("none", None, "CLAIMS"),
        ("", None, "CLAIMS"),
    ],
)
def test_lines_that_do_not_decide(line, publisher, source):
    assert printing_by_line(line, publisher=publisher).printing is None, source


@pytest.mark.parametrize(
    ("publisher", "year", "stated", "printing"),
    [
        ("Random House", 1985, True, 1),
        ("Random House", 1985, None, None),  # nobody told of the words
        ("Random House", 1985, False, 2),
        ("Random House, Inc.", 1971, True, 1),
        ("Random House", 2015, True, 2),  # since the change the line of a first printing reaches 1
        ("Random House", 1940, False, 2),
        (None, 1985, True, None),  # a house that lets the words stand for the 1, or one that forgot to take them out
        (None, None, None, None),
        (None, 1985, False, 2),
        ("Harrow & Pike", 1985, True, 2),  # only for houses known to do so (general rule random_house_exception)
        ("Simon & Schuster", 1995, True, 2),
        ("Pantheon", 1985, True, None),  # the table has it from memory only: no verdict is drawn from that
        ("Harcourt Brace Jovanovich", 1990, True, None),
    ],
)
def test_a_line_that_starts_at_two(publisher, year, stated, printing):
    assert printing_by_line("2 3 4 5 6 7 8 9", publisher=publisher, year=year, stated_first=stated).printing == printing


@pytest.mark.parametrize("stated", [True, False, None])
@pytest.mark.parametrize("publisher", [None, "Random House", "Harrow & Pike", "Pantheon"])
def test_from_three_on_every_house_agrees(publisher, stated):
    assert printing_by_line("to 3", publisher=publisher, year=1985, stated_first=stated).printing == 3


def test_contract_values():
    assert (lowest("to 4"), lowest("full"), lowest("none")) == (4, 1, None)


def _arrange(numbers: list[int], how: str) -> str:
    if how == "ascending":
        row = numbers
    elif how == "descending":
        row = numbers[::-1]
    else:
        odd, even = [n for n in numbers if n % 2], [n for n in numbers if not n % 2]
        row = odd + even[::-1] if how == "split odd" else even + odd[::-1]
    return " ".join(map(str, row))


_LINES = st.tuples(
    st.integers(1, 30), st.integers(4, 12), st.sampled_from(["ascending", "descending", "split odd", "split even"])
)
_BESIDE = st.sampled_from(
    ["", "70 71 72 73", "99 98 97 96", "00 01 02 03", "APC", "R", "H", "LSC", "RRD", "1998", "V/C", "05 06 07 08 09"]
)


@given(_LINES, _BESIDE, st.booleans())
def test_the_lowest_number_is_the_printing_in_any_arrangement(line, beside, behind):
    first, count, how = line
    row = _arrange(list(range(first, first + count)), how)
    assert lowest(f"{row} {beside}" if behind else f"{beside} {row}") == first


@given(st.integers(1, 5), st.sampled_from(["ascending", "descending", "split odd", "split even"]))
def test_unspaced_and_hyphened_lines_read_like_spaced_ones(first, how):
    row = _arrange(list(range(first, 11)), how)
    assert lowest(row.replace(" ", "")) == lowest(row.replace(" ", "-")) == lowest(row) == first


@given(st.text(max_size=40))
def test_no_line_breaks_the_reading(line):
    found = printing_by_line(line)
    assert found.printing is None or found.printing >= 1
    assert found.reason
    assert found.source


def test_practice_by_period():
    assert [house.method for house in practice("Alfred A. Knopf", 1920)] == ["absence"]
    assert practice("Random House", 1985)[0].first_line_starts_at == 2
    assert practice("Harrow & Pike") == ()
    assert "FSG" in practice("FSG", 1995)[0].aliases


def test_every_row_is_sound():
    for house in houses():
        assert house.source, house
        assert house.from_year <= house.to_year, house
        assert house.first, house
        assert house.first_line_starts_at == 1 or house.needs_statement, house
        assert isinstance(house, House)
