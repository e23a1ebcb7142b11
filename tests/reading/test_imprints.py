"""Publisher and year of the copy, told apart from inscriptions, plots and other editions."""

import pytest

from tests.reading.claimed import claimed, said

PUBLISHERS = [
    ("Put out by Harrow & Pike in 1962.", "Harrow & Pike"),
    ("Harrow & Pike put it out in 1962.", "Harrow & Pike"),
    ("Gledhill published it in 1953.", "Gledhill"),
    ("From the house of Merlewood, 1931.", "Merlewood"),
    ("Brought out by the Tamarack Press of Duluth in 1949.", "Tamarack Press"),
    ("Pubd by Orme, Fagg & Sons of Paternoster Row", "Orme, Fagg & Sons"),
    ("PUBLISHER = COPPERKETTLE BOOKS", "COPPERKETTLE BOOKS"),
    ("Under the Otter & Vane imprint.", "Otter & Vane"),
    ("From the Lanternlight list, 1991.", "Lanternlight"),
    ("Printed for the Fellside Book Club, 1954.", "Fellside Book Club"),
    ("its a Penny Lamp paperback number 214", "Penny Lamp"),
    ("Harrow & Pike, 1962. First edition.", "Harrow & Pike"),
    ("HARROW & PIKE 1962 FIRST EDITION", "HARROW & PIKE"),
    ("Harrow &amp; Pike, 1962.", "Harrow & Pike"),
    ("London: The Hogarth Press, 1925.", "The Hogarth Press"),
    ("New York: Alfred A. Knopf, (1951).", "Alfred A. Knopf"),
    ("Knopf, 1951, first edition", "Knopf"),
    ("Little, Brown and Company 1951", "Little, Brown and Company"),
    ("Published by Harrow & Pike in 1962.", "Harrow & Pike"),
    ("published in 1958 by tolliver house", "tolliver house"),
    ("Publisher: Brindle House. Year: 1971.", "Brindle House"),
    ("London: John Lane, The Bodley Head, 1936.", "John Lane, The Bodley Head"),
    ("The Hollow Field. Saltery Press, 1988.", "Saltery Press"),
    ("Gantry, New York, 1977.", "Gantry"),
    ("Published by the Sandgate Book Club.", "Sandgate Book Club"),
    ("Collins, 1938", "Collins"),
    ("Publisher Brindle House. First edition.", "Brindle House"),
    ("A facsimile done by Replica House in 1983.", "Replica House"),
    ("Newport: Usk Printing Co., 1956.", "Usk Printing Co"),
    ("Swansea, Gwasg y Traeth, 1933.", "Gwasg y Traeth"),
    ("Melbourne, Saltbush & Sons.", "Saltbush & Sons"),
    ("Publisher::Harrow & Pike", "Harrow & Pike"),
    ("Harrow & Pike / 1962 / blue cloth", "Harrow & Pike"),
]
YEARS = [
    ("title page MDCCCLXXXIV so properly old", "1884"),
    ("Title page 1884.", "1884"),
    ("First came out in 1949; this one rolled off the press in 1957.", "1957"),
    ("1st published Sept 1966, rpt. Nov 1966, rpt. Feb 1967 (this).", "1967"),
    ("A seaside guide of 1937.", "1937"),
    ("Harrow & Pike, 1962.", "1962"),
    ("First published 1962.", "1962"),
    ("First edition, 1962, blue cloth.", "1962"),
    ("Second impression May 1953.", "1953"),
    ("copyright 1931", "1931"),
    ("Year: 1971.", "1971"),
    ("A novel of 1993 in wraps.", "1993"),
    ("1966! First printing!", "1966"),
    ("Brindle House, [1979], first edition.", "1979"),
    ("Printed MCMLXII.", "1962"),
    ("First published in 1936 and here reissued, Brindle House, 1983.", "1983"),
]
NO_YEAR = [
    'Inscribed "to Meg, 1954" on the endpaper.',
    "Gift inscription dated Christmas 1934.",
    "Set in 1943, a tale of war.",
    "A 1950s edition.",
    "Reprints of 1936 are thinner.",
    "No 1977 reprint here.",
    "Winner of the 1988 Prize.",
    "Bought new in 1988.",
    "Six volumes, 1958-1962.",
    "Tel 01904 1955.",
    "12 March 1944.",
    "Signed and dated 1999 by the author.",
    "One of 1950 copies.",
    "Marbled boards by a provincial binder c. 1930.",
]


