"""The scores over the whole, from words to numbers: a satisfied point more, a later-printing word more."""

import itertools

import pytest

from auditor.auditing import audit_on, open_shelf
from tests.commands import DEMO

CLAIM = "First edition, first printing."
LATER = ("Number line to 3.", "States second printing on the copyright page.", "This is a later printing.", "Third printing.")


def _points(shelf, work):
    """For each point a sentence that tells the reading of the first printing, where one is told by its first hint or value."""
    for point in shelf.sets[work].points:
        for reading in point.readings:
            if any(c.first == 1 and c.edition == shelf.sets[work].editions[0].id for c in reading.copies):
                yield f"{reading.said_as[0] if reading.said_as else reading.value} on the {point.place}."
                break


@pytest.mark.parametrize("work", [path.stem for path in sorted((DEMO / "points").glob("*.toml"))])
def test_a_satisfied_point_more_never_raises_missing(work):
    shelf = open_shelf(DEMO / "points")
    told = shelf.sets[work].work
    title = f"{told.title} by {told.author}"
    sentences = list(_points(shelf, work))[:4]
    for size in range(1, len(sentences) + 1):
        for some in itertools.combinations(sentences, size):
            whole = audit_on(shelf, " ".join([CLAIM, *some]), title)
            for left in some:
                less = audit_on(shelf, " ".join([CLAIM, *(one for one in some if one != left)]), title)
                assert whole.scores.missing <= less.scores.missing, (some, left)


@pytest.mark.parametrize("later", LATER)
def test_a_later_printing_word_more_never_lowers_contradiction(later):
    shelf = open_shelf(DEMO / "points")
    for work in shelf.sets.values():
        title = f"{work.work.title} by {work.work.author}"
        for words in (CLAIM, f"{CLAIM} Very good in jacket."):
            before, behind = audit_on(shelf, words, title), audit_on(shelf, f"{words} {later}", title)
            assert behind.scores.contradiction >= before.scores.contradiction, (work.stem, words)


def test_listings_have_no_influence_on_one_another():
    shelf = open_shelf(DEMO / "points")
    texts = [f"{CLAIM} {later} The Ore Dock by Ilse Varnum." for later in LATER] + ["no no no", "Fine/Fine", ""]
    alone = [audit_on(shelf, text) for text in texts]
    assert [audit_on(shelf, text) for text in reversed(texts)] == alone[::-1]
