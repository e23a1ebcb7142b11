"""Grades in all notations, and grade words in everyday senses."""

import pytest

from tests.reading.claimed import claimed, said

BOOK = [
    ("Fine.", "fine"),
    ("VG", "very good"),
    ("V.G.", "very good"),
    ("Very good condition.", "very good"),
    ("very-good", "very good"),
    ("VG+", "very good+"),
    ("VG-", "very good-"),
    ("Very good plus.", "very good+"),
    ("about fine", "near fine"),
    ("Nearly fine copy.", "near fine"),
    ("Nr fine.", "near fine"),
    ("NF", "near fine"),
    ("As new.", "as new"),
    ("like new", "as new"),
    ("Good only.", "good"),
    ("G+", "good+"),
    ("Good condition", "good"),
    ("Condition: fair.", "fair"),
    ("Fine except for a name.", "fine"),
    ("Poor.", "poor"),
    ("Mint condition.", "mint"),
    ("We'd call it very good.", "very good"),
    ("Everything else is fine.", "fine"),
]
BOTH = [
    ("VG/VG", "very good", "very good"),
    ("VG+/NF", "very good+", "near fine"),
    ("F/F", "fine", "fine"),
    ("G/VG-", "good", "very good-"),
    ("Fine in fine jacket.", "fine", "fine"),
    ("Fine in like jacket.", "fine", "fine"),
    ("Near fine in a very good dust jacket.", "near fine", "very good"),
    ("Book G, jacket G-.", "good", "good-"),
    ("Nr fine in nr fine wrapper.", "near fine", "near fine"),
    ("BOOK GOOD JACKET FAIR", "good", "fair"),
    ("Very good both.", "very good", "very good"),
    ("Book and jacket both fine.", "fine", "fine"),
    ("Book: Fine | Jacket: Near Fine", "fine", "near fine"),
    ("Very good all told in a near fine wrapper.", "very good", "near fine"),
    ("Book near fine, the jacket the same.", "near fine", "near fine"),
    ("Both are VG.", "very good", "very good"),
    ("Mint/mint.", "mint", "mint"),
    ("Grade: G+ / DJ: VG-", "good+", "very good-"),
]
NOTHING = [
    "A good read.",
    "From a fine press.",
    "Excellent condition.",
    "Nice copy, great shape.",
    "A fair price.",
    "The poor old man.",
    "Acceptable.",
    "A good deal of foxing.",
    "P. 87 has the error.",
    "Fine art binding.",
    "Near mint.",
    "A cup of mint tea.",
    "I would not call it fine.",
    "The paper is good and the print clear.",
    "Hinges are fine.",
    '"A fine, dry spring, though the fox took the hens" sets the tone.',
]


@pytest.mark.parametrize(("text", "value"), BOOK)
def test_of_the_book(text, value):
    assert claimed(text, "grade") == said("book", value)


@pytest.mark.parametrize(("text", "book", "jacket"), BOTH)
def test_of_book_and_jacket(text, book, jacket):
    assert claimed(text, "grade") == said("book", book) | said("jacket", jacket)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("VG jacket.", "very good"),
        ("Jacket fine.", "fine"),
        ("DJ is very good.", "very good"),
        ("Jacket mint.", "mint"),
        ("Jacket: Yes &#8212; near fine<br>", "near fine"),
    ],
)
def test_of_the_jacket(text, value):
    assert claimed(text, "grade") == said("jacket", value)


@pytest.mark.parametrize("text", NOTHING)
def test_is_no_grade(text):
    assert claimed(text, "grade") == set()


def test_a_range_claims_both_ends():
    assert claimed("VG to NF.", "grade") == said("book", "very good", "near fine")
    assert claimed("Good to very good.", "grade") == said("book", "good", "very good")


def test_no_jacket_leaves_the_book_alone():
    assert claimed("VG/no dj", "grade") == said("book", "very good")


@pytest.mark.parametrize(
    ("text", "book", "jacket"),
    [
        ("Very good over good.", "very good", "good"),
        ("VG in a G jacket.", "very good", "good"),
        ("Near fine in a jacket of the same sort.", "near fine", "near fine"),
    ],
)
def test_pairs_in_other_words(text, book, jacket):
    assert claimed(text, "grade") == said("book", book) | said("jacket", jacket)


def test_plus_behind_a_hyphen():
    assert claimed("Book good-plus.", "grade") == said("book", "good+")


@pytest.mark.parametrize(
    "text", ["I don't have a good copy to set it against.", "Some would call it a fine copy.", "We have never seen a fine copy."]
)
def test_grades_of_no_copy_here(text):
    assert claimed(text, "grade") == set()
