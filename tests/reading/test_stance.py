"""Stance, in the manner of a check list: the least a reader must do, what must not change it, what must.

The sentences are invented; what is expected follows from the contract of claims.
"""

import pytest

from auditor.reading import read


def stances(text: str, feature: str) -> set[tuple[str, str]]:
    """(value, stance) of every claim of a feature."""
    return {(claim.value, claim.stance) for claim in read(text) if claim.feature == feature}


DENIED = [
    ("No tears, chips or writing.", "defect", {"tear", "chip", "marking"}),
    ("Free of stains, tears and foxing.", "defect", {"stain", "tear", "foxing"}),
    ("Without foxing, without chips.", "defect", {"foxing", "chip"}),
    ("It has neither a remainder mark nor a bookplate.", "remainder_mark", {"yes"}),
    ("Remainder mark: none.", "remainder_mark", {"yes"}),
    ("Ex-library: no. Signed: no.", "ex_library", {"yes"}),
    ("This is not a book club edition.", "book_club", {"yes"}),
    ("THIS IS NOT A BOOK CLUB EDITION", "book_club", {"yes"}),
    ("isnt a book club edition", "book_club", {"yes"}),
    ("Never price-clipped.", "price_clipped", {"yes"}),
    ("I can find no foxing.", "defect", {"foxing"}),
    ("There isn't any underlining.", "defect", {"marking"}),
    ("Pages are clean, none torn.", "defect", {"tear"}),
    ("The jacket is unclipped.", "price_clipped", {"yes"}),
]


@pytest.mark.parametrize(("text", "feature", "values"), DENIED)
def test_a_denial_runs_over_its_list(text: str, feature: str, values: set[str]) -> None:
    assert stances(text, feature) == {(value, "denied") for value in values}


ENDS = [
    ("No tears but a chip to the jacket.", {("tear", "denied"), ("chip", "asserted")}),
    ("No tears, light foxing to the fore-edge.", {("tear", "denied"), ("foxing", "asserted")}),
    ("No chips and the spine faded.", {("chip", "denied"), ("fading", "asserted")}),
    ("No writing, some foxing.", {("marking", "denied"), ("foxing", "asserted")}),
    ("No underlining; corners bumped.", {("marking", "denied"), ("bump", "asserted")}),
    ("No stains, with a small tear.", {("stain", "denied"), ("tear", "asserted")}),
    ("Not foxed, though the spine is sunned.", {("foxing", "denied"), ("fading", "asserted")}),
    ("No dust jacket, boards rubbed.", {("rubbing", "asserted")}),
    ("Some leaves toned, none torn.", {("tanning", "asserted"), ("tear", "denied")}),
]


@pytest.mark.parametrize(("text", "expected"), ENDS)
def test_a_denial_ends_where_a_positive_item_begins(text: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, "defect") == expected


def test_an_exception_stands() -> None:
    text = "Clean and without marks except for a previous owner's name on the endpaper."
    assert ("marking", "denied") in stances(text, "defect")
    assert stances(text, "owner_mark") == {("name", "asserted")}


HEDGED = [
    "Appears to be a first printing.",
    "I believe this is a first printing.",
    "i believe its a first printing",
    "Should be a first printing.",
    "Possibly a first printing.",
    "First printing, I think.",
    "First printing?",
    "First printing (?)",
    "A first printing, as far as I can tell.",
    "As far as I know it is a first printing.",
    "Looks like a first printing to me.",
    "A first printing according to the dealer I had it from.",
    "I'm told it's a first printing.",
    "I doubt that it's a first printing.",
    "It seems to be a first printing.",
    "My guess is first printing.",
    "Might be a first printing.",
    "First printing - or so I was told.",
]


@pytest.mark.parametrize("text", HEDGED)
def test_a_hedge_before_or_behind(text: str) -> None:
    assert stances(text, "printing") == {("1", "hedged")}


def test_a_hedge_covers_edition_and_printing_but_not_the_rest() -> None:
    text = "I believe it is a first edition, first printing, in a price-clipped jacket."
    assert stances(text, "edition") == {("1", "hedged")}
    assert stances(text, "printing") == {("1", "hedged")}
    assert stances(text, "price_clipped") == {("yes", "asserted")}


def test_boilerplate_is_hedged() -> None:
    text = "May contain writing, highlighting or a library stamp."
    assert stances(text, "defect") == {("marking", "hedged")}
    assert stances(text, "ex_library") == {("yes", "hedged")}


def test_a_weak_denial_is_the_value_no() -> None:
    assert stances("It doesn't seem to be a book club edition.", "book_club") == {("no", "hedged")}
    assert stances("I don't think it is a book club edition.", "book_club") == {("no", "hedged")}


def test_may_is_a_month_too() -> None:
    assert stances("Second impression, May 1953.", "printing") == {("2", "asserted")}


UNCHECKED = [
    ("I haven't checked for a remainder mark.", "remainder_mark"),
    ("Not checked for a remainder mark.", "remainder_mark"),
    ("Didn't look for a remainder mark.", "remainder_mark"),
    ("Not sure which printing.", "printing"),
    ("Not sure which printing this is, sorry", "printing"),
    ("Printing unknown.", "printing"),
    ("No idea about the printing.", "printing"),
    ("I don't know if it is a book club edition.", "book_club"),
    ("dont know if its a book club edition", "book_club"),
    ("I can't tell whether it was price-clipped.", "price_clipped"),
    ("We cannot say whether it is signed by the author.", "signed"),
    ("Unable to say if it is ex-library.", "ex_library"),
]


