"""Which claims are evidence, and what each leaves open."""

from __future__ import annotations

import pytest

from .builders import make_set, said, verdict

LINES = {"10 9 8 7 6 5 4 3 2 1": ["trade:1", "bce:1"], "10 9 8 7 6 5 4 3 2": ["trade:2"], "lowest number 3 or 4": ["trade:3-4"]}
EDITIONS = [
    {
        "id": "trade",
        "printings": 4,
        "publisher": "Harrow & Pike",
        "year": 1979,
        "isbn": "9780306406157",
        "name": "First American edition",
    },
    {
        "id": "uk",
        "printings": 2,
        "publisher": "Aldous Fenn",
        "year": 1981,
        "isbn": "9781861972712",
        "name": "First British edition",
    },
    {"id": "bce", "printings": 1, "kind": "book club", "publisher": "Lakeland Guild", "year": 1980},
    {"id": "facs", "printings": 1, "kind": "facsimile", "year": 2001},
]
WORK = make_set(
    EDITIONS,
    [
        {"id": "line", "feature": "number line", "readings": LINES},
        {"id": "slip", "readings": {"mater": ["trade:1-2", "bce:1"], "master": ["trade:3-4"], "mattar": []}},
        {"id": "cloth", "readings": {"teal cloth": ["uk:1-2"]}},
        {
            "id": "price",
            "part": "jacket",
            "feature": "price",
            "readings": {
                "$8.95": ["trade:1-2"],
                "$9.95": ["trade:3-4"],
                "£5.50": ["uk:1"],
                "21s net": ["uk:2"],
                "no price": ["bce:1"],
            },
        },
    ],
)
EVERYTHING = ("trade:1-4", "uk:1-2", "bce:1", "facs:1")
WITHOUT_LINES = make_set(EDITIONS, [{"id": "slip", "readings": {"mater": ["trade:1"]}}])


