"""Ordinary sellers' language: people, kitchens and shops beside faults and grades, emoji, lists, lots, numbers, weights."""

import pytest

from auditor.reading import read


def told(text: str) -> set[str]:
    """Claims as "feature value part stance", the stance by its first letter; values of unchecked claims aside."""
    claims = read(text)
    return {f"{c.feature} {'*' if c.stance == 'unchecked' else c.value} {c.part} {c.stance[0]}" for c in claims}


TALES = [
    ("Mr Badger chips away at the mystery of the torn map.", set()),
    ("Mrs Oddie bumped into an old flame in Rome.", set()),
    ("He tore off his faded jacket and ran.", set()),
    ("She wore a stained dress and a chipped smile.", set()),
    ("Reviewers called it very good and fine stuff.", set()),
    ('"A fine book, good to the last page," wrote the Evening Post.', set()),
    ("My wife thought it good. Ex-library.", {"ex_library yes copy a"}),
    ("Jacket potatoes, fair ground snacks and mint chutney.", set()),
    ("A rare treat for lovers of vintage tractors.", set()),
    ("Fine for a rainy afternoon. Good, no jacket.", {"grade good book a", "jacket lacking jacket a"}),
    ("The inspector finds a torn jacket and a stained glove.", set()),
    ("Our heroine is a fair cook and a good shot.", set()),
    ("Very good communication, fine with returns.", set()),
    ("Good for its age, no jacket.", {"grade good book a", "jacket lacking jacket a"}),
    ("How to remove wax, rust and odor from linen.", set()),
    ("Kids loved the sticker pages.", set()),
    ("I bumped into the publisher once. Corners bumped.", {"defect bump book a"}),
    ("Captain Roper leans on the rail, soaked by the waves.", set()),
]
MARKS = [
    ("✅ Signed by the author ❌ writing ❌ stains", {"defect marking book d", "defect stain copy d", "signed signed book a"}),
    ("⭐ first edition ⭐ no tears ⭐ unclipped", {"defect tear copy d", "edition 1 book a", "price_clipped yes jacket d"}),
    ("Dust jacket ✅ Signed ❌ Ex-library ❌", {"ex_library yes copy d", "jacket present jacket a", "signed signed book d"}),
    ("✔ hardback ✔ dust jacket ✘ ex-library", {"ex_library yes copy d", "format hardcover book a", "jacket present jacket a"}),
    ("📚 No writing 📚 book club edition", {"book_club yes copy a", "defect marking book d"}),
]
LISTS = [
    ("No names, no stains, ex-library.", {"defect stain book d", "ex_library yes copy a", "owner_mark name book d"}),
    ("No writing, price-clipped.", {"defect marking book d", "price_clipped yes jacket a"}),
    ("NO TEARS NO STAINS BOOK CLUB EDITION", {"book_club yes copy a", "defect stain copy d", "defect tear copy d"}),
    ("no inscriptions, signed by the author", {"owner_mark inscription book d", "signed signed book a"}),
    ("Without foxing or tears, ex library copy.", {"defect foxing copy d", "defect tear copy d", "ex_library yes copy a"}),
    ("Not ex-library, not price-clipped.", {"ex_library yes copy d", "price_clipped yes jacket d"}),
]
NUMBERS = [
    ("Copy no. 12 of 250.", {"limitation 12 of 250 book a"}),
    (
        "Limited edition No 44 of 300, signed by the author.",
        {"edition limited book a", "limitation 44 of 300 book a", "signed signed book a"},
    ),
    ("Lakeside Mysteries No. 4, first edition.", {"edition 1 book a"}),
    ("First edition, series no. 7, signed by the author", {"edition 1 book a", "signed signed book a"}),
]
GRADES_AND_LOTS = [
    ("Not a fine copy but a very good one.", {"grade fine book d", "grade very good book a"}),
    ("Not a good copy, just a fair one.", {"grade fair book a", "grade good book d"}),
    (
        "Book and jacket, the former very good, the latter good.",
        {"grade good jacket a", "grade very good book a", "jacket present jacket a"},
    ),
    (
        "Jacket and boards, the former torn, the latter rubbed.",
        {"defect rubbing book a", "defect tear jacket a", "jacket present jacket a"},
    ),
    ("Trio of first editions, all ex-library.", {"edition 1 book a", "ex_library yes copy a"}),
    ("A pair of first printings, both in jackets.", {"jacket present jacket a", "printing 1 book a"}),
    ("Four books, three in jackets and one without.", {"jacket lacking jacket a", "jacket present jacket a"}),
    (
        "Lot: a) VG/VG b) G/G- c) fine, no jacket",
        {
            "grade fine book a",
            "grade good book a",
            "grade good- jacket a",
            "grade very good book a",
            "grade very good jacket a",
            "jacket lacking jacket a",
        },
    ),
    (
        "Two novels: (1) near fine (2) good, price-clipped",
        {"grade good book a", "grade near fine book a", "price_clipped yes jacket a"},
    ),
    ("Set of two paperbacks, both good, no names.", {"format paperback book a", "grade good book a", "owner_mark name book d"}),
    ("Weighs 2 pounds and a bit.", set()),
]
SUMS_AND_SIGHT = [
    ("First edition, reduced to $18.00.", {"edition 1 book a"}),
    ("Now just £9.99, was £14.99.", set()),
    ("Weight about four pounds boxed.", set()),
    ("Never opened! Fine.", {"grade fine book a"}),
    ("Unread and never opened, first edition.", {"edition 1 book a"}),
    ("Inscribed to Bill and Joan by the author.", {"signed inscribed book a"}),
]
HANDS = [
    ("Inscribed for Tom by author on the half-title.", {"signed inscribed book a"}),
    ("Inscribed to Nan from all at number nine, 1974.", {"owner_mark inscription book a"}),
    ("Signd by the author.", {"signed signed book a"}),
    ("Singed by author on title page.", {"signed signed book a"}),
    ("Frist printing, verry good.", {"grade very good book a", "printing 1 book a"}),
    ("Owner's inscription to the flyleaf.", {"owner_mark name book a"}),
    ("Ownership signature to the half-title.", {"owner_mark name book a"}),
    ("Inscribed by Uncle Ted to Rose, Easter 1949.", {"owner_mark inscription book a"}),
    ("Gift inscription dated Christmas 1931.", {"owner_mark inscription book a"}),
    ("Not signed. Signed copies available at a higher price.", {"signed signed book d", "signed signed book e"}),
    ("Unsigned; signed copy also in stock.", {"signed signed book d", "signed signed book e"}),
    ("Flap corner is clipped but the price is still there.", {"price_clipped yes jacket d"}),
]
REST = [
    ("Price 18.00 on flap, no clipping.", {"jacket_price 18.00 jacket a", "price_clipped yes jacket d"}),
    ("Haven't checked for names or for a remainder mark.", {"owner_mark * book u", "remainder_mark * book u"}),
    ("Not checked for stamps or for tears.", {"defect * book u", "owner_mark * book u"}),
    ("You won't find a tear or a crease on the boards.", {"defect crease book d", "defect tear book d"}),
    (
        "You will not find a stain, tear or chip on the jacket.",
        {"defect chip jacket d", "defect stain jacket d", "defect tear jacket d", "jacket present jacket a"},
    ),
    ("Chapters 1 2 3 4 5 6 7 8 9 10 with questions.", set()),
    ("Reprint of the original 1902 edition.", {"edition reprint book a"}),
    ("Facsimile of the 1865 first edition.", {"edition facsimile book a"}),
    ("Handy guide for coin and stamp collectors.", set()),
    (
        "One has a name inside, another a torn jacket.",
        {"defect tear jacket a", "jacket present jacket a", "owner_mark name book a"},
    ),
]


@pytest.mark.parametrize(("text", "claims"), [*TALES, *MARKS, *LISTS, *NUMBERS, *GRADES_AND_LOTS, *SUMS_AND_SIGHT, *HANDS, *REST])
def test_plain_language(text: str, claims: set[str]) -> None:
    assert told(text) == claims
