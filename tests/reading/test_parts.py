"""Which part of the copy a fault is of: governing nouns, lists, what was spoken of last, what only one part can have."""

from __future__ import annotations

import pytest

from tests.reading.test_faults import told


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        # a noun behind
        ("Chips to the jacket.", {"chip jacket asserted"}),
        ("Chip to the head of the spine of the jacket.", {"chip jacket asserted"}),
        ("Wear to the edges of the boards.", {"rubbing book asserted"}),
        ("Some rubbing to the joints of the wrapper.", {"rubbing jacket asserted"}),
        ("Tear at top of jacket spine.", {"tear jacket asserted"}),
        ("Slightly worn in dust jacket.", {"rubbing book asserted"}),
        ("A tear in the dust jacket.", {"tear jacket asserted"}),
        ("In a chipped and worn jacket.", {"chip jacket asserted", "rubbing jacket asserted"}),
        ("Torn dj.", {"tear jacket asserted"}),
        ("Closed tear (1.5cm) to the rear of the dw.", {"tear jacket asserted"}),
        # a subject before
        ("Jacket chipped.", {"chip jacket asserted"}),
        ("Jacket spine faded.", {"fading jacket asserted"}),
        ("corners bumped spine faded jacket torn", {"bump book asserted", "fading book asserted", "tear jacket asserted"}),
        ("The jacket, though bright, is creased.", {"crease jacket asserted"}),
        ("Book fine, jacket worn.", {"rubbing jacket asserted"}),
        ("Dust jacket fine, boards scuffed.", {"rubbing book asserted"}),
        # lists over commas
        ("Chips, creases and tears to the jacket.", {"chip jacket asserted", "crease jacket asserted", "tear jacket asserted"}),
        (
            "A chip, a short tear and some soiling to the rear panel.",
            {"chip jacket asserted", "tear jacket asserted", "soiling jacket asserted"},
        ),
        ("Jacket without chips, tears or fading.", {"chip jacket denied", "tear jacket denied", "fading jacket denied"}),
        ("No chips, tears or creases to the jacket.", {"chip jacket denied", "tear jacket denied", "crease jacket denied"}),
        # book and jacket alike
        ("Book and dust jacket both sunned at the spine.", {"fading book asserted", "fading jacket asserted"}),
        ("Tears along the edge of the jacket and the fore-edge is foxed.", {"tear jacket asserted", "foxing book asserted"}),
        ("Foxed, and the jacket likewise.", {"foxing book asserted", "foxing jacket asserted"}),
        ("Spine sunned, as is that of the jacket.", {"fading book asserted", "fading jacket asserted"}),
        ("Boards worn; dj ditto.", {"rubbing book asserted", "rubbing jacket asserted"}),
        ("Boards bumped and so is the jacket.", {"bump book asserted", "bump jacket asserted"}),
        ("The jacket has tears. The boards are stained too.", {"tear jacket asserted", "stain book asserted"}),
        (
            "Boards worn. The jacket too, with a chip.",
            {"rubbing book asserted", "rubbing jacket asserted", "chip jacket asserted"},
        ),
        # a new subject
        ("Corners bumped with creases to the wrapper.", {"bump book asserted", "crease jacket asserted"}),
        ("The jacket shows wear but the book is stained.", {"rubbing jacket asserted", "stain book asserted"}),
        ("The jacket has a rip on the front and it's yellowed.", {"tear jacket asserted", "tanning jacket asserted"}),
        ("Jacket is worn and there is a tear in the boards.", {"rubbing jacket asserted", "tear book asserted"}),
        # what was spoken of last
        ("Jacket bright, spine faded.", {"fading jacket asserted"}),
        ("The jacket is unclipped. Short tear at the crown.", {"tear jacket asserted"}),
        ("Very good in a very good jacket, the latter chipped.", {"chip jacket asserted"}),
        ("A fine book in a fine wrapper; the spine of the latter is creased.", {"crease jacket asserted"}),
        ("Book and jacket very good, the former faded.", {"fading book asserted"}),
        ("Green cloth. Spine sunned.", {"fading book asserted"}),
        ("No jacket. Spine ends worn.", {"rubbing book asserted"}),
        ("Book: bumped corners. Jacket: two closed tears.", {"bump book asserted", "tear jacket asserted"}),
        ("Jacket: no wear, no creases, no marks.", {"rubbing jacket denied", "crease jacket denied", "marking jacket denied"}),
        ("The jacket is complete - no chips, no tears.", {"chip jacket denied", "tear jacket denied"}),
        # denials without a noun
        ("No rips or tears.", {"tear copy denied"}),
        ("Fine in fine jacket, no chips.", {"chip copy denied"}),
        ("no names no marks no stains", {"name book denied", "marking book denied", "stain book denied"}),
        ("No dog ears, no highlighting.", {"crease copy denied", "marking copy denied"}),
        ("No writing.", {"marking book denied"}),
        ("No bookplates.", {"bookplate book denied"}),
        # what only one part can have
        ("Jacket chipped, spine cocked.", {"chip jacket asserted", "lean book asserted"}),
        ("Jacket a little worn. Hinges cracked.", {"rubbing jacket asserted", "crack book asserted"}),
        ("Jacket torn. Bump to the heel.", {"tear jacket asserted", "bump book asserted"}),
        ("Jacket lightly soiled. Edges foxed.", {"soiling jacket asserted", "foxing book asserted"}),
        ("Wrapper rubbed, top edge dusty.", {"rubbing jacket asserted", "soiling book asserted"}),
        ("Jacket clean. Slight musty smell.", {"odor book asserted"}),
        # both
        ("VG/VG, both with light wear.", {"rubbing book asserted", "rubbing jacket asserted"}),
        ("Light wear to book and jacket.", {"rubbing book asserted", "rubbing jacket asserted"}),
    ],
)
def test_part(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    "noun", ["jacket", "dj", "dust jacket", "d/w", "dustwrapper", "dust-jacket", "wrapper", "front panel", "rear flap"]
)
def test_every_name_of_the_jacket(noun):
    assert told(f"Small tear to the {noun}.") == {"tear jacket asserted"}


@pytest.mark.parametrize(
    "noun",
    ["boards", "cloth", "ffep", "front free endpaper", "title page", "rear board", "fore-edge", "text block", "half-title"],
)
def test_every_name_of_the_book(noun):
    assert told(f"VG in jacket. Small stain to the {noun}.") == {"stain book asserted"}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Jacket chipped, and likewise the spine of the book.", {"chip jacket asserted", "chip book asserted"}),
        (
            "A stain to the one and a chip out of the other, book and jacket in that order.",
            {"stain book asserted", "chip jacket asserted"},
        ),
        ("Wear is confined to the wrapper; what it protected is unspotted.", {"rubbing jacket asserted", "foxing book denied"}),
        ("Both the cloth and the paper that covers it have faded.", {"fading book asserted", "fading jacket asserted"}),
    ],
)
@pytest.mark.xfail(strict=True, reason="parts told by a turn of the sentence alone")
def test_parts_not_yet_told(text, claims):
    assert told(text) == claims
