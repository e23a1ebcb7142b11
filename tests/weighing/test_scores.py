"""The scores are bounded, defined and monotone."""

from __future__ import annotations

import json
from itertools import combinations
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from auditor.knowledge.shelf import Shelf
from auditor.values import Claim, Verdict
from auditor.weighing import weigh
from auditor.weighing.scores import concern

from .builders import WORK, make_set, said, verdict
from .test_against_brute_force import claims_on, point_sets

LATER = ["printing=2", "printing=3", "printing=later", "edition=2", "edition=later", "edition=reprint", "~printing=1"]


def satisfied(work, claim: Claim) -> bool:
    """Whether an asserted reading is one that the first trade printing has."""
    point = work.point(claim.value.partition("=")[0])
    reading = next(r for r in point.readings if r.value == claim.value.partition("=")[2])
    return any(c.edition == "trade" and c.first == 1 for c in reading.copies)


@settings(max_examples=300, deadline=None)
@given(data=st.data())
def test_one_more_satisfied_point_never_raises_missing(data):
    work = data.draw(point_sets())
    told = (*said("edition=1", "printing=1"), *data.draw(claims_on(work)))
    more = [
        Claim("point", f"{p.id}={r.value}", p.part, "asserted", 95, 96)
        for p in work.points
        for r in p.readings
        if satisfied(work, Claim("point", f"{p.id}={r.value}", p.part, "asserted", 0, 0))
    ]
    for claim in more:
        assert weigh((*told, claim), work).scores.missing <= weigh(told, work).scores.missing


@settings(max_examples=300, deadline=None)
@given(data=st.data())
def test_a_later_printing_word_never_lowers_contradiction(data):
    work = data.draw(point_sets())
    told = (*said("printing=1"), *data.draw(claims_on(work)))
    word = data.draw(st.sampled_from(LATER))
    assert weigh((*told, *said(word)), work).scores.contradiction >= weigh(told, work).scores.contradiction


@settings(max_examples=200, deadline=None)
@given(data=st.data())
def test_scores_are_bounded_and_agree_with_the_standing(data):
    work = data.draw(point_sets())
    found = weigh(data.draw(claims_on(work)), work)
    for score in (found.scores.missing, found.scores.contradiction, found.scores.overclaim):
        assert 0 <= score <= 100
    if found.standing == "supported":
        assert found.scores.overclaim == 0
    if found.standing == "contradicted":
        assert (found.scores.contradiction, found.scores.overclaim) in {(75, 100), (100, 100)}
    if found.standing == "unclaimed":
        assert (found.scores.missing, found.scores.overclaim) == (0, 0)


def test_worked_scores():
    # three printings and a club edition: three of four printings aren't the first
    assert verdict(WORK, "printing=1").scores.to_dict() == {"missing": 100, "contradiction": 0, "overclaim": 75}
    # gray cloth is no club copy: two of the three others are left
    assert verdict(WORK, "printing=1", "point=boards=gray cloth").scores.to_dict() == {
        "missing": 67,
        "contradiction": 0,
        "overclaim": 67,
    }
    assert verdict(WORK, "printing=1", "point=slip=mater").scores.to_dict() == {"missing": 0, "contradiction": 0, "overclaim": 0}
    assert verdict(WORK, "printing=1", "number_line=to 3").scores.contradiction == 75
    assert verdict(WORK, "point=line=1 2 3", "point=slip=master", "point=boards=gray cloth").scores.contradiction == 100
    assert verdict(WORK, "jacket_price=8.95 USD", "jacket_price=9.95 USD").scores.contradiction == 50
    assert verdict(WORK, "number_line=to 2", "jacket_price=9.95 USD").scores.contradiction == 25
    assert verdict(WORK, "number_line=to 2", "jacket_price=9.95 USD", "jacket=supplied").scores.contradiction == 0


DEMO = Path(__file__).parents[2] / "corpora_demo"


