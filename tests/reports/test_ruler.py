"""The ruler, on point sets made for it."""

import re

import pytest

from auditor.knowledge.points import PointSet
from auditor.reports.ruler import PLAIN, axis, ruler
from auditor.reports.words import in_words
from auditor.values import Verdict


def work(*editions, copies=()):
    """A point set of ``(id, printings)`` editions with one point whose readings are ``copies``."""
    return PointSet.model_validate(
        {
            "stem": "tin-ferry",
            "work": {"title": "Tin Ferry", "author": "A. Writer"},
            "editions": [
                {"id": name, "name": f"{name.title()} edition", "kind": "trade", "printings": printings}
                for name, printings in editions
            ],
            "points": [
                {
                    "id": "line",
                    "part": "book",
                    "place": "verso",
                    "feature": "number line",
                    "source": "invented",
                    "readings": [{"value": str(number), "copies": [each]} for number, each in enumerate(copies)],
                }
            ],
        }
    )


def verdict(book, jacket=None, claimed=()):
    return Verdict("tin-ferry", (), "unproven", book=book, jacket=jacket, claimed=claimed)


def test_book_and_jacket_on_one_axis_with_the_overlap_marked():
    lines = ruler(verdict(("trade:1-2",), ("trade:2-4",), ("trade:1",)), work(("trade", 4)), width=80, signs=PLAIN)
    assert lines == [
        "            Trade edition",
        "  printing   1   2   3   4",
        "  claimed   [-]",
        "  book      ### ###  .   .",
        "  jacket     .  === === ===",
        "  both           ^",
    ]


def test_contradicting_claims_leave_an_empty_bar_and_no_overlap():
    lines = ruler(
        verdict((), ("trade:3-",), ("trade:1-",)), work(("trade", None), copies=["trade:1-2", "trade:3-"]), width=80, signs=PLAIN
    )
    assert [line.split() for line in lines[1:]] == [
        ["printing", "1-2", "3+"],
        ["claimed", "[-------------]"],
        ["book", ".", "."],
        ["jacket", ".", "======="],
    ]


def test_nothing_weighed_draws_nothing():
    assert ruler(verdict(None), work(("trade", 4)), width=80) == []


def test_editions_stand_side_by_side_and_only_those_spoken_of():
    known = work(("trade", 2), ("club", None), ("reprint", 3))
    lines = ruler(verdict(("trade:1", "club:1-")), known, width=80, signs=PLAIN)
    assert "Trade edition" in lines[0]
    assert "Club edition" in lines[0]
    assert "Reprint" not in lines[0]
    assert re.split(r"[ |]+", lines[2].strip()) == ["book", "#" * 7, ".", "#" * 14]


def test_states_of_a_printing_have_their_own_places():
    marks = axis(work(("trade", 2), copies=["trade:1a", "trade:1b"]), [])
    assert [mark.label for mark in marks] == ["1a", "1b", "2"]


def test_a_long_run_is_told_in_the_runs_that_matter():
    known = work(("trade", 62), copies=[f"trade:{number}" for number in range(1, 40)])
    shown = ruler(verdict(("trade:3-62",), claimed=("trade:1",)), known, width=80, signs=PLAIN)
    assert shown[1].split() == ["printing", "1", "2", "3-62"]


@pytest.mark.parametrize("width", [30, 40, 60])
def test_a_narrow_screen_is_kept_to(width):
    lines = ruler(verdict(("trade:1-9",), ("trade:3-10",), ("trade:1",)), work(("trade", 10)), width=width, signs=PLAIN)
    assert max(map(len, lines)) <= width
    assert "".join(line for line in lines if line.startswith("  book")).count("#") == 9 * 4


@pytest.mark.parametrize(
    ("told", "words"),
    [
        ("trade:1", "Trade edition, printing 1"),
        ("trade:1a", "Trade edition, printing 1 in state a"),
        ("trade:2-3", "Trade edition, printings 2 to 3"),
        ("trade:2-", "Trade edition, printings 2 to 4"),
        ("trade:1-4", "Trade edition, any printing"),
        ("open:2-", "Open edition, printings 2 and later"),
        ("open:1-", "Open edition, any printing"),
        ("one:1", "One edition"),
    ],
)
def test_printings_in_words(told, words):
    assert in_words([told], work(("trade", 4), ("open", None), ("one", 1))) == words


def test_no_editions_name_is_cut():
    known = work(("caledonian-commonwealth", None), ("ruritanian-commonwealth", None))
    drawn = "\n".join(ruler(verdict(("caledonian-commonwealth:1-", "ruritanian-commonwealth:1-")), known, width=70))
    assert "Caledonian-" in drawn
    assert "Ruritanian-" in drawn
    assert drawn.count("edition") == 2
