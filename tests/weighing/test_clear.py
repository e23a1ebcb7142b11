"""What may be said of another copy never makes a contradiction, and is asked about; what is clear does."""

from dataclasses import replace

import pytest

from auditor.weighing import weigh

from .builders import kinds, make_set, said

WORK = make_set(
    [{"id": "trade", "printings": 3}, {"id": "club", "kind": "book club", "printings": 1}],
    [
        {"id": "boards", "readings": {"blue": ["trade:1-3"], "gray": ["club:1"]}},
        {"id": "misprint", "readings": {"heroin": ["trade:1", "club:1"], "heron": ["trade:2-3"]}},
        {"id": "price", "part": "jacket", "feature": "price", "readings": {"$9": ["trade:1-2"], "$10": ["trade:3"]}},
    ],
)


def weighed(*words: str, unclear: tuple[str, ...] = ()):
    claims = said(*words, *unclear, work=WORK)
    return weigh([*claims[: len(words)], *(replace(claim, clear=False) for claim in claims[len(words) :])], WORK)


def test_a_statement_that_may_be_of_another_copy_is_laid_aside_and_asked_about():
    found = weighed("printing=1", "point=boards=blue", unclear=("point=boards=gray",))
    assert found.book == ("trade:1-3",)
    assert not kinds(found) & {"contradiction"}
    (note,) = [finding for finding in found.findings if finding.severity == "note"]
    assert "can be asked" in note.text
    assert note.points == ("boards",)


def test_the_same_statement_said_clearly_is_a_contradiction():
    assert "contradiction" in kinds(weighed("printing=1", "point=boards=blue", "point=boards=gray"))


def test_only_what_is_at_odds_is_laid_aside():
    found = weighed("printing=1", "point=boards=blue", unclear=("point=boards=gray", "point=misprint=heroin"))
    assert found.book == ("trade:1",)


def test_what_agrees_counts_however_it_is_said():
    assert weighed("printing=1", unclear=("point=boards=blue", "point=misprint=heroin")).standing == "supported"


@pytest.mark.parametrize("stance", ["", "?"])
def test_where_a_leaf_from_another_copy_is_told_of_nothing_is_too_odd(stance):
    found = weighed("edition=1", "point=boards=blue", f"{stance}repair=replaced_leaf", unclear=("point=boards=gray",))
    assert "made-up copy" in kinds(found)


def test_a_married_jacket_needs_no_clear_sentence():
    # book and jacket are told of apart, and a jacket of another printing is named with just such words
    found = weighed("point=misprint=heroin", "point=boards=blue", unclear=("jacket_price=10 USD",))
    assert "married jacket" in kinds(found)


def test_a_satisfied_point_that_lays_another_aside_does_not_raise_what_is_missing():
    before = weighed("printing=1", "point=boards=blue", unclear=("point=misprint=heron",))
    after = weighed("printing=1", "point=boards=blue", "point=misprint=heroin", unclear=("point=misprint=heron",))
    assert after.scores.missing <= before.scores.missing


def test_what_alone_rules_the_claim_out_is_laid_aside_too():
    # the book could be as it is told: it is the claim that an unclear sentence may not overthrow
    found = weighed("printing=1", "point=boards=blue", unclear=("point=misprint=heron",))
    assert (found.standing, found.book) == ("unproven", ("trade:1-3",))
    assert "contradiction" not in kinds(found)
    assert weighed("printing=1", "point=boards=blue", "point=misprint=heron").standing == "contradicted"
