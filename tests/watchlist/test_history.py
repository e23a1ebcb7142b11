"""History and the state of questions, whatever happens in whatever order."""

from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from auditor.watchlist.asked import states, waiting
from auditor.watchlist.history import history
from auditor.watchlist.values import Act, Watched
from tests.watchlist.test_compare import BLAME, PIECES, SHELF, reading

PLACES = st.sampled_from(["copyright page", "rear panel", "page 61", "nowhere"])
ACTS = st.tuples(st.sampled_from(["asked", "answered", "note", "decision"]), PLACES)
WEEKS = st.lists(st.one_of(PIECES, ACTS), max_size=7)


def lived(week):
    """A listing put on the list and all that came of it, a second apart."""
    readings, acts = [reading("First printing. Gray cloth. In a jacket.")], []
    for number, event in enumerate(week):
        at = f"2025-09-02T10:00:{number + 1:02}.000000+00:00"
        if isinstance(event, tuple):
            acts.append(Act(at, event[0], "words", event[1]))
        else:
            readings.append(replace(reading(" ".join(event)), at=at))
    return Watched(1, tuple(readings), tuple(acts), readings[-1].at)


@settings(deadline=None)
@given(WEEKS)
def test_whatever_happens_every_question_needed_now_has_a_state_and_none_waits_that_was_not_asked(week):
    watched = lived(week)
    found = {each.question.place: each for each in states(watched, SHELF.sets)}
    assert {question.place for question in watched.verdict.questions} <= found.keys()
    asked = {act.place for act in watched.acts if act.kind == "asked"}
    assert {question.place for question in waiting(tuple(found.values()))} <= asked
    marked = asked | {act.place for act in watched.acts if act.kind == "answered"}
    assert {place for place, each in found.items() if each.state != "open"} <= marked


@settings(deadline=None)
@given(WEEKS)
def test_the_history_is_in_order_and_blames_nobody(week):
    watched = lived(week)
    entries = history(watched, SHELF.sets)
    assert [entry.at for entry in entries] == sorted(entry.at for entry in entries)
    assert len(entries) <= 1 + len(week)
    assert sum(entry.head in ("Note", "Decision") for entry in entries) == sum(
        act.kind in ("note", "decision") for act in watched.acts
    )
    assert not any(BLAME.search(" ".join((entry.head, *entry.lines))) for entry in entries)


def test_an_answer_marked_by_hand_is_open_again_where_more_is_to_be_shown():
    first = reading("First printing. Gray cloth.")
    place = first.verdict.questions[0].place
    watched = Watched(1, (first,), (Act("2025-09-03", "asked", "", place), Act("2025-09-04", "answered", "by mail", place)), "")
    [kept] = states(watched, SHELF.sets)
    assert (kept.state, "by mail" in kept.how) == ("answered", True)
    wider = replace(first.verdict.questions[0], points=(*first.verdict.questions[0].points, "another"))
    later = replace(first, at="2025-09-05", verdict=replace(first.verdict, questions=(wider,)))
    [again] = states(replace(watched, readings=(first, later)), SHELF.sets)
    assert again.state == "open"
