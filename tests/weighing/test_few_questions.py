"""Questions by worked example: where the exact search ends, which of two equal covers, and whose copies weigh."""

from __future__ import annotations

import pytest

from auditor.weighing import questions

from .builders import make_set, verdict


def places(points: dict[str, str], printings: int, *words: str, **edition: object) -> list[str]:
    """The places asked for, of points that each part some later printings from all the rest: ``{"page 5": "23"}``."""
    rows = [
        {
            "id": name.replace(" ", "-"),
            "place": name,
            "readings": {
                "old": [f"t:{n}" for n in range(1, printings + 1) if str(n) not in changed],
                "new": [f"t:{n}" for n in range(1, printings + 1) if str(n) in changed],
            },
        }
        for name, changed in points.items()
    ]
    work = make_set([{"id": "t", "printings": printings, **edition}], rows)
    return [question.place for question in verdict(work, "printing=1", *words).questions]


# page 5 rules out most at once, and yet pages 6 and 7 do it together and alone
GREEDY_IS_WRONG = {"page 5": "2345", "page 6": "236", "page 7": "457"}


@pytest.mark.parametrize(("size", "asked"), [(3, ["page 6", "page 7"]), (2, ["page 5", "page 6", "page 7"])])
def test_the_search_is_exact_up_to_its_size_and_greedy_beyond(size, asked, monkeypatch):
    monkeypatch.setattr(questions, "EXACT_PLACES", size)
    questions._plan.cache_clear()
    assert places(GREEDY_IS_WRONG, 7) == asked
    assert places({**GREEDY_IS_WRONG, "page 8": ""}, 7) == asked  # a place that tells nothing apart doesn't count
    questions._plan.cache_clear()


def test_of_two_equally_small_sets_the_one_that_settles_more_with_its_first():
    equal = {"page 5": "23", "page 6": "45", "page 7": "234", "page 8": "5"}  # 5 and 6; 7 and 6; 7 and 8
    assert places(equal, 5) == ["page 7", "page 6"]


def test_a_run_unknown_of_a_printing_ruled_out_or_claimed_disturbs_no_weight():
    points = {"page 5": "2", "page 9": "34", "page 11": "5"}
    runs = {"2": 9000, "3": 200, "4": 200}
    assert places(points, 5, "point=page-11=old", print_runs=runs) == ["page 5", "page 9"]
    assert places(points, 5, print_runs=runs) == ["page 9", "page 5", "page 11"]  # the fifth is open: all count alike
    assert places(points, 5, print_runs={**runs, "5": 1}) == ["page 5", "page 9", "page 11"]


@pytest.mark.parametrize(
    ("words", "asked"),
    [
        ("jacket=present", True),
        ("?jacket=present", True),
        ("grade=fine@jacket", True),
        ("~jacket=present", False),
        ("^jacket=present", False),
        ("…jacket=present", False),
    ],
)
def test_a_jacket_is_asked_about_where_one_may_be_there(words, asked):
    flap = {"id": "flap", "part": "jacket", "place": "front flap", "readings": {"red": ["t:1"], "blue": ["t:2"]}}
    work = make_set([{"id": "t", "printings": 2}], [flap])
    assert bool(verdict(work, "printing=1", words).questions) == asked


def test_what_the_text_answers_by_a_disputed_point_of_three_readings_is_not_asked_again():
    slip = {
        "id": "slip",
        "place": "page 5",
        "disputed": "two bibliographies differ",
        "readings": {"mater": ["t:1"], "master": ["t:2"], "mister": ["t:3"]},
    }
    work = make_set([{"id": "t", "printings": 3}], [slip])
    assert verdict(work, "printing=1", "point=slip=master").questions == ()
    assert [q.place for q in verdict(work, "printing=1", "?point=slip=master").questions] == ["page 5"]


def test_a_question_offers_only_what_is_still_open():
    points = [
        {"id": "slip", "place": "page 5",
         "readings": {"mater": ["us:1"], "master": ["us:2"], "mister": ["us:3"], "muster": ["uk:1"]}},
        {"id": "boards", "readings": {"teal": ["us:1-2"], "black": ["us:3", "uk:1"]}},
    ]  # fmt: skip
    work = make_set([{"id": "us", "printings": 3}, {"id": "uk", "printings": 1}], points)
    (question,) = verdict(work, "printing=1", "point=boards=teal").questions
    assert question.text == "Page 5: “mater” (printing 1) or “master” (printing 2)?"


def test_where_only_a_disputed_point_speaks_against_the_claim_the_rest_is_asked_of_those_two():
    points = [
        {"id": "slip", "place": "page 5", "disputed": "two bibliographies differ",
         "readings": {"mater": ["t:1"], "master": ["t:2"], "mister": ["t:3"]}},
        {"id": "drop", "place": "page 7", "readings": {"moth": ["t:1", "t:3"], "mouth": ["t:2"]}},
        {"id": "folio", "place": "page 9", "readings": {"9": ["t:1-2"], "6": ["t:3"]}},
    ]  # fmt: skip
    work = make_set([{"id": "t", "printings": 3}], points)
    assert [q.place for q in verdict(work, "printing=1", "point=slip=master").questions] == ["page 7"]
