# ruff: noqa: E501 -- a case a line
"""Points in plain words: what sellers say of a point, in wordings of our own, and what must not be heard as one."""

from __future__ import annotations

import pytest

from auditor.reading import read
from tests.reading.invented_points import points, shelf

SAID = [
    # slips and their cure
    ("harrow-lane", '"cuboard" on p. 61', "p61=cuboard"),
    ("harrow-lane", "has the misprint on page 61", "p61=cuboard"),
    ("harrow-lane", "TYPO ON PAGE 61 PRESENT", "p61=cuboard"),
    ("harrow-lane", "Cupboard is misspelled on pg 61", "p61=cuboard"),
    ("harrow-lane", "cuboard for cupboard, page 61", "p61=cuboard"),
    ("harrow-lane", "The error on p.61 is there.", "p61=cuboard"),
    ("harrow-lane", "page 61 has been corrected", "p61=cupboard"),
    ("harrow-lane", "no misprint on page 61", "p61=cupboard"),
    ("harrow-lane", "the typo on p. 61 put right", "p61=cupboard"),
    ("harrow-lane", "page 61 corrected in ink by a former owner", "p61=cuboard"),  # a pen mends no printing
    ("harrow-lane", "the typo on p. 61 hand-corrected", "p61=cuboard"),
    ("harrow-lane", '"cuboard" p. 61 corrected by hand', "p61=cuboard"),
    ("harrow-lane", "cupboard spelt correctly on p. 61", "p61=cupboard"),
    ("glass-orchard", "with the dedication to Ellin", "dedication=For Ellin"),
    ("glass-orchard", "dedicated to Ellen", "dedication=For Ellen"),
    ("glass-orchard", '"For Ellin" on the dedication page', "dedication=For Ellin"),
    ("glass-orchard", "the plate is bound in upside down", "plate=upside down"),
    ("glass-orchard", "plate at p. 90 inverted", "plate=upside down"),
    ("glass-orchard", "the plate facing p. 90 is the right way up", "plate=right way up"),
    ("last-ferry", "Klob for Kolb on p. 203", "klob=Klob"),
    ("last-ferry", "the detective's name is spelled wrong on page 203", "klob=Klob"),
    ("last-ferry", "Kolb is spelled right on page 203", "klob=Kolb"),
    ("heron-year", "says heroin instead of heron on page 88", "heroin=heroin for heron"),
    ("heron-year", "p.88 misprint corrected", "heroin=heron"),
    ("ice-road", "the last line is repeated on page 112", "twice=last line printed twice"),
    ("ice-road", "p. 112 has the last line twice", "twice=last line printed twice"),
    ("low-water", '"rigth hand" p. 7', "rigth=rigth hand"),
    ("salt-hymnal", "hymn 14 is numbered 41", "hymn=hymn 14 numbered 41"),
    ("ore-dock", 'page 61 reads "harbor mater"', "mater=harbor mater"),
    ("ore-dock", "error on page 61 fixed", "mater=harbor master"),
    ("year-on-the-bog", "the sundew plate is captioned Pitcher Plant", "caption=sundew captioned Pitcher Plant"),
    ("babbitt", "Purdy for Lyte on p. 49", "p49-purdy=Purdy"),
    ("babbitt", '"Purdy" on page 49, line 4', "p49-purdy=Purdy"),
    ("great-gatsby", '"chatter" on p. 60', "p60-chatter=chatter"),
    ("great-gatsby", '"northern" p. 119', "p119-northern=northern"),
    ("great-gatsby", '"sick in tired" on page 205', "p205-line=sick in tired"),
    ("sun-also-rises", '"stoppped" on p. 181', "p181-stopped=stoppped, with three p's"),
    ("tale-of-peter-rabbit", '"wept big tears" on page 51', "p51-wept=wept big tears"),
    ("wonderful-wizard-of-oz", '"peices" on page 81', "p81-peices=peices"),
    ("of-mice-and-men", '"pendula" on page 9', "p9-pendula=nine-word phrase ending in pendula present"),
    ("of-mice-and-men", "dot between the 8s on page 88", "p88-dot=a dot between the two eights"),
    ("as-i-lay-dying", "dropped I on p. 11", "p11-i=out of line"),
    ("good-earth", '"flees" for "fleas" on page 100', "p100-flees=flees"),
    ("late-george-apley", '"Pretty Pearl" on p. 19', "p19-pearl=Pretty Pearl"),
    ("east-of-eden", '"bite" for "bight" on page 281', "p281-bite=bite"),
    ("waste-land", '"mount in" on p. 41', "p41-mountain=mount in, the a dropped"),
    # statements
    ("harrow-lane", '"First published 1956" with no other dates', "statement=first published 1956, nothing after it"),
    ("harrow-lane", "First published 1956, no further impressions noted", "statement=first published 1956, nothing after it"),
    ("harrow-lane", "No reprints are listed.", "statement=first published 1956, nothing after it"),
    ("harrow-lane", "Second impression, June 1956", "statement=second impression June 1956"),
    ("harrow-lane", '"Reprinted June 1956" on the verso', "statement=second impression June 1956"),
    ("harrow-lane", "Wayside Book Club notice on the verso", "statement=club notice"),
    ("glass-orchard", "stated First Edition", "statement=First Edition stated"),
    ("glass-orchard", "First edition, so stated", "statement=First Edition stated"),
    ("glass-orchard", "says first edition on the copyright page", "statement=First Edition stated"),
    ("glass-orchard", "Third printing stated on copyright page", "statement=later printing stated"),
    ("glass-orchard", "M14 in the gutter of p. 301", "gutter=M14"),
    ("lantern-clerk", "second printing, November 1931", "statement=Second printing November 1931"),
    ("lantern-clerk", "no further printings are noted", "statement=no later printing listed"),
    ("catcher-in-the-rye", "states First Edition on the copyright page", "statement=FIRST EDITION stated"),
    ("the-hobbit", "no later impressions listed", "statement=first published in 1937, nothing after it"),
    ("two-towers", "title page dated 1954", "title-year=1954"),
    # colours and cloths
    ("harrow-lane", "bound in navy", "boards=navy boards, gilt lettering"),
    ("harrow-lane", "Navy boards, bumped", "boards=navy boards, gilt lettering"),
    ("harrow-lane", "green buckram", "boards=green cloth"),
    ("harrow-lane", "the binding is green", "boards=green cloth"),
    ("harrow-lane", "purple top", "topstain=purple"),
    ("harrow-lane", "top edge stained purple", "topstain=purple"),
    ("harrow-lane", "purple stain to the top edge", "topstain=purple"),
    ("harrow-lane", "no stain on the top edge", "topstain=plain"),
    ("harrow-lane", "unstained top edge", "topstain=plain"),
    ("harrow-lane", "no topstain", "topstain=plain"),
    ("harrow-lane", "top edge without colour", "topstain=plain"),
    ("glass-orchard", "lettered in silver on the spine", "spine=silver"),
    ("glass-orchard", "silver titles to spine", "spine=silver"),
    ("glass-orchard", "spine stamped in white", "spine=white"),
    ("lantern-clerk", "gold lettering", "lettering=lettered in gilt"),
    ("lantern-clerk", "spine titles in black", "lettering=lettered in black"),
    ("ore-dock", "grey cloth", "cloth=gray cloth"),
    ("ore-dock", "black paper-covered boards", "cloth=black paper boards"),
    ("heron-year", "bound in gray paper over boards", "boards=gray paper boards"),
    ("dracula", "yellow cloth lettered in red", "binding=yellow cloth lettered in red"),
    ("tale-of-peter-rabbit", "green boards", "boards=green"),
    ("winesburg-ohio", "top edge stained yellow", "topstain=yellow"),
    # endpapers, advertisements, what is there and what is not
    ("harrow-lane", "maps on the end papers", "ends=map of the lane"),
    ("harrow-lane", "map inside both covers", "ends=map of the lane"),
    ("harrow-lane", "blank endpapers", "ends=plain"),
    ("harrow-lane", "endpapers are plain", "ends=plain"),
    ("harrow-lane", "ads at the rear", "adverts=six pages of advertisements"),
    ("harrow-lane", "six pages of adverts at the back", "adverts=six pages of advertisements"),
    ("harrow-lane", "without the advertisements", "adverts=no advertisements"),
    ("harrow-lane", "the adverts have gone", "adverts=no advertisements"),
    ("harrow-lane", "no adverts at end", "adverts=no advertisements"),
    ("harrow-lane", "no blind stamp", "stamp=none"),
    ("harrow-lane", "blind stamp to the rear board", "stamp=small circle"),
    ("harrow-lane", "without the medal", "medal=no medal"),
    ("harrow-lane", "no medal on the jacket", "medal=no medal"),
    ("harrow-lane", "jacket lacks the bronze medal", "medal=no medal"),
    ("harrow-lane", "bronze medal on the jacket", "medal=bronze medal printed"),
    ("harrow-lane", "no quotation on the front panel", "front=no review"),
    ("harrow-lane", "the Herald's review on the front panel", "front=Herald review"),
    ("harrow-lane", "jacket without the Herald quote", "front=no review"),
    ("glass-orchard", "author's picture on the back of the jacket", "photo=author photograph only"),
    ("glass-orchard", "Tribune blurb on the rear panel", "photo=Tribune quote"),
    ("ice-road", "rear panel advertises The Ore Dock", "rear=advertisement for The Ore Dock"),
    ("ice-road", "three reviews on the back of the dj", "rear=reviews of The Ice Road"),
    ("last-ferry", "the back lists the three earlier books", "rear=list of the three earlier books"),
    ("ore-dock", "Ledger quote on the back panel", "rear=Port City Ledger review"),
    ("lantern-clerk", "autumn list on the rear panel", "rear=list of autumn books"),
    ("low-water", "no award seal on the jacket", "award=no medallion"),
    ("low-water", "Silver Gull medal on the front", "award=Silver Gull medallion"),
    ("heron-year", "print shows through the thin paper", "paper=thin see-through paper"),
    ("heron-year", "no dent in the rear board", "stamp=no blind stamp"),
    ("where-the-wild-things-are", "no Caldecott medal on the jacket", "jacket-medal=no Caldecott medal"),
    ("tarzan-of-the-apes", "without the acorn on the spine", "acorn=no acorn"),
    ("farewell-to-arms", "without the legal disclaimer on page x", "disclaimer=no legal notice"),
    ("casino-royale", "no Sunday Times review on the flap", "jacket-review=no newspaper review"),
    ("for-whom-the-bell-tolls", "photographer not credited on the rear panel", "jacket-credit=no photographer named"),
    # a slip told by a letter, its cure by a manner of speaking
    ("harrow-lane", "Cupboard is a letter short on page 61", "p61=cuboard"),
    ("harrow-lane", "cupboard is minus its p on page 61", "p61=cuboard"),
    ("harrow-lane", "has a missing letter at p. 61", "p61=cuboard"),
    ("harrow-lane", "the misprint at 61 has been seen to", "p61=cupboard"),
    # nothing after the date, in all manners
    ("harrow-lane", "First published 1956 and leaves it at that.", "statement=first published 1956, nothing after it"),
    ("harrow-lane", "First published 1956, and not a word of any reprint", "statement=first published 1956, nothing after it"),
    ("harrow-lane", "Nothing follows 1956 on the verso", "statement=first published 1956, nothing after it"),
    ("harrow-lane", "First published 1956 and that's all", "statement=first published 1956, nothing after it"),
    ("harrow-lane", "under the 1956 date there's nothing", "statement=first published 1956, nothing after it"),
    # shades, adjectives behind, a colour between two stops
    ("harrow-lane", "a purplish top", "topstain=purple"),
    ("harrow-lane", "the tops of the pages are purple", "topstain=purple"),
    ("harrow-lane", "Green coloured cloth", "boards=green cloth"),
    ("harrow-lane", "Boards? Green.", "boards=green cloth"),
    ("harrow-lane", "Top edge - purple", "topstain=purple"),
    # lacks without a "no" beside them, and what is there all the same
    ("harrow-lane", "it omits the advertisements", "adverts=no advertisements"),
    ("harrow-lane", "the advertisements have likewise vanished", "adverts=no advertisements"),
    ("harrow-lane", "the medal hasn't been added", "medal=no medal"),
    ("harrow-lane", "six pages of advertisements", "adverts=six pages of advertisements"),
    ("harrow-lane", "bronze medal and all", "medal=bronze medal printed"),
    ("sour-cherry", "the rear flap says nothing", "flap=blank"),
    ("sour-cherry", "nothing whatever printed on the back flap", "flap=blank"),
    ("sour-cherry", "back flap bare", "flap=blank"),
    ("sour-cherry", "The Quince Year is advertised on the back flap", "flap=The Quince Year advertised"),
    ("sour-cherry", "the errata slip is present", "slip=erratum slip"),
    ("sour-cherry", "no errata slip", "slip=no slip"),
    ("sour-cherry", "bulks 32mm", "bulk=32 mm thick"),
    ("sour-cherry", "an inch and 25 mm thick", "bulk=25 mm thick"),
    ("sour-cherry", "8 1/2 inches tall", "size=eight and a half inches tall"),
    ("sour-cherry", "stands nine and a quarter inches high", "size=nine and a quarter inches tall"),
    ("sour-cherry", "The hat is yellow on page 14", "hat=hat yellow"),
    ("sour-cherry", "Hat? Green.", "hat=hat green"),
    ("sour-cherry", "number line 9 8 7 6 5 4", "row=3 or more is the lowest"),
    ("sour-cherry", "number line 10 9 8 7 6 5 4 3 2 1", "row=1 at the right of the row"),
    # taken over from prices and number lines
    ("harrow-lane", "Jacket priced 12/6.", "price=12s 6d net"),
    ("harrow-lane", "15s net on the front flap", "price=15s net"),
    ("harrow-lane", "no price on the flap", "price=no price"),
    ("glass-orchard", "number line 10 9 8 7 6 5 4 3 2", "line=lowest number 2"),
    ("glass-orchard", "full number line", "line=lowest number 1"),
]  # fmt: skip


