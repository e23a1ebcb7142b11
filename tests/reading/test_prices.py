"""Prices on jackets, before and after decimals, beside sums that are none."""

import pytest

from auditor.reading.readers.money import amount_of
from tests.reading.claimed import claimed, said

# 20 shillings or 240 pence to the pound; a guinea is 21 shillings, a crown 5.
PRICES = [
    ("jacket marked a fiver", "5.00 GBP"),
    ("A tenner on the flap.", "10.00 GBP"),
    ("Jacket priced DM 24,80.", "24.80 DEM"),
    ("Flap price 18,00 EUR", "18.00 EUR"),
    ("flap price Can$ 6.50, postage to the States 14", "6.50 CAD"),
    ("Postage £4.20, jacket priced 12s 6d.", "0.625 GBP"),
    ("Flap says seven and sixpence.", "0.375 GBP"),
    ("flap reads Ten Shillings and Sixpence Net", "0.525 GBP"),
    ("$30 obo. Jacket flap $4.50.", "4.50 USD"),
    ("$24.95 on flap.", "24.95 USD"),
    ("Jacket priced at £12.99.", "12.99 GBP"),
    ("DJ unclipped ($4.95).", "4.95 USD"),
    ("dust jacket $3.50", "3.50 USD"),
    ("US $5 on the flap", "5.00 USD"),
    ("Jacket price $34.95 CAN.", "34.95 CAD"),
    ("C$29.95 on the flap", "29.95 CAD"),
    ("A $29.95 price on the jacket.", "29.95 USD"),
    ("12.95 on flap, unclipped", "12.95"),
    ("JACKET 22.95.", "22.95"),
    ("Dustwrapper 18s net.", "0.90 GBP"),
    ("Price 12s 6d.", "0.625 GBP"),
    ("Dw priced 12s. 6d. net.", "0.625 GBP"),
    ("12/6 net on flap", "0.625 GBP"),
    ("D/w (7/6) a little chipped.", "0.375 GBP"),
    ("Jacket has 25/- on it.", "1.25 GBP"),
    ("3/6 on the spine of the wrapper", "0.175 GBP"),
    ("Flap price a guinea.", "1.05 GBP"),
    ("half a crown on the flap", "0.125 GBP"),
    ("priced seven and six on the flap", "0.375 GBP"),
    ("Jacket price five shillings.", "0.25 GBP"),
    ("£1 5s net on the flap", "1.25 GBP"),
    ("Priced £1/5/- on the front flap.", "1.25 GBP"),
    ("Priced £1/5/6 on the flap.", "1.275 GBP"),
    ("Jacket price £1.5.0 net.", "1.25 GBP"),
    ("£1-10-0 net on the flap.", "1.50 GBP"),
    ("95p on the jacket flap", "0.95 GBP"),
    ("75 cents on the jacket", "0.75 USD"),
    ("Dollar jacket, chipped.", "1.00 USD"),
    ("Jacket: £10.95, unclipped. Postage £3.20.", "10.95 GBP"),
    ("Asking $200. Jacket with $4.50 price intact.", "4.50 USD"),
    ("Original jacket, $2.00, with reviews on the back.", "2.00 USD"),
    ("Jacket priced at twenty-three ninety-five.", "23.95"),
    ("The flap is priced, at nine ninety-five.", "9.95"),
    ("Shows two dollars fifty on its flap.", "2.50 USD"),
    ("The jacket has crept up to twenty-one dollars.", "21.00 USD"),
    ("Twelve shillings and sixpence on the flap.", "0.625 GBP"),
    ("Jacket priced two pounds ten shillings.", "2.50 GBP"),
    ("A six-shilling wrapper.", "0.30 GBP"),
    ("Thirty bob on the jacket.", "1.50 GBP"),
    ("The twelve-and-six jacket.", "0.625 GBP"),
    ("Half-a-crown on the jacket.", "0.125 GBP"),
    ("AU$8.95 on the jacket.", "8.95 AUD"),
    ("Jacket priced IR£5.99.", "5.99 IEP"),
    ("Flap price £4.95 (Irish).", "4.95 IEP"),
    ("Four Irish pounds on the flap.", "4.00 IEP"),
    ("Nothing on the back of the wrapper at all. 9/6. No slip.", "0.475 GBP"),
    ("No press, no medal. 23.95. What the line says is unknown to me.", "23.95"),
    ("Dustwrapper not clipped, asking 13/6.", "0.675 GBP"),
    ("The flap was never given a price.", "none"),
    ("There just never was a price.", "none"),
    ("The jacket never had a figure in its corner.", "none"),
    ("NOTHING PRINTED WHERE THE PRICE OUGHT TO BE.", "none"),
    ("Jacket priceless, with a photograph.", "none"),
    ("No price on the jacket.", "none"),
    ("jacket without a price", "none"),
    ("Jacket: no price at all.", "none"),
    ("Unpriced jacket.", "none"),
    ("Dustwrapper was never priced.", "none"),
    ("Flap blank where a price would go.", "none"),
    ("No date or price on the jacket.", "none"),
]
NOTHING = [
    "P&P £3.95 within the UK, £12.95 to Europe, America on request.",
    "Looking for £45, would take £40.",
    "asking $40, paid $55, willing to hear $30",
    "Worth £60 to £80 today.",
    "asking forty pounds or near offer",
    "got it for a fiver at a fete",
    "Heroine is left eighteen shillings and a parrot in her uncle's will.",
    "In the story he finds a purse with ten guineas.",
    "The price of $19.95 in the old listing was a mistake, sorry.",
    "Last leaf, inner margin: 36S.",
    "Postage £3.20.",
    "Asking $45 or best offer.",
    "I paid $40 for this.",
    "Our price £20.",
    "Worth $300 in jacket.",
    "Free shipping over $25.",
    "Fine copy in jacket. $45.",
    "Condition 9/10.",
    "Gledhill paperbacks, 1950s-60s.",
    "Price-clipped jacket.",
    "Inked price 1/- on the endpaper.",
    "At this price none should be expected.",
    "195/195 on the jacket.",
    "The right one is a dollar less.",
    "It cost me five dollars.",
    "Book one and two in jacket.",
    "Not price tagged by any shop.",
    "A priceless insight.",
    "Weight 1.25 kg. Shipping 3.95.",
    "Paperback original, 75 cent cover.",
]


