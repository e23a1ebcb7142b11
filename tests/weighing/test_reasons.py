"""A finding names what it rests on and nothing beside it, and a condition that isn't met tells nothing."""

from __future__ import annotations

import pytest

from auditor.weighing.practice import say

from .builders import WORK, kinds, make_set, said, verdict
from .test_words import only


@pytest.mark.parametrize("words", ["~lapse=rare", "?lapse=rare", "…lapse=rare", "^lapse=rare", "grade=mint", "defect=rare"])
def test_only_a_lapse_asserted_is_loose_wording(words):
    assert "loose wording" not in kinds(verdict(None, words), "note", "weighty")


def test_loose_wording_points_to_the_lapses_alone():
    finding = only(verdict(None, "grade=fine", "lapse=gem", "?lapse=rare", "lapse=scarce", "^lapse=pristine"), "loose wording")
    assert finding.spans == ((10, 19), (30, 39))
    assert "gem" in finding.text
    assert "scarce" in finding.text
    assert "rare" not in finding.text.replace("scarce", "")
    assert "pristine" not in finding.text


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["printing=1", "point=words=First Edition stated"], True),
        (["?printing=1", "point=words=First Edition stated"], False),  # nobody claims it
        (["printing=2", "point=words=First Edition stated"], False),  # a second printing has the words by right
        (["edition=1", "point=words=First Edition stated"], False),
        (["printing=1", "point=boards=gray cloth"], False),  # the cloth is no imprint
        (["printing=1", "?point=words=First Edition stated"], False),
    ],
)
def test_the_imprint_overclaims_only_for_a_first_printing_asserted(words, told):
    assert ("overclaim" in kinds(verdict(WORK, *words), "note", "weighty")) == told


def test_the_imprint_alone_is_named_as_showing_only_the_edition():
    finding = only(verdict(WORK, "point=boards=gray cloth", "printing=1", "point=words=First Edition stated"), "overclaim")
    assert (finding.points, finding.spans) == (("words",), ((10, 19), (20, 29)))


def elements(note: str | None = None) -> object:
    """One first printing with two elements that vary by themselves, and a second printing."""
    points = [
        {"id": "cloth", "note": note, "readings": {"gray": ["t:1a"], "black": ["t:1b"], "red": ["t:2"]}},
        {"id": "slip", "readings": {"mater": ["t:1a"], "master": ["t:1b"], "either": ["t:1a", "t:1b"]}},
        {"id": "top", "readings": {"stained": ["t:1"], "plain": ["t:2"]}},
    ]
    return make_set([{"id": "t", "printings": 2}], points)


@pytest.mark.parametrize(
    ("words", "points"),
    [
        (["state=1", "point=cloth=gray", "point=slip=master", "point=top=stained"], ("slip",)),
        (["issue=1", "point=cloth=black", "point=slip=master"], ("cloth", "slip")),
        (["state=a", "point=slip=master"], ("slip",)),
        (["state=1", "point=cloth=gray", "point=slip=mater"], ()),
        (["state=1", "point=slip=either"], ()),  # the first state has it too
        (["state=1", "~point=slip=master"], ()),
        (["state=1", "?point=slip=master"], ()),
        (["?state=1", "point=slip=master"], ()),
        (["state=1@jacket", "point=slip=master"], ()),  # the jacket's state
        (["state=2", "point=slip=master"], ()),
        (["state=1", "point=top=stained"], ()),
    ],
)
def test_a_first_state_of_mixed_elements_names_the_later_ones(words, points):
    told = [f for f in verdict(elements(), *words).findings if f.kind == "overclaim" and "later state" in f.text]
    assert [f.points for f in told] == ([points] if points else [])
    assert all(f.severity == "note" for f in told)


def test_letters_without_an_order_have_no_later_state():
    told = verdict(elements("no priority is known between the cloths"), "state=1", "point=cloth=black").findings
    assert not [f for f in told if "later state" in f.text]


