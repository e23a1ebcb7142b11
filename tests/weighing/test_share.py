"""The share of copies, worked by hand from print runs. Everything here is invented but the last case."""

from __future__ import annotations

import pytest

from .builders import (
    SHELF,
    WORK,  # runs: 500, 1500 and 3000 of the trade edition, 5000 of the club's
    make_set,
    verdict,
)

STATES = make_set(
    [{"id": "trade", "printings": 2, "print_runs": {"1": 400, "2": 600}}],
    [{"id": "cloth", "readings": {"gray": ["trade:1a"], "black": ["trade:1b", "trade:2"]}}],
)


@pytest.mark.parametrize(
    ("words", "of", "copies", "fitting", "one_in"),
    [
        (["printing=1"], ("trade:1",), 500, 10000, 20.0),  # 500 + 1500 + 3000 + 5000
        (["printing=1", "~book_club=yes"], ("trade:1",), 500, 5000, 10.0),
        (["printing=1", "point=words=First Edition stated"], ("trade:1",), 500, 5000, 10.0),
        (["printing=1", "~point=line=3", "~book_club=yes"], ("trade:1",), 500, 2000, 4.0),
        (["printing=1", "point=line=1 2 3"], ("trade:1",), 500, 5500, 11.0),  # the club kept the line
        (["edition=1", "~book_club=yes"], ("trade:1",), 500, 5000, 10.0),  # no printing claimed: the first one's share
        (["~book_club=yes"], ("trade:1",), 500, 5000, 10.0),  # nothing claimed: likewise
        (["printing=3", "~book_club=yes"], ("trade:3",), 3000, 4500, 1.5),  # said openly to be no first printing
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_worked_shares(words, of, copies, fitting, one_in):
    found = verdict(WORK, *words).share
    assert (found.of, found.copies, found.fitting, found.one_in) == (of, copies, fitting, one_in)


def test_the_arithmetic_is_shown_and_nothing_is_said_of_the_seller():
    found = verdict(WORK, "printing=1", "~book_club=yes").share
    assert found.text == (
        "By the print runs 5,000 copies fit this text: 500 (printing 1 of “the trade edition”) + 1,500 (printing 2 of “the trade "
        "edition”) + 3,000 (printing 3 of “the trade edition”). Of them 500 are printing 1 of “the trade edition”: 1 in 10. "
        "It counts the copies printed, not those for sale or still in being, and says nothing about the seller."
    )
    assert found.to_dict() == {"of": ["trade:1"], "copies": 500, "fitting": 5000, "one_in": 10.0, "text": found.text}


@pytest.mark.parametrize(
    ("work", "words"),
    [
        (WORK, ["printing=1", "point=slip=mater"]),  # settled: nothing to count
        (WORK, ["printing=1", "number_line=to 3"]),  # none of what fits is one
        (WORK, ["point=line=1 2 3", "point=slip=master", "point=boards=gray cloth"]),  # nothing fits
        (STATES, ["printing=1", "point=cloth=black"]),  # a run is that of a whole printing, not of one binding (HARD, case 16)
        (make_set([{"id": "trade", "print_runs": {"1": 500}}], []), ["printing=1"]),  # later printings of unknown number
        (make_set([{"id": "trade", "printings": 2, "print_runs": {"1": 500}}], []), ["printing=1"]),
    ],
)
def test_without_every_run_nothing_is_said(work, words):
    assert verdict(work, *words).share is None


def test_of_a_printing_in_all_its_states_the_whole_run_counts():
    found = verdict(STATES, "printing=1").share
    assert (found.copies, found.fitting) == (400, 1000)


def test_published_runs():
    # The Two Towers: 3250 of the first impression, 1800 of the second (tolkienbooks.net, citing Hammond pp. 83-99); title page's
    # year parts them from all later ones, of which two runs aren't known
    work = SHELF.sets["two-towers"]
    assert verdict(work, "printing=1").share is None
    found = verdict(work, "printing=1", "~point=statement=fourth or later impression stated", "~point=title-year=no year").share
    assert (found.copies, found.fitting, round(found.one_in, 2)) == (3250, 5050, 1.55)
    assert found.to_dict()["one_in"] == 1.55