def demo_verdicts() -> list[Verdict]:
    """The verdicts on the demo's listings that were put in order by hand, in that order, on the claims of the gold."""
    shelf = Shelf.open((DEMO / "points",))
    rows = {
        name: [json.loads(line) for line in (DEMO / name).read_text().splitlines()] for name in ("gold.jsonl", "listings.jsonl")
    }
    gold, listings = ({row["id"]: row for row in rows[name]} for name in ("gold.jsonl", "listings.jsonl"))
    order = [line.split()[0] for line in (DEMO / "order.txt").read_text().splitlines() if line.strip()]
    fields = ("feature", "value", "part", "stance", "start", "end")
    claims = {name: [Claim(**{field: claim[field] for field in fields}) for claim in gold[name]["claims"]] for name in order}
    return [weigh(claims[name], shelf.sets[gold[name]["work"]], asking=listings[name].get("asking")) for name in order]


def kendall_tau(worst_first: list[tuple[int, ...]]) -> float:
    """Tau-b of a list of keys against its own order, which has no ties."""
    pairs = list(combinations(worst_first, 2))
    agree, differ = sum(a > b for a, b in pairs), sum(a < b for a, b in pairs)
    return (agree - differ) / ((agree + differ) * len(pairs)) ** 0.5


def test_tau_by_hand():
    assert kendall_tau([(3,), (2,), (1,)]) == 1
    assert kendall_tau([(1,), (2,), (3,)]) == -1
    assert round(kendall_tau([(3,), (1,), (2,)]), 3) == 0.333  # two pairs of three agree
    assert round(kendall_tau([(2,), (2,), (1,)]), 3) == 0.816  # one pair tied: 2 / sqrt(2 * 3)


def test_the_order_agrees_with_one_made_by_hand(record_property):
    tau = kendall_tau([concern(found) for found in demo_verdicts()])
    record_property("kendall_tau", round(tau, 3))
    print(f"Kendall tau against the order made by hand: {tau:.3f}")
    assert tau >= 0.8


def test_one_thing_wrong_beside_another_is_worse_and_a_note_is_nothing():
    grave, dear = (
        verdict(WORK, "printing=1", "number_line=to 3"),
        verdict(WORK, "printing=1", "number_line=to 3", asking="999 USD"),
    )
    loose = verdict(WORK, "printing=1", "number_line=to 3", "lapse=rare")
    assert (concern(grave), concern(dear)) == ((True, 3, 75, 100, 33), (True, 5, 75, 100, 33))
    assert concern(loose) == concern(grave)
    assert concern(verdict(WORK, "printing=1", "point=slip=mater")) == (False, 0, 0, 0, 0)


@settings(max_examples=200, deadline=None)
@given(data=st.data())
def test_what_contradicts_itself_is_never_sorted_below_what_agrees(data):
    work = data.draw(point_sets())
    found = weigh(data.draw(claims_on(work)), work)
    if found.standing == "supported" and not found.findings:
        assert concern(found)[:4] == (False, 0, 0, 0)
    if found.scores.contradiction >= 75 and any(f.severity == "grave" for f in found.findings):
        assert concern(found) > (False, 99, 100, 100, 100)


TRADE_ONLY = make_set(
    [{"id": "trade", "printings": 4}],
    [{"id": "line", "place": "copyright page", "feature": "number line",
      "readings": {"1 2 3 4": ["trade:1"], "2 3 4": ["trade:2"], "3 4": ["trade:3"], "4": ["trade:4"]}}],
)  # fmt: skip


def test_a_later_printing_said_openly_overclaims_nothing():
    openly = verdict(TRADE_ONLY, "edition=1", "printing=3")
    assert (openly.scores.overclaim, {finding.severity for finding in openly.findings}) == (0, {"note"})
    assert verdict(TRADE_ONLY, "printing=3", "number_line=to 1").scores.overclaim == 100  # at odds with its own line
    assert verdict(TRADE_ONLY, "printing=1").scores.overclaim > 0
