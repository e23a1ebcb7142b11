"""Bindings as given: colours and materials in order, without "original" and "publisher's"."""

import pytest

from tests.reading.claimed import claimed, said

CASES = [
    ("Blue cloth boards.", "blue cloth boards"),
    ("BLUE CLOTH", "blue cloth"),
    ("Original publisher's green cloth, gilt.", "green cloth"),
    ("Dark blue cloth.", "dark blue cloth"),
    ("Blue-grey boards.", "blue-grey boards"),
    ("Quarter cloth over red boards.", "quarter cloth over red boards"),
    ("Black cloth-backed red boards.", "black cloth-backed red boards"),
    ("Quarter leather and marbled boards.", "quarter leather and marbled boards"),
    ("Full calf.", "full calf"),
    ("Plain blue wrappers.", "plain blue wrappers"),
    ("Blk. cl., gilt dull.", "black cloth"),
    ("Brown boards, tan cloth spine.", "brown boards tan cloth spine"),
    ("Green cloth-grain boards.", "green cloth-grain boards"),
    ("Red and black cloth.", "red and black cloth"),
    ("Pictorial boards.", "pictorial boards"),
    ("Brown boards, green cloth back.", "brown boards green cloth back"),
    ("Red cloth spine, black boards.", "red cloth spine black boards"),
    ("Black boards with a red cloth spine.", "black boards with a red cloth spine"),
    ("Qtr. lthr., marbled bds.", "quarter leather marbled boards"),
    ("Brown card covers.", "brown card covers"),
    ("Navy covers.", "navy covers"),
    ("Blue paper wrappers, as issued.", "blue paper wrappers"),
    ("Rust colored cloth.", "rust colored cloth"),
    ("Stone-coloured cloth.", "stone-coloured cloth"),
    ("Limp green suede.", "limp green suede"),
    ("Half black goatskin over grey paper sides.", "half black goatskin over grey paper sides"),
    ("Orig. pict. bds.", "pictorial boards"),
    ("Printed yellow boards.", "printed yellow boards"),
    ("Boards are blue.", "blue boards"),
    ("The cloth is dark green, rubbed.", "dark green cloth"),
    ("Bound in green as well.", "green"),
    ("In grey. No wrapper.", "grey"),
    ("Grey, with black letters.", "grey"),
    ("The binding's navy.", "navy"),
    ("Red binding, not blue.", "red"),
    ("Binding: green", "green"),
]


@pytest.mark.parametrize(("text", "value"), CASES)
def test_says(text, value):
    assert claimed(text, "binding") == said("book", value)


@pytest.mark.parametrize(
    "text",
    [
        "Cloth soiled.",
        "Boards rubbed.",
        "In wrappers, as issued.",
        "Stiff card covers.",
        "Teal cloth spine.",
        "A blue jacket.",
        "Black felt pen dot on the bottom edge.",
        "Red leather slipcase.",
        "Signed in black.",
        "Titles stamped in gold.",
        "The topstain is red.",
        "Author: Green, Henry.",
        "Jacket in yellow and blue.",
        "Not the green cloth.",
        "Underlined throughout, in green.",
        "A second-issue binding in grey is known.",
    ],
)
def test_is_no_binding(text):
    assert claimed(text, "binding") == set()


def test_copies_named_by_their_cloth_are_others():
    assert claimed("Red cloth copies are of the colonial edition.", "binding") == said("book", "red cloth", stance="elsewhere")


def test_not_looked_at():
    assert claimed("I don't know what colour the cloth is.", "binding") == said("book", "unknown", stance="unchecked")


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Red gingham cloth, a bit pilled.", "red gingham cloth"),
        ("Blue tartan boards.", "blue tartan boards"),
        ("Brown boards with a green spine.", "brown boards with a green spine"),
        ("Quarter linen over marbled paper.", "quarter linen over marbled paper"),
        ("Green cloth back, tan boards.", "green cloth back tan boards"),
        ("In the tan-and-green binding.", "tan-and-green"),
        ("Boards black, spine rolled.", "black boards"),
        ("Binding green, worn at the corners.", "green"),
        ("Bright green cloth.", "bright green cloth"),
        ("Dark blue cloth with red spine lettering.", "dark blue cloth"),
        ("Map of the parish inside the covers in blue.", None),
    ],
)
def test_more_forms(text, value):
    assert claimed(text, "binding") == (said("book", value) if value else set())
