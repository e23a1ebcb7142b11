"""Copied descriptions, planted among listings that share only a shop's terms and the trade's phrases."""

import random

from hypothesis import given, settings
from hypothesis import strategies as st

from auditor.samewords import finding, print_of
from auditor.samewords.finding import find
from tests.bench.texts import listings

TERMS = "Postage is charged at cost. All books are packed with care in card and sent within two working days of cleared payment. "


def told(texts, subjects=None):
    subjects = subjects or [f"title {number}" for number in range(len(texts))]
    return find(print_of(text, subject) for text, subject in zip(texts, subjects, strict=True))


def distinct(count):
    return [listing.text for listing in listings(count, strange=True)]


def test_a_copied_description_is_found_on_both_sides_though_slightly_changed():
    texts = distinct(60)
    words = texts[7].split()
    words[9] = "lovely"
    texts[41] = "Here is my copy! " + " ".join(words).upper().replace(",", " ;") + " " + TERMS
    found = told(texts)
    assert {number: others.numbers for number, others in found.items()} == {7: (41,), 41: (7,)}
    assert found[7].share > 0.7


def test_boilerplate_does_not_count():
    texts = [f"{text} {TERMS * 3}" for text in distinct(40)]
    assert told(texts) == {}


def test_words_under_the_title_of_one_book_are_no_boilerplate():
    texts = distinct(30)
    for number in range(0, 16, 2):
        texts[number] = texts[0]
    subjects = ["The Ore Dock" if number % 2 == 0 and number < 16 else f"title {number}" for number in range(30)]
    found = told(texts, subjects)
    assert set(found) == set(range(0, 16, 2))
    assert found[0].numbers == tuple(range(2, 16, 2))
    assert found[0].share == 1


def test_short_words_say_nothing():
    assert told(["First edition.", "First edition.", "", ""]) == {}


def test_of_planted_copies_nearly_all_are_found_and_hardly_anything_else():
    chance = random.Random(2)
    texts = distinct(1500)
    order = chance.sample(range(1500), 120)
    planted = {}
    for one, other in zip(order[:60], order[60:], strict=True):
        words = texts[one].split()
        for _ in range(len(words) // 25):
            words[chance.randrange(len(words))] = chance.choice(["nice", "clean", "old", "copy"])
        texts[other] = f"{' '.join(words)} {TERMS}"
        planted[one] = other
    texts = [f"{text} {TERMS}" if number % 3 else text for number, text in enumerate(texts)]
    found = {(number, other) for number, others in told(texts).items() for other in others.numbers}
    copies = {pair for one, other in planted.items() for pair in ((one, other), (other, one))}
    assert (
        len(found - copies) <= 2
    )  # the texts are put together from the demo's sentences, and two may by chance share a long one
    assert sum((one, other) in found for one, other in planted.items()) >= 54


WORDS = st.lists(st.sampled_from([f"w{number}" for number in range(9)]), max_size=60).map(" ".join)


@settings(max_examples=60)
@given(st.lists(st.tuples(WORDS, st.sampled_from(["", "a", "b", "c", "d", "e"])), max_size=12))
def test_it_is_what_comparing_all_with_all_gives(given_texts):
    prints = [print_of(text, subject or None) for text, subject in given_texts]
    sets = [set(each.hashes.tolist()) for each in prints]
    everywhere = set().union(*sets)
    common = {
        value
        for value in everywhere
        if len({prints[n].subject for n, own in enumerate(sets) if value in own} - {0}) > finding.MOST_SUBJECTS
        or sum(value in own for own in sets) > finding.MOST_LISTINGS
    }
    wanted = {}
    for one, own in enumerate(sets):
        shared = {
            other: size
            for other, theirs in enumerate(sets)
            if other != one
            and (size := len((own & theirs) - common)) >= finding.FEWEST
            and size >= finding.SHARE * len(own - common)
        }
        if shared:
            wanted[one] = tuple(sorted(shared, key=lambda other: (-shared[other], other)))
    assert {number: others.numbers for number, others in find(prints).items()} == wanted
