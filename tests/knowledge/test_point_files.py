"""Mistakes in point-set files: told with file, line and what was expected; one bad file or row never stops the rest."""

from __future__ import annotations

import re
import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.knowledge.checks import review
from auditor.knowledge.locate import Places
from auditor.knowledge.points import Copies
from tests.knowledge.bad_point_sets import GOOD, LEFT_OUT, REFUSED, REMARKED


def test_the_good_file_has_nothing_to_tell():
    found = review(GOOD, "salt-road", "salt-road.toml")
    assert found.mistakes == found.remarks == []
    assert found.set is not None
    assert (len(found.set.editions), len(found.set.points), len(found.set.values)) == (1, 1, 1)


_MISSED_TOO = ("slip in a key of a point", "one reading too short a name")
_LOSES_NOTHING = ("unknown table", "readings at the top", "wrong check digit", "isbn of nine figures", "point id twice")


_MEND = (
    "expected|add |write |keep one|perhaps|compare|stands? between|stand below|begins with|written twice|is missing|is one word"
    "|type the line|is opened|a number has no|must be right|as there may"
)


def test_there_are_sixty_mistakes_and_more():
    assert len(REFUSED) + len(LEFT_OUT) + len(REMARKED) >= 60


def _told(mistakes, line, words):
    return [mistake for mistake in mistakes if mistake.line == line and words in mistake.message]


@pytest.mark.parametrize("name", REFUSED)
def test_a_file_is_refused(name):
    text, line, words = REFUSED[name]
    found = review(text, "salt-road", "salt-road.toml")
    assert found.set is None
    assert _told(found.mistakes, line, words), found.mistakes
    assert all(mistake.file == "salt-road.toml" for mistake in found.mistakes)


@pytest.mark.parametrize("name", LEFT_OUT)
def test_a_row_is_left_out(name):
    text, line, words = LEFT_OUT[name]
    found = review(text, "salt-road", "salt-road.toml")
    assert _told(found.mistakes, line, words), found.mistakes
    assert len(found.mistakes) == (2 if name in _MISSED_TOO else 1), found.mistakes  # a slip is a missing key, too
    assert found.set is not None
    whole = len(found.set.points) + len(found.set.values)
    assert whole == (2 if name in _LOSES_NOTHING else 1)


@pytest.mark.parametrize("name", REMARKED)
def test_a_remark_leaves_all_in(name):
    text, line, words = REMARKED[name]
    found = review(text, "salt-road", "salt-road.toml")
    assert found.mistakes == []
    assert _told(found.remarks, line, words), found.remarks
    assert found.set is not None
    assert len(found.set.points) == 1


def test_states_of_one_printing_do_not_overlap_but_a_state_lies_within_its_printing():
    two = GOOD.replace('["trade:1"]', '["trade:1a"]') + ""
    second = '[[points.readings]]\nvalue = "$10.95"\ncopies = ["{}"]\n[[values]]'
    assert review(two.replace("[[values]]", second.format("trade:1b")), "x", "x").remarks == []
    assert review(two.replace("[[values]]", second.format("trade:1")), "x", "x").remarks != []
    assert review(two.replace("[[values]]", second.format("trade:2-")), "x", "x").remarks == []


@pytest.mark.parametrize("name", [*REFUSED, *LEFT_OUT])
def test_a_mistake_says_what_was_expected_or_how_to_mend_it(name):
    text, _, _ = (REFUSED | LEFT_OUT)[name]
    for mistake in review(text, "salt-road", "salt-road.toml").mistakes:
        assert re.search(_MEND, mistake.message), mistake.message
        assert not re.search(r"Input|datetime|pydantic|tuple|dict\b|ISO date|at line \d+, column", mistake.message), (
            mistake.message
        )


@given(st.integers(0, len(GOOD)), st.text(max_size=6), st.integers(0, 12))
def test_no_damage_to_a_file_goes_untold_or_breaks_the_loader(at, put, cut):
    damaged = GOOD[:at] + put + GOOD[at + cut :]
    found = review(damaged, "salt-road", "salt-road.toml")
    assert found.set is not None or found.mistakes
    assert all(mistake.line is None or 1 <= mistake.line <= damaged.count("\n") + 2 for mistake in found.mistakes)


@given(st.text(max_size=200))
def test_any_text_is_answered(text):
    found = review(text, "x", "x.toml")
    assert found.set is None
    assert found.mistakes


_SPANS = st.tuples(st.integers(1, 4), st.one_of(st.none(), st.integers(0, 3)), st.sampled_from(["", "a", "b"]))


def _cells(copies: Copies) -> set[tuple[int, str]]:
    last = copies.last or 9
    return {(n, s) for n in range(copies.first, last + 1) for s in ([copies.state] if copies.state else ["a", "b"])}


@given(_SPANS, _SPANS)
def test_overlap_is_what_counting_cells_finds(one, two):
    written = [f"trade:{n}{s}" if s else f"trade:{n}-" if more is None else f"trade:{n}-{n + more}" for n, more, s in (one, two)]
    text = GOOD.replace("printings = 4\n", "").replace('["trade:1"]', f'["{written[0]}"]')
    text = text.replace("[[values]]", f'[[points.readings]]\nvalue = "b"\ncopies = ["{written[1]}"]\n[[values]]')
    shared = _cells(Copies.parse(written[0])) & _cells(Copies.parse(written[1]))
    assert any("share printings" in remark.message for remark in review(text, "x", "x").remarks) == bool(shared)


def test_places_follow_nested_tables_comments_and_long_strings():
    text = '# a comment\n[work]\ntitle = """\nid = "no key"\n"""\n\n[[points]] # one\nid = "a"\n'
    text += '  [[points.readings]]\n  value = "x"\n'
    text += '  [[points.readings]]\n  value = "y"\n[[points]]\n"id" = "b"\n[[points.readings]]\nvalue = "z"\n'
    tomllib.loads(text)
    places = Places(text)
    assert places.line(("work", "title")) == 3
    assert places.line(("points", 0, "readings", 1, "value")) == 12
    assert places.line(("points", 1, "id")) == 14
    assert places.line(("points", 1, "readings", 0, "value")) == 16
    assert places.line(("points", 1, "readings", 0, "copies", 0)) == 15  # no such key: the table around it
    assert places.line(("work", "author")) == 2
    assert places.line(("values", 0)) is None