@pytest.mark.parametrize(
    ("words", "book"),
    [
        (["edition=1", "printing=1", "state=1", "issue=1"], EVERYTHING),  # what is claimed is no evidence
        (
            ["?point=slip=master", "^point=slip=master", "…point=slip=master"],
            EVERYTHING,
        ),  # nor what is hedged, unchecked, elsewhere
        (["point=slip=master"], ("trade:3-4", "uk:1-2")),  # no point of the book names the facsimile
        (["~point=slip=master"], ("trade:1-2", "uk:1-2", "bce:1", "facs:1")),  # what no reading covers stays open
        (["point=slip=mattar"], EVERYTHING),  # no source says which printing has it
        (["point=slip=unheard of"], EVERYTHING),
        (["number_line=1 2 3 4 5"], ("trade:1", "uk:1-2", "bce:1")),
        (["number_line=full"], ("trade:1", "uk:1-2", "bce:1")),
        (["number_line=to 4"], ("trade:3-4", "uk:1-2")),
        (["number_line=to 9"], EVERYTHING),  # no reading of the set has it
        (["~number_line=to 1"], ("trade:2-4", "uk:1-2", "facs:1")),
        (["number_line=none"], EVERYTHING),
        (["book_club=yes"], ("bce:1",)),
        (["~book_club=yes"], ("trade:1-4", "uk:1-2", "facs:1")),
        (["blind_stamp=yes"], ("bce:1",)),
        (["~blind_stamp=yes"], EVERYTHING),  # many club copies have none
        (["printing=3"], ("trade:2-4", "uk:2", "bce:1", "facs:1")),  # a later printing said openly: not a first one
        (["printing=later"], ("trade:2-4", "uk:2", "bce:1", "facs:1")),
        (["~printing=1"], ("trade:2-4", "uk:2", "bce:1", "facs:1")),
        (["edition=reprint"], ("trade:2-4", "uk:2", "bce:1", "facs:1")),
        (["edition=facsimile"], ("facs:1",)),
        (["edition=2"], ("trade:2-4", "uk:1-2", "bce:1", "facs:1")),
        (["edition=limited", "limitation=12 of 300"], EVERYTHING),  # the set has no limited edition
        (["isbn=9781861972712"], ("uk:1-2", "bce:1", "facs:1")),  # the others' numbers aren't known
        (["isbn=9780000000002"], EVERYTHING),
        (["publisher=Aldous Fenn Ltd"], ("uk:1-2", "facs:1")),
        (["publisher=Harrow and Pike"], ("trade:1-4", "facs:1")),
        (["publisher=Harrow, & Pike."], ("trade:1-4", "facs:1")),
        (["publisher=Grimble & Sons"], EVERYTHING),
        (["?publisher=Aldous Fenn"], EVERYTHING),
        (["year=1980"], ("trade:1-4", "bce:1")),
        (["year=1995"], ("trade:1-4", "uk:1-2", "bce:1")),
        (["year=1950"], EVERYTHING),  # before them all: a year of something else
        (["jacket_price=9.95 USD"], EVERYTHING),  # a jacket's tell never narrows the book
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_what_a_claim_leaves_of_the_book(words, book):
    assert verdict(WORK, *words).book == book


@pytest.mark.parametrize(
    ("words", "jacket"),
    [
        (["jacket_price=8.95 USD"], ("trade:1-2",)),
        (["jacket_price=8.95"], ("trade:1-2",)),  # told without a currency
        (["jacket_price=8.95 GBP"], EVERYTHING),
        (["jacket_price=1.05 GBP"], ("uk:2",)),  # 21s
        (["~jacket_price=8.95 USD"], ("trade:3-4", "uk:1-2", "bce:1", "facs:1")),
        (["jacket_price=none"], ("bce:1",)),
        (["jacket_price=none", "price_clipped=yes"], EVERYTHING),
        (["price_clipped=yes"], EVERYTHING),
        (["~price_clipped=yes"], ("trade:1-4", "uk:1-2", "facs:1")),  # a price is there
        (["book_club=yes"], ("bce:1",)),
        (
            ["point=slip=master", "number_line=to 1", "printing=3"],
            EVERYTHING,
        ),  # tells of the book
        (["printing=3@jacket"], ("trade:3", "bce:1", "facs:1")),
        (["jacket=lacking"], None),
        (["jacket=none issued"], None),
        (["jacket=facsimile"], None),
        (["?jacket=lacking"], EVERYTHING),
        (["jacket=supplied", "jacket_price=9.95 USD"], ("trade:3-4",)),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_what_a_claim_leaves_of_the_jacket(words, jacket):
    assert verdict(WORK, *words).jacket == jacket


def test_without_a_line_of_its_own_a_set_follows_the_houses():
    # the lowest number is the printing (Stark, BookThink no. 91, 26 March 2007); an edition with fewer printings keeps its last
    assert verdict(WITHOUT_LINES, "number_line=3 4 5 6").book == ("trade:3", "uk:2", "bce:1", "facs:1")


def test_a_house_that_starts_its_line_at_2_is_read_by_its_practice():
    # Random House let "First Edition" stand for the 1 (Stark, "Number Lines", BookThink no. 91, 26 March 2007)
    work = make_set([{"id": "trade", "printings": 3, "publisher": "Random House", "year": 1984}], [])
    assert verdict(work, "number_line=2 3 4 5 6 7 8 9", "edition=1").book == ("trade:1",)
    assert verdict(work, "number_line=2 3 4 5 6 7 8 9").book == ("trade:1-3",)
    assert verdict(work, "number_line=3 4 5 6 7 8 9", "edition=1").book == ("trade:3",)


@pytest.mark.parametrize(
    ("words", "claimed"),
    [
        (["edition=1"], ("trade:1-4",)),
        (["printing=1"], ("trade:1",)),
        (["edition=1", "printing=1"], ("trade:1",)),
        (["edition=1", "printing=3"], ("trade:3",)),
        (["printing=later"], ()),  # it would only be weighed against itself
        (["printing=2", "point=cloth=teal cloth"], ("uk:2",)),  # the second printing of the edition that is shown
        (["printing=1", "point=cloth=teal cloth"], ("uk:1",)),
        (["edition=1", "printing=1", "point=cloth=teal cloth"], ("trade:1",)),  # "first edition" is the first one's
        (["printing=4", "point=cloth=teal cloth"], ("trade:4",)),  # it has no such printing
        (["edition=1", "printing=later"], ("trade:2-4",)),
        (["edition=1 british"], ("uk:1-2",)),
        (["edition=1 british", "edition=1", "printing=1"], ("uk:1",)),  # a plain one beside a country means that one
        (["edition=1 canadian"], ()),  # the set knows none
        (["edition=1 thus", "publisher=Aldous Fenn"], ("uk:1-2",)),
        (["edition=1 thus"], ()),
        (["printing=2", "publisher=Aldous Fenn"], ("uk:2",)),
        (["edition=1", "publisher=Aldous Fenn"], ("trade:1-4",)),
        (["edition=1", "?printing=1"], ("trade:1-4",)),  # hedged counts only where nothing is asserted
        (["?printing=1"], ("trade:1",)),
        (["^edition=1", "~printing=1", "…printing=1"], ()),
        (["book_club=yes"], ()),
        (["edition=reprint"], ()),
        (["issue=1"], ("trade:1",)),
        (["printing=1@jacket", "issue=1@jacket"], ()),
        (["printing=1", "printing=3"], ("trade:1",)),
        (["edition=2"], ("trade:2-4", "uk:1-2", "bce:1", "facs:1")),
        (["edition=1", "edition=2"], ("trade:1-4",)),
        (["printing=17"], ("trade:2-4", "uk:1-2", "bce:1", "facs:1")),  # the set knows four: some later one
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_what_is_claimed(words, claimed):
    assert verdict(WORK, *words).claimed == claimed


def test_states_are_claimed_where_their_order_is_not_denied():
    cloth = {"id": "cloth", "readings": {"gray": ["trade:1a"], "black": ["trade:1b"], "green": ["trade:2"]}}
    ordered = make_set([{"id": "trade", "printings": 2}], [cloth])
    unordered = make_set([{"id": "trade", "printings": 2}], [{**cloth, "note": "states of the binding, no order known"}])
    assert verdict(ordered, "printing=1", "state=1").claimed == ("trade:1a",)
    assert verdict(unordered, "printing=1", "state=1").claimed == ("trade:1",)
    assert verdict(ordered, "printing=1", "state=1", "point=cloth=black").standing == "contradicted"
    assert verdict(unordered, "printing=1", "state=1", "point=cloth=black").standing == "supported"


def test_a_denied_state_removes_its_printing_only_if_no_other_state_may_lack_the_reading():
    # letters of two elements (facts/points/README, rule 7): denying one state says nothing of the printing
    slip = {"id": "slip", "readings": {"mater": ["trade:1a"], "master": ["trade:1b", "trade:2"]}}
    ads = {"id": "ads", "readings": {"boxed": ["trade:1a", "trade:1b"], "unboxed": ["trade:1c", "trade:2"]}}
    work = make_set([{"id": "trade", "printings": 2}], [slip, ads])
    assert verdict(work, "~point=slip=mater").book == ("trade:1-2",)
    assert verdict(work, "~point=ads=boxed").book == ("trade:1-2",)
    whole = make_set([{"id": "trade", "printings": 2}], [slip, {"id": "ads", "readings": {"boxed": ["trade:1a", "trade:1b"]}}])
    assert verdict(whole, "~point=ads=boxed").book == ("trade:2",)
    lone = make_set([{"id": "trade", "printings": 2}], [{"id": "ads", "readings": {"boxed": ["trade:1a"]}}])
    assert verdict(lone, "~point=ads=boxed").book == ("trade:1-2",)


def test_an_edition_is_known_by_its_name_id_or_publisher():
    editions = [{"id": "a", "name": "First edition", "printings": 1}, {"id": "us", "name": "Brandt", "printings": 1}]
    assert verdict(make_set(editions, []), "edition=1 american").claimed == ("us:1",)
    editions[1] = {"id": "b", "name": "Brandt", "publisher": "Fenn of Canada", "printings": 1}
    assert verdict(make_set(editions, []), "edition=1 canadian").claimed == ("b:1",)


def test_the_only_limited_edition_is_the_first():
    work = make_set([{"id": "private", "kind": "limited", "printings": 1}], [])
    assert verdict(work, "edition=1").claimed == ("private:1",)


def test_a_proof_has_no_verdict():
    found = verdict(WORK, "proof=yes", "printing=1", "point=slip=master")
    assert (found.standing, found.book, found.jacket, found.findings) == ("unclaimed", None, None, ())
    assert verdict(WORK, "~proof=yes", "point=slip=master").book == ("trade:3-4", "uk:1-2")


def test_the_title_counts_beside_the_text_but_has_no_spans():
    found = verdict(WORK, "point=slip=master", title_claims=said("printing=1"))
    assert (found.claimed, found.standing) == (("trade:1",), "contradicted")
    (finding,) = [f for f in found.findings if f.kind == "contradiction"]
    assert finding.spans == ((0, 9),)
    assert found.title_claims == said("printing=1")


def test_marks_in_a_publishers_name_rule_no_edition_out():
    # "Little, Brown for the club" is as much "Little Brown" as "Little, Brown" is
    editions = [
        {"id": "trade", "printings": 2, "publisher": "Grimble, Fenn"},
        {"id": "bce", "printings": 1, "kind": "book club", "publisher": "Grimble, Fenn for the club"},
    ]
    found = verdict(make_set(editions, []), "publisher=Grimble Fenn", "book_club=yes")
    assert (found.book, found.scores.contradiction) == (("bce:1",), 0)
