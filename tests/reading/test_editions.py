"""Editions, printings, issues and states as sellers write them."""

import pytest

from auditor.reading import read


def keys(text: str) -> set[tuple[str, str, str, str]]:
    features = ("edition", "printing", "issue", "state")
    return {claim.key for claim in read(text) if claim.feature in features}


def said(*claims: str) -> set[tuple[str, str, str, str]]:
    """ "edition 1 american", "issue 1 jacket": feature, value and a part at the end where it isn't the book."""
    found = set()
    for claim in claims:
        feature, *words = claim.split()
        part = words.pop() if words[-1] in ("jacket", "copy") else "book"
        found.add((feature, " ".join(words), part, "asserted"))
    return found


CASES = [
    ("A facsimile of the 1925 first printing.", said("edition facsimile")),
    ("Facsimile reprint of the first edition.", said("edition facsimile", "edition reprint")),
    ("First edition, first printing in a facsimile of the jacket.", said("edition 1", "printing 1")),
    ("Facsimile of the jacket. First printing of the first edition.", said("edition 1", "printing 1")),
    ("It is the second time the book was printed.", said("printing 2")),
    ("This is the fourth time the book went through the press.", said("printing 4")),
    ("By the count this is the sixth trip to the printers.", said("printing 6")),
    ("From the second print run.", said("printing 2")),
    ("Our copy is of the third batch run off.", said("printing 3")),
    ("The printing after the first.", said("printing 2")),
    ("The one after the first printing, by a month.", said("printing 2")),
    ("Went back to press three times and this is the last of these.", said("printing 4")),
    ("Known in three printings of which this is the last.", said("printing 3")),
    ("A subsequent printing.", said("printing later")),
    ("One of the later impressions.", said("printing later")),
    ("rpt. 1958", said("edition reprint")),
    ("Ltd edn, copy 18 of 350.", said("edition limited")),
    ("First in paperback.", said("edition 1 paperback")),
    ("First time in hardback.", said("edition 1 hardcover")),
    ("First English-language edition.", said("edition 1 english")),
    ("First edition in English.", said("edition 1 english")),
    ("1st Am. ed.", said("edition 1 american")),
    ("1st Brit. edn", said("edition 1 british")),
    ("First Australian edition.", said("edition 1")),
    ("First Irish printing.", said("printing 1")),
    ("Second edition, revised.", said("edition 2", "edition revised")),
    ("Second (revised) edition.", said("edition 2", "edition revised")),
    ("A new edition, revised throughout.", said("edition revised")),
    ("Facsimile of the 1855 original.", said("edition facsimile")),
    ("Facsimile of a county history of 1786.", said("edition facsimile")),
    ("A facsimile of the map is loosely inserted.", set()),
    ("Which edition? First. Which printing? Third.", said("edition 1", "printing 3")),
    ("Printing stated as fifth.", said("printing 5")),
    ("Row reads 5 6 7 8 9 10, so fifth.", said("printing 5")),
    ("Of the three known issues ours is the second.", said("issue 2")),
    ("Earliest issue of the jacket.", said("issue 1 jacket")),
    ("The final edition of the evening paper carried the story of the murder.", set()),
    ("He finds a first edition of Milton in the attic.", set()),
    ("The blurb promises a lost first edition and a body in the library.", set()),
    ("The first impression he made on her was poor.", set()),
    ("First edition.", said("edition 1")),
    ("1st ed.", said("edition 1")),
    ("1ST EDITION", said("edition 1")),
    ("First edn, hardback.", said("edition 1")),
    ("Stated first edition.", said("edition 1")),
    ("1st/1st", said("edition 1", "printing 1")),
    ("1st/2nd", said("edition 1", "printing 2")),
    ("First edition, first printing.", said("edition 1", "printing 1")),
    ("First edition/first impression", said("edition 1", "printing 1")),
    ("1st edition 1st printing", said("edition 1", "printing 1")),
    ("First edition & printing.", said("edition 1", "printing 1")),
    ("First edition, third printing.", said("edition 1", "printing 3")),
    ("4th impression.", said("printing 4")),
    ("Twenty-third printing.", said("printing 23")),
    ("Printing: 3rd.", said("printing 3")),
    ("Edition: 1st.", said("edition 1")),
    ("Printing #7", said("printing 7")),
    ("First American edition.", said("edition 1 american")),
    ("First U.S. edition.", said("edition 1 american")),
    ("First UK edition, first impression.", said("edition 1 british", "printing 1")),
    ("First English edition.", said("edition 1 english")),
    ("First Canadian edition.", said("edition 1 canadian")),
    ("First trade edition.", said("edition 1 trade")),
    ("First paperback edition.", said("edition 1 paperback")),
    ("First hardback edition.", said("edition 1 hardcover")),
    ("First illustrated edition.", said("edition 1 illustrated")),
    ("First edition thus.", said("edition 1 thus")),
    ("1st thus", said("edition 1 thus")),
    ("A first edition. First American edition.", said("edition 1 american")),
    ("Second edition.", said("edition 2")),
    ("Revised edition.", said("edition revised")),
    ("Limited edition.", said("edition limited")),
    ("A later printing.", said("printing later")),
    ("A reprint.", said("edition reprint")),
    ("Facsimile edition.", said("edition facsimile")),
    ("First issue.", said("issue 1")),
    ("First issue jacket.", said("issue 1 jacket")),
    ("Second issue dust wrapper.", said("issue 2 jacket")),
    ("In a third-printing jacket.", said("printing 3 jacket")),
    ("State B jacket.", said("state b jacket")),
    ("First state.", said("state 1")),
    ("A first in jacket.", said("edition 1")),
]