@pytest.mark.parametrize(("stem", "text", "value"), SAID, ids=lambda value: value if isinstance(value, str) else None)
def test_said(stem: str, text: str, value: str) -> None:
    """Minimum functionality: one wording, its one reading, asserted."""
    assert points(stem, text) == {(value, "asserted")}


@pytest.mark.parametrize(("stem", "text", "value"), SAID, ids=lambda value: value if isinstance(value, str) else None)
def test_manner_changes_nothing(stem: str, text: str, value: str) -> None:
    """Invariance: capitals, a line before and behind, a full stop."""
    listing = f"Hardcover in jacket.\n{text.upper()}.\nPosted within two days."
    assert (value, "asserted") in points(stem, listing)


QUIET = [
    ("harrow-lane", "No stamps, no names."),
    ("harrow-lane", "BOOK CLEAN WITH NO WRITING."),
    ("harrow-lane", "Gift inscription on the front endpaper."),
    ("harrow-lane", "Nothing is written on the endpapers."),
    ("harrow-lane", "Nothing wrong with the top edge."),
    ("harrow-lane", "A sticker on the front cover."),
    ("sour-cherry", "Bought in 1982 for eight and a half pounds."),
    ("sour-cherry", "Yellow ribbon, green tape."),
    ("sour-cherry", "32 pages are creased."),
    ("harrow-lane", "No wear to the top edge."),
    ("harrow-lane", "Green jacket, a little rubbed."),
    ("harrow-lane", "Purple ink name to flyleaf."),
    ("harrow-lane", "Top edge dusty, navy jacket."),
    ("harrow-lane", "Errors and omissions excepted; please correct me."),
    ("harrow-lane", "She won a bronze medal for swimming."),
    ("harrow-lane", "A map of the county is loosely inserted."),
    ("harrow-lane", "A cupboard under the stairs holds the secret."),
    ("harrow-lane", "Not from a book club."),
    ("harrow-lane", "First published 1956."),
    ("harrow-lane", "The endpapers are browned."),
    ("harrow-lane", "Plain brown wrapping, posted the same day."),
    ("glass-orchard", "White rear panel soiled, silver sticker on it."),
    ("glass-orchard", "First edition, first state."),
    ("glass-orchard", "First edition, first printing."),
    ("glass-orchard", "Ellen, the heroine, marries in chapter nine."),
    ("glass-orchard", "Previous owner's photo laid in."),
    ("glass-orchard", "See photograph."),
    ("glass-orchard", "Pages clean, all correct and complete."),
    ("glass-orchard", "Later printings followed."),
    ("heron-year", "A heron on the jacket."),
    ("heron-year", "Stamp collectors welcome."),
    ("last-ferry", "Detective Kolb takes the last ferry home."),
    ("low-water", "Right hand corner bumped."),
    ("great-gatsby", "A northern bookshop."),
    ("tale-of-peter-rabbit", "Green ink inscription."),
    ("lantern-clerk", "Facsimile jacket."),
    ("lantern-clerk", "Black cloth."),
]  # fmt: skip


