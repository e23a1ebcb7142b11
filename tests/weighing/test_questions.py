"""The fewest photographs that settle a claim, against trying every set of places."""

from __future__ import annotations

from itertools import chain, combinations, permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from auditor.knowledge.points import PointSet
from auditor.weighing import questions
from auditor.weighing.practice import place

from .builders import SHELF, make_set, verdict

LAST = 4


@st.composite
def sets_of_places(draw: st.DrawFn) -> PointSet:
    """One edition of four printings; each point parts the printings, and some share a page."""
    points = []
    for number in range(draw(st.integers(1, 6))):
        groups = draw(st.lists(st.integers(0, 2), min_size=LAST, max_size=LAST))
        readings = {
            f"reading {g}": [f"trade:{n + 1}" for n, group in enumerate(groups) if group == g] for g in sorted(set(groups))
        }
        points.append({"id": f"p{number}", "place": f"page {draw(st.integers(1, 4))}", "readings": readings})
    return make_set([{"id": "trade", "printings": LAST}], points)


def settles(work: PointSet, places: set[str], claimed: int) -> set[int]:
    """The printings that photographs of these places can't tell from the claimed one."""
    seen = [point for point in work.points if place(point.place, "book").name in places]
    shown = {
        n: [next(r.value for r in p.readings if any(c.first == n for c in r.copies)) for p in seen] for n in range(1, LAST + 1)
    }
    return {n for n in shown if n != claimed and shown[n] == shown[claimed]}


@settings(max_examples=200, deadline=None)
@given(work=sets_of_places())
def test_the_questions_are_as_few_as_can_be_and_settle_all_that_can_be_settled(work):
    asked = verdict(work, "printing=1").questions
    places = {place(point.place, "book").name for point in work.points}
    best = settles(work, places, 1)
    subsets = chain.from_iterable(combinations(sorted(places), size) for size in range(len(places) + 1))
    fewest = next(len(subset) for subset in subsets if settles(work, set(subset), 1) == best)
    assert settles(work, {question.place for question in asked}, 1) == best
    assert len(asked) == fewest


@settings(max_examples=100, deadline=None)
@given(work=sets_of_places())
def test_beyond_the_exact_size_the_questions_still_settle_all_that_can_be_settled(work):
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(questions, "EXACT_PLACES", 0)
        asked = {question.place for question in verdict(work, "printing=1").questions}
    places = {place(point.place, "book").name for point in work.points}
    assert settles(work, asked, 1) == settles(work, places, 1)


def test_a_denied_reading_answers_a_point_of_two_but_not_of_three():
    three = {"id": "slip", "place": "page 5", "readings": {"mater": ["t:1"], "master": ["t:2"], "mister": ["t:3"]}}
    two = {"id": "slip", "place": "page 5", "readings": {"mater": ["t:1"], "master": ["t:2-3"]}}
    editions = [{"id": "t", "printings": 3}]
    assert [q.place for q in verdict(make_set(editions, [three]), "printing=1", "~point=slip=mister").questions] == ["page 5"]
    assert verdict(make_set(editions, [two]), "printing=1", "~point=slip=master").questions == ()


def test_nothing_is_asked_that_the_text_answers():
    work = SHELF.sets["to-kill-a-mockingbird"]
    told = ["printing=1", "jacket=present"]
    assert [q.place for q in verdict(work, *told).questions] == ["copyright page", "front flap"]
    told.append("point=statement=FIRST EDITION stated")
    assert [q.place for q in verdict(work, *told).questions] == ["front flap"]
    told.append("point=jacket-statement=no printing statement")
    assert verdict(work, *told).questions == ()


def test_no_jacket_no_question_about_it_and_nothing_claimed_nothing_asked():
    work = SHELF.sets["to-kill-a-mockingbird"]
    assert [q.place for q in verdict(work, "printing=1", "jacket=lacking").questions] == ["copyright page"]
    assert [q.place for q in verdict(work, "printing=1").questions] == ["copyright page"]
    assert verdict(work, "jacket=present").questions == ()


