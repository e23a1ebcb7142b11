"""A claim is clearly of this copy unless its sentence talks of others, of what isn't so, or of what somebody else said."""

import pytest

from auditor.knowledge import lexicon
from auditor.reading import read
from tests.weighing.builders import make_set


def clear(text: str) -> dict[str, bool]:
    return {claim.value: claim.clear for claim in read(text) if claim.stance in ("asserted", "denied")}


@pytest.mark.parametrize(
    "text",
    [
        "Blue cloth. Priced $10.95 on the flap.",
        "Blue cloth, priced $10.95 on the flap; a fine copy.",
        "Blue cloth, priced $10.95. Later printings are in green cloth at $12.50.",
        "Priced? Yes, $10.95 on the flap.",
    ],
)
def test_plain_words_are_clear(text):
    assert clear(text)["10.95 USD"]


@pytest.mark.parametrize(
    "text",
    [
        "Unlike the club copies this has $10.95 on the flap.",
        "After the film the flap went up to $10.95, until then it had $8.95.",
        "The museum's copy has $10.95 on the flap.",
        "Billed in the guide as having $10.95 on the flap.",
    ],
)
def test_a_sentence_that_mixes_copies_is_not(text):
    assert not clear(text).get("10.95 USD", False)


def test_one_clear_telling_is_enough():
    assert clear("Unlike the club copies it has $10.95 on the flap. Flap price is $10.95.")["10.95 USD"]


@pytest.mark.parametrize("word", sorted({word for words in lexicon.table("clarity").values() for word in words}))
def test_each_word_makes_a_sentence_unclear(word):
    assert clear("Priced $10.95 on the flap here.")["10.95 USD"]
    assert not clear(f"Priced $10.95 on the flap here {word}.").get("10.95 USD", False)


def test_a_title_told_with_a_figure_tells_no_point():
    work = make_set(
        [{"id": "t"}], [{"id": "front", "part": "jacket", "readings": {"seven kites": ["t:1"], "five kites": ["t:1"]}}]
    )
    work = work.model_copy(update={"work": work.work.model_copy(update={"title": "Seven Paper Kites"})})
    assert not [claim for claim in read("7 Paper Kites, UK first", work) if claim.feature == "point"]
    assert [claim.value for claim in read("Seven kites on the front of the jacket.", work) if claim.feature == "point"]
