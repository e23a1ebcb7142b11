"""Without a point set: what the general practice of the trade says of a copy. Everything here is invented but the rules."""

from __future__ import annotations

import pytest

from .builders import kinds, verdict


@pytest.mark.parametrize(
    ("words", "weighty", "standing"),
    [
        (["printing=1", "number_line=10 9 8 7 6 5 4 3"], {"contradiction"}, "contradicted"),
        (["printing=1", "number_line=10 9 8 7 6 5 4 3 2 1"], set(), "unproven"),
        (["printing=3", "number_line=to 3"], set(), "unproven"),
        (["printing=later", "number_line=to 3"], set(), "unproven"),
        (["?printing=1", "number_line=to 3"], set(), "contradicted"),
        (["printing=1", "number_line=to 3", "number_line=to 1"], set(), "unproven"),  # a lot: whose line?
        (["edition=1", "number_line=to 3"], {"overclaim"}, "unproven"),
        (["edition=1", "printing=3", "number_line=to 3"], set(), "unproven"),
        # Random House let the words stand for the 1 (Stark, BookThink no. 91)
        (["edition=1", "printing=1", "number_line=2 3 4 5 6 7 8 9", "publisher=Random House", "year=1984"], set(), "unproven"),
        (["printing=1"], {"missing evidence"}, "unproven"),
        (["edition=1"], set(), "unproven"),
        (["edition=1", "blind_stamp=yes"], {"other edition"}, "unproven"),
        (["edition=1", "blind_stamp=yes", "book_club=yes"], set(), "unproven"),
        (["edition=1", "~blind_stamp=yes"], set(), "unproven"),
        (["blind_stamp=yes"], set(), "unclaimed"),
        (["number_line=to 3"], set(), "unclaimed"),
        (["edition=facsimile"], set(), "unclaimed"),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_without_a_point_set_the_trades_practice_speaks(words, weighty, standing):
    found = verdict(None, *words)
    assert (kinds(found), found.standing) == (weighty, standing), [finding.text for finding in found.findings]
    assert (found.work, found.book, found.jacket, found.questions) == (None, None, None, ())
