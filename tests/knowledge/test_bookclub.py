"""Gutter codes and the tells of club copies."""

from __future__ import annotations

import pytest

from auditor.knowledge import lexicon
from auditor.knowledge.bookclub import gutter_years, tells

_TABLE = lexicon.table("bookclub")


@pytest.mark.parametrize("row", _TABLE["gutter_examples"], ids=lambda row: row["code"])
def test_worked_codes(row):
    # each row names the dated book and who says so
    years = gutter_years(row["code"])
    assert set(row["decodes_to_years"]) <= set(years)
    if "published" in row:
        assert any(row["published"] - 1 <= year <= row["published"] + 1 for year in years)


@pytest.mark.parametrize(
    ("code", "years"),
    [("P6", (1974, 1985)), ("p06", (1974, 1985)), ("37Q", (1975, 1986)), ("H 03", (1966, 1977)), ("S52", (1977,)), ("P054", ())],
)
def test_forms(code, years):
    # ISFDB wiki, "Gutter Codes": letter and week, either way round, with or without a nought; a week above 53 can be none
    assert gutter_years(code) == years


@pytest.mark.parametrize("code", ["", "P", "06", "P99", "P0", "6P6", "page 6", "12345", "Ä12"])
def test_what_is_no_code(code):
    assert gutter_years(code) == ()


def test_the_two_cycles_run_eleven_years_apart():
    assert all(
        second - first == 11 for first, second in (row["years"] for row in _TABLE["gutter_letters"] if len(row["years"]) == 2)
    )
    assert [row["letter"] for row in _TABLE["gutter_letters"]] == [chr(code) for code in range(ord("A"), ord("Z") + 1)]


def test_tells_say_what_they_prove():
    assert tells()["stated_on_flap"].strength == "decisive"
    assert tells()["keeps_trade_line"].strength == "none"  # clubs print from trade plates: a full line proves nothing
    assert tells()["gutter_code"].strength == "dating only"
    assert all(tell.source and tell.meaning for tell in tells().values())
