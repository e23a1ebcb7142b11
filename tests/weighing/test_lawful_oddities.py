"""What real books lawfully do must raise no accusation: the cases of facts/points/HARD.md, on the published sets."""

from __future__ import annotations

import pytest

from .builders import SHELF, kinds, make_set, verdict

ACCUSATIONS = {"contradiction", "married jacket", "other edition", "overclaim", "made-up copy"}

LAWFUL = [
    # 1: text, plates, title leaf and spine vary by themselves (biblioctopus.com item 254)
    (
        "wonderful-wizard-of-oz",
        [
            "edition=1",
            "point=ads=in a box",
            "point=p14-wail=another line beginning",
            "point=title-verso=printed copyright",
            "point=spine=red, plain letters (binding B)",
        ],
    ),
    # 2: red and green are both first-printing jackets, no order (laban.rs/gallery/1984/001)
    ("nineteen-eighty-four", ["printing=1", "point=uk-statement=first published 1949", "point=uk-jacket-colour=green"]),
    # 3: a point that sellers quote and that shows nothing (fedpo.com/BookDetail.php?bk=14)
    ("good-earth", ["printing=2", "point=p100-flees=flees", "point=topstain=green", "point=statement=later printing stated"]),
    # 4: the same point is claimed in both directions (Phillips, Studies in Bibliography 4; baumanrarebooks.com item 123299)
    ("winesburg-ohio", ["printing=1", "point=p251-the=broken type", "point=topstain=orange", "point=title-frame=unbroken"]),
    # 4: a phantom state (pulitzerprizebooks.blogspot.com/2007/09)
    ("late-george-apley", ["printing=1", "point=p19-pearl=Pretty Pearl"]),
    # 5: the row of numbers begins with a year; the 6 is 1966 (fantasticreviews.blogspot.com/2007/02)
    ("dune", ["printing=7", "number_line=to 6", "point=binding=red cloth", "point=jacket-price=$7.95"]),
    # 6: a corner clipped by the publisher is a state of the jacket (ruthvensattic.com/sking.php)
    ("salems-lot", ["printing=1", "point=gutter=Q37", "price_clipped=yes", "point=jacket-father=Father Cody"]),
    # 6: a jacket that never had a price (fedpo.com/BookDetail.php?bk=14)
    ("good-earth", ["printing=1", "point=statement=copyright 1931, no later printing", "jacket_price=none", "jacket=present"]),
    # 7: rejacketed by its own publisher after the award (Sotheby's, lot 148, 2015)
    (
        "where-the-wild-things-are",
        [
            "printing=1",
            "point=lc-number=Library of Congress number present",
            "point=jacket-medal=medal present",
            "point=jacket-rear-flap=award mentioned",
        ],
    ),
    # 8: brown boards prove nothing either way (davidbrassrarebooks.com after Quinby and Linder)
    ("tale-of-peter-rabbit", ["printing=1", "point=boards=dark brown", "point=p51-wept=wept big tears"]),
    # 9: a reading known, its printing not (moroccobooks.blogspot.com, 6 July 2022)
    (
        "casino-royale",
        ["printing=1", "point=statement=first published 1953, nothing after it", "point=jacket-artist=designed by Pat Marriott"],
    ),
    # 10: the British text keeps the early reading although it is later (jimbooks.wordpress.com/2014/04/21)
    (
        "of-mice-and-men",
        ["edition=1 british", "publisher=William Heinemann", "point=p9-pendula=nine-word phrase ending in pendula present"],
    ),
]


@pytest.mark.parametrize(("stem", "told"), LAWFUL, ids=[row[0] for row in LAWFUL])
def test_a_lawful_oddity_is_no_accusation(stem, told):
    found = verdict(SHELF.sets[stem], *told)
    assert not kinds(found) & ACCUSATIONS, [finding.text for finding in found.findings]
    assert found.standing != "contradicted"


def test_two_states_of_one_printing_are_no_contradiction():
    work = make_set(
        [{"id": "trade", "printings": 2}], [{"id": "cloth", "readings": {"gray": ["trade:1a"], "black": ["trade:1b", "trade:2"]}}]
    )
    found = verdict(work, "printing=1", "point=cloth=gray", "point=cloth=black")
    assert (found.book, found.standing) == (("trade:1",), "supported")
    assert not kinds(found)


def test_the_numbers_of_a_set_that_knows_too_few_prices_exclude_nothing():
    work = make_set(
        [{"id": "trade", "printings": 2}],
        [{"id": "price", "part": "jacket", "feature": "price", "readings": {"$5.95": ["trade:1"], "$6.95": ["trade:2"]}}],
    )
    assert verdict(work, "jacket_price=7.50 USD").jacket == ("trade:1-2",)


def test_a_disputed_point_narrows_but_never_accuses():
    points = [
        {"id": "cloth", "readings": {"gray": ["trade:1"], "black": ["trade:2"]}, "disputed": "one guide has it the other way"},
        {"id": "slip", "readings": {"mater": ["trade:1"], "master": ["trade:2"]}},
    ]
    work = make_set([{"id": "trade", "printings": 2}], points)
    against_claim = verdict(work, "printing=1", "point=cloth=black")
    assert (against_claim.book, against_claim.standing) == (("trade:2",), "unproven")
    against_point = verdict(work, "printing=1", "point=cloth=black", "point=slip=mater")
    assert (against_point.book, against_point.standing) == (("trade:1",), "supported")
    assert not (kinds(against_claim) | kinds(against_point)) & ACCUSATIONS


def test_a_copy_that_no_reading_covers_is_no_sign_of_another_edition():
    # The Catcher in the Rye: no point of the set speaks of the club copies, so leftovers don't name them
    found = verdict(
        SHELF.sets["catcher-in-the-rye"],
        "edition=1",
        "point=statement=FIRST EDITION stated",
        "point=statement=later printing listed by month",
    )
    assert "other edition" not in kinds(found)
    assert "contradiction" in kinds(found)
