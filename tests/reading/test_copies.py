"""What kind of copy it is: signatures, club, library and remainder copies, proofs, formats, words off the scale."""

from __future__ import annotations

import pytest

from tests.reading.test_faults import told


def kinds(text: str, feature: str) -> set[str]:
    return {claim.replace(" book ", " ").replace(" copy ", " ") for claim in told(text, {feature})}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Signed by the author on the title page.", {"signed asserted"}),
        ("Signed by Ottilie Wren.", {"signed asserted"}),
        ("SIGNED!", {"signed asserted"}),
        ("Flat signed.", {"signed asserted"}),
        ("Signed by the illustrator.", {"signed asserted"}),
        ("Inscribed by Hester Quillan to her typist.", {"inscribed asserted"}),
        ("Inscribed by the author.", {"inscribed asserted"}),
        ("Presentation copy, inscribed by the author to his brother.", {"inscribed asserted"}),
        ("Signed by the author on a bookplate.", {"bookplate asserted"}),
        ("Bookplate signed by the author.", {"bookplate asserted"}),
        ("With a signed bookplate laid in.", {"bookplate asserted"}),
        ("Signed by the author on a tipped-in leaf.", {"tipped_in asserted"}),
        ("Signed on a leaf tipped in by the publisher.", {"tipped_in asserted"}),
        ("Facsimile signature on the front board.", {"printed asserted"}),
        ("The signature is printed.", {"printed asserted"}),
        ("Signed by the author on the title page, not a bookplate.", {"signed asserted"}),
        ("Inscribed by Mack Delahunt to the printer.", {"inscribed asserted"}),
        ("Not signed.", {"signed denied"}),
        ("Unsigned.", {"signed denied"}),
        ("Signed: not by author.", {"signed denied"}),
        ("Signed: no.", {"signed denied"}),
        ("Signed by a previous owner.", set()),
        ("Signed by the former owner on the flyleaf.", set()),
        ("Sent by Royal Mail signed for.", set()),
        ("Signature required on delivery.", set()),
        ("One loose signature.", set()),
        ("Designed by the author's wife.", set()),
    ],
)
def test_signatures(text, claims):
    assert kinds(text, "signed") == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Book club edition.", {"yes asserted"}),
        ("BCE.", {"yes asserted"}),
        ("Not BOMC.", {"yes denied"}),
        ("Not the book club one.", {"yes denied"}),
        ("Not club.", {"yes denied"}),
        ("It's the book club one.", {"yes asserted"}),
        ("A story of the Pickwick Club.", set()),
        ("Member of the Antiquarian Booksellers club.", set()),
    ],
)
def test_club_copies(text, claims):
    assert kinds(text, "book_club") == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Ex-library with the usual marks.", {"yes asserted"}),
        ("XLIB.", {"yes asserted"}),
        ("Pocket shadow, spine label, withdrawn.", {"yes asserted"}),
        ("Withdrawn from Tarn County libraries.", {"yes asserted"}),
        ("Has a card pocket and stamps.", {"yes asserted"}),
        ("Not from a library.", {"yes denied"}),
        ("Ex-lib: no.", {"yes denied"}),
        ("They meet in the library of a great house.", set()),
        ("Library of Congress number on the verso.", set()),
        ("Modern Library edition.", set()),
        ("Paper spine label chipped.", set()),
    ],
)
def test_library_copies(text, claims):
    assert kinds(text, "ex_library") == claims
    assert not kinds(text, "owner_mark")


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Remainder dot on the bottom edge.", {"yes asserted"}),
        ("a sharpie dot on the bottom edge", {"yes asserted"}),
        ("Red felt-tip line across the bottom edge.", {"yes asserted"}),
        ("Not remaindered.", {"yes denied"}),
        ("Remainder mark: none.", {"yes denied"}),
        ("He spent the rest of his life in Hove.", set()),
    ],
)
def test_remainder_marks(text, claims):
    assert kinds(text, "remainder_mark") == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Blind stamp on the rear board.", {"yes asserted"}),
        ("small square pressed into the back cover", {"yes asserted"}),
        ("There is a dot on the back board near the spine.", {"yes asserted"}),
        ("No dot or indent.", {"yes denied"}),
        ("Nothing pressed into the rear board.", {"yes denied"}),
        ("I didn't think to feel the back cover.", {"unknown unchecked"}),
        ("A blind date in Hull.", set()),
    ],
)
def test_blind_stamps(text, claims):
    assert kinds(text, "blind_stamp") == claims


@pytest.mark.parametrize(
    ("text", "feature", "claims"),
    [
        ("Uncorrected proof in wraps.", "proof", {"yes asserted"}),
        ("Advance reader's copy.", "proof", {"yes asserted"}),
        ("Proof of postage kept.", "proof", set()),
        ("Hardback.", "format", {"hardcover asserted"}),
        ("trade pb", "format", {"paperback asserted"}),
        ("Mass-market paperback.", "format", {"mass_market asserted"}),
        ("In wrappers, as issued.", "format", {"paperback asserted"}),
        ("RARE!!", "lapse", {"rare asserted"}),
        ("Not rare.", "lapse", {"rare denied"}),
        ("An absolute gem.", "lapse", {"gem asserted"}),
        ("Vintage hardback.", "lapse", {"vintage asserted"}),
        ("Published by Vintage Books.", "lapse", set()),
        ("We are members of a rare book trade body.", "lapse", set()),
    ],
)
def test_proofs_formats_and_lapses(text, feature, claims):
    assert kinds(text, feature) == claims


@pytest.mark.parametrize("name", ["Hester Quillan", "Ottilie Wren", "J. T. Quarles", "Mack Delahunt"])
def test_any_name_may_be_the_authors(name):
    assert kinds(f"Signed by {name}.", "signed") == {"signed asserted"}
    assert kinds(f"Inscribed by {name} on the title page.", "signed") == {"inscribed asserted"}


def test_a_librarys_stamps_are_no_owners():
    assert told("Ex-library copy with the usual stamps.", {"owner_mark"}) == set()
