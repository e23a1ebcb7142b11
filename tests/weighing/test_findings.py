"""What is told, how gravely, and what is not told. Everything here is invented but the rules."""

from __future__ import annotations

import pytest

from .builders import KINDS, WORK, book, kinds, make_set, said, verdict


@pytest.mark.parametrize(
    ("words", "weighty"),
    [
        # two statements that no copy has: the line of the first, the mended page of the later printings
        (["point=line=1 2 3", "point=slip=master", "point=boards=gray cloth"], {"contradiction"}),
        (["printing=1", "number_line=to 3"], {"contradiction"}),
        (["?printing=1", "number_line=to 3"], set()),  # a doubt, perhaps of a first printing: nobody is accused
        (["jacket_price=8.95 USD", "jacket_price=9.95 USD"], {"contradiction"}),
        # words give way to points: what the seller calls the copy may be said of another one
        (["book_club=yes", "~book_club=yes"], set()),
        (["book_club=yes", "point=boards=gray cloth"], set()),
        (["printing=3", "point=slip=mater"], set()),  # a third printing called one of the first's tells: nothing that isn't due
        (["edition=1", "printing=2", "printing=1", "point=slip=mater"], set()),
        # "first edition" for a later printing
        (["edition=1", "number_line=to 3"], {"overclaim"}),
        (["edition=1", "printing=3", "number_line=to 3"], set()),  # said openly
        (["edition=1", "?printing=3", "number_line=to 3"], set()),  # said with a doubt
        (["?edition=1", "number_line=to 3"], set()),
        (["edition=1", "~printing=1", "number_line=to 3"], set()),
        # a first printing where the words quoted stand in three
        (["printing=1", "point=words=First Edition stated"], {"overclaim", "missing evidence"}),
        (["printing=1", "point=words=First Edition stated", "point=slip=mater"], set()),
        (["printing=1"], {"missing evidence"}),
        (["?printing=1"], set()),  # missing evidence is a note there
        (["edition=1"], {"missing evidence"}),  # club copies are still open
        (["edition=1", "point=boards=gray cloth"], set()),
        # book and jacket
        (["number_line=to 2", "jacket_price=9.95 USD"], {"married jacket"}),
        (["number_line=to 2", "jacket_price=9.95 USD", "jacket=supplied"], set()),
        (["number_line=to 2", "jacket_price=9.95 USD", "jacket=facsimile"], set()),
        (["number_line=to 2", "printing=3@jacket", "jacket_price=9.95 USD"], set()),  # told openly
        (["number_line=to 2", "jacket_price=8.95 USD"], set()),
        (["edition=1", "point=boards=gray cloth", "jacket_price=none"], {"married jacket"}),
        # the tells are a club edition's
        (["edition=1", "point=boards=paper", "jacket_price=none"], {"other edition"}),
        (["edition=1", "point=boards=paper", "book_club=yes"], set()),  # named openly
        (["point=boards=paper"], set()),  # nothing claimed: a note
        (["edition=1", "jacket_price=none"], {"other edition", "missing evidence"}),
        # a leaf from another copy
        (["point=line=2 3", "point=boards=paper", "point=slip=master"], {"made-up copy"}),
        (["point=line=2 3", "point=slip=mater", "repair=replaced_leaf"], {"made-up copy"}),
        (["point=line=2 3", "point=slip=mater", "~repair=replaced_leaf"], {"contradiction"}),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_what_is_told_with_weight(words, weighty):
    found = verdict(WORK, *words)
    assert kinds(found) == weighty, [finding.text for finding in found.findings]


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        (["edition=1", "book_club=yes", "point=boards=paper"], "other edition"),
        (["number_line=to 2", "jacket_price=9.95 USD", "jacket=supplied"], "married jacket"),
        (["?printing=1"], "missing evidence"),
        (["lapse=rare"], "loose wording"),
    ],
)
def test_what_is_said_openly_is_a_note(words, kind):
    assert kind in kinds(verdict(WORK, *words), "note")


@pytest.mark.parametrize(
    ("note", "severity"),
    [
        ("known pairing: first printings left over were sent out in the third-printing jacket", "note"),
        ("third-printing jackets are known on second-printing books", "note"),
        ("second-printing jackets are known on first-printing books", "weighty"),  # another pairing
        ("the price went up with the strike", "weighty"),
    ],
)
def test_a_pairing_that_the_points_note_calls_known_is_a_note(note, severity):
    words = [
        "number_line=to 1" if "first printings left" in note else "number_line=to 2",
        "point=boards=gray cloth",
        "jacket_price=9.95 USD",
    ]
    (finding,) = [f for f in verdict(book(note), *words).findings if f.kind == "married jacket"]
    assert finding.severity == severity


