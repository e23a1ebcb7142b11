"""The scale of condition and the bounds that faults set."""

from __future__ import annotations

import itertools

import pytest

from auditor.knowledge import lexicon
from auditor.knowledge.grades import rank, rules

_SCALE = ["as new", "fine", "near fine", "very good", "good", "fair", "poor"]


def test_the_scale_runs_from_as_new_to_poor():
    assert [rank(grade) for grade in _SCALE] == [1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0]


@pytest.mark.parametrize(("upper", "lower"), list(itertools.pairwise(_SCALE)))
def test_plus_and_minus_stay_between_their_neighbours(upper, lower):
    # IOBA, Condition Definitions: a plus is above the grade but short of the next, a minus below it but not as low as the next
    assert rank(upper) < rank(f"{upper}-") < rank(f"{lower}+") < rank(lower)


def test_other_names():
    assert rank("mint") == rank("As New") == 1.0
    assert rank("very good+") == pytest.approx(4 - 1 / 3)


@pytest.mark.parametrize("grade", ["excellent", "nice", "acceptable", "", "+", "very"])
def test_words_that_are_no_grade(grade):
    assert rank(grade) is None  # CLAIMS: "excellent", "nice", "acceptable" are no grade


def _best(feature: str, value: str, part: str, degree: str = "plain") -> float:
    held = [rule for rule in rules() if rule.feature == feature and value in rule.values and degree in rule.degrees]
    found = [rank(rule.best_allowed) for rule in held if rule.part in (part, "either")]
    return max((place for place in found if place is not None), default=1.0)


@pytest.mark.parametrize(
    ("feature", "value", "part", "best"),
    [
        ("defect", "rubbing", "jacket", "fine"),
        ("defect", "tear", "jacket", "fine"),
        ("defect", "tear", "book", "near fine"),
        ("price_clipped", "yes", "jacket", "fine"),
        ("remainder_mark", "yes", "book", "fine"),
        ("owner_mark", "name", "book", "fine"),
        ("ex_library", "yes", "book", "near fine"),
        ("defect", "marking", "book", "near fine"),
        ("defect", "missing_leaf", "book", "good"),
    ],
)
def test_what_a_fault_leaves(feature, value, part, best):
    # AB Bookman's Weekly definitions of 1949 and IOBA, as lexicon/grades.toml cites them beside each rule
    assert _best(feature, value, part) == rank(best)


@pytest.mark.parametrize(
    ("fault", "degree", "best"),
    [
        ("lean", "slight", "fine"),  # what one careful reading leaves
        ("lean", "plain", "near fine"),
        ("lean", "heavy", "very good"),
        ("stain", "slight", "near fine"),
        ("foxing", "plain", "fine"),
        ("foxing", "heavy", "very good"),
    ],
)
def test_what_is_left_by_the_degree_of_a_fault(fault, degree, best):
    assert _best("defect", fault, "book", degree) == rank(best)


def test_no_rule_touches_ordinary_words_of_a_very_good_copy():
    gentle = ["rubbing", "bump", "fading", "tanning", "foxing", "soiling", "crease", "tear", "chip", "stain"]
    assert all(_best("defect", value, part) < rank("very good") for value in gentle for part in ("book", "jacket"))


def test_rows_name_known_grades_and_a_source():
    assert all(rank(rule.best_allowed) is not None and rule.source and rule.reason and rule.values for rule in rules())
    assert len({rule.id for rule in rules()}) == len(rules())
    assert all(row["source"] for row in lexicon.table("grades")["scale"])
