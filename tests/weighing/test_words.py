"""What the findings say, word for word: a person must be able to follow each one back to the text and to the set."""

from __future__ import annotations

from auditor.values import Finding, Verdict

from .builders import WORK, book, make_set, said, verdict


def only(found: Verdict, kind: str) -> Finding:
    (finding,) = [finding for finding in found.findings if finding.kind == kind]
    return finding


def test_a_claim_that_the_tells_rule_out():
    finding = only(verdict(WORK, "printing=1", "number_line=to 3"), "contradiction")
    assert finding.text == (
        "The text says “first printing”, which is printing 1 of “the trade edition”; what it tells of the "
        "copy leaves printing 3 of "
        "“the trade edition”. number line “to 3”: “3” (copyright page) is a mark of printing 3 of “the trade edition” (invented)."
    )
    assert (finding.severity, finding.spans, finding.points) == ("grave", ((0, 9), (10, 19)), ("line",))


def test_a_printing_put_forward_with_a_doubt():
    finding = only(verdict(WORK, "?printing=1", "number_line=to 3", "point=boards=gray cloth"), "overclaim")
    assert finding.text.startswith("The text speaks of “first printing” with a doubt; what it tells leaves printing 3 of")
    assert (finding.severity, finding.spans, finding.points) == ("note", ((0, 9), (10, 19)), ("line",))
    assert not [f for f in verdict(WORK, "?edition=1", "number_line=to 3").findings if f.kind == "overclaim"]


def test_a_jacket_at_odds_with_itself_weighs_less_than_a_book():
    finding = only(verdict(WORK, "jacket_price=8.95 USD", "jacket_price=9.95 USD"), "contradiction")
    assert finding.severity == "weighty"
    assert finding.text.startswith(
        "These statements cannot all be true of one jacket. jacket price “8.95 USD”: “$8.95” (front flap)"
    )
    assert only(verdict(WORK, "point=slip=mater", "point=slip=master"), "contradiction").severity == "grave"


def test_a_leaf_from_another_copy():
    finding = only(verdict(WORK, "point=line=2 3", "point=boards=paper", "point=slip=master"), "made-up copy")
    assert finding.text == (
        "The copyright page and the rest of the book do not go together: “2 3” (copyright page) is a mark of "
        "printing 2 of “the trade "
        "edition” (invented). Without it the text leaves any printing of “the bce edition”. A leaf that "
        "comes from another copy would "
        "explain it; that can be asked."
    )
    assert (finding.severity, finding.points) == ("weighty", ("line", "boards", "slip"))


def test_a_replaced_leaf_told_of_explains_what_no_leaf_does():
    told = ["point=boards=gray cloth", "point=boards=paper", "repair=replaced_leaf"]
    finding = only(verdict(WORK, *told), "made-up copy")
    assert finding.text.startswith(
        "The text tells of a leaf from another copy; that would explain what no one book shows. “gray cloth”"
    )
    assert (finding.severity, finding.spans, finding.points) == ("weighty", ((0, 9), (10, 19), (20, 29)), ("boards",))
    hedged = only(verdict(WORK, *told[:2], "?repair=replaced_leaf"), "made-up copy")
    assert hedged.text == finding.text
    assert only(verdict(WORK, *told[:2], "repair=rebound"), "contradiction").severity == "grave"


def test_book_and_jacket_apart():
    finding = only(verdict(WORK, "number_line=to 2", "jacket_price=9.95 USD"), "married jacket")
    assert finding.text.startswith(
        "For the book the text leaves printing 2 of “the trade edition”, for the jacket printing 3 of “the "
        "trade edition”. number line"
    )
    assert (finding.severity, finding.spans, finding.points) == (
        "weighty",
        ((0, 9), (10, 19)),
        ("price", "line"),
    ) or finding.points == (
        "line",
        "price",
    )
    openly = only(verdict(WORK, "number_line=to 2", "jacket_price=9.95 USD", "jacket=supplied"), "married jacket")
    assert openly.text.endswith("Such a pair is told openly or known from the publisher, so this is only a note.")
    for words in ("?jacket=supplied", "printing=3@jacket", "?printing=3@jacket"):
        assert only(verdict(WORK, "number_line=to 2", "jacket_price=9.95 USD", words), "married jacket").severity == "note"
    for words in ("~jacket=supplied", "~printing=3@jacket", "printing=1@jacket"):
        assert only(verdict(WORK, "number_line=to 2", "jacket_price=9.95 USD", words), "married jacket").severity == "weighty"


def test_another_edition_said_openly_says_so():
    finding = only(verdict(WORK, "edition=1", "book_club=yes", "point=boards=paper"), "other edition")
    assert finding.text.startswith("What the text tells of the book fits any printing of “the bce edition”. book club edition")
    assert finding.text.endswith("The text says so itself.")
    hidden = only(verdict(WORK, "edition=1", "point=boards=paper"), "other edition")
    assert "The text says so itself" not in hidden.text
    assert (hidden.severity, hidden.points) == ("weighty", ("boards",))
    jacket = only(verdict(WORK, "edition=1", "jacket_price=none"), "other edition")
    assert jacket.text.startswith(
        "What the text tells of the jacket fits any printing of “the bce edition”. jacket price “none”:"
    )


