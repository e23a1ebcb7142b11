"""Whose hand it is: authors' and owners' names, quoted dedications, stamps, what is signed on a thing put in."""

from __future__ import annotations

import pytest

from tests.reading.test_faults import told

MARKS = {"signed", "owner_mark", "ex_library", "remainder_mark"}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Inscribed by the donor, not by the author.", {"inscription book asserted", "inscribed book denied"}),
        ("Somebody's name in the front, not the author's.", {"name book asserted", "signed book denied"}),
        ("Both authors wrote their names on the flyleaf.", {"signed book asserted"}),
        ("Signed on an extra leaf which the binder has inserted.", {"tipped_in book asserted"}),
        ("Signature on the cover is stamped in gilt.", {"printed book asserted"}),
        ("She signed it for me at the town hall.", {"inscribed book asserted"}),
        ('"H. Penhallow, Truro" in copperplate on the first blank.', {"name book asserted"}),
        ('"To Gwen, passed her exams at last, from Dad, 1954" on the half-title.', {"inscription book asserted"}),
        ("Hinge strained, name, foxed.", {"name book asserted"}),
        ("Monogram in ink to the front endpaper.", {"name book asserted"}),
        ("Owner has embossed her initials into the title page.", {"stamp book asserted"}),
        ("Rubber date to the ffep.", {"stamp book asserted"}),
        ("DISCARD is stamped across the top edge.", {"yes copy asserted"}),
        ("Has a Dewey number inked in white on the spine.", {"yes copy asserted"}),
        ("Once the property of a college reading room.", {"yes copy asserted"}),
        ("Bottom page edges sprayed by the wholesaler.", {"yes book asserted"}),
        ("No ink line, slash or dot on any edge.", {"yes book denied"}),
        ("Stamped by a bookshop in Leeds on the rear pastedown.", {"stamp book asserted"}),
        ("The author's inscription to a friend.", {"inscribed book asserted"}),
        ("Inscribed 'For Ruth' and signed by the author.", {"inscribed book asserted", "signed book asserted"}),
        ("The author signed off his last chapter in haste.", set()),
    ],
)
def test_whose_hand(text: str, claims: set[str]) -> None:
    assert told(text, MARKS) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("The jacket is original to the book and no reproduction.", {"present jacket asserted", "facsimile jacket denied"}),
        ("The wrapper has not been supplied from elsewhere.", {"present jacket asserted", "supplied jacket denied"}),
        ("The jacket on it is a modern copy.", {"facsimile jacket asserted"}),
        ("Jacket-less as published.", {"none issued jacket asserted"}),
        ("The dust jacket has gone the way of all dust jackets.", {"lacking jacket asserted"}),
        ("Top corner of ffep clipped.", set()),
        ("The hero's leather jacket is a running joke.", set()),
    ],
)
def test_which_jacket(text: str, claims: set[str]) -> None:
    assert told(text, {"jacket"}) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("f/f, never opened", {"fine book asserted", "fine jacket asserted"}),
        ("Near fine in same.", {"near fine book asserted", "near fine jacket asserted"}),
        ("NF copy in F jacket.", {"near fine book asserted", "fine jacket asserted"}),
        ("Somewhere between fair and good.", {"fair book asserted", "good book asserted"}),
        ("Not fine, I make it VG.", {"fine book denied", "very good book asserted"}),
        ("Printed on very good paper with fair margins.", set()),
    ],
)
def test_which_grade(text: str, claims: set[str]) -> None:
    assert told(text, {"grade"}) == claims
