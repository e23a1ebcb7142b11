"""Prices as shops write them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.intake.money import asking


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("45.00 USD", "45.00 USD"),
        ("$45", "45.00 USD"),
        ("£12.50", "12.50 GBP"),
        ("US $1,234.56", "1234.56 USD"),
        ("EUR 30,00", "30.00 EUR"),
        ("30,00 €", "30.00 EUR"),
        ("1.234,56 €", "1234.56 EUR"),
        ("1 234,56 €", "1234.56 EUR"),
        ("CHF 1'250.00", "1250.00 CHF"),
        ("AU $20.00", "20.00 AUD"),
        ("C$ 18.50", "18.50 CAD"),
        ("$45 CAD", "45.00 CAD"),
        ("$1,200", "1200.00 USD"),
        ("Price: US $45.00 or best offer", "45.00 USD"),
        ("45.0000", "45.00"),
        ("45", "45.00"),
        ("45,-", "45.00"),
        ("12.5", "12.50"),
        ("12 pounds", "12.00 GBP"),
    ],
)
def test_one_clear_amount(written, meant):
    assert asking(written) == meant


@pytest.mark.parametrize(
    "written",
    [
        "",
        "make an offer",
        "$45 - $60",
        "45-60",
        "$10 + $4 shipping",
        "-45.00",
        "10%",
        "1.234",
        "£45 EUR",
        "0.00",
        "1,23,4",
        "2 for $10",
    ],
)
def test_what_is_no_single_clear_amount_is_no_price(written):
    assert asking(written) is None


@pytest.mark.parametrize(
    ("written", "column", "meant"),
    [
        ("$45", "CAD", "45.00 CAD"),  # a bare $ is settled by the currency column
        ("45", "gbp", "45.00 GBP"),
        ("45", "£", "45.00 GBP"),
        ("45", "$", "45.00 USD"),
        ("£45", "USD", "45.00 GBP"),  # a mark is never overruled
        ("45", "various", "45.00"),
    ],
)
def test_currency_column(written, column, meant):
    assert asking(written, column) == meant


@given(st.integers(1, 10**8), st.sampled_from(["USD", "GBP", "EUR"]))
def test_every_way_of_writing_an_amount_is_read_alike(cents, code):
    amount = cents / 100
    english = f"{amount:,.2f}"
    continental = english.translate(str.maketrans(",.", ".,"))
    assert (
        asking(f"{amount:.2f} {code}") == asking(f"{code} {english}") == asking(f"{continental} {code}") == f"{amount:.2f} {code}"
    )
