"""Each row of lexicon/reading does what its own examples say, and would be missed."""

import pytest

from auditor.reading.pipeline import build
from auditor.reading.reader import read_text
from auditor.reading.rows import Row, rows
from auditor.reading.words import words

READER = build().get_pipe("listing_claims")
IDS = [row.id for row in rows()]


def fired(text: str) -> set[str]:
    """Ids of the rows whose phrases a text holds."""
    return {phrase.row.id for phrase in READER.finder.find(READER.mender.mend(words(text)).norm)}


@pytest.mark.parametrize("row", rows(), ids=IDS)
def test_a_row_fires_on_its_examples(row: Row) -> None:
    assert row.fires
    for example in row.fires:
        assert row.id in fired(example), example


@pytest.mark.parametrize("row", rows(), ids=IDS)
def test_a_row_is_quiet_where_it_must_be(row: Row) -> None:
    """A term or topic makes no claim; any other row doesn't fire."""
    assert row.quiet
    for example in row.quiet:
        if row.kind in ("term", "topic"):
            assert row.id not in {claim.trace.row for claim in read_text(example, READER.finder, READER.mender)}, example
        else:
            assert row.id not in fired(example), example


@pytest.mark.parametrize("row", rows(), ids=IDS)
def test_a_row_says_why(row: Row) -> None:
    assert row.reason
    assert row.source


def test_almost_every_row_would_be_missed() -> None:
    """Each row is taken out in turn: for at least 95 % of them the claims of their own examples change."""
    unmissed = []
    for row in rows():
        before = [read_text(example, READER.finder, READER.mender) for example in row.fires]
        with READER.finder.without(row.id):
            after = [read_text(example, READER.finder, READER.mender) for example in row.fires]
        if [[claim.key for claim in claims] for claims in before] == [[claim.key for claim in claims] for claims in after]:
            unmissed.append(row.id)
    assert len(unmissed) <= 0.05 * len(rows()), unmissed
