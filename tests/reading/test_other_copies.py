"""Talk of other copies is told by what it is told of, and comes back to this copy."""

import pytest

from auditor.reading import offers_several, read

ELSEWHERE = [
    ("Most of those I've handled over the years were ex-library; this isn't.", "ex_library", {("yes", "elsewhere")}),
    ("The one in the county museum has a bookplate.", "owner_mark", {("bookplate", "elsewhere")}),
    ("My last copy had foxing and went for a tenner. Boards bumped.", "defect", {("foxing", "elsewhere"), ("bump", "asserted")}),
    ("You see them price-clipped as often as not.", "price_clipped", {("yes", "elsewhere")}),
    ("My sister's has a tear to the jacket, mine is clean.", "defect", {("tear", "elsewhere")}),
    ("When they reprinted it the boards went to red cloth.", "binding", {("red cloth", "elsewhere")}),
    ("Some turn up with a remainder mark. Boards rubbed.", "remainder_mark", {("yes", "elsewhere")}),
    ("A true first has rust cloth, so this is later.", "binding", {("rust cloth", "elsewhere")}),
    (
        "Others have turned up in brown cloth; ours is in blue cloth.",
        "binding",
        {("brown cloth", "elsewhere"), ("blue cloth", "asserted")},
    ),
    ("The British edition (Harrow & Pike, 1961) was bound in green cloth.", "binding", {("green cloth", "elsewhere")}),
    (
        "The guides ask for blue cloth and gilt. This is in red cloth.",
        "binding",
        {("blue cloth", "elsewhere"), ("red cloth", "asserted")},
    ),
    ("In the shop we also hold a signed one.", "signed", {("signed", "elsewhere")}),
    ("If only it were signed! Sunned spine.", "signed", {("signed", "elsewhere")}),
    ("A signed one would be five times the price. Foxed.", "signed", {("signed", "elsewhere")}),
    ("Facsimile jackets are about, made by a firm in Leeds.", "jacket", {("facsimile", "elsewhere")}),
]


@pytest.mark.parametrize(("text", "feature", "expected"), ELSEWHERE)
def test_what_is_told_of_other_copies(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert {(claim.value, claim.stance) for claim in read(text) if claim.feature == feature} == expected


OURS = [
    ("Most pages have foxing.", "defect", {("foxing", "asserted")}),
    ("Plates clean. Some have foxing.", "defect", {("foxing", "asserted")}),
    ("The last one of the series, signed by the author.", "signed", {("signed", "asserted")}),
    ("The one on the rear panel has a tear.", "defect", {("tear", "asserted")}),
    ("Stain through the first three chapters, a loose leaf.", "defect", {("stain", "asserted"), ("loose", "asserted")}),
    ("Not only signed but dated by the author.", "signed", {("signed", "asserted")}),
    ("Without a doubt a first printing.", "printing", {("1", "asserted")}),
    ("I've no doubts about it being a first printing.", "printing", {("1", "asserted")}),
]


@pytest.mark.parametrize(("text", "feature", "expected"), OURS)
def test_a_cue_in_another_sense_is_none(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert {(claim.value, claim.stance) for claim in read(text) if claim.feature == feature} == expected


@pytest.mark.parametrize(
    ("text", "several"),
    [
        ("Lot of 6 mysteries, hardcovers", True),
        ("Two hardcovers by E. Corrow: The Weir and Low Tide", True),
        ("One of 500 copies, signed", False),
        ("Number 112 of 250 copies signed by the author", False),
        ("First printing of 2500 copies", False),
        ("1974 hardcover books in jackets", False),
    ],
)
def test_a_limitation_is_no_lot(text: str, several: bool) -> None:
    assert offers_several(text) is several
