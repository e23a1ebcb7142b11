"""Faults, owners' marks and repairs: what short sentences of the trade and of amateurs claim, by the contract."""

from __future__ import annotations

import pytest

from auditor.reading import read

FEATURES = {"defect", "owner_mark", "repair"}


def told(text: str, features: set[str] = FEATURES) -> set[str]:
    """Claims as "value part stance", without the feature: the values of these features differ."""
    return {f"{c.value} {c.part} {c.stance}" for c in read(text) if c.feature in features}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Prelims foxed.", {"foxing book asserted"}),
        ("Brown spots to the endpapers.", {"foxing book asserted"}),
        ("Spotting to the fore-edge.", {"foxing book asserted"}),
        ("Spine sunned.", {"fading book asserted"}),
        ("Spine a trifle darkened.", {"fading book asserted"}),
        ("Toned at the spine.", {"fading book asserted"}),
        ("Spine and board edges discoloured.", {"fading book asserted"}),
        ("Pages browned.", {"tanning book asserted"}),
        ("pages have gone yellow", {"tanning book asserted"}),
        ("Paper yellow with age.", {"tanning book asserted"}),
        ("Cloth nicked at the heel.", {"chip book asserted"}),
        ("Dust jacket has a piece missing from the rear panel.", {"chip jacket asserted"}),
        ("Jacket lacks a small piece at the crown.", {"chip jacket asserted"}),
        ("DJ ripped along the fold.", {"tear jacket asserted"}),
        ("One page has a closed tear.", {"tear book asserted"}),
        ("Dog ears to a few pages.", {"crease book asserted"}),
        ("Corner of the front flap folded over.", {"crease jacket asserted"}),
        ("Light handling creases to the front panel.", {"crease jacket asserted"}),
        ("Corners knocked.", {"bump book asserted"}),
        ("Spine ends pushed in.", {"bump book asserted"}),
        ("cover worn thru at the corners", {"rubbing book asserted"}),
        ("Boards scuffed, spine ends frayed.", {"rubbing book asserted"}),
        ("Light shelf wear to the boards.", {"rubbing book asserted"}),
        ("A gouge in the front board.", {"scratch book asserted"}),
        ("coffee ring on the front cover", {"stain book asserted"}),
        ("Ink spots to the rear board.", {"stain book asserted"}),
        ("Covers grubby.", {"soiling book asserted"}),
        ("Dust soiling to the top edge.", {"soiling book asserted"}),
        ("Cloth a bit dingy.", {"soiling book asserted"}),
        ("Dampstained at the lower margin.", {"water book asserted"}),
        ("Water damage to the last pages.", {"water book asserted"}),
        ("Slightly cocked.", {"lean book asserted"}),
        ("A slight reading lean.", {"lean book asserted"}),
        ("Spine rolled.", {"lean book asserted"}),
        ("Two pages have come loose.", {"loose book asserted"}),
        ("Rear board detached.", {"loose book asserted"}),
        ("A gathering is sprung.", {"loose book asserted"}),
        ("Joints cracked but holding.", {"crack book asserted"}),
        ("Inner hinge split.", {"crack book asserted"}),
        ("Lacking the front free endpaper.", {"missing_leaf book asserted"}),
        ("Rear free endpaper gone.", {"missing_leaf book asserted"}),
        ("Half-title missing.", {"missing_leaf book asserted"}),
        ("Some underlining.", {"marking book asserted"}),
        ("Notes in pencil in the margins.", {"marking book asserted"}),
        ("a few pages have crayon", {"marking book asserted"}),
        ("Musty smell.", {"odor book asserted"}),
        ("smells of cigarettes", {"odor book asserted"}),
        ("Sticker ghost to the rear panel.", {"sticker jacket asserted"}),
        ("Tape shadows to the pastedowns.", {"tape book asserted"}),
        ("Jacket taped to the boards.", {"tape jacket asserted"}),
        ("Small worm hole in the gutter.", {"hole book asserted"}),
        ("Boards bowed.", {"warp book asserted"}),
        ("Offsetting to the title page.", {"offsetting book asserted"}),
    ],
)
def test_each_fault_in_its_wordings(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Unmarked.", {"marking book denied"}),
        ("No pencil or pen.", {"marking book denied"}),
        ("Nothing written inside.", {"marking book denied"}),
        ("All pages present.", {"missing_leaf book denied"}),
        ("No tears, chips or creases.", {"tear copy denied", "chip copy denied", "crease copy denied"}),
        ("A clean copy, no foxing.", {"foxing copy denied"}),
        ("Free of foxing.", {"foxing copy denied"}),
        ("The boards aren't warped.", {"warp book denied"}),
        ("Hinges not cracked.", {"crack book denied"}),
        ("Spine uncreased.", {"crease book denied"}),
        ("Tear-free jacket.", {"tear jacket denied"}),
        ("Not collated.", {"missing_leaf book unchecked"}),
        ("May contain highlighting.", {"marking book hedged"}),
    ],
)
def test_denied_unchecked_and_hedged(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Previous owner's name on ffep.", {"name book asserted"}),
        ("prev owners name inside", {"name book asserted"}),
        ("someones name inside in biro", {"name book asserted"}),
        ("Ink ownership to the flyleaf.", {"name book asserted"}),
        ("Ownership inscription dated 1931.", {"name book asserted"}),
        ("Owner sig. to ffep.", {"name book asserted"}),
        ("Small neat name on the pastedown.", {"name book asserted"}),
        ("Signed by a previous owner.", {"name book asserted"}),
        ('Signature of "R. Tallow 1961" on the half title.', {"name book asserted"}),
        ("Ink signature to the front endpaper.", {"name book asserted"}),
        ("No names.", {"name book denied"}),
        ("Fine but for a name in ink.", {"name book asserted"}),
        ("Gift inscription to the half title.", {"inscription book asserted"}),
        ("Inscribed on the flyleaf from Aunt Lil, Xmas 1951.", {"inscription book asserted"}),
        ("Inscribed by a former owner.", {"inscription book asserted"}),
        ("No inscr.", {"inscription book denied"}),
        ("School prize label inside the front cover.", {"bookplate book asserted"}),
        ("Ex libris plate to the pastedown.", {"bookplate book asserted"}),
        ("No bkplt.", {"bookplate book denied"}),
        ("Bookseller's ticket to the rear pastedown.", {"stamp book asserted"}),
        ("Date stamp on the endpaper.", {"stamp book asserted"}),
        ("Nice jacket, a former owner's stamp on the title page.", {"stamp book asserted"}),
        ("Jacket chipped. Neat ownership inscription.", {"chip jacket asserted", "name book asserted"}),
    ],
)
def test_owners_marks(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Rebound in half calf.", {"rebound book asserted"}),
        ("Recased.", {"recased book asserted"}),
        ("Neatly rebacked.", {"rebacked book asserted"}),
        ("Jacket professionally restored.", {"restored jacket asserted"}),
        ("An unrestored copy.", {"restored copy denied"}),
        ("Wrapper restored at the folds.", {"restored jacket asserted"}),
        ("Endpapers renewed.", {"replaced_leaf book asserted"}),
        ("Title page in facsimile.", {"replaced_leaf book asserted"}),
        ("Tear to the rear panel mended with a piece of clear tape.", {"tear jacket asserted", "tape_repair jacket asserted"}),
        ("Spine repaired with library tape.", {"tape_repair book asserted"}),
    ],
)
def test_repairs(text, claims):
    assert told(text) == claims


