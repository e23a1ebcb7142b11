"""Which point set a listing speaks of: wrong matches counted against all, recall printed beside them."""

from __future__ import annotations

import random
import time

import pytest

from auditor.knowledge.matching import Matcher
from auditor.knowledge.points import Edition, PointSet, Work
from auditor.knowledge.shelf import Shelf
from tests.knowledge.titles_as_sold import FIELDS, OPENINGS, OTHERS, fields, openings


@pytest.fixture(scope="module")
def shelf() -> Shelf:
    return Shelf.open()


@pytest.mark.parametrize(("templates", "rows", "least_recall"), [(fields, FIELDS, 0.98), (openings, OPENINGS, 0.98)])
def test_titles_as_sellers_write_them(shelf, templates, rows, least_recall):
    published = [(said, stem) for stem, work in shelf.sets.items() for said in templates(work.work.title, work.work.author)]
    others = [(said, None) for line in OTHERS.split("\n") if line for said in templates(*line.split(" / "))]
    wrong, missed, meant = [], [], 0
    for said, stem in (*rows, *published, *others):
        match = shelf.match("", said) if templates is fields else shelf.match(said)
        meant += stem is not None
        if match and match.stem != stem:
            wrong.append((said, match.stem))
        elif stem and not match:
            missed.append(said)
    total = len(rows) + len(published) + len(others)
    recall = 1 - len(missed) / meant
    print(
        f"\n{templates.__name__}: {total} rows, {len(wrong) / total:.2%} wrong, {recall:.1%} of {meant} found", *wrong, sep="\n  "
    )
    assert len(wrong) / total < 0.005, wrong
    assert recall >= least_recall, missed


@pytest.mark.parametrize(
    ("title", "text", "stem"),
    [
        ("The Stand", "A novel of the plague. Stephen King's longest book.", "the-stand"),
        ("First edition, signed!", "Dune by Frank Herbert. Chilton, 1965.", "dune"),  # the field names no book
        ("Estate sale hardcover 1965", "", None),
        ("Nutkin, early printing, Warne", "The Tale of Squirrel Nutkin. Frederick Warne, 1903.", "tale-of-squirrel-nutkin"),
        ("Dune Messiah", "Dune by Frank Herbert is the book before this one.", None),  # the field decides what is sold
        ("Home", "Stephen King wrote The Stand.", None),
        ("Old horror novel, King", "A vampire story, 'Salem's Lot. Doubleday 1975.", "salems-lot"),  # talk, and the author
        ("Lot 12: Harper Lee", "LEE (Harper) To Kill a Mockingbird. Lippincott.", "to-kill-a-mockingbird"),
        ("Old novel from the attic", "The Grapes of Wrath. Brown cloth.", "grapes-of-wrath"),
        ("Old novel from the attic", "As long as The Grapes of Wrath but by Frank Norris. Brown cloth.", None),
        ("The Octopus", "The Grapes of Wrath. It reads like that. Brown cloth.", None),  # the field names another book
        ("Old sea tale", "The Old Man and the Sea, or The Sun Also Rises? Neither.", None),
        (None, "", None),
        ("", "   \n", None),
    ],
)
def test_field_and_text_together(shelf, title, text, stem):
    match = shelf.match(text, title)
    assert (match.stem if match else None) == stem


@pytest.mark.parametrize(
    ("said", "doubtful"),
    [
        ("The Great Gatsby by F. Scott Fitzgerald", False),
        ("Carrie", True),  # a name as well as a title, no author told
        ("The Great Gatsbey by F. Scott Fitzgerald", True),
        ("Gorgeous To Kill a Mockingbird by Harper Lee", True),
        ("Casino Royale", True),
    ],
)
def test_what_was_not_told_plainly_is_doubtful(shelf, said, doubtful):
    match = shelf.match("", said)
    assert match is not None
    assert match.doubtful is doubtful
    assert 0 < match.score <= 100


def _library(works: int) -> dict[str, PointSet]:
    dice = random.Random(7)
    syllables = [a + b for a in "bcdfglmnprstvw" for b in ("an", "el", "ir", "on", "ul", "ay")]
    vocabulary = ["".join(dice.choices(syllables, k=dice.randint(2, 3))).capitalize() for _ in range(3_000)]
    edition = (Edition(id="trade", name="First edition", kind="trade", publisher="Harrow & Pike", year=1970),)
    sets = {}
    for number in range(works):
        title = f"The {' '.join(dice.choices(vocabulary, k=dice.randint(1, 4)))}"
        author = f"{dice.choice(vocabulary)} {dice.choice(vocabulary)}"
        sets[f"work-{number}"] = PointSet(stem=f"work-{number}", work=Work(title=title, author=author), editions=edition)
    return sets


def test_ten_thousand_works_are_told_apart():
    """The time a look-up takes is printed, not tested."""
    sets = _library(10_000)
    matcher = Matcher(sets)
    asked = random.Random(1).sample(sorted(sets), 500)
    filler = " Near fine in a very good jacket with light rubbing to the spine ends and a short tear, price intact." * 4
    started = time.perf_counter()
    found = [matcher.match(f"{sets[s].work.title} by {sets[s].work.author}.{filler}", sets[s].work.title) for s in asked]
    each = (time.perf_counter() - started) / len(asked)
    right = sum(bool(match) and match.stem == stem for match, stem in zip(found, asked, strict=True))
    print(f"\n{each * 1e3:.3f} ms a look-up among {len(sets)} works, {right} of {len(asked)} right")
    assert right >= 490
    assert all(
        match is None or sets[match.stem].work.title == sets[stem].work.title for match, stem in zip(found, asked, strict=True)
    )
