"""Kinds of talk found by form rather than by phrase: reports, asides, litotes, answers, other copies, corners, jackets.

The sentences are invented; what is expected follows from the contract of claims.
"""

import pytest

from auditor.reading import read


def stances(text: str, feature: str) -> set[tuple[str, str]]:
    """(value, stance) of every claim of a feature."""
    return {(claim.value, claim.stance) for claim in read(text) if claim.feature == feature}


BY_FORM = [
    ("It has a map, which the second printing exchanged for a blank.", "printing", {("2", "elsewhere")}),
    ("Unlike the club's, which is signed, ours is not signed.", "signed", {("signed", "elsewhere"), ("signed", "denied")}),
    ("Unlike the reprint, which is price-clipped.", "price_clipped", {("yes", "elsewhere")}),
    ("Every reprint put it right.", "edition", {("reprint", "elsewhere")}),
    ("Book club versions have a blind stamp on the rear board.", "blind_stamp", {("yes", "elsewhere")}),
    ("The orange ones are signed by the author.", "signed", {("signed", "elsewhere")}),
    ("First edition, first impression, says the bookseller's slip inside.", "printing", {("1", "hedged")}),
    ("Billed to me as the first printing.", "printing", {("1", "hedged")}),
    ("According to the chap I had it off, it's signed by the author.", "signed", {("signed", "hedged")}),
    ("The fellow who sold it to me said first printing.", "printing", {("1", "hedged")}),
    ("My neighbour says it's a first printing.", "printing", {("1", "hedged")}),
    ("No remainder mark, so far as my torch reveals.", "remainder_mark", {("no", "hedged")}),
    ("Not a book club edition, to my untrained eye.", "book_club", {("no", "hedged")}),
    ("Nor, so far as any of us can make out, is it a book club edition.", "book_club", {("no", "hedged")}),
    ("It would be untrue to say that there's no foxing.", "defect", {("foxing", "asserted")}),
    ("I'd be lying if I said it was uncreased.", "defect", {("crease", "asserted")}),
    ("Nobody has underlined anything.", "defect", {("marking", "denied")}),
    ("It aint foxed.", "defect", {("foxing", "denied")}),
    ("Never been price-clipped.", "price_clipped", {("yes", "denied")}),
    ("Torn, no; foxed, no.", "defect", {("tear", "denied"), ("foxing", "denied")}),
    ("Not signed: a big stain on the front board.", "defect", {("stain", "asserted")}),
    ("Is it signed? Sadly not.", "signed", {("signed", "elsewhere"), ("signed", "denied")}),
    ("Has the jacket been price-clipped? It has.", "price_clipped", {("yes", "elsewhere"), ("yes", "asserted")}),
    ("Is it foxed? I'm afraid so.", "defect", {("foxing", "elsewhere"), ("foxing", "asserted")}),
    ("Has it got a jacket? Afraid not.", "jacket", {("present", "elsewhere"), ("lacking", "asserted")}),
    ("Has the jacket any tears? None.", "jacket", {("present", "asserted")}),
    ("Which impression? No earthly idea.", "printing", {("unknown", "unchecked")}),
    ("We've been asked whether it is a book club edition. It is not.", "book_club", {("yes", "elsewhere"), ("yes", "denied")}),
    ("Whichever printing it is, I couldn't tell you.", "printing", {("unknown", "unchecked")}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "feature", "expected"), BY_FORM)
def test_kinds_found_by_form(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, feature) == expected


CORNER = [
    ("Jacket: price cut off.", "asserted"),
    ("Jacket neatly snipped at the corner.", "asserted"),
    ("The jacket's lost its bottom corner.", "asserted"),
    ("Jacket; a corner's been cut.", "asserted"),
    ("The jacket is there but the corner with the price is gone.", "asserted"),
    ("Jacket price? Cut away.", "asserted"),
    ("Jacket at $5.95, uncut.", "denied"),
    ("Jacket, corner unsnipped.", "denied"),
    ("$3.95 on the flap and never snipped.", "denied"),
    ("The flap still has its corner.", "denied"),
    ("Jacket: no clip, priced $7.95.", "denied"),
    ("Price of $3.00 present.", "denied"),
]


