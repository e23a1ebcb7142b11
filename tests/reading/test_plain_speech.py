"""Faults and marks in plain speech, found by form and by whole families of words: what amateurs write, by the contract."""

from __future__ import annotations

import pytest

from auditor.reading import read

FEATURES = {"defect", "owner_mark", "repair", "blind_stamp", "ex_library", "remainder_mark"}


def told(text: str) -> set[str]:
    """Claims as "value part stance"; the jacket's presence and other features aside."""
    return {f"{c.value} {c.part} {c.stance}" for c in read(text) if c.feature in FEATURES}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("The cloth has gone a bit orange.", {"fading book asserted"}),
        ("Spine of the jacket has turned from green to a dirty straw colour.", {"fading jacket asserted"}),
        ("Jacket spine mellowed to cream.", {"fading jacket asserted"}),
        ("Pages going yellowish.", {"tanning book asserted"}),
        ("The paper has turned quite brown.", {"tanning book asserted"}),
        ("One page has lost its corner.", {"chip book asserted"}),
        ("Jacket has a bit out of the top edge.", {"chip jacket asserted"}),
        ("The jacket is missing its bottom inch.", {"chip jacket asserted"}),
        ("A piece the size of a thumbnail gone from the jacket.", {"chip jacket asserted"}),
        ("Some wretch has razored out the frontispiece.", {"missing_leaf book asserted"}),
        ("The folding map is alas no longer there.", {"missing_leaf book asserted"}),
        ("It has lost its rear endpaper.", {"missing_leaf book asserted"}),
        ("Title page: absent.", {"missing_leaf book asserted"}),
        ("Boards wobble.", {"loose book asserted"}),
        ("Front cover hanging by a thread.", {"loose book asserted"}),
        ("A couple of pages fell out.", {"loose book asserted"}),
        ("Hinges have given a little.", {"loose book asserted"}),
        ("Spine has gone wonky.", {"lean book asserted"}),
        ("A tea ring on the back cover.", {"stain book asserted"}),
        ("Splodges of jam on two pages.", {"stain book asserted"}),
        ("A child has ticked half the entries.", {"marking book asserted"}),
        ("Pencil sums on the rear pastedown.", {"marking book asserted"}),
        ("Pongs a bit.", {"odor book asserted"}),
        ("Corners knocked about.", {"bump book asserted"}),
        ("Pages rippled.", {"warp book asserted"}),
        ("Two leaves stuck back in with sellotape.", {"tape_repair book asserted"}),
        ("Jacket mended from behind with yellowed library tape.", {"tape_repair jacket asserted"}),
        ("bds rubd, pp. fxd.", {"rubbing book asserted", "foxing book asserted"}),
    ],
)
def test_faults_in_plain_speech(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("No page has been lost.", {"missing_leaf book denied"}),
        ("Not one plate is missing.", {"missing_leaf book denied"}),
        ("Clean and odourless.", {"odor copy denied"}),
        ("All leaves secure.", {"loose book denied"}),
        ("Boards unstained.", {"stain book denied"}),
        ("No chips, no sun.", {"chip copy denied", "fading copy denied"}),
        ("Book and jacket both near fine no dings", {"bump copy denied"}),
        ("Possibly missing a plate.", {"missing_leaf book hedged"}),
    ],
)
def test_plain_denials_and_doubts(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Signed by the author on a slip since pasted to the half-title.", "tipped_in"),
        ("A card glued inside bears the author's autograph.", "tipped_in"),
        ("Signed by the author on the title page.", "signed"),
    ],
)
def test_a_signature_on_a_slip_fastened_in(text, value):
    assert [claim.value for claim in read(text) if claim.feature == "signed"] == [value]


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("A name in texta on the first page.", {"name book asserted"}),
        ("Name of one P. Garth inside.", {"name book asserted"}),
        ("Names in two of them.", {"name book asserted"}),
        ("A Mrs Tolley wrote her name in it.", {"name book asserted"}),
        ("Birthday message to a nephew on the flyleaf.", {"inscription book asserted"}),
        ("Dedication to my gran from her sister.", {"inscription book asserted"}),
        ("No name, no plate.", {"name book denied", "bookplate book denied"}),
        ("Heraldic bookplate inside.", {"bookplate book asserted"}),
    ],
)
def test_owners_in_plain_speech(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("A little square is pressed into the back board.", {"yes book asserted"}),
        ("No owl on the back board.", {"yes book denied"}),
        ("Rear board has no dimple.", {"yes book denied"}),
        ("rem. dot to lower edge", {"yes book asserted"}),
        ("It belonged to a village library.", {"yes copy asserted"}),
        ("lib. stamps on the title", {"yes copy asserted"}),
    ],
)
def test_club_library_and_remainder_in_plain_speech(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("A coffee ring, on the jacket.", {"stain jacket asserted"}),
        ("Jacket torn at the hinge fold.", {"tear jacket asserted"}),
        ("Wrapper missing. Lower edges nibbled.", {"chip book asserted"}),
        ("Paperback. Front panel creased.", {"crease book asserted"}),
        ("Jacket spine panel darkened.", {"fading jacket asserted"}),
    ],
)
def test_parts_behind_commas_and_without_a_jacket(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    "text",
    [
        "The missing page numbers are a printer's slip.",
        "The front flap has gone over to press reviews.",
        "Top edge unstained.",
        "Rolling stock of the northern lines.",
        "He fell off a horse and lost his way home.",
        "A novel of a house that has gone to the bad.",
        "The London edition came out a month earlier.",
        "A sticker the size of a stamp is printed in the design.",
        "Soaked off its label.",
        "I've shaken it.",
    ],
)
def test_plain_words_in_another_sense_are_quiet(text):
    assert not {claim for claim in told(text) if not claim.startswith("sticker")}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Backboard fine; front board has a white ring.", {"stain book asserted"}),
        ("A ring from a gin glass on the jacket.", {"stain jacket asserted"}),
        ("Ghost of a fern on page 40.", {"offsetting book asserted"}),
        ("The outline of a cutting on the endpapers.", {"offsetting book asserted"}),
        ("The front hinge is beginning to part.", {"crack book asserted"}),
        ("Rear joint about to go.", {"crack book asserted"}),
        ("Sheets browned.", {"tanning book asserted"}),
        ("Pages the colour of strong tea.", {"tanning book asserted"}),
        ("Jacket good, inner hinges strengthened.", {"restored book asserted"}),
        ("Text block tilts to the left.", {"lean book asserted"}),
        ("Three recipes starred in biro.", {"marking book asserted"}),
        ("Somebody drew a beard on the frontispiece.", {"marking book asserted"}),
        ("The sun has not got at the spine.", {"fading book denied"}),
        ("Sunlight has caught the spine of the jacket.", {"fading jacket asserted"}),
        ("The errata slip seems to have been lifted.", {"missing_leaf book hedged"}),
        ("Contents complete.", {"missing_leaf book denied"}),
        ("No plates wanting.", {"missing_leaf book denied"}),
        ("It hasn't got all its maps.", {"missing_leaf book asserted"}),
        ("A red line drawn across the page bottoms.", {"yes book asserted"}),
        ("A stripe of ink along the bottom edge.", {"yes book asserted"}),
        ("No circles or dents on the back.", {"yes book denied"}),
        ("Ex county library.", {"yes copy asserted"}),
        ("It was never near a lending library.", {"yes copy denied"}),
        ("Family crest pasted in.", {"bookplate book asserted"}),
        ("Untouched by water.", {"water copy denied"}),
        ("Folding maps without splits.", {"tear book denied"}),
        ("I never found any writing.", {"marking book denied"}),
        ("Spine once replaced.", {"rebacked book asserted"}),
        ("Flap corner gone.", set()),
        ("Selling as a set, not splitting.", set()),
        ("Die-cut holes all there.", set()),
        ("Top edge not stained.", set()),
        ("The smell is fine.", set()),
        ("Peter shed big tears on the last page.", set()),
    ],
)
def test_more_plain_speech(text: str, claims: set[str]) -> None:
    assert told(text) == claims


def test_what_goes_on_about_the_pages_is_of_the_book() -> None:
    assert told("Jacket chipped. Pages tanned but pliable; none is torn.") == {
        "chip jacket asserted",
        "tanning book asserted",
        "tear book denied",
    }


@pytest.mark.parametrize(
    ("text", "stance"),
    [
        ("Paperback reprint of a 1988 hardcover.", "elsewhere"),
        ("That price is for the hardcover.", "elsewhere"),
        ("Hardcover, 1988.", "asserted"),
    ],
)
def test_another_editions_format_is_said_of_no_copy(text: str, stance: str) -> None:
    assert [c.stance for c in read(text) if c.value == "hardcover"] == [stance]
