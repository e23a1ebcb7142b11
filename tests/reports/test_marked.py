"""The listing's words with the claims marked in place."""

from hypothesis import given
from hypothesis import strategies as st

from auditor.reading import read
from auditor.reports.marked import MARKS, legend, marked, pieces
from auditor.values import Claim, Stance, Trace

TEXT = "First edition, not a club copy; later printings differ. May be signed."


def claim(words: str, stance: Stance, text: str = TEXT) -> Claim:
    start = text.index(words)
    trace = Trace("edition", cue="not" if stance == "denied" else None)
    return Claim("edition", "1", "book", stance, start, start + len(words), trace)


def test_each_stance_reads_differently_without_colour():
    claims = [
        claim("First edition", "asserted"),
        claim("club", "denied"),
        claim("later printings", "elsewhere"),
        claim("signed", "hedged"),
    ]
    assert marked(TEXT, claims).plain == "[First edition], not a [-club-] copy; {later printings} differ. May be [?signed?]."
    assert (
        legend(claims).plain
        == "[said of this copy]   [-said not to be so-]   [?put forward with doubt?]   {said of other copies}"
    )
    assert len({(mark.before, mark.behind) for mark in MARKS.values()}) == len(MARKS)


def test_words_that_deny_by_themselves_are_not_struck_out():
    text = "Price present, no chips."
    shown = marked(text, read(text))
    assert shown.plain == "[Price present], no [-chips-]."
    assert legend(read(text)).plain == "[said of this copy]   [-said not to be so-]"


def test_claims_on_the_same_words_are_one_mark():
    assert marked("1st/1st", [claim("1st", "asserted", "1st/1st"), claim("1st/1st", "asserted", "1st/1st")]).plain == "[1st/1st]"


def test_a_terminal_is_never_steered_by_a_listing():
    shown = marked("Fine\x1b[31m copy\u202e\r\nnew\tline", [claim("copy", "asserted", "Fine\x1b[31m copy")]).plain
    assert shown == "Fine·[31m [copy]··\nnew\tline"


SPANS = st.tuples(st.integers(0, 30), st.integers(0, 30), st.sampled_from(list(MARKS)))


@given(st.lists(SPANS, max_size=8))
def test_marks_cover_the_claimed_words_once_and_never_nest(spans):
    claims = [Claim("edition", "1", "book", stance, start, end, Trace("edition", cue="not")) for start, end, stance in spans]
    cut = list(pieces(claims, 30))
    covered = [place for start, end, _ in cut for place in range(start, end)]
    assert covered == sorted(set(covered))
    assert set(covered) == {place for start, end, _ in spans if start < end <= 30 for place in range(start, end)}
    for start, end, stance in cut:
        assert all(any(s <= place < e and kind == stance for s, e, kind in spans) for place in range(start, end))