def test_a_pair_at_odds_is_named_in_the_order_of_the_text():
    # the third statement disturbs neither the pair nor its order
    for third in ("point=boards=gray cloth", "point=words=First Edition stated"):
        finding = only(verdict(WORK, "point=slip=mater", "point=slip=master", third), "contradiction")
        assert finding.spans == ((0, 9), (10, 19))
        assert finding.text.index("“mater”") < finding.text.index("“master”")


def test_volumes_that_differ_name_only_themselves():
    points = [
        {"id": "stamp", "volumes": 2, "readings": {"gilt": ["t:1"], "blind": ["t:2"]}},
        {"id": "size", "readings": {"octavo": ["t:1-2"]}},
    ]
    work = make_set([{"id": "t", "printings": 2}], points)
    finding = only(verdict(work, "point=stamp=gilt", "point=size=octavo", "point=stamp=blind"), "made-up copy")
    assert (finding.severity, finding.points, finding.spans) == ("note", ("stamp",), ((0, 9), (20, 29)))
    for words in (["point=stamp=gilt"], ["point=stamp=gilt", "~point=stamp=blind"]):
        assert "made-up copy" not in kinds(verdict(work, *words), "note", "weighty")
    assert verdict(work, "point=stamp=gilt", "point=stamp=blind").book == ("t:1-2",)


@pytest.mark.parametrize(
    ("words", "points"),
    [
        (["edition=1", "point=boards=paper", "point=slip=master"], ("boards", "slip")),
        (["edition=1", "point=boards=paper", "grade=fine", "publisher=Quill Row"], ("boards",)),
    ],
)
def test_another_edition_names_the_tells_that_point_there(words, points):
    finding = only(verdict(WORK, *words), "other edition")
    assert finding.points == points


def test_no_number_line_is_no_line_to_read():
    # Orchises Press counts printings in letters and figures; "none" is neither
    told = ["printing=1", "publisher=Orchises Press", "year=1990", "number_line=none"]
    assert "contradiction" not in kinds(verdict(None, *told))
    assert "contradiction" in kinds(verdict(None, "printing=1", "number_line=none", "number_line=to 3"))


@pytest.mark.parametrize(("jacket", "weighty"), [("blue", {"contradiction"}), ("red", {"contradiction", "married jacket"})])
def test_a_jacket_of_the_edition_claimed_is_no_second_accusation(jacket, weighty):
    editions = [{"id": name, "name": f"the {name} edition", "printings": 1} for name in ("American", "British", "Canadian")]
    points = [
        {"id": "boards", "readings": {"teal": ["American:1"], "black": ["British:1"], "gray": ["Canadian:1"]}},
        {"id": "panel", "part": "jacket", "readings": {"blue": ["American:1"], "white": ["British:1"], "red": ["Canadian:1"]}},
    ]
    work = make_set(editions, points)
    assert kinds(verdict(work, "edition=1 american", "point=boards=black", f"point=panel={jacket}")) == weighty


def test_a_note_on_a_word_begins_with_the_word():
    assert only(verdict(None, "lapse=gem"), "loose wording").text.startswith("“gem” is no grade and names no point (AB Bookman")


def test_what_only_rules_out_the_rest_is_no_mark_of_a_club_edition():
    """ "Not in gray cloth" leaves the club edition, and shows nothing of it; nor do two statements that leave it between them."""
    assert verdict(WORK, "edition=1", "~point=boards=gray cloth").book == ("bce:1",)
    assert "other edition" not in kinds(verdict(WORK, "edition=1", "~point=boards=gray cloth"), "note", "weighty")
    editions = [
        {"id": "us", "printings": 1, "publisher": "Harrow & Pike", "year": 1979},
        {"id": "uk", "printings": 1, "publisher": "Quill Row", "year": 1978},
        {"id": "bce", "printings": 1, "kind": "book club"},
    ]
    found = verdict(make_set(editions, []), "edition=1", "publisher=Harrow & Pike", "year=1978")
    assert found.book == ("bce:1",)
    assert "other edition" not in kinds(found, "note", "weighty")


