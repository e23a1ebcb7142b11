"""Two readings side by side, in words: what came, what went, and nothing that blames anybody."""

import json
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.auditing import audit_on, open_shelf
from auditor.values import Listing, Question
from auditor.watchlist.compare import compare
from auditor.watchlist.values import Reading
from auditor.watchlist.verdicts import from_json, to_json
from tests.commands import DEMO

SHELF = open_shelf(DEMO / "points")
ORE_DOCK = SHELF.sets["ore-dock"]
BLAME = re.compile(
    r"\b(hid|hides|hidden|conceal\w*|lie[sd]?|lying|fake\w*|fraud\w*|cheat\w*|dishonest\w*|suspicious\w*|admit\w*)\b", re.I
)


def reading(text, asking="45.00 USD", title="The Ore Dock by Ilse Varnum", **told):
    listing = Listing("a", text, title, asking, **told)
    return Reading("2025-09-02T10:00:00.000000+00:00", listing, audit_on(SHELF, text, title, asking))


def told(before, after, asked=()):
    return [change.text for change in compare(before, after, ORE_DOCK, asked)]


def test_nothing_changed_is_nothing_told():
    assert told(reading("First edition. Gray cloth."), reading("First edition.\n  Gray cloth.")) == []


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("450.00 USD", "425.00 USD", "The price asked went from 450.00 USD to 425.00 USD (6% less)."),
        ("350.00 USD", "400.00 USD", "The price asked went from 350.00 USD to 400.00 USD (14% more)."),
        ("40.00 GBP", "50.00 USD", "The price asked went from 40.00 GBP to 50.00 USD."),
        (None, "50.00 USD", "The price asked is 50.00 USD; before, not told."),
    ],
)
def test_a_price(old, new, words):
    assert told(reading("Gray cloth.", old), reading("Gray cloth.", new)) == [words]


def test_a_line_that_was_added_after_it_was_asked_for():
    before = reading("First printing. Gray cloth.")
    after = reading("First printing. Gray cloth. Number line to 1.")
    [question] = [each for each in before.verdict.questions if each.place == "copyright page"]
    said = told(before, after, [question])
    assert "The text changed: added “Number line to 1”." in said
    assert "“Number line to 1” was added after you asked (copyright page)." in said
    assert "It now stands as supported; before, unproven." in said
    assert "“Number line to 1” was added." in told(before, after)
    elsewhere = Question("rear panel", "?", ("rear",))
    assert "“Number line to 1” was added." in told(before, after, [elsewhere])


def test_bare_figures_and_words_are_named():
    said = told(reading("Gray cloth."), reading("Gray cloth. 10 9 8 7 6 5 4 3 2 1 and mater."))
    assert "The number line “10 9 8 7 6 5 4 3 2 1” was added." in said
    assert "“mater” (page 61, line 8) was added." in said


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("I haven't checked the number line.", "“number line”, not looked at, not known, was added."),
        ("No remainder mark.", "“remainder mark”, said not to be so, was added."),
        ("Perhaps a second printing.", "“second printing”, put forward with doubt, was added."),
    ],
)
def test_what_is_not_plainly_said_of_the_copy_is_not_told_as_if_it_were(text, words):
    assert words in told(reading("Gray cloth."), reading(f"Gray cloth. {text}"))


def test_a_doubtful_answer_answers_nothing():
    before = reading("First printing. Gray cloth.")
    [question] = [each for each in before.verdict.questions if each.place == "copyright page"]
    for text in ("I haven't checked the number line.", "Perhaps the number line goes to 1.", "Later printings have a line to 3."):
        assert not any(
            "after you asked" in words for words in told(before, reading(f"First printing. Gray cloth. {text}"), [question])
        )


def test_a_claim_that_went():
    said = told(reading("First edition, first printing. Gray cloth."), reading("First edition. Gray cloth."))
    assert "“first printing” is no longer in the text." in said


def test_a_claim_in_another_stance():
    said = told(reading("Possibly a first printing. Gray cloth."), reading("A first printing. Gray cloth."))
    assert "“first printing” is now said of this copy; before, put forward with doubt." in said
    assert not any("was added." in words and "first printing" in words for words in said)


def test_the_words_of_a_small_change_are_told_and_no_more():
    old = "A handsome copy in gray cloth. Jacket bright. Book near fine.<br>No remainder mark."
    new = old.replace("cloth.", "cloth with &quot;mater&quot; on page 61.")
    [said] = [words for words in told(reading(old), reading(new)) if words.startswith("The text")]
    assert said == 'The text changed: added “with "mater" on page 61”.'


def test_a_rewritten_text_is_told_by_its_sentences():
    [said] = [
        words
        for words in told(reading("Gray cloth. A good old book for the fireside."), reading("Gray cloth. Nothing more to say."))
        if words.startswith("The text")
    ]
    assert said == "The text changed: added “Nothing more to say”; no longer there “A good old book for the fireside”."


def test_the_same_words_read_otherwise_by_a_later_lexicon():
    after = reading("First printing. Gray cloth.")
    fewer = after.verdict.to_dict()
    fewer["claims"] = [claim for claim in fewer["claims"] if claim["feature"] != "printing"]
    before = Reading(after.at, after.listing, from_json(json.dumps(fewer)))
    assert told(before, after) == ["“First printing” is now read as “printing 1” of the book (said of this copy)."]
    assert told(after, before) == ["“First printing” is no longer read as “printing 1” of the book."]


def test_a_verdict_comes_back_from_the_file_as_it_was():
    for text in ("First printing. Gray cloth. Number line to 3.", "Second printing in a jacket at $6.95, signed.", "A lamp."):
        verdict = reading(text).verdict
        again = from_json(to_json(verdict))
        assert again == verdict
        assert again.to_dict() == verdict.to_dict()


PIECES = st.lists(
    st.sampled_from(
        [
            "First edition.",
            "First printing.",
            "Possibly first printing.",
            "Number line to 3.",
            "Number line to 1.",
            "Gray cloth.",
            "Black boards.",
            "No jacket.",
            "Jacket, $6.95.",
            "Not a book club edition.",
            "Ships from Duluth.",
            "<b>Rare</b> &amp; fine.",
        ]
    ),
    max_size=5,
)


@given(PIECES, PIECES)
def test_whatever_changes_is_told_once_and_blames_nobody(one, other):
    before, after = reading(" ".join(one)), reading(" ".join(other))
    said = told(before, after)
    assert len(said) == len(set(said))
    assert not any(BLAME.search(words) for words in said)
    assert bool(said) or before.verdict.claims == after.verdict.claims or sorted(one) == sorted(other)
    assert told(before, before) == []