@pytest.mark.parametrize(("stem", "text"), QUIET)
def test_quiet(stem: str, text: str) -> None:
    """Words in another sense state nothing."""
    assert points(stem, text) == set()


STANCES = [
    ("harrow-lane", "Did not think to examine page 61.", {("p61", "unchecked")}),
    ("harrow-lane", "Haven't checked page 61.", {("p61", "unchecked")}),
    ("harrow-lane", "Whether the boards are green I leave to the buyer.", {("boards", "unchecked")}),
    ("harrow-lane", "They didn't put the bronze medal on this one.", {("medal=no medal", "asserted")}),
    ("harrow-lane", "Not sure about the misprint on p. 61.", {("p61", "unchecked")}),
    ("harrow-lane", "I didn't look at the endpapers.", {("ends", "unchecked")}),
    ("harrow-lane", "Can't tell whether the boards are green or navy.", {("boards", "unchecked")}),
    ("harrow-lane", "Appears to have the purple topstain.", {("topstain=purple", "hedged")}),
    ("harrow-lane", "Later printings have the medal on the front.", {("medal=bronze medal printed", "elsewhere")}),
    ("harrow-lane", "cuboard on p. 61, corrected in the second impression", {("p61=cuboard", "asserted"), ("p61=cupboard", "elsewhere")}),
    ("harrow-lane", "Unlike the club edition in navy boards.", {("boards=navy boards, gilt lettering", "elsewhere")}),
    ("harrow-lane", "No medal, sticker or quote on the jacket.", {("medal=no medal", "asserted"), ("front=no review", "asserted")}),
    ("harrow-lane", "Has neither the medal nor the Herald quote.", {("medal=no medal", "asserted"), ("front=no review", "asserted")}),
    ("harrow-lane", "Not in the green cloth.", {("boards=green cloth", "denied")}),
    ("glass-orchard", "Does not state First Edition.", {("statement=First Edition stated", "denied")}),
    ("tale-of-peter-rabbit", '"wept big tears" on page 51, changed to "shed" from the fourth printing',
     {("p51-wept=wept big tears", "asserted"), ("p51-wept=shed big tears", "elsewhere")}),
    ("lantern-clerk", "From the third printing on the lettering is black.", {("lettering=lettered in black", "elsewhere")}),
    ("harrow-lane", "This is the navy, lettered in gilt.", {("boards=navy boards, gilt lettering", "asserted")}),
]  # fmt: skip


