"""Denials of faults and marks: over lists, behind labels, with exceptions, of a part named before or behind."""

from __future__ import annotations

import pytest

from tests.reading.test_faults import told


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        # behind their labels
        ("foxing nil, bumps nil", {"foxing copy denied", "bump copy denied"}),
        ("Writing: No. Water damage: No.", {"marking book denied", "water copy denied"}),
        ("Jacket: chips none, tears none.", {"chip jacket denied", "tear jacket denied"}),
        ("Tears? No.", {"tear book elsewhere", "tear copy denied"}),
        # lists, with and without commas
        ("no foxing no tears no stains spine tight", {"foxing copy denied", "tear copy denied", "stain copy denied"}),
        ("Pages free of writing and jacket free of chips.", {"marking book denied", "chip jacket denied"}),
        ("There isn't a mark on it.", {"marking book denied"}),
        ("Not a mark, stain or crease anywhere.", {"marking book denied", "stain book denied", "crease book denied"}),
        ("It has none of the usual foxing.", {"foxing copy denied"}),
        # what would not be found
        ("You won't find a tear or chip on the jacket.", {"tear jacket denied", "chip jacket denied"}),
        ("One will look in vain for damp, foxing or a tear.", {"water copy denied", "foxing copy denied", "tear copy denied"}),
        ("By some miracle it has escaped stains.", {"stain copy denied"}),
        # of the jacket, of both
        ("No jacket tears, chips or soiling.", {"tear jacket denied", "chip jacket denied", "soiling jacket denied"}),
        ("no dj, stains on cover", {"stain book asserted"}),
        ("Neither book nor jacket has any tears.", {"tear copy denied"}),
        # exceptions
        ("No foxing except on the endpapers.", {"foxing copy denied", "foxing book asserted"}),
        ("The jacket has no wear apart from at the corners.", {"rubbing jacket denied", "rubbing jacket asserted"}),
        ("No tears save for a small one to the rear panel.", {"tear copy denied", "tear jacket asserted"}),
        ("No wear except the corners.", {"rubbing copy denied", "rubbing book asserted"}),
        ("No marks except a name.", {"marking book denied", "name book asserted"}),
    ],
)
def test_a_denial_reaches_what_it_denies(text: str, claims: set[str]) -> None:
    assert told(text) == claims


@pytest.mark.parametrize("text", ["No jacket tears.", "Neither book nor jacket has any tears.", "Jacket: chips none."])
def test_a_jacket_whose_faults_are_denied_is_there(text: str) -> None:
    assert told(text, {"jacket"}) == {"present jacket asserted"}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("I wouldn't go so far as to say it has no foxing.", {"foxing book asserted"}),
        (
            "May have highlighting, creases or a cracked spine as standard.",
            {"marking book hedged", "crease book hedged", "crack book hedged"},
        ),
    ],
)
@pytest.mark.xfail(strict=True, reason="two denials that make none, boilerplate with an aside")
def test_denials_not_yet_read(text: str, claims: set[str]) -> None:
    assert told(text) == claims
