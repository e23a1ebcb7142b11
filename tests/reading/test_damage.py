"""Damage in plain speech: a part and what became of it, a thing and its trace, what a change of colour is."""

from __future__ import annotations

import pytest

from tests.reading.test_faults import told


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        # what holds it has failed, what comes away
        ("The stitching has given up in the middle.", {"loose book asserted"}),
        ("Front hinge is on its way out.", {"loose book asserted"}),
        ("The block pulls away from its case.", {"loose book asserted"}),
        ("Text block has parted from the case.", {"loose book asserted"}),
        ("Hinges like new, no play in them.", {"loose book denied"}),
        # worn, warped, holed
        ("Corners show board.", {"rubbing book asserted"}),
        ("Corners rubbed through to the boards.", {"rubbing book asserted"}),
        ("Boards splay outward.", {"warp book asserted"}),
        ("Slightly concave boards.", {"warp book asserted"}),
        ("Covers uncurled.", {"warp book denied"}),
        ("Cigarette burn to the rear board.", {"hole book asserted"}),
        ("2 claw lines down the back board", {"scratch book asserted"}),
        ("The jacket is in four pieces.", {"tear jacket asserted"}),
        ("Spine has white reading lines.", {"crease book asserted"}),
        # what is gone
        ("Pages 33 to 48 are missing.", {"missing_leaf book asserted"}),
        ("Lacks the final advert leaf.", {"missing_leaf book asserted"}),
        ("The blank before the half-title has been cut away.", {"missing_leaf book asserted"}),
        ("Complete with the half-title.", {"missing_leaf book denied"}),
        ("Half the spine cloth has gone.", {"chip book asserted"}),
        ("Torn at the crown with a sliver of cloth absent.", {"tear book asserted", "chip book asserted"}),
        ("Pages have gone wavy.", {"warp book asserted"}),
        # colours
        ("The jacket's spine used to be scarlet, it is now a sort of salmon.", {"fading jacket asserted"}),
        ("Cloth, once bright red, is now dusty pink.", {"fading book asserted"}),
        ("Page edges sun-tanned.", {"tanning book asserted"}),
        ("The jacket has gone quite grey from a hundred thumbs.", {"soiling jacket asserted"}),
        ("Boards darkened by handling.", {"soiling book asserted"}),
        ("Old sellotape, now browned.", {"tape book asserted"}),
        # traces
        ("A newspaper cutting has left its brown ghost on two pages.", {"offsetting book asserted"}),
        ("A mirror image of the map on the leaf facing it.", {"offsetting book asserted"}),
        ("Someone stood a wet mug on the front board.", {"stain book asserted"}),
        ("Remains of a supermarket label on the front cover.", {"sticker book asserted"}),
        ("Rear flap carries a 3-for-2 roundel.", {"sticker jacket asserted"}),
        ("Whiffs of the loft.", {"odor book asserted"}),
        # repairs
        ("Spine professionally relaid.", {"rebacked book asserted"}),
        ("The spine has never been relaid.", {"rebacked book denied"}),
        ("Pages 45-48 supplied from another copy.", {"replaced_leaf book asserted"}),
        ("Leaf K4 is from another copy.", {"replaced_leaf book asserted"}),
        ("The folding map is a photocopy.", {"replaced_leaf book asserted"}),
        ("Text block resewn and put back in its own covers.", {"restored book asserted", "recased book asserted"}),
        # hands
        ("A child has been at the endpapers with crayon.", {"marking book asserted"}),
        ("Erased pencil still visible on the endpaper.", {"marking book asserted"}),
        ("Spots here and there.", {"foxing book asserted"}),
        ("No lean, no dust, no spots.", {"lean book denied", "soiling book denied", "foxing book denied"}),
    ],
)
def test_damage_is_told(text: str, claims: set[str]) -> None:
    assert told(text) == claims


@pytest.mark.parametrize(
    "text",
    [
        "The thread of the plot is never lost.",
        "He pulls away from the kerb.",
        "Paper label on the front cover.",
        "Once in red, later in blue.",
        "Signed in pencil on every copy.",
        "A slow burn of a thriller.",
        "Bound in boards, gilt edges showing colour.",
    ],
)
def test_other_talk_is_no_damage(text: str) -> None:
    assert told(text) == set()