def test_a_known_pairing_may_name_no_printing():
    found = verdict(book("unsold stock had its jackets replaced by the publisher"), "number_line=to 2", "jacket_price=9.95 USD")
    assert "married jacket" in kinds(found, "note")


def test_a_known_pairing_runs_one_way():
    note = "known pairing: first printings were sent out in the third-printing jacket"
    found = verdict(book(note), "number_line=to 3", "jacket_price=8.95 USD")
    assert "married jacket" in kinds(found)


def test_the_smallest_set_is_named_with_words_source_and_spans():
    words = [
        "publisher=Harrow & Pike",
        "point=boards=gray cloth",
        "point=slip=mater",
        "number_line=to 2",
        "point=words=First Edition stated",
    ]
    (finding,) = [f for f in verdict(WORK, *words).findings if f.kind == "contradiction"]
    assert finding.spans == ((20, 29), (30, 39))
    assert finding.points == ("slip", "line")
    assert "mater" in finding.text
    assert "invented" in finding.text


def test_words_that_give_way_leave_what_the_points_leave():
    found = verdict(WORK, "printing=3", "book_club=yes", "point=slip=mater")
    assert (found.book, found.standing) == (("trade:1",), "contradicted")
    assert found.scores.contradiction == 100  # the words can't all be true; nobody is accused of it
    assert verdict(WORK, "book_club=yes", "point=boards=gray cloth", "point=slip=master").book == ("trade:2-3",)
    assert verdict(WORK, "book_club=yes").book == ("bce:1",)


def test_nothing_claimed_and_a_club_edition_named_needs_no_finding():
    assert "other edition" not in kinds(verdict(WORK, "book_club=yes", "point=boards=paper"), "note", "weighty")


def test_a_doubtful_work_is_told_in_notes_only():
    found = verdict(WORK, "printing=1", "number_line=to 3", doubtful_work=True)
    assert kinds(found) == set()
    assert found.doubtful_work
    assert any(f.text.startswith("If this is “The Copper Tide”") for f in found.findings)


@pytest.mark.parametrize(
    ("words", "asking", "told"),
    [
        (["printing=1", "point=slip=mater"], "361 USD", True),
        (["printing=1", "point=slip=mater"], "360 USD", False),  # three times the highest is allowed
        (["printing=1", "point=slip=mater", "signed=signed"], "900 USD", False),
        (["printing=1", "point=slip=mater", "signed=printed"], "900 USD", True),  # a printed signature is none
        (["printing=1", "point=slip=mater"], "900 GBP", False),
        (["printing=1", "point=slip=mater"], "900", False),
        (["printing=1", "point=slip=mater"], None, False),
        (["printing=1", "point=slip=mater", "jacket=lacking"], "100 USD", True),  # without its jacket
        (["number_line=to 3"], "40 USD", True),
        (["printing=1"], "100 USD", False),  # the first printing is still open
        (["book_club=yes"], "900 USD", False),  # no figure for the club edition
    ],
)
def test_an_asking_price_is_told_beyond_three_times_the_highest_left(words, asking, told):
    assert ("asking price" in kinds(verdict(WORK, *words, asking=asking))) == told


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["grade=fine", "defect=water"], True),
        (["grade=fine@jacket", "defect=water"], False),  # book and jacket are graded apart
        (["grade=very good", "defect=water"], False),
        (["grade=fine", "~defect=water"], False),
        (["grade=fine", "slight defect=lean"], False),  # some dealers tolerate what one careful reading leaves
        (["grade=fine", "slight defect=stain"], True),
        (["grade=as new", "slight defect=rubbing"], True),  # as new allows none at all
        (["grade=near fine", "defect=foxing"], False),
        (["grade=near fine", "heavy defect=foxing"], True),
        (["grade=near fine@jacket", "heavy defect=foxing"], False),
        (["grade=near fine@jacket", "heavy defect=chip@jacket"], True),
        (["grade=very good", "heavy defect=foxing"], False),
        (["grade=fine", "?defect=water"], False),
        (["grade=fine", "grade=very good", "defect=water"], False),  # "very good to fine"
        (["grade=as new@jacket", "price_clipped=yes"], True),
        (["grade=mint", "owner_mark=name"], True),
        (["grade=fine", "ex_library=yes"], True),
        (["grade=fine", "~ex_library=yes"], False),
        (["grade=very good-", "defect=missing_leaf"], True),
        (["grade=good", "defect=missing_leaf"], False),  # often an endpaper; the text seldom tells
        (["grade=fine@jacket", "jacket=lacking"], True),
        (["grade=fine", "jacket=lacking"], False),
    ],
)
def test_grades_against_faults(words, told):
    # AB Bookman's Weekly condition definitions (1949), as lexicon/grades.toml gives them
    assert ("grade conflict" in kinds(verdict(WORK, *words))) == told
    assert ("grade conflict" in kinds(verdict(None, *words))) == told


