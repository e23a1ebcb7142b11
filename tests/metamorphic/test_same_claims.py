"""What changes nothing for a reader changes no claim: signs, blanks, marks of no width, tags, boilerplate, order, synonyms.

Measured on whole listings of the demo and of the development sets, not on examples made for it; a publisher's name, which is
claimed as given, may keep its own signs.
"""

import json
import random
import unicodedata

import pytest

from auditor.auditing import audit_on, open_shelf
from tests.commands import DEMO

SETS = ("dev-a", "dev-c", "dev-e", "dev-g", "dev-i")


def _listings():
    for folder in (DEMO, *(DEMO / "gold" / name for name in SETS)):
        points = folder / "points"
        for line in (folder / "listings.jsonl").read_text(encoding="utf-8").splitlines()[:12]:
            listing = json.loads(line)
            yield points if points.is_dir() else DEMO / "points", listing["title"], listing["text"]


def _between(text, mark):
    """The text with a mark inside its words, after each third letter."""
    return "".join(c + mark if i % 3 == 0 and c.isalpha() and text[i + 1 : i + 2].isalpha() else c for i, c in enumerate(text))


CHANGES = {
    "curly apostrophes": lambda text: text.replace("'", "’"),
    "curly quotation marks": lambda text: text.replace('"', "“"),
    "entities": lambda text: text.replace("&", "&amp;").replace("'", "&#39;").replace('"', "&quot;").replace("£", "&pound;"),
    "named entities": lambda text: text.replace("&", "&amp;").replace("—", "&mdash;").replace("½", "&frac12;"),
    "carriage returns": lambda text: text.replace("\n", "\r\n"),
    "break tags": lambda text: text.replace("\n", "<br>"),
    "no-break spaces": lambda text: text.replace(" ", "\u00a0"),
    "no-break spaces as entities": lambda text: text.replace(" ", "&nbsp;"),
    "two blanks": lambda text: text.replace(" ", "  "),
    "zero-width spaces in words": lambda text: _between(text, "\u200b"),
    "soft hyphens in words": lambda text: _between(text, "&shy;"),
    "right-to-left embedding": lambda text: f"\u202b{text}\u202c",
    "directional marks": lambda text: text.replace(" ", " \u200e"),
    "a byte order mark": lambda text: f"\ufeff{text}",
    "bold words": lambda text: " ".join(f"<b>{word}</b>" if i % 5 == 0 else word for i, word in enumerate(text.split(" "))),
    "letters and marks apart": lambda text: unicodedata.normalize("NFD", text),
    "boilerplate behind": lambda text: f"{text}\n\nThank you for looking. Postage at cost. Please ask before buying.",
}


def _claims(verdict):
    return sorted((c.feature, "" if c.feature == "publisher" else c.value, c.part, c.stance) for c in verdict.claims)


@pytest.mark.parametrize("name", CHANGES)
def test_what_a_reader_does_not_see_changes_no_claim(name):
    for points, title, text in _listings():
        shelf, changed = open_shelf(points), CHANGES[name](text)
        verdict = audit_on(shelf, changed, title)
        assert _claims(verdict) == _claims(audit_on(shelf, text, title)), text
        for claim in verdict.claims:
            assert 0 <= claim.start < claim.end <= len(changed)


def test_offsets_count_the_text_as_given():
    text = "Re\u200bmainder&nbsp;mark, <b>price</b>\u00a0\u00a0clipped &amp; fox\u00ading."
    said = {claim.feature: text[claim.start : claim.end] for claim in audit_on(open_shelf(()), text).claims}
    assert said["remainder_mark"] == "Re\u200bmainder&nbsp;mark"
    assert said["price_clipped"] == "price</b>\u00a0\u00a0clipped"
    assert said["defect"] == "fox\u00ading"


# Each names its own noun, so that none leans on the one before.
SENTENCES = (
    "First edition, first printing.",
    "The book has a remainder mark.",
    "The jacket is price-clipped.",
    "The boards are slightly bumped.",
    "The jacket is chipped at the spine.",
    "Number line 10 9 8 7 6 5 4 3 2 1.",
    "Signed by the author on the title page.",
    "Not a book club edition.",
    "A previous owner's name is on the endpaper.",
    "Published in 1974.",
)


@pytest.mark.parametrize("seed", range(12))
def test_the_order_of_sentences_changes_no_claim(seed):
    shuffled = random.Random(seed).sample(SENTENCES, len(SENTENCES))
    shelf = open_shelf(())
    assert _claims(audit_on(shelf, " ".join(shuffled))) == _claims(audit_on(shelf, " ".join(SENTENCES)))


SYNONYMS = (
    (
        "First edition in dust jacket.",
        "1st edition in dj.",
        "First edition in dust wrapper.",
        "1st ed. in dustjacket.",
        "First ed. in d/w.",
    ),
    ("First printing.", "1st printing.", "First impression.", "1st impression."),
    ("Near fine in a very good jacket.", "NF in a VG dust jacket.", "NF/VG."),
    ("Jacket price-clipped.", "Jacket price clipped.", "The jacket is clipped at the price."),
    ("Ex-library.", "Ex-lib.", "Ex library copy.", "Former library copy."),
    ("No remainder mark.", "Without a remainder mark.", "Not remaindered."),
    ("Book club edition.", "BCE.", "Book-club edition."),
    ("Spotting to the edges of the pages.", "Foxing to the edges of the pages."),
    ("Signed by the author.", "SIGNED by the author.", "signed by author"),
)


@pytest.mark.parametrize("wordings", SYNONYMS, ids=lambda wordings: wordings[0])
def test_synonyms_claim_the_same(wordings):
    shelf = open_shelf(())
    first, *others = ({key for key in _claims(audit_on(shelf, words)) if key[1] != "present"} for words in wordings)
    assert first
    for words, other in zip(wordings[1:], others, strict=True):
        assert other == first, words


@pytest.mark.parametrize("case", [str.upper, str.lower, str.title], ids=["capitals", "small", "title"])
def test_case_changes_no_claim_of_plain_words(case):
    shelf = open_shelf(())
    text = " ".join(SENTENCES)
    assert _claims(audit_on(shelf, case(text))) == _claims(audit_on(shelf, text))
