"""Each row of lexicon/reading and lexicon/forms does what its own examples say, and would be missed."""

from contextlib import AbstractContextManager, nullcontext

import pytest

from auditor.reading.forms import Form, WordList, form_rows
from auditor.reading.pipeline import build
from auditor.reading.reader import read_text
from auditor.reading.rows import Row, rows
from auditor.reading.scene import stage
from auditor.reading.walker import spoken_claims, spoken_cues, walker
from auditor.reading.words import words

READER = build().get_pipe("listing_claims")
IDS = [row.id for row in rows()]
FORMS, LISTS = (list(found.values()) for found in form_rows())


def fired(text: str) -> set[str]:
    """Ids of the rows whose phrases a text holds."""
    return {phrase.row.id for phrase in READER.finder.find(READER.mender.mend(words(text)).norm)}


def walked(text: str) -> set[str]:
    """Ids of the forms that a text holds."""
    split = READER.mender.mend(words(text))
    scene = stage(split, READER.finder.find(split.norm))
    return {cue.row.id for cue in spoken_cues(scene)} | {found.form.id for found in spoken_claims(scene)}


def claims(text: str, left_out: AbstractContextManager[None] | None = None) -> list[tuple]:
    """What a text claims, with or without a row."""
    with left_out or nullcontext():
        return [claim.key for claim in read_text(text, READER.finder, READER.mender)]


def missed(row: Row | Form | WordList, left_out: AbstractContextManager[None]) -> bool:
    """Whether the claims of a row's own examples change without it."""
    before = [claims(example) for example in row.fires]
    with left_out:
        return before != [claims(example) for example in row.fires]


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


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.id)
def test_a_form_fires_where_it_must_and_nowhere_else(form: Form) -> None:
    assert form.fires
    assert form.quiet
    for example in form.fires:
        assert form.id in walked(example), example
    for example in form.quiet:
        assert form.id not in walked(example), example


@pytest.mark.parametrize("row", LISTS, ids=lambda row: row.id)
def test_words_of_a_list_tell_only_in_their_forms(row: WordList) -> None:
    """In a quiet example one of the words stands, and the claims are the same without it."""
    assert row.fires
    assert row.quiet
    listed = walker().words(row.id)
    for example in row.quiet:
        norm = " ".join(words(example).norm)
        assert any(f" {word} " in f" {norm} " for word in listed), example
        assert claims(example) == claims(example, walker().without(row.id)), example


@pytest.mark.parametrize("row", [*rows(), *FORMS, *LISTS], ids=lambda row: row.id)
def test_a_row_says_why(row: Row | Form | WordList) -> None:
    assert row.reason
    assert row.source


def test_no_two_rows_share_a_name() -> None:
    """Traces and tests name rows by their id."""
    names = [row.id for row in (*rows(), *FORMS)]
    assert len(set(names)) == len(names)


def test_almost_every_row_would_be_missed() -> None:
    """Each row is taken out in turn: for at least 95 % of them the claims of their own examples change."""
    taken = [(row, READER.finder.without) for row in rows()] + [(row, walker().without) for row in (*FORMS, *LISTS)]
    unmissed = [row.id for row, without in taken if not missed(row, without(row.id))]
    assert len(unmissed) <= 0.05 * len(taken), unmissed
