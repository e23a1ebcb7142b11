"""Book numbers, beside python-stdnum's own reading of them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from stdnum import isbn as stdnum_isbn
from stdnum.exceptions import ValidationError

from auditor.knowledge import lexicon
from auditor.knowledge.isbn import to_13


@pytest.mark.parametrize("row", lexicon.table("standards")["isbn_examples"], ids=lambda row: row["input"])
def test_worked_numbers(row):
    assert (to_13(row["input"]) or "invalid") == row["result"]


def _by_stdnum(text: str) -> str | None:
    try:
        return stdnum_isbn.to_isbn13(stdnum_isbn.validate(text)).replace("-", "")
    except ValidationError:
        return None


_DIGITS = st.text("0123456789", min_size=8, max_size=12)


@given(_DIGITS, st.sampled_from("0123456789X"))
def test_any_row_of_digits_is_judged_as_stdnum_judges_it(digits, last):
    assert to_13(digits + last) == _by_stdnum(digits + last)


@given(st.text("0123456789", min_size=9, max_size=9))
def test_every_valid_isbn_10_has_one_thirteen_and_no_other_check_digit_is_right(nine):
    valid = [last for last in "0123456789X" if to_13(nine + last)]
    assert len(valid) == 1
    assert to_13(nine + valid[0]) == _by_stdnum(nine + valid[0])
    assert to_13(f"{nine[0]}-{nine[1:4]} {nine[4:]}–{valid[0]}") == to_13(nine + valid[0])


@given(st.sampled_from(["978", "979"]), st.text("0123456789", min_size=10, max_size=10))
def test_thirteen_digits(prefix, rest):
    assert to_13(prefix + rest) == _by_stdnum(prefix + rest)


@pytest.mark.parametrize("text", ["", "X", "978", "٩٧٨٠٣٠٦٤٠٦١٥٧", "0-306-4O615-2", "ISBN", "97803064061570", "030640615 2 9"])
def test_what_is_no_book_number(text):
    assert to_13(text) is None