def test_a_later_printing_called_a_first_edition():
    finding = only(verdict(WORK, "edition=1", "number_line=to 3", "point=boards=gray cloth"), "overclaim")
    assert finding.text.startswith(
        "The text says “first edition”, a term that collectors keep for the first printing; what it tells leaves printing 3 of"
    )
    assert (finding.severity, finding.points) == ("weighty", ("line",))
    for doubt in ("?printing=3", "…printing=unknown", "~printing=1", "?number_line=to 3"):
        assert not [f for f in verdict(WORK, "edition=1", "number_line=to 3", doubt).findings if f.kind == "overclaim"]


def test_only_the_edition_is_shown():
    finding = only(verdict(WORK, "printing=1", "point=words=First Edition stated"), "overclaim")
    assert finding.text.startswith(
        "The text says “first printing”; the imprint that it tells shows the edition, not the printing: it leaves"
    )
    assert (finding.severity, finding.points) == ("weighty", ("words",))


def test_a_true_first_of_a_later_country():
    editions = [{"id": "us", "printings": 2, "year": 1987}, {"id": "uk", "printings": 1, "year": 1988}]
    points = [
        {"id": "boards", "readings": {"teal": ["us:1-2"], "black": ["uk:1"]}},
        {"id": "size", "readings": {"octavo": ["us:1-2", "uk:1"]}},
    ]
    told = ["lapse=true first", "point=boards=black", "point=size=octavo"]
    finding = only(verdict(make_set(editions, points), *told), "overclaim")
    assert finding.text == (
        "The text says “true first”; what it tells leaves any printing of “the uk edition”, and the set "
        "names “the us edition” before "
        "it. “black” (boards) is a mark of any printing of “the uk edition” (invented)."
    )
    assert (finding.severity, finding.points) == ("weighty", ("boards",))
    same_year = [{**editions[0], "year": 1988}, editions[1]]
    assert only(verdict(make_set(same_year, points), *told), "overclaim").severity == "note"


def test_what_is_not_told():
    finding = only(verdict(WORK, "printing=1", "~book_club=yes", "point=words=First Edition stated"), "missing evidence")
    assert finding.text == (
        "The text says “first printing”; what it tells leaves any printing of “the trade edition”. Not told, "
        "and would help to decide "
        "it: copyright page and page 61, line 8 (invented)."
    )
    assert (finding.severity, finding.spans, finding.points) == ("weighty", ((0, 9),), ("line", "slip"))
    assert only(verdict(WORK, "?printing=1"), "missing evidence").severity == "note"


def test_the_price_asked_against_what_is_claimed_and_what_is_shown():
    told = ["printing=1", "number_line=to 3"]
    finding = only(verdict(WORK, *told, asking="90 USD"), "asking price")
    assert finding.text == (
        "The price asked is 90 USD; the text leaves printing 3 of “the trade edition”, for which the highest "
        "figure of the set is 12 "
        "USD, as of 1998 (invented). For what is claimed, printing 1 of “the trade edition”, the set gives "
        "20 to 120 USD: the price "
        "asked is one of what is claimed, not of what is shown. Prices differ with time, place and copy."
    )
    beyond = only(verdict(WORK, *told, asking="900 USD"), "asking price").text
    assert "the set gives 20 to 120 USD. Prices differ" in beyond
    for price in ("20 USD", "120 USD"):  # the band's ends belong to it
        text = " ".join(f.text for f in verdict(WORK, *told, "jacket=lacking", asking=price).findings)
        assert "not of what is shown" not in text or "20 to 30" in text
    shown = only(verdict(WORK, "printing=3", "number_line=to 3", asking="90 USD"), "asking price").text
    assert "For what is claimed" not in shown


def test_states_have_prices_of_their_own():
    cloth = {"id": "cloth", "readings": {"gray": ["t:1a"], "black": ["t:1b"]}}
    values = [
        {"edition": "t", "printing": "1a", "low": 50, "high": 100},
        {"edition": "t", "printing": "1b", "low": 5, "high": 10},
    ]
    work = make_set([{"id": "t", "printings": 1}], [cloth], values)
    assert not verdict(work, "printing=1", "point=cloth=gray", asking="200 USD").findings
    assert only(verdict(work, "printing=1", "point=cloth=black", asking="200 USD"), "asking price")
    assert not [f for f in verdict(work, "printing=1", asking="200 USD").findings if f.kind == "asking price"]


def test_signed_copies_have_no_band():
    for how in ("signed", "inscribed", "bookplate", "tipped_in"):
        found = verdict(WORK, "printing=1", "point=slip=mater", f"signed={how}", asking="900 USD")
        assert "asking price" not in {f.kind for f in found.findings}


