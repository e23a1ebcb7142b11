"""What hands wrote, told in plain speech or in quotation marks: owners' names, givers' messages, authors' dedications."""

import pytest

from tests.reading.claimed import claimed, said

NAMES = [
    '"R. Penwarden, Truro 1931" up front.',
    '"Maud Ellery" in pencil on the flyleaf.',
    'Inked "Property of Dr. Quill" to the pastedown.',
    'The signature "T. Orme" is on the endpaper.',
    "My own name's in it, aged eight.",
    "Name of a Sligo curate on the half title.",
    "Ownership signature of a bandmaster.",
    "He blacked out his own name.",
    "Name crossed out on the flyleaf.",
    "Grandma's initials inside.",
]
GIFTS = [
    '"To Mother, Christmas 1934" inside.',
    '"With love from all at number nine" on the flyleaf.',
    '"For Peggy on her birthday" in blue ink on the endpaper.',
]
NO_NAMES = ["Auntie's name is not in it.", "My name isn't in it.", "Dad's name is nowhere inside."]


@pytest.mark.parametrize("text", NAMES)
def test_a_name_is_the_owners(text):
    assert claimed(text, "owner_mark") == said("book", "name")


@pytest.mark.parametrize("text", GIFTS)
def test_a_gift_message_is_an_inscription(text):
    assert claimed(text, "owner_mark") == said("book", "inscription")


@pytest.mark.parametrize("text", NO_NAMES)
def test_a_denial_behind_the_name_denies_it(text):
    assert claimed(text, "owner_mark") == said("book", "name", stance="denied")


def test_a_dedication_signed_with_the_authors_name_is_the_authors():
    text = 'Poems by Hesper Lowe. "For Uncle Ned, with love, Hesper" in green ink on the title page.'
    assert claimed(text, "signed") == said("book", "inscribed")
    assert claimed(text, "owner_mark") == set()


@pytest.mark.parametrize(
    "text", ['"Second Impression" inside.', '"For Marie" on the dedication page.', '"Corvane" on the spine.']
)
def test_what_the_printer_put_there_is_no_hand(text):
    assert claimed(text, "owner_mark") == claimed(text, "signed") == set()


def test_nothing_of_a_hand_at_all():
    text = "Not inscribed, not stamped, not plated."
    assert claimed(text, "owner_mark") == said("book", "inscription", "stamp", "bookplate", stance="denied")
    assert claimed(text, "signed") == set()
