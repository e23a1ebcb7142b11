"""The reader as spaCy components, and what must hold for any text."""

import spacy
from hypothesis import given, settings
from hypothesis import strategies as st

import auditor.reading.pipeline  # registers the components
from auditor.reading import read
from auditor.reading.words import words

LISTING = "First edition, first printing. VG+/NF, d/j $24.95, isn’t price-clipped. No tears; light foxing to fore-edge."

WORDS = """first second edition printing number line 1 2 3 10 9 $ £ 24.95 12s 6d / - — . , ; ( ) ? ! VG NF + fine jacket dj no not
without tears chips foxing to the spine I believe haven't checked later printings unlike but except for signed by author
ISBN
0306406152 &amp; <br> ² ½ １ Ⅷ 🎉 ' " of copies limited gutter code P6 price clipped 1962 London : Harrow & Pike"""
PIECES = st.sampled_from([*WORDS.split(), "\u00ad", "\u200b", "\n", "\t"])


def test_the_component_works_in_anyones_pipeline() -> None:
    nlp = spacy.blank("en")
    nlp.add_pipe("listing_claims")
    doc = nlp(LISTING)
    assert [claim.key for claim in doc._.claims] == [claim.key for claim in read(LISTING)]
    assert {span.label_ for span in doc.spans["claims"]} >= {"edition", "printing", "grade", "jacket_price"}


def test_many_texts_at_once_are_read_like_one_at_a_time() -> None:
    nlp = auditor.reading.pipeline.build()
    texts = [LISTING, "No jacket.", "", "Appears to be a second printing."]
    assert [doc._.claims for doc in nlp.pipe(texts)] == [read(text) for text in texts]


def test_the_tokenizer_keeps_the_text_and_parts_shorthand() -> None:
    doc = auditor.reading.pipeline.build().make_doc("VG+/NF,  d/j isn't\n here ")
    assert doc.text == "VG+/NF,  d/j isn't\n here "
    assert [token.text for token in doc][:5] == ["VG", "+", "/", "NF", ","]
    assert "isn't" in [token.text for token in doc]


@settings(deadline=None, max_examples=300)
@given(st.one_of(st.text(max_size=200), st.lists(PIECES, max_size=40).map(" ".join), st.lists(PIECES, max_size=40).map("".join)))
def test_any_text_is_read_and_every_offset_is_inside_it(text: str) -> None:
    split = words(text)
    assert all(0 <= first < last <= len(text) for first, last in zip(split.start, split.end, strict=True))
    for claim in read(text):
        assert 0 <= claim.start < claim.end <= len(text)
        assert text[claim.start : claim.end].strip()
        assert claim.value
    assert auditor.reading.pipeline.build().make_doc(text).text == text


def test_a_claim_is_stated_once() -> None:
    claims = read(f"{LISTING} {LISTING}")
    assert len({claim.key for claim in claims}) == len(claims)


def test_a_claim_knows_what_made_it() -> None:
    (claim,) = [claim for claim in read("Appears to be a first printing.") if claim.feature == "printing"]
    assert (claim.stance, claim.trace.row) == ("hedged", "ordinal")
    assert str(claim.trace.cue).startswith("appears")
