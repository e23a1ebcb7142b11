"""``auditor check --explain``: each claim with the row, cue and scope that made it."""

from auditor.reading import read
from auditor.reports.explained import lines

TEXT = "No tears, chips or writing, but a small bump to the corner of the jacket."


def told(feature: str, value: str) -> list[str]:
    (claim,) = [claim for claim in read(TEXT) if (claim.feature, claim.value) == (feature, value)]
    return [line for _, line in lines(claim, TEXT)]


def test_a_denial_is_traced_to_its_cue_and_how_far_it_reached() -> None:
    assert told("defect", "chip") == [
        "defect = chip, copy, denied: “chips”",
        "row: chip",
        "cue: “no” (row: no)",
        "scope: “tears, chips or writing”",
    ]


def test_a_part_is_traced_to_its_noun() -> None:
    assert told("defect", "bump")[-1] == "part by: “jacket”"


def test_rows_named_stand_in_the_lexicon() -> None:
    from auditor.reading.rows import rows

    known = {row.id for row in rows()}
    assert {claim.trace.row for claim in read(TEXT) if claim.feature == "defect"} <= known
    assert {claim.trace.cue_row for claim in read(TEXT) if claim.trace.cue} <= known
