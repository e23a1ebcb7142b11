"""How much of a fault is told: nearest word, shared over a list, never across another fault's place."""

import pytest

from auditor.knowledge import lexicon
from auditor.reading import read

ROWS = lexicon.table("degrees")["degree"]


def degrees(text: str) -> dict[tuple[str, str], str | None]:
    return {(claim.value, claim.part): claim.degree for claim in read(text) if claim.feature == "defect"}


@pytest.mark.parametrize("row", ROWS, ids=[row["id"] for row in ROWS])
def test_a_degree_is_read_from_its_examples_and_not_from_others(row):
    for example in row["fires"]:
        assert set(degrees(example).values()) == {row["id"]}, example
    for example in row["quiet"]:
        assert row["id"] not in degrees(example).values(), example


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Slight foxing, heavy rubbing to the boards.", {"foxing": "slight", "rubbing": "heavy"}),
        ("Heavy foxing to prelims and rubbing to the edges.", {"foxing": "heavy", "rubbing": None}),
        ("Light rubbing and bumping to corners.", {"rubbing": "slight", "bump": "slight"}),
        ("Very slight lean.", {"lean": "slight"}),
        ("Very worn at the corners.", {"rubbing": "heavy"}),
        ("BADLY STAINED", {"stain": "heavy"}),
        ("foxed", {"foxing": None}),
        ("Fore-edge foxed, quite heavily.", {"foxing": None}),  # across a comma: left as told without a degree
    ],
)
def test_degrees(text, told):
    assert {value: degree for (value, _), degree in degrees(text).items()} == told


def test_of_a_fault_told_twice_the_heavier_counts():
    assert degrees("Light foxing to the prelims. Heavy foxing to the plates.") == {("foxing", "book"): "heavy"}