@pytest.mark.parametrize(("text", "stance"), CORNER)
def test_the_corner_of_the_flap(text: str, stance: str) -> None:
    assert stances(text, "price_clipped") == {("yes", stance)}


@pytest.mark.parametrize(
    "text",
    [
        "Pages cut with a knife.",
        "The corners are bumped.",
        "Rust from a paper clip on the flap.",
        "Jacket $5.95.",
        "Pages uncut.",
    ],
)
def test_no_word_of_the_corner(text: str) -> None:
    assert not stances(text, "price_clipped")


JACKETS = [
    ("Jacket gone years ago.", {("lacking", "asserted")}),
    ("The jacket has gone pale down the spine.", {("present", "asserted")}),
    ("Jacket missing a small piece.", {("present", "asserted")}),
    ("The jacket went missing in a move.", {("lacking", "asserted")}),
    ("The jacket's a colour photocopy.", {("facsimile", "asserted")}),
    ("Jacket not its own.", {("supplied", "asserted")}),
    ("In jacket, from the second printing.", {("present", "asserted")}),
    ("Stiff covers. Never had a jacket.", {("none issued", "asserted")}),
    ("I never had the jacket.", {("lacking", "asserted")}),
    ("No jacket was ever made for it.", {("none issued", "asserted")}),
]


@pytest.mark.parametrize(("text", "expected"), JACKETS)
def test_what_became_of_the_jacket(text: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, "jacket") == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("British first edition.", {("1 british", "asserted")}),
        ("There is no First Edition on the copyright page.", set()),
        ('I can find no "First Edition" inside.', set()),
        ("A facsimile of the 1889 first edition.", {("facsimile", "asserted")}),
        ("Edition limited to 750 copies.", {("limited", "asserted")}),
    ],
)
def test_editions_told_in_other_ways(text: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, "edition") == expected


CORNERS = [
    ("Jacket, its flap whole.", "denied"),
    ("Jacket with price of 21s net undisturbed.", "denied"),
    ("The wrapper, uncut at $4.50.", "denied"),
    ("Jacket keeps its $12.95.", "denied"),
    ("Jacket at $7.95 that nobody has cut.", "denied"),
    ("The jacket's corner's all there.", "denied"),
    ("Wrapper trimmed at the price corner.", "asserted"),
    ("The jacket has been shorn of its price.", "asserted"),
    ("No price on the jacket, that corner having been cut.", "asserted"),
    ("Could the price have been snipped? It's under film, which I'm not going to undo.", "unchecked"),
]


@pytest.mark.parametrize(("text", "stance"), CORNERS)
def test_corners_in_plain_speech(text: str, stance: str) -> None:
    assert ("yes", stance) in stances(text, "price_clipped")
    assert ("yes", "asserted") not in stances(text, "price_clipped") or stance == "asserted"


@pytest.mark.parametrize(
    ("text", "feature", "expected"),
    [
        ("What it does not have: foxing, tears.", "defect", {("foxing", "denied"), ("tear", "denied")}),
        (
            "Among things it hasn't got: a bookplate, an inscription.",
            "owner_mark",
            {("bookplate", "denied"), ("inscription", "denied")},
        ),
        ("Not present - bookplates, library stamps.", "owner_mark", {("bookplate", "denied")}),
        ("What it has: foxing, tears.", "defect", {("foxing", "asserted"), ("tear", "asserted")}),
    ],
)
def test_a_heading_denies_its_list(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, feature) == expected


@pytest.mark.parametrize(
    ("text", "feature", "expected"),
    [
        ("Foxed? Along the fore-edge, lightly.", "defect", {("foxing", "elsewhere"), ("foxing", "asserted")}),
        ("Book club? I truly never looked into it.", "book_club", {("yes", "elsewhere"), ("yes", "unchecked")}),
        ("A first impression?? dont know how you tell.", "printing", {("1", "hedged")}),
        ("Printing: haven't turned to the verso.", "printing", {("unknown", "unchecked")}),
    ],
)
def test_short_questions_and_labels(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, feature) == expected
