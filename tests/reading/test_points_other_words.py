# ruff: noqa: E501 -- a case a line
"""Points told in other words than the set's: things by other names, letters astray, pages in words, colours without a noun, things said not to be there."""

from __future__ import annotations

from functools import cache

import pytest

from auditor.knowledge.points import PointSet, Work
from auditor.reading import read
from tests.reading.invented_points import point


@cache
def tin_lantern() -> PointSet:
    return PointSet(
        stem="tin-lantern",
        work=Work(title="The Tin Lantern", author="Oswin Farraday"),
        editions=(),
        points=(
            point("p112", "book", "page 112, the doctor's name", "misprint", ("Sedgwick",), ("Sedgewick",)),
            point("p44", "book", "page 44, line 9", "misprint", ('"she had gone" for "she had not gone"',), ('"she had not gone"',)),
            point("boards", "book", "boards", "binding colour", ("green cloth",), ("brown cloth",)),
            point("top", "book", "top edge", "topstain", ("purple",), ("unstained",)),
            point("ends", "book", "endpapers", "endpapers", ("pattern of owls",), ("plain",)),
            point("device", "book", "title page", "other", ("heron device",), ("no device",)),
            point("ads", "book", "last leaf", "advertisement", ("advertisement for tobacco",), ("order form for Lantern Thrillers",)),
            point("photo", "jacket", "rear flap", "other", ("portrait with cat",), ("portrait with spectacles",)),
            point("barcode", "jacket", "rear panel", "other", ("no barcode",), ("barcode",)),
            point("price", "jacket", "front flap", "price", ("7s 6d net",), ("21s net",)),
            point("gutter", "book", "gutter of page 201", "statement", ("code K22",), ("no code",)),
            point("stock", "book", "paper", "other", ("laid paper",), ("wove paper",)),
            point("prize", "jacket", "front panel", "blurb", ("no prize named",), ("Winner of the Corbel Medal",)),
        ),
    )  # fmt: skip


def said(text: str) -> set[tuple[str, str]]:
    return {(claim.value, claim.stance) for claim in read(text, tin_lantern()) if claim.feature == "point"}


SAID = [
    # things by other names
    ("violet along the head of the leaves", "top=purple"),
    ("the tops of the pages are dyed mauve", "top=purple"),
    ("the author and his kitten on the back flap", "photo=portrait with cat"),
    ("rear flap: author snapped in his specs", "photo=portrait with spectacles"),
    ("zebra stripes at the foot of the back panel", "barcode=barcode"),
    ("last page puffs somebody's cigarettes", "ads=advertisement for tobacco"),
    ("a coupon for crime novels on the final leaf", "ads=order form for Lantern Thrillers"),
    ("the little bird sits on the title page", "device=heron device"),
    ("papers inside the boards have a pattern of owls", "ends=pattern of owls"),
    ("nothing printed on the insides of the covers", "ends=plain"),
    # letters and words astray
    ("the doctor loses an e on page 112", "p112=Sedgwick"),
    ("p. 112, the doctor's name without its middle e", "p112=Sedgwick"),
    ("the e is missing from the doctor's name, p112", "p112=Sedgwick"),
    ("doctor has both his e's on p. 112", "p112=Sedgewick"),
    ("the e is in its place on page 112", "p112=Sedgewick"),
    ('"not" dropped on page 44', 'p44="she had gone" for "she had not gone"'),
    ("a word has fallen out on p 44", 'p44="she had gone" for "she had not gone"'),
    ("page 44 lacks the not", 'p44="she had gone" for "she had not gone"'),
    ("the missing word is back on page 44", 'p44="she had not gone"'),
    ("page 44 reads as it should", 'p44="she had not gone"'),
    # numbers in words
    ("the misprint on page forty-four", 'p44="she had gone" for "she had not gone"'),
    ("page forty four has been put right", 'p44="she had not gone"'),
    ("typo at page one hundred and twelve", "p112=Sedgwick"),
    ("one hundred twelve reads Sedgewick", "p112=Sedgewick"),
    # a colour by itself
    ("Ours is brown.", "boards=brown cloth"),
    ("This is the green one.", "boards=green cloth"),
    ("bound in green", "boards=green cloth"),
    ("mine came in brown", "boards=brown cloth"),
    ("it is green sure enough", "boards=green cloth"),
    # sums in words, codes, papers
    ("wrapper priced at seven and six", "price=7s 6d net"),
    ("seven shillings and sixpence on the flap", "price=7s 6d net"),
    ("the guinea jacket", "price=21s net"),
    ("a guinea on the front flap", "price=21s net"),
    ("chain lines in the paper", "stock=laid paper"),
    ("printed on ordinary wove", "stock=wove paper"),
    ("K 22 in the fold of p201", "gutter=code K22"),
    # what isn't there
    ("top edge: nil", "top=unstained"),
    ("No device.", "device=no device"),
    ("the heron isn't on the title page", "device=no device"),
    ("the device never appears on the title page", "device=no device"),
    ("nothing to scan on the back panel: no stripes", "barcode=no barcode"),
    ("the barcode isn't there", "barcode=no barcode"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "value"), SAID, ids=lambda value: value)
def test_said(text: str, value: str) -> None:
    assert said(text) == {(value, "asserted")}


QUIET = [
    "The doctor's cat dies on page 9.",
    "The heroine swears by violet ink.",
    "He buys tobacco for a guinea and dies.",
    "A framed heron may be had separately.",
    "Page 61 has an e missing.",
    "A pressed violet falls out of page 30.",
    "The cat next door has slept on it.",
    "Smells of cigarettes.",
    "His initial was E.",
    "Not brown with age, thank goodness.",
    "The green ink of an owner.",
    "A sheet of brown paper protects it.",
    "The bird of the story is a heron.",
    "44 pence postage.",
    "112 pages.",
]


@pytest.mark.parametrize("text", QUIET)
def test_quiet(text: str) -> None:
    assert said(text) == set()


KNOWN = [
    ("green one this", {("boards=green cloth", "asserted")}),
    ("Its owls? Gone from this one.", {("ends=pattern of owls", "denied")}),
    (
        "Others have a portrait with a cat, ours hasn't.",
        {("photo=portrait with cat", "elsewhere"), ("photo=portrait with cat", "denied")},
    ),
    ("Not sure what the back flap shows.", {("photo=portrait with cat", "unchecked")}),
]


@pytest.mark.parametrize(("text", "told"), KNOWN)
@pytest.mark.xfail(strict=True, reason="no noun behind, back reference, a place alone that was not looked at")
def test_known_failures(text: str, told: set[tuple[str, str]]) -> None:
    assert said(text) == told