def test_a_clipped_corner_shows_no_price():
    price = {
        "id": "price",
        "part": "jacket",
        "place": "front flap",
        "feature": "price",
        "readings": {"$3": ["t:1"], "$4": ["t:2"]},
    }
    rear = {"id": "rear", "part": "jacket", "place": "rear panel", "readings": {"photograph": ["t:1"], "reviews": ["t:2"]}}
    line = {"id": "slip", "place": "page 5", "readings": {"mater": ["t:1"], "master": ["t:2"]}}
    work = make_set([{"id": "t", "printings": 2}], [line, price, rear])
    told = ["printing=1", "point=slip=mater", "jacket=present"]
    assert [q.place for q in verdict(work, *told).questions] == ["front flap"]
    assert [q.place for q in verdict(work, *told, "price_clipped=yes").questions] == ["rear panel"]


def test_a_question_says_where_what_and_why_in_one_line_without_leading():
    (question,) = verdict(SHELF.sets["carrie"], "printing=1").questions
    assert question.points == ("gutter",)
    assert question.text == "Gutter of the last text page (page 199): is it “P6” (printing 1)?"
    (question,) = verdict(SHELF.sets["east-of-eden"], "edition=1", "printing=1").questions
    assert question.text == (
        "Copyright page: “first published September 1952, no later printing” (printing 1) or “later printing stated” "
        "(printings 2 and later)?"
    )


def test_editions_are_named_where_several_may_be_seen():
    slip = {"id": "slip", "place": "page 5", "readings": {"mater": ["us:1"], "master": ["us:2", "uk:1"]}}
    work = make_set([{"id": "us", "printings": 2}, {"id": "uk", "printings": 1}], [slip])
    (question,) = verdict(work, "printing=1").questions
    assert question.text == (
        "Page 5: “mater” (printing 1 of “the us edition”) or “master” (printing 2 of “the us edition”; any printing of “the uk "
        "edition”)?"
    )


def test_the_photograph_that_settles_most_is_asked_for_first():
    # three printings to rule out: page 9 rules out two of them, page 5 one
    points = [
        {"id": "slip", "place": "page 5", "readings": {"mater": ["t:1", "t:3-4"], "master": ["t:2"]}},
        {"id": "drop", "place": "page 9", "readings": {"moth": ["t:1-2"], "mouth": ["t:3-4"]}},
    ]
    assert [q.place for q in verdict(make_set([{"id": "t", "printings": 4}], points), "printing=1").questions] == [
        "page 9",
        "page 5",
    ]
    runs = {"1": 100, "2": 9000, "3": 200, "4": 200}  # most copies are of the second printing, which page 5 rules out
    work = make_set([{"id": "t", "printings": 4, "print_runs": runs}], points)
    assert [q.place for q in verdict(work, "printing=1").questions] == ["page 5", "page 9"]
    del runs["4"]  # one run unknown: printings count alike
    work = make_set([{"id": "t", "printings": 4, "print_runs": runs}], points)
    assert [q.place for q in verdict(work, "printing=1").questions] == ["page 9", "page 5"]


@settings(max_examples=200, deadline=None)
@given(data=st.data())
def test_of_the_smallest_sets_the_one_that_settles_most_the_soonest(data):
    work = data.draw(sets_of_places())
    runs = data.draw(st.one_of(st.just({}), st.fixed_dictionaries({str(n): st.integers(1, 9) for n in range(1, LAST + 1)})))
    work = work.model_copy(update={"editions": (work.editions[0].model_copy(update={"print_runs": runs}),)})
    asked = [question.place for question in verdict(work, "printing=1").questions]

    def settled(places: tuple[str, ...]) -> list[int]:
        """The copies (printings, where no run is known) ruled out by the first photograph, the first two, and so on."""
        left = [settles(work, set(places[: n + 1]), 1) for n in range(len(places))]
        return [sum(runs.get(str(n), 1) for n in range(2, LAST + 1) if n not in still) for still in left]

    best = settles(work, {place(point.place, "book").name for point in work.points}, 1)
    names = sorted({place(point.place, "book").name for point in work.points})
    rivals = [order for order in permutations(names, len(asked)) if settles(work, set(order), 1) == best]
    assert settled(tuple(asked)) == max(map(settled, rivals), default=[])