@pytest.mark.parametrize(
    ("rows", "told"),
    [
        ([{"printing": "1-2", "high": 100}, {"printing": "1", "low": 500}], False),  # an open end bounds nothing
        ([{"printing": "1-2", "high": 100}], True),
        ([{"printing": "2", "high": 100}], False),  # no figure for the first printing
        ([{"printing": "1", "high": 100}], True),  # a later printing isn't worth more
        ([{"printing": "1-", "high": 100}], True),
        ([{"printing": "1", "high": 100, "signed": True}], False),
    ],
)
def test_an_asking_price_needs_a_bound_for_all_that_is_left(rows, told):
    work = make_set([{"id": "trade", "printings": 2}], [], [{"edition": "trade", **row} for row in rows])
    assert ("asking price" in kinds(verdict(work, "edition=1", asking="301 USD"))) == told


def test_only_the_make_of_a_book_suspects_a_leaf():
    # a club edition's text beside another line is a contradiction; its binding or its paper shows the leaf as the stranger
    points = [
        {
            "id": "line",
            "place": "copyright page",
            "feature": "number line",
            "readings": {"1 2 3": ["trade:1"], "none": ["bce:1"]},
        },
        {"id": "slip", "place": "page 61", "readings": {"mater": ["trade:1"], "master": ["bce:1"]}},
        {"id": "sheets", "place": "text paper", "readings": {"thick": ["trade:1"], "thin": ["bce:1"]}},
    ]
    work = make_set([{"id": "trade", "printings": 1}, {"id": "bce", "kind": "book club", "printings": 1}], points)
    assert kinds(verdict(work, "number_line=to 1", "point=slip=master")) == {"contradiction"}
    assert kinds(verdict(work, "number_line=to 1", "point=sheets=thin")) == {"made-up copy"}


def test_first_anywhere():
    editions = [{"id": "us", "printings": 2, "year": 1987}, {"id": "uk", "printings": 1, "year": 1988}]
    work = make_set(editions, [{"id": "boards", "readings": {"teal": ["us:1-2"], "black": ["uk:1"]}}])
    assert kinds(verdict(work, "lapse=true first", "edition=1", "point=boards=black")) == {"overclaim"}
    assert kinds(verdict(work, "edition=1", "point=boards=black")) == set()
    assert "overclaim" in kinds(verdict(work, "edition=1", "point=boards=black"), "note")
    assert "overclaim" not in kinds(verdict(work, "lapse=true first", "point=boards=teal"), "note", "weighty")


def test_every_kind_of_finding_can_be_told():
    told = set()
    for words in (
        ["point=line=1 2 3", "point=slip=master", "point=boards=gray cloth"],
        ["edition=1", "number_line=to 3", "lapse=gem", "grade=fine", "defect=water"],
        ["printing=1"],
        ["number_line=to 2", "jacket_price=9.95 USD"],
        ["edition=1", "point=boards=paper"],
        ["point=line=2 3", "point=boards=paper"],
    ):
        told |= {finding.kind for finding in verdict(WORK, *words, asking="500 USD").findings}
    assert told == set(KINDS)


def test_spans_lie_within_the_text():
    claims = said("printing=1", "number_line=to 3", "lapse=rare", "grade=fine", "defect=water", "jacket_price=8.95 USD")
    places = {(c.start, c.end) for c in claims}
    for finding in verdict(
        WORK, "printing=1", "number_line=to 3", "lapse=rare", "grade=fine", "defect=water", "jacket_price=8.95 USD"
    ).findings:
        assert set(finding.spans) <= places


def test_an_uncovered_reading_is_told_whole():
    editions = [{"id": "trade", "publisher": "Harrow & Pike"}, {"id": "bce", "printings": 1, "kind": "book club"}]
    points = [
        {"id": "seal", "place": "copyright page", "feature": "statement",
         "readings": {"seal": ["trade:1"], "no seal": ["bce:1"]}},
    ]  # fmt: skip
    found = verdict(make_set(editions, points), "edition=1", "point=seal=no seal")
    told = [finding.text for finding in found.findings if finding.kind == "missing evidence"]
    assert len(told) == 1
    assert "“no seal”" in told[0]
    assert "it doesn't rule the claim out" in told[0]


def test_a_lot_has_no_verdict():
    found = verdict(None, "printing=1", "number_line=to 3", "book_club=yes", several=True)
    assert (found.standing, found.findings, found.scores.contradiction) == ("unclaimed", (), 0)


def test_a_sentence_names_a_defect_in_plain_words():
    (finding,) = verdict(None, "grade=fine", "defect=missing_leaf").findings
    assert "missing leaf" in finding.text
    assert "_" not in finding.text