def test_two_readings_of_one_place_come_before_any_other_pair():
    # the line is at odds with the misprint too, and stands before its correction
    finding = only(verdict(WORK, "point=slip=mater", "number_line=to 2", "point=slip=master"), "contradiction")
    assert (finding.points, finding.spans) == (("slip",), ((0, 9), (20, 29)))
    finding = only(verdict(WORK, "point=slip=mater", "point=slip=master", "number_line=to 2"), "contradiction")
    assert (finding.points, finding.spans) == (("slip",), ((0, 9), (10, 19)))


@pytest.mark.parametrize("kind", ["book club", "reprint", "facsimile", "limited", "trade"])
def test_the_tells_of_club_edition_reprint_and_facsimile_are_another_editions(kind):
    points = [
        {"id": "boards", "readings": {"teal": ["t:1"], "paper": ["other:1"]}},
        {"id": "panel", "part": "jacket", "readings": {"blue": ["t:1"], "red": ["other:1"]}},
    ]
    work = make_set([{"id": "t", "printings": 1}, {"id": "other", "kind": kind, "printings": 1}], points)
    other = kind not in ("limited", "trade")
    assert ("other edition" in kinds(verdict(work, "printing=1", "point=boards=paper"))) == other
    assert ("other edition" in kinds(verdict(work, "printing=1", "point=panel=red"))) == other


def test_words_that_only_the_printing_claimed_is_known_to_have_overclaim_nothing():
    points = [
        {"id": "words", "readings": {"First Edition stated": ["t:1"]}},
        {"id": "slip", "readings": {"mater": ["t:1"], "master": ["t:2"]}},
    ]
    found = verdict(make_set([{"id": "t", "printings": 2}], points), "printing=1", "point=words=First Edition stated")
    assert (found.book, found.standing) in ((("t:1-2",), "unproven"), (("t:1",), "supported"))
    assert "overclaim" not in kinds(found, "note", "weighty")


@pytest.mark.parametrize(("more", "kind"), [([], "contradiction"), (["blind_stamp=yes"], "made-up copy")])
def test_a_blind_stamp_is_of_the_make_as_a_binding_is(more, kind):
    points = [
        {"id": "line", "place": "copyright page", "feature": "number line", "readings": {"1 2": ["t:1"], "none": ["bce:1"]}},
        {"id": "slip", "place": "page 61", "readings": {"mater": ["t:1"], "master": ["bce:1"]}},
    ]
    work = make_set([{"id": "t", "printings": 1}, {"id": "bce", "kind": "book club", "printings": 1}], points)
    assert kinds(verdict(work, "number_line=to 1", "point=slip=master", *more)) == {kind}


@pytest.mark.parametrize(("jacket", "told"), [("none issued", True), ("lacking", True), ("present", False), ("supplied", False)])
def test_a_jacket_graded_that_is_not_there(jacket, told):
    assert ("grade conflict" in kinds(verdict(None, "grade=fine@jacket", f"jacket={jacket}"))) == told


def test_a_first_state_is_that_of_the_printing_named():
    cloth = {"id": "cloth", "readings": {"gray": ["t:1a"], "black": ["t:1b"], "red": ["t:2c"], "blue": ["t:2d"]}}
    work = make_set([{"id": "t", "printings": 2}], [cloth])
    assert verdict(work, "printing=2", "state=1").claimed == ("t:2c",)
    assert verdict(work, "printing=1", "state=2").claimed == ("t:1b",)


@pytest.mark.parametrize("claim", ["edition=2", "printing=2", "issue=2", "state=b", "grade=fine"])
def test_what_is_said_of_the_jacket_is_quoted_as_of_the_jacket(claim):
    (jacket,), (of_book,) = said(f"{claim}@jacket"), said(claim)
    assert say(jacket) == f"{say(of_book)} (jacket)"
    assert not say(said("defect=chip@jacket")[0]).endswith("(jacket)")


@pytest.mark.parametrize(("line", "told"), [("to 1", False), ("to 2", True), ("to 3", True)])
def test_without_a_set_a_first_edition_overclaims_beside_any_later_line(line, told):
    words = ["edition=1", "publisher=Harrow & Pike", f"number_line={line}"]
    assert ("overclaim" in kinds(verdict(None, *words), "note", "weighty")) == told
