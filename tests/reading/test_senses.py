"""Terms of the trade in an everyday sense claim nothing, and in the trade's sense beside the same words they do."""

import pytest

from tests.reading.claimed import claimed

EVERYDAY = [
    ("We read it for our book club in March.", "book_club"),
    ("A great pick for your book club!", "book_club"),
    ("Perfect for book clubs.", "book_club"),
    ("Reese's book club sticker on the front.", "book_club"),
    ("A clipped, dry style; priceless dialogue.", "price_clipped"),
    ("He spoke in clipped tones.", "price_clipped"),
    ("The hedge was clipped, the lawn mown.", "price_clipped"),
    ("Proof, if proof were needed, that he could write.", "proof"),
    ("The proof of the pudding.", "proof"),
    ("A mathematical proof is central to the plot.", "proof"),
    ("Her galley sank off Crete.", "proof"),
    ("The sofa has a hard back and a soft cover.", "format"),
    ("She wore a dress of green cloth.", "binding"),
    ("The hero's red leather boots.", "binding"),
    ("Full board available.", "binding"),
]
TRADE = [
    ("My book club edition.", "book_club"),
    ("B.O.M.C. selection.", "book_club"),
    ("Jacket clipped.", "price_clipped"),
    ("not price clipt", "price_clipped"),
    ("Triangle cut from the front flap, taking the price with it.", "price_clipped"),
    ("Prices on the flaps all there.", "price_clipped"),
    ("Proof in wraps.", "proof"),
    ("Bound galleys.", "proof"),
    ("Sent out for review before publication.", "proof"),
    ("Trade paper size.", "format"),
    ("Limp covers.", "format"),
    ("Maple leaf pressed into the boards.", "blind_stamp"),
    ("Bound in peacock silk.", "binding"),
    ("Buckram, dull violet.", "binding"),
    ("The cloth, which is blue, is rubbed.", "binding"),
    ("Half leather, marbled sides.", "binding"),
]


@pytest.mark.parametrize(("text", "feature"), EVERYDAY)
def test_everyday(text, feature):
    assert not claimed(text, feature)


@pytest.mark.parametrize(("text", "feature"), TRADE)
def test_trade(text, feature):
    assert claimed(text, feature)