@pytest.mark.parametrize(
    "text",
    [
        "A gripping tale of a torn family and a faded empire.",
        "The story of a loose woman, a damp moor and a stain on the honour of the regiment.",
        "A novel about the chips that fall when a marriage cracks.",
        'With "tears" misprinted "tares" on p. 12.',
        "Laid in is a card. A real tear-jerker.",
        "By the author of Low Water Mark.",
        "Slipcase rubbed and split at one edge.",
        "From a smoke-free home.",
        "Written by A. R. Chipping.",
        "Please ask for photos of any wear.",
        "She keeps a wet winter in a damp cottage.",
        "Tight and square.",
        "Red topstain still bright.",
        "Publisher's name at the foot of the spine.",
        "The name Marie in the dedication.",
        "Gilt-stamped green cloth.",
        "Pen and ink drawings by the author.",
        "Folding map at the rear.",
        "Printed by offset lithography.",
        "Blue boards with silver writing.",
        "We ship in a box with tracked delivery, signed for.",
    ],
)
def test_false_friends_are_quiet(text):
    assert told(text) == set()


@pytest.mark.parametrize(
    "text", ["Corners bumped, spine sunned, pages foxed.", "Light wear to the jacket edges; a name on the flyleaf."]
)
@pytest.mark.parametrize("change", [str.upper, str.lower, lambda t: t.replace(".", "!"), lambda t: t.replace("; ", ".\n")])
def test_case_and_marks_change_nothing(text, change):
    assert told(change(text)) == told(text) != set()


@pytest.mark.parametrize("fault", ["foxing", "tears", "chips", "stains", "creases"])
def test_no_turns_a_claim_into_its_denial(fault):
    (claim,) = told(f"Slight {fault} to the jacket.")
    (denied,) = told(f"No {fault} to the jacket.")
    assert claim.replace("asserted", "denied") == denied