def test_without_a_set_a_line_against_a_printing():
    found = verdict(None, "printing=1", "number_line=to 3")
    assert only(found, "contradiction").text.startswith(
        "The text says “first printing”; number line “to 3” gives printing 3: the lowest"
    )
    assert found.scores.to_dict() == {"missing": 0, "contradiction": 75, "overclaim": 100}
    assert verdict(None, "printing=1").scores.to_dict() == {"missing": 100, "contradiction": 0, "overclaim": 0}
    assert verdict(None, "edition=1").scores.to_dict() == {"missing": 0, "contradiction": 0, "overclaim": 0}
    hedged = only(verdict(None, "?printing=1", "number_line=to 3"), "overclaim")
    assert hedged.severity == "note"
    assert only(verdict(None, "edition=1", "number_line=to 3"), "overclaim").text.startswith(
        "The text says “first edition”, a term that collectors keep for the first printing; number line “to 3” gives printing 3"
    )


def test_without_a_set_what_lets_a_first_printing_stand_untold():
    assert "missing evidence" in {f.kind for f in verdict(None, "printing=1").findings}
    for words in ("number_line=to 1", "~number_line=to 2", "~printing=later"):
        assert "missing evidence" not in {f.kind for f in verdict(None, "printing=1", words).findings}
    assert only(verdict(None, "?printing=1"), "missing evidence").severity == "note"


def test_a_known_pairing_needs_a_jacket_that_is_later():
    note = "known pairing"
    assert only(verdict(book(note), "number_line=to 2", "jacket_price=9.95 USD"), "married jacket").severity == "note"
    assert only(verdict(book(note), "number_line=to 3", "jacket_price=8.95 USD"), "married jacket").severity == "weighty"


def test_what_the_title_says_counts_once_and_has_no_span():
    found = verdict(WORK, "printing=1", "number_line=to 3", title_claims=said("printing=1"))
    assert only(found, "contradiction").spans == ((0, 9), (10, 19))
    assert only(found, "contradiction").text.count("“first printing”") == 1


def test_a_line_read_by_the_house_stands_on_the_copyright_page_too():
    slip = {"id": "slip", "place": "page 61", "readings": {"mater": ["t:1"], "master": ["t:2"]}}
    work = make_set([{"id": "t", "printings": 2}], [slip])
    told = ["number_line=to 2", "publisher=Harrow & Pike", "~edition=1", "point=slip=mater", "repair=replaced_leaf"]
    work = work.model_copy(update={"editions": (work.editions[0].model_copy(update={"publisher": "Harrow & Pike"}),)})
    finding = only(verdict(work, *told), "made-up copy")
    assert finding.text.startswith("The text tells of a leaf from another copy")
    finding = only(verdict(work, *(words for words in told if words != "~edition=1")), "made-up copy")
    assert finding.text.startswith("The copyright page and the rest of the book do not go together: number line “to 2”")


def test_what_is_named_openly_without_a_set():
    for words in ("book_club=yes", "edition=reprint", "edition=facsimile"):
        finding = only(verdict(None, words), "other edition")
        assert (finding.severity, finding.spans) == ("note", ((0, 9),))
        assert finding.text.startswith(
            "The text itself says “" if words != "book_club=yes" else "The text itself says book club edition."
        )
    beside = only(verdict(None, "book_club=yes", "printing=1"), "other edition")
    assert beside.text.endswith("beside “first printing”; the trade keeps that for the publisher's own edition.")


def test_a_facsimile_called_a_first():
    boards = {"id": "boards", "readings": {"teal": ["t:1"], "glossy": ["facs:1"]}}
    size = {"id": "size", "readings": {"octavo": ["t:1", "facs:1"]}}
    work = make_set([{"id": "t", "printings": 1}, {"id": "facs", "kind": "facsimile", "printings": 1}], [boards, size])
    finding = only(verdict(work, "printing=1", "point=boards=glossy", "point=size=octavo"), "other edition")
    assert (finding.severity, finding.points) == ("weighty", ("boards",))  # the size, which both have, is no reason


def test_a_price_in_euros_and_an_edition_called_trade():
    price = {"id": "price", "part": "jacket", "feature": "price", "readings": {"€12.50": ["t:1"], "€14": ["t:2"]}}
    work = make_set([{"id": "t", "printings": 2}, {"id": "uk", "printings": 1}], [price])
    assert verdict(work, "jacket_price=12.50 EUR").jacket == ("t:1",)
    assert verdict(work, "edition=1 trade").claimed == ("t:1-2",)


def test_the_statement_counts_for_the_line_without_a_set_too():
    # Random House let the words stand for the 1 (Stark, BookThink no. 91): untold, the line is open
    line = ["printing=1", "number_line=2 3 4 5 6 7 8 9", "publisher=Random House", "year=1984"]
    assert "contradiction" not in {f.kind for f in verdict(None, *line).findings}
    second = ["printing=2", "edition=1", *line[1:]]
    assert only(verdict(None, *second), "contradiction").severity == "grave"


def test_only_an_asserted_first_edition_overclaims_without_a_set():
    for words in ("?edition=1", "edition=2", "edition=revised"):
        assert "overclaim" not in {f.kind for f in verdict(None, words, "number_line=to 3").findings}
