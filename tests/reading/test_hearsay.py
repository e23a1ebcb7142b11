"""What is told on somebody's word, by its look or about roughly, and what was not looked at."""

import pytest

from auditor.reading import read

HEDGED = [
    ("A woman at the car boot said it was a first printing.", "printing", {"1"}),
    ("By the look of it a first printing.", "printing", {"1"}),
    ("Unless I've misread it, this is the second printing.", "printing", {"2"}),
    ("Word has it that this is a first printing.", "printing", {"1"}),
    ("I'd be amazed if it wasn't a first printing.", "printing", {"1"}),
    ("What seems to be foxing on the top edge.", "defect", {"foxing"}),
    ("Printed in 1936 or thereabouts.", "year", {"1936"}),
    ("First printing at a guess.", "printing", {"1"}),
    ("Doesnt strike me as a book club edition.", "book_club", {"no"}),
    ("It has all the marks of a book club edition.", "book_club", {"yes"}),
    ("Ive a hunch its a second printing", "printing", {"2"}),
    ("My records say first printing.", "printing", {"1"}),
    ("What I take for the author's signature is on the title page.", "signed", {"signed"}),
    pytest.param(
        "May have creases, tears or a cracked spine as usual for used books.",
        "defect",
        {"crease", "tear", "crack"},
        marks=pytest.mark.xfail(strict=True, reason='a modal\'s list ends at the comma where "as" stands in what follows'),
    ),
]


@pytest.mark.parametrize(("text", "feature", "values"), HEDGED)
def test_a_word_a_look_a_guess_is_hedged(text: str, feature: str, values: set[str]) -> None:
    found = {(claim.value, claim.stance) for claim in read(text) if claim.feature == feature}
    assert found == {(value, "hedged") for value in values}


UNCHECKED = [
    ("No time to look for a remainder mark.", "remainder_mark"),
    ("I am in the dark as to whether it is signed.", "signed"),
    ("Don't rely on me for the printing.", "printing"),
    ("No promises as to foxing.", "defect"),
    ("I made no attempt to work out the printing.", "printing"),
    ("I never did find out which printing.", "printing"),
    ("Printing? Ask someone who knows.", "printing"),
    ("Heaven only knows which printing it is.", "printing"),
    ("The jacket is glued down so nobody can check for a blind stamp.", "blind_stamp"),
]


@pytest.mark.parametrize(("text", "feature"), UNCHECKED)
def test_what_was_not_looked_at(text: str, feature: str) -> None:
    assert {claim.stance for claim in read(text) if claim.feature == feature} == {"unchecked"}