@pytest.mark.parametrize(("text", "feature"), UNCHECKED)
def test_what_was_not_looked_at(text: str, feature: str) -> None:
    assert {stance for _, stance in stances(text, feature)} == {"unchecked"}


ELSEWHERE = [
    ("Later printings drop the price.", "printing", "later"),
    ("Unlike the book club edition, this has a price.", "book_club", "yes"),
    ("The second printing corrects the misprint.", "printing", "2"),
    ("The misprint was corrected in the second printing.", "printing", "2"),
    ("Not to be confused with the book club edition.", "book_club", "yes"),
    ("First printings have a red topstain.", "printing", "1"),
    ("The book club edition has a blind stamp on the rear board.", "blind_stamp", "yes"),
    ("The third impression, in blue boards, lacks the map.", "printing", "3"),
    ("Signed copies also available.", "signed", "signed"),
    ("The jacket of this title is usually price-clipped.", "price_clipped", "yes"),
]


@pytest.mark.parametrize(("text", "feature", "value"), ELSEWHERE)
def test_talk_of_other_copies(text: str, feature: str, value: str) -> None:
    assert stances(text, feature) == {(value, "elsewhere")}


OWN = [
    ("All first editions in jackets.", "edition", {("1", "asserted")}),
    ("This is the second printing.", "printing", {("2", "asserted")}),
    ("Here in the first impression.", "printing", {("1", "asserted")}),
    ("A second printing, not the first.", "printing", {("2", "asserted"), ("1", "denied")}),
    ("Later printings lack the map; this is the first printing.", "printing", {("later", "elsewhere"), ("1", "asserted")}),
]


@pytest.mark.parametrize(("text", "feature", "expected"), OWN)
def test_talk_of_this_copy_stays(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, feature) == expected


QUESTIONS = [
    ("Q: Is it signed? A: No.", "signed", {("signed", "elsewhere"), ("signed", "denied")}),
    ("Q: Is it price-clipped? A: Yes, sorry.", "price_clipped", {("yes", "elsewhere"), ("yes", "asserted")}),
    ("Is this a first printing? I think so.", "printing", {("1", "elsewhere"), ("1", "hedged")}),
    ("Any remainder mark? Haven't looked.", "remainder_mark", {("yes", "elsewhere"), ("yes", "unchecked")}),
]


@pytest.mark.parametrize(("text", "feature", "expected"), QUESTIONS)
def test_the_answer_speaks(text: str, feature: str, expected: set[tuple[str, str]]) -> None:
    assert stances(text, feature) == expected


@pytest.mark.parametrize(
    "text",
    [
        "No tears, chips or writing. First printing, I believe. Later printings drop the price.",
        "Not a book club edition; remainder mark: none. Possibly signed by the author.",
    ],
)
@pytest.mark.parametrize(
    "change", [str.upper, lambda t: t.replace("'", "’"), lambda t: f"Hello. {t}", lambda t: f"{t} Thanks for looking!"]
)
def test_what_changes_nothing(text: str, change) -> None:
    def keys(words: str) -> set[tuple[str, str, str, str]]:
        return {claim.key for claim in read(words)}

    assert keys(change(text)) == keys(text)


@pytest.mark.parametrize(
    "text",
    [
        "It is, I rather think, the first printing.",
        "A dealer had it down as a first printing.",
        "Described by the man who sold it as a first printing.",
        "We'd like to call it a first printing.",
        "The first printing too, I'd bet money on it.",
        "First printing if one goes by the statement.",
        "A first printing, in all likelihood.",
        "Prolly a first printing.",
        "By my reading of the figures the first printing.",
        "First printing so far as can be told from a lineless verso.",
    ],
)
def test_opinions_around_a_statement(text: str) -> None:
    assert stances(text, "printing") == {("1", "hedged")}


@pytest.mark.parametrize(
    "text",
    [
        "An error that survived into the second printing.",
        "Only the second printing has it.",
        "The second printing came in red.",
        "Most of the second printing has it in blue.",
    ],
)
def test_printings_of_other_copies(text: str) -> None:
    assert stances(text, "printing") == {("2", "elsewhere")}


def test_what_is_judged_from_the_page_is_this_copys() -> None:
    assert stances("Months of reprints are listed, so it's a later printing.", "printing") == {("later", "asserted")}


@pytest.mark.parametrize("text", ["I'd put it at very good.", "We would call it very good.", "I'd grade it very good."])
def test_a_judgement_on_the_grade_is_no_doubt(text: str) -> None:
    assert stances(text, "grade") == {("very good", "asserted")}


@pytest.mark.parametrize(
    "text",
    [
        "It's signed, which I can't vouch for.",
        "Signed or not, we can't decide which.",
        "Whether it is signed no one can say from this.",
    ],
)
def test_not_known_behind_what_it_is_about(text: str) -> None:
    assert stances(text, "signed") == {("signed", "unchecked")}


def test_two_negatives_are_what_may_be_there() -> None:
    assert stances("We can't promise there isn't highlighting.", "defect") == {("marking", "hedged")}