@pytest.mark.parametrize(("text", "expected"), CASES)
def test_what_counts_editions_and_printings(text: str, expected: set[tuple[str, str, str, str]]) -> None:
    assert keys(text) == expected


QUIET = [
    "The first time I read it I wept.",
    "Set in the first half of the century.",
    "First published in a magazine.",
    "First Edition Library slipcase.",
    "In a state of shock he left the State University.",
    "The first page of the second chapter.",
    "A fine print of the harbour hung there.",
    "Print run unknown to bibliographers of the state.",
    "It gives the impression of haste.",
    "First class post.",
    'The copyright page says "First Edition".',
    "First of a trilogy.",
]


@pytest.mark.parametrize("text", QUIET)
def test_ordinals_of_other_things(text: str) -> None:
    assert not {key for key in keys(text) if key[3] == "asserted"}


def test_a_jacket_of_a_later_printing_is_another_copys() -> None:
    text = "First printing. The jacket is from the third printing."
    assert keys(text) == said("printing 1", "printing 3 jacket")
    assert ("jacket", "supplied", "jacket", "asserted") in {claim.key for claim in read(text)}


JACKETS = [
    ("In dust jacket.", {"present"}),
    ("Chip to the jacket.", {"present"}),
    ("VG in VG d/w.", {"present"}),
    ("No DJ.", {"lacking"}),
    ("no dust jacket", {"lacking"}),
    ("Lacks the dustwrapper.", {"lacking"}),
    ("Dust jacket missing.", {"lacking"}),
    ("Dust jacket: none.", {"lacking"}),
    ("The jacket is not present.", {"lacking"}),
    ("Issued without a jacket.", {"none issued"}),
    ("No jacket, as issued.", {"none issued"}),
    ("In a facsimile dust jacket.", {"facsimile"}),
    ("The jacket is a facsimile.", {"facsimile"}),
    ("In a supplied jacket.", {"supplied"}),
    ("The jacket comes from another copy.", {"supplied"}),
    ("The jacket is too fresh: somebody has swapped it for another.", {"supplied"}),
    ("The wrapper belongs to the third impression.", {"supplied"}),
    ("No chips to the jacket.", {"present"}),
    ("In wrappers, as issued.", set()),
    ("VG/VG", set()),
    ("Price-clipped.", set()),
]


@pytest.mark.parametrize(("text", "expected"), JACKETS)
def test_the_jacket(text: str, expected: set[str]) -> None:
    found = [claim for claim in read(text) if claim.feature == "jacket"]
    assert {claim.value for claim in found} == expected
    assert all(claim.stance == "asserted" for claim in found)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("First Canadian, published in Toronto.", {("edition", "1 canadian", "book", "asserted")}),
        ("The first or second printing.", {("printing", "1", "book", "asserted"), ("printing", "2", "book", "asserted")}),
        ("The jacket is clipped, so the second printing's.", {("printing", "2", "jacket", "asserted")}),
        ("The jacket says Seventh Printing.", {("printing", "7", "jacket", "asserted")}),
        ("Stained to about a third.", set()),
        ("Not a facsimile, the paper is old.", {("edition", "facsimile", "book", "denied")}),
        ('The copyright page has "First Edition" and no more.', set()),
        ("Magnolia Reprint Library, 1966.", set()),
        ("In his catalogue as 1923, probably first.", {("edition", "1", "book", "hedged")}),
    ],
)
def test_editions_by_their_surroundings(text: str, expected: set[tuple[str, str, str, str]]) -> None:
    assert keys(text) == expected
