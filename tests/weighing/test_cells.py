"""Cells and their names."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.knowledge.points import Copies
from auditor.weighing.cells import Cells

from .builders import SHELF, make_set

KNOWN = make_set([{"id": "trade", "printings": 4}, {"id": "bce", "kind": "book club", "printings": 1}], [])
OPEN = make_set([{"id": "trade"}], [{"id": "p", "readings": {"x": ["trade:1"], "y": ["trade:2-3"]}}])
STATES = make_set(
    [{"id": "trade", "printings": 3}], [{"id": "cloth", "readings": {"gray": ["trade:1a"], "black": ["trade:1b", "trade:2-3"]}}]
)


def mask(cells: Cells, *copies: str) -> int:
    return sum(cells.mask(Copies.parse(text)) for text in copies)


@pytest.mark.parametrize(
    ("work", "copies", "rendered"),
    [
        (KNOWN, ["trade:1-4", "bce:1"], ("trade:1-4", "bce:1")),
        (KNOWN, ["trade:1", "trade:3", "trade:4"], ("trade:1", "trade:3-4")),
        (KNOWN, ["trade:3-"], ("trade:3-4",)),
        (KNOWN, [], ()),
        (OPEN, ["trade:1-"], ("trade:1-",)),
        (OPEN, ["trade:2-"], ("trade:2-",)),
        (OPEN, ["trade:2-3"], ("trade:2-3",)),
        (OPEN, ["trade:4-"], ("trade:4-",)),
        (STATES, ["trade:1"], ("trade:1",)),
        (STATES, ["trade:1a"], ("trade:1a",)),
        (STATES, ["trade:1b", "trade:2"], ("trade:1b", "trade:2")),
        (STATES, ["trade:1-3"], ("trade:1-3",)),
    ],
)
def test_a_set_of_cells_is_written_as_shortly_as_it_can_be(work, copies, rendered):
    cells = Cells.of(work)
    assert cells.render(mask(cells, *copies)) == rendered


@pytest.mark.parametrize("work", [KNOWN, OPEN, STATES, *SHELF.sets.values()], ids=lambda work: work.stem)
@given(data=st.data())
def test_what_is_written_reads_back_as_the_same_cells(work, data):
    cells = Cells.of(work)
    drawn = data.draw(st.integers(0, cells.full))
    assert mask(cells, *cells.render(drawn)) == drawn


def test_an_edition_of_unknown_length_has_one_cell_for_every_later_printing():
    cells = Cells.of(OPEN)
    assert [cell.printing for cell in cells.cells] == [1, 2, 3, 4]
    assert cells.printing("trade", 4) == cells.printing("trade", 17) == 0b1000
    assert Cells.of(KNOWN).printing("trade", 17) == 0


def test_letters_of_two_elements_make_no_cells():
    # Wizard of Oz: text, plates, title leaf and binding were made apart and mixed (biblioctopus.com item 254)
    assert all(not cell.state for cell in Cells.of(SHELF.sets["wonderful-wizard-of-oz"]).cells)
    # 'Salem's Lot: the letters are the jacket's own three states (ruthvensattic.com/sking.php)
    assert [cell.state for cell in Cells.of(SHELF.sets["salems-lot"]).cells if cell.printing == 1] == ["a", "b", "c"]


def test_letters_narrow_only_as_long_as_something_stays():
    cells = Cells.of(STATES)
    gray, black, second = (mask(cells, text) for text in ("trade:1a", "trade:1b", "trade:2"))
    assert cells.meet(iter([gray | second, black | second])) == gray | black | second
    assert cells.meet(iter([gray, black])) == gray | black
    assert cells.meet(iter([gray, second])) == 0
    assert cells.meet(iter([gray, gray | black])) == gray
