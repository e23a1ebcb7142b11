"""What is found once for all readers is what each would find by itself."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from auditor.reading import read
from auditor.reading.starts import Start, starts_in
from auditor.reading.words import _split, words

WRITTEN = """VG+/NF don't d/j $24.95 12s.6d 1st 1,000 P6 &amp; &#39;s isn&rsquo;t co&shy;py “fine” <br> <b <i>x</i> a<b>c ½ 1⁄2
... — - É ß İ naïve ﬁne 😀 _ x_y &bad &; U.S.A. 9–10"""
PIECES = st.sampled_from(WRITTEN.split())
BLANKS = st.sampled_from([" ", "  ", "\n", " \n", "\r\n", "\t", "\u00a0", "\u00ad", "\u200b", ""])


@given(st.lists(st.tuples(PIECES, BLANKS)))
def test_a_text_split_at_its_blanks_first_has_the_words_of_the_text_split_at_once(pieces: list[tuple[str, str]]) -> None:
    text = "".join(piece + blank for piece, blank in pieces)
    found = words(text)
    assert list(zip(found.norm, found.start, found.end, strict=True)) == list(_split(text))


def test_each_start_has_all_its_places_in_order() -> None:
    read("First edition.")  # loads every reader, each with its starts
    norm = words("Jacket 7 of 7; no jacket, boards. First printing, £12.50, number line to 3, London: Harrow & Pike, 1962.").norm
    known = Start(lambda word: word in ("jacket", "7"))
    found = starts_in(norm)
    assert found[known] == [0, 1, 3, 6]
    assert found == {start: places for start in found if (places := [at for at, word in enumerate(norm) if start.serves(word)])}
    assert len(found) > 10
