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

AFTERWARDS = [
    ("The cat tore the jacket.", {"jacket present jacket a"}),
    ("Jacket shows a boy who runs from a ghost.", {"jacket present jacket a"}),
    ("Old Mrs Pike chips her tooth on a boiled sweet.", set()),
    ("The girl in the torn jacket runs for the bus.", set()),
    ("Uncle Bob wore a scuffed leather jacket.", set()),
    ('"Good, very good," raved the critic.', set()),
    ('A customer said "very fine indeed". VG in dj.', {"grade very good book a", "jacket present jacket a"}),
    ("The Times called it fine and fair.", set()),
    ("How to treat water stains on oak.", set()),
    ("Great for the train, fine with a cup of tea.", set()),
    ("Very good postage rates.", set()),
    ("A poor boy with a good heart and a stained coat.", set()),
    ("Grandad fell into the water and lost his hat.", set()),
    ("Vintage motorbikes and rare orchids.", set()),
    ("Foxes, badgers and a chip shop.", set()),
    ("Mr Bookplate signed the register.", set()),
    ("He faded into the crowd, a tear in his eye.", set()),
    ("The cat leans against the cracked window.", set()),
    ("Perfect gift for fans of vintage trains.", set()),
    ("🔥 RARE 🔥 first edition 🔥 no dust jacket", {"edition 1 book a", "jacket lacking jacket a", "lapse rare copy a"}),
    ("❌ No markings ✅ Unclipped dj", {"defect marking book d", "jacket present jacket a", "price_clipped yes jacket d"}),
    ("Jacket: ✅\nRemainder mark: ❌", {"jacket present jacket a", "remainder_mark yes book d"}),
    (
        "✅ hardcover\n✅ dust jacket\n❌ remainder mark",
        {"format hardcover book a", "jacket present jacket a", "remainder_mark yes book d"},
    ),
    ("👍 very good 👍 no names", {"grade very good book a", "owner_mark name book d"}),
    ("Free of stains, signed by the illustrator.", {"defect stain copy d", "signed signed book a"}),
    ("no writing no tears signed", {"defect marking book d", "defect tear book d", "signed signed book a"}),
    ("No tears or stains, book club edition.", {"book_club yes copy a", "defect stain copy d", "defect tear copy d"}),
    ("No chips, tears, or price clipping.", {"defect chip copy d", "defect tear copy d", "price_clipped yes jacket d"}),
    (
        "Not a book club edition, ex-library or a remainder.",
        {"book_club yes copy d", "ex_library yes copy d", "remainder_mark yes book d"},
    ),
    ("NO NAMES NO STAINS UNCORRECTED PROOF", {"defect stain book d", "owner_mark name book d", "proof yes book a"}),
    ("This is no. 77 of a limited edition of 500.", {"edition limited book a", "limitation 77 of 500 book a"}),
    ("No 5 in the series, no jacket.", {"jacket lacking jacket a"}),
    (
        "Not a very good copy but a good one, no jacket.",
        {"grade good book a", "grade very good book d", "jacket lacking jacket a"},
    ),
    (
        "Dust jacket and book, the former good, the latter fine.",
        {"grade fine book a", "grade good jacket a", "jacket present jacket a"},
    ),
    (
        "Of book and jacket the latter is chipped and the former bumped.",
        {"defect bump book a", "defect chip jacket a", "jacket present jacket a"},
    ),
    ("A bundle of first editions, each signed by the author.", {"edition 1 book a", "signed signed book a"}),
    ("Two novels, one in jacket, the other without.", {"jacket lacking jacket a", "jacket present jacket a"}),
    (
        "Three books: 1) VG 2) G+ 3) fair, ex-library",
        {"ex_library yes copy a", "grade fair book a", "grade good+ book a", "grade very good book a"},
    ),
    ("Weighing over 5 pounds, so extra shipping.", set()),
    ("Was $30, now $20.", set()),
    ("Priced at $12.50 on the flap; mine is $6.", {"jacket_price 12.50 USD jacket a"}),
    ("Priced to clear at £4.", set()),
    ("Inscribed to my old friend Bert by the author, 1962.", {"signed inscribed book a"}),
    ("Inscribed to Bert from his loving aunt, Xmas 1938.", {"owner_mark inscription book a"}),
    ("signed copies also available, this one is not signed", {"signed signed book d", "signed signed book e"}),
    ("autographed by athor", {"signed signed book a"}),
    ("Ownership inscription on the ffep.", {"owner_mark name book a"}),
    ("Front flap has its corner clipped, though the price is intact.", {"price_clipped yes jacket d"}),
    ("18s net on the flap, not clipped.", {"jacket_price 0.90 GBP jacket a", "price_clipped yes jacket d"}),
    ("I have not checked for foxing nor for a blind stamp.", {"blind_stamp * book u", "defect * book u"}),
    (
        "You won't see a chip, crease or tear on this jacket.",
        {"defect chip jacket d", "defect crease jacket d", "defect tear jacket d", "jacket present jacket a"},
    ),
    ("Units 1 2 3 4 5 6 7 8 9 10 complete.", set()),
    ("A reprint of the original 1911 edition, 1985.", {"edition reprint book a", "year 1985 book a"}),
    ("First thus, second printing.", {"edition 1 thus book a", "printing 2 book a"}),
    (
        "2nd edition, 3rd impression, VG+/VG-.",
        {"edition 2 book a", "grade very good+ book a", "grade very good- jacket a", "printing 3 book a"},
    ),
    ("First US edition; the UK first came out a year earlier.", {"edition 1 american book a", "edition 1 british book e"}),
    ("Call 1 800 555 1234 for 10 9 8 more books.", set()),
    ("Number line: 3 5 7 9 10 8 6 4", {"number_line 3 5 7 9 10 8 6 4 book a"}),
    (
        "Fine/Near Fine, asking $40, jacket price $3.95.",
        {"grade fine book a", "grade near fine jacket a", "jacket present jacket a", "jacket_price 3.95 USD jacket a"},
    ),
    ("Postage is £3.20, flap price 12s 6d.", {"jacket_price 0.625 GBP jacket a"}),
    ("Not without foxing.", {"defect foxing book a"}),
    (
        "Foxing: none. Tears: none. Bookplate: none.",
        {"defect foxing copy d", "defect tear copy d", "owner_mark bookplate book d"},
    ),
    ("Remainder mark: yes", {"remainder_mark yes book a"}),
    ("Possibly a first printing, I think the jacket is later.", {"jacket present jacket a", "printing 1 book h"}),
    ("The blurb says 'a good, honest book'.", set()),
    ("Signed by previous owner on the flyleaf.", {"owner_mark name book a"}),
    ("Signature is printed, not by hand.", {"signed printed book a"}),
    ("Bears a facsimile signature of the author.", {"signed printed book a"}),
    (
        "jkt has sm chip, bds rubbed, ffep missing",
        {"defect chip jacket a", "defect missing_leaf book a", "defect rubbing book a", "jacket present jacket a"},
    ),
    (
        "FIRST PRINTING NO DJ VG EX LIB",
        {"ex_library yes copy a", "grade very good book a", "jacket lacking jacket a", "printing 1 book a"},
    ),
    (
        "First&nbsp;edition, price&#45;clipped dust&shy;jacket.",
        {"edition 1 book a", "jacket present jacket a", "price_clipped yes jacket a"},
    ),
    (
        "Volume 1 is foxed; volume 2 has a torn jacket.",
        {"defect foxing book a", "defect tear jacket a", "jacket present jacket a"},
    ),
    ("Jacket worn, book fine.", {"defect rubbing jacket a", "grade fine book a", "jacket present jacket a"}),
    ("Not sure whether it's a first printing.", {"printing * book u"}),
    ("Haven't looked for a blind stamp.", {"blind_stamp * book u"}),
    ("A tear-jerker with a loose-leaf insert.", set()),
    ("Fox hunting, lamb stew and a stiff drink.", set()),
    ("Is there a remainder mark? No.", {"remainder_mark yes book d", "remainder_mark yes book e"}),
    ("Later printings have a $7.95 price.", {"jacket_price 7.95 USD jacket e", "printing later book e"}),
    ("Fair price, good service, fine paper.", set()),
    ("Book is good but the jacket is poor.", {"grade good book a", "grade poor jacket a", "jacket present jacket a"}),
    ("No inscription, but a name on the endpaper.", {"owner_mark inscription book d", "owner_mark name book a"}),
    ("Clean: no underlining, no highlighting.", {"defect marking book d"}),
    ("Neither signed nor inscribed.", {"signed inscribed book d", "signed signed book d"}),
    ("Unread copy, as new in as new jacket.", {"grade as new book a", "grade as new jacket a", "jacket present jacket a"}),
    ("It was described to me as a first edition.", {"edition 1 book h"}),
    ("The dealer I bought it from said first printing.", {"printing 1 book h"}),
    ("Jacket unclipped ($5.00).", {"jacket present jacket a", "jacket_price 5.00 USD jacket a", "price_clipped yes jacket d"}),
    ("Bookclub? No, trade edition.", {"book_club yes copy d", "book_club yes copy e"}),
    (
        "Lot of 5 paperbacks, one has a creased spine, two are ex-library.",
        {"defect crease book a", "ex_library yes copy a", "format paperback book a"},
    ),
    (
        "1st ed., 1st ptg., no. line 1-10, unclipped jkt.",
        {
            "edition 1 book a",
            "jacket present jacket a",
            "number_line 1 2 3 4 5 6 7 8 9 10 book a",
            "price_clipped yes jacket d",
            "printing 1 book a",
        },
    ),
    (
        "5th printing of the first edition, number line to 5.",
        {"edition 1 book a", "number_line to 5 book a", "printing 5 book a"},
    ),
    ("My nephew bumps his head on page one and laughs.", set()),
    ("The heroine is a faded beauty in a torn gown.", set()),
    ("Aunt Polly says it's a good read, fine plot, poor ending.", set()),
    ("Mint tea and lean bacon recipes.", set()),
    ("Fair dealing, prompt postage, good packaging.", set()),
    ("Signed copies can be had from the publisher; mine is not signed.", {"signed signed book d", "signed signed book e"}),
    ("Signed by a former owner, not by the author.", {"owner_mark name book a", "signed signed book d"}),
    ("With the author's printed signature on the title page.", {"signed printed book a"}),
    ("Bookplate signed by the author laid in.", {"signed bookplate book a"}),
    ("Inscribed by the author to a fellow poet.", {"signed inscribed book a"}),
    ("Inscribed 'To Dad, Christmas 1955'.", {"owner_mark inscription book a"}),
    ("Name & date 1934 on ffep.", {"owner_mark name book a"}),
    ("Flap priced 10/6, p&p £2.80, my price £15.", {"jacket_price 0.525 GBP jacket a"}),
    ("Cover price $1.25; I'm asking $8.", {"jacket_price 1.25 USD jacket a"}),
    ("It isn't a book club edition and it isn't price clipped.", {"book_club yes copy d", "price_clipped yes jacket d"}),
    (
        "No foxing, no tears, nothing but a small stain on the rear board.",
        {"defect foxing copy d", "defect stain book a", "defect tear copy d"},
    ),
    ("Not unmarked: some underlining.", {"defect marking book a"}),
    ("Apart from a crease to the flap there are no faults.", {"defect crease jacket a"}),
    ("Free from writing, stamps or labels.", {"defect marking book d", "owner_mark stamp book d"}),
    ("I believe this is the first impression.", {"printing 1 book h"}),
    ("May be a first; may not be.", {"edition 1 book h"}),
    ("Unsure if the plates are all there.", {"defect * book u"}),
    ("Unlike the club edition this has a price.", {"book_club yes copy e"}),
    ("The second printing dropped the dedication.", {"printing 2 book e"}),
    (
        "Book VG, jacket G; the former has a name, the latter a tear.",
        {
            "defect tear jacket a",
            "grade good jacket a",
            "grade very good book a",
            "jacket present jacket a",
            "owner_mark name book a",
        },
    ),
    (
        "Boards rubbed and corners bumped; its jacket, too, is chipped.",
        {"defect bump book a", "defect chip jacket a", "defect rubbing book a", "jacket present jacket a"},
    ),
    (
        "verygood hardcvr w/ dustjaket, prise clipped",
        {"format hardcover book a", "grade very good book a", "jacket present jacket a", "price_clipped yes jacket a"},
    ),
    ("Hard&shy;back, fi&shy;rst edi&shy;tion.", {"edition 1 book a", "format hardcover book a"}),
    ("📖 Ex-library 📖 usual stamps 📖 spine faded", {"defect fading book a", "ex_library yes copy a"}),
    ("😍 Lovely copy 😍 tiny tear to jacket 😍", {"defect tear jacket a", "jacket present jacket a"}),
    (
        "Set of 3: vol 1 ex-library, vol 2 signed, vol 3 lacks jacket.",
        {"ex_library yes copy a", "jacket lacking jacket a", "signed signed book a"},
    ),
    ("5 novels, all first editions, three in jackets.", {"edition 1 book a", "jacket present jacket a"}),
    (
        "(1) G+ in torn dj; (2) fine, no dj",
        {"defect tear jacket a", "grade fine book a", "grade good+ book a", "jacket lacking jacket a", "jacket present jacket a"},
    ),
    ("Any marks? None that I found.", {"defect marking book d", "defect marking book e"}),
]


@pytest.mark.parametrize(
    ("text", "claims"), [*TALES, *MARKS, *LISTS, *NUMBERS, *GRADES_AND_LOTS, *SUMS_AND_SIGHT, *HANDS, *REST, *AFTERWARDS]
)
def test_plain_language(text: str, claims: set[str]) -> None:
    assert told(text) == claims


@pytest.mark.xfail(strict=True, reason="not yet read")
@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("Police find a hole in the hedge and a torn glove.", set()),
        ("Penguin no 1453, good.", {"grade good book a", "publisher Penguin book a"}),
        ("Chip and the water rats find a missing map.", set()),
        (
            "BOOK GOOD JACKET POOR NO MARKS",
            {"defect marking book d", "grade good book a", "grade poor jacket a", "jacket present jacket a"},
        ),
        ("Is this a first? I have no idea.", {"edition * book u", "edition 1 book e"}),
        ("Reviews: 'a scarce treat', 'fine', 'very good'.", set()),
        ("In this issue of the day the state has the first say.", set()),
    ],
)
def test_plain_language_not_yet_read(text: str, claims: set[str]) -> None:
    assert told(text) == claims