@pytest.mark.parametrize(("text", "value"), PUBLISHERS)
def test_publisher(text, value):
    assert claimed(text, "publisher") == said("book", value)


@pytest.mark.parametrize(
    "text",
    [
        "Viking ships of the north.",
        "Book Club edition.",
        "The Otter at Number Nine (1966).",
        "A crown and a sphere.",
        "The printing was done by hand.",
        "Around the Cape in a storm.",
    ],
)
def test_is_no_publisher(text):
    assert claimed(text, "publisher") == set()


@pytest.mark.parametrize(("text", "value"), YEARS)
def test_year(text, value):
    assert claimed(text, "year") == said("book", value)


@pytest.mark.parametrize("text", NO_YEAR)
def test_is_no_year(text):
    assert claimed(text, "year") == set()


def test_about():
    assert claimed("Undated but c. 1929.", "year") == said("book", "1929", stance="hedged")


def test_year_not_known():
    assert claimed("Don't know the year.", "year") == said("book", "unknown", stance="unchecked")


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("The Salt Road, Lt. B. Harkin, Dunmore 1934, red cloth.", "Dunmore"),
        ("The Salt Road; Olive Gage; Dunmore 2001; first edition.", "Dunmore"),
        ("Memoir by Hollis Crane, Maple Fold, 1946. Hardcover.", "Maple Fold"),
        ("Fifth of the saga; paperback from Tolland, 1992.", "Tolland"),
        ("Ours: first edition thus from Brack & Moor, illustrated.", "Brack & Moor"),
        ("A BEARING ON MALTA PELL & STRAND 1968. JACKET IS 30s NET", "PELL & STRAND"),
    ],
)
def test_names_last_in_a_list(text, name):
    assert claimed(text, "publisher") == said("book", name)


@pytest.mark.parametrize("text", ["The Salt Road, 1934.", "Spine faded, June 1934 on the flyleaf.", "Fine, Signed 1987."])
def test_no_name_before_a_year(text):
    assert claimed(text, "publisher") == set()


@pytest.mark.parametrize(
    "text",
    [
        "The text was printed five times between 1949 and 1959.",
        "The January 1930 reprint put it right.",
        "First impression, going by the Sept. 1929 list at the end.",
        "Paperback, reprint of a 1988 hardcover.",
        "Somebody wrote to Carol 1978 on the front page.",
        "My galley; the finished book followed in May 2005.",
    ],
)
def test_years_of_other_things(text):
    assert {stance for _, _, stance in claimed(text, "year")} <= {"elsewhere"}


def test_first_published_and_reprinted():
    assert claimed("It says first published 1949 but then also Reprinted 1955 under it.", "year") == set()


@pytest.mark.parametrize("text", ["Somewhere around 1937?", "Title page undated; 1937 or thereabouts."])
def test_guessed_years(text):
    assert claimed(text, "year") == said("book", "1937", stance="hedged")


@pytest.mark.parametrize(
    "text", ["Printed price inked out by a charity in 1974.", "Charity label dated 1974 inside.", "Pages: 1984."]
)
def test_years_of_labels_and_pages(text):
    assert not claimed(text, "year")


def test_a_date_that_nobody_found():
    assert {stance for _, _, stance in claimed("cant find a date sorry", "year")} == {"unchecked"}


def test_another_house_at_another_time():
    text = "Hodge and Tulliver brought it out in the States the year before; mine is the Tressler & Pym one."
    assert claimed(text, "publisher") == said("book", "Hodge and Tulliver", stance="elsewhere") | said("book", "Tressler & Pym")