@pytest.mark.parametrize(("text", "value"), PRICES)
def test_says(text, value):
    assert claimed(text, "jacket_price") == said("jacket", value)


@pytest.mark.parametrize("text", NOTHING)
def test_is_no_jacket_price(text):
    assert claimed(text, "jacket_price") == set()


def test_two_currencies_on_one_flap():
    assert claimed("$24.95/$34.95 Canada on the flap.", "jacket_price") == said("jacket", "24.95 USD", "34.95 CAD")


@pytest.mark.parametrize(
    ("text", "value", "stance"),
    [
        ("Later printings are priced $5.95.", "5.95 USD", "elsewhere"),
        ("I believe the price on the flap is $2.50.", "2.50 USD", "hedged"),
        ("I don't know the jacket price.", "unknown", "unchecked"),
        ("The jacket wants $5.50.", "5.50 USD", "asserted"),
        ("Without the six-shilling wrapper.", "0.30 GBP", "elsewhere"),
        ("The $3.75 jackets are from the last printing.", "3.75 USD", "elsewhere"),
        ("There's no saying whether £2.95 was on it.", "2.95 GBP", "unchecked"),
        ("The spine price has worn to nothing.", "unknown", "unchecked"),
        ("Price hidden under a label.", "unknown", "unchecked"),
        ("I never lifted the flap to see what it cost.", "unknown", "unchecked"),
    ],
)
def test_stance(text, value, stance):
    assert claimed(text, "jacket_price") == said("jacket", value, stance=stance)


@pytest.mark.parametrize(
    ("text", "value"),
    [("18s net", "0.90 GBP"), ("$24.95", "24.95 USD"), ("12/6", "0.625 GBP"), ("a guinea", "1.05 GBP"), ("no price", None)],
)
def test_amount_of(text, value):
    assert amount_of(text) == value


@pytest.mark.parametrize(
    "text", ["Nothing on the front flap by way of a price.", "Jacket devoid of any price.", "Nowt on the flap for a price."]
)
def test_flaps_without_a_price_in_other_words(text):
    assert claimed(text, "jacket_price") == said("jacket", "none")


def test_prices_that_nobody_can_tell():
    text = "The corner is gone from the flap so there is no telling what it sold for."
    assert {stance for _, _, stance in claimed(text, "jacket_price")} == {"unchecked"}


@pytest.mark.parametrize(
    "text",
    ["Proof copy; the finished book ($27.00, in a jacket) came later.", "Over the years the jacket rose from 12s 6d."],
)
def test_prices_of_other_states(text):
    assert {stance for _, _, stance in claimed(text, "jacket_price")} == {"elsewhere"}


@pytest.mark.parametrize("text", ["Cover has a price 60c.", "Paperback original, 25 cents. Staples rusty."])
def test_prices_of_paperbacks(text):
    assert claimed(text, "jacket_price") == set()


@pytest.mark.parametrize(
    "text",
    [
        "Price sticker covers the printed price.",
        "Someone stuck a label over the price on the flap.",
        "A bookseller's sticker hides the price.",
    ],
)
def test_prices_under_a_label(text):
    assert {stance for _, _, stance in claimed(text, "jacket_price")} == {"unchecked"}


@pytest.mark.parametrize(
    ("text", "claims"),
    [
        ("The reissues went up to a guinea.", said("jacket", "1.05 GBP", stance="elsewhere")),
        (
            "This wrapper went up to $6.95 from $5.95.",
            said("jacket", "6.95 USD") | said("jacket", "5.95 USD", stance="elsewhere"),
        ),
    ],
)
def test_prices_that_went_up(text, claims):
    assert claimed(text, "jacket_price") == claims