KNOWN = [
    ("harrow-lane", "Owner's rubber stamp to the rear board.", set()),
    ("harrow-lane", "The first impression had the purple top and this one doesn't.", {("topstain=purple", "elsewhere"), ("topstain=plain", "asserted")}),
    ("glass-orchard", "First Edition is stated, as it is on the second printing.", {("statement=First Edition stated", "asserted"), ("statement=First Edition stated", "elsewhere")}),
    ("glass-orchard", "The first printing's plate was upside down; here that has been seen to.", {("plate=upside down", "elsewhere"), ("plate=right way up", "asserted")}),
]  # fmt: skip


@pytest.mark.parametrize(("stem", "text", "told"), KNOWN)
@pytest.mark.xfail(strict=True, reason="ellipsis and back reference are not followed; a phrase of the stamp is too wide")
def test_known_failures(stem: str, text: str, told: set[tuple[str, str]]) -> None:
    assert points(stem, text) == told


@pytest.mark.parametrize(("stem", "text", "told"), STANCES)
def test_stances(stem: str, text: str, told: set[tuple[str, str]]) -> None:
    """An unchecked point's value is not scored, so only its point is compared."""
    found = {(value.split("=")[0] if stance == "unchecked" else value, stance) for value, stance in points(stem, text)}
    assert found == told


def test_blind_stamp_agrees_with_its_feature() -> None:
    for text, reading, stance in (
        ("No blind stamp.", "none", "denied"),
        ("Blind stamp on the rear board.", "small circle", "asserted"),
    ):
        claims = read(text, shelf()["harrow-lane"])
        assert {(claim.value, claim.stance) for claim in claims if claim.feature == "blind_stamp"} == {("yes", stance)}
        assert {(claim.value, claim.stance) for claim in claims if claim.feature == "point"} == {(f"stamp={reading}", "asserted")}


def test_a_points_part_is_its_own() -> None:
    claims = read("Medal on the jacket, purple topstain.", shelf()["harrow-lane"])
    assert {(claim.value, claim.part) for claim in claims if claim.feature == "point"} == {
        ("medal=bronze medal printed", "jacket"),
        ("topstain=purple", "book"),
    }
