"""The smallest conflict against exhaustive search."""

from __future__ import annotations

import random
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pysat.examples.rc2 import RC2
from pysat.formula import WCNF

from auditor.weighing.conflict import smallest_conflict


def exhaustive(masks: list[int], start: int) -> int | None:
    """The size of a smallest subset that leaves nothing, by trying them all."""
    for size in range(len(masks) + 1):
        for chosen in combinations(masks, size):
            left = start
            for mask in chosen:
                left &= mask
            if not left:
                return size
    return None


@given(st.lists(st.integers(0, 255), max_size=9), st.integers(0, 255))
def test_smallest_conflict_is_as_small_as_exhaustive_search_finds(masks: list[int], start: int):
    found = smallest_conflict(masks, start)
    assert (None if found is None else len(found)) == exhaustive(masks, start)
    if found is not None:
        left = start
        for index in found:
            left &= masks[index]
        assert left == 0
        assert list(found) == sorted(set(found))


@given(st.lists(st.integers(0, 2**12 - 1).map(lambda n: 2**12 - 1 ^ (n & -n)), min_size=1, max_size=12))
def test_statements_that_each_exclude_one_cell_are_all_needed_or_none(masks: list[int]):
    found = smallest_conflict(masks, 2**12 - 1)
    needed = 12 if len(set(masks) - {2**12 - 1}) == 12 else None
    assert (None if found is None else len(found)) == needed


def test_forty_statements_over_forty_cells_are_searched_exactly():
    draw = random.Random(4)
    full = 2**40 - 1
    masks = [full & ~sum(1 << draw.randrange(40) for _ in range(9)) for _ in range(38)]
    half = draw.getrandbits(40)
    masks[5:5] = [half, full & ~half]  # two that exclude each other, hidden among the rest
    assert smallest_conflict(masks, full) == (5, 6)


def test_without_a_conflict_there_is_no_set():
    assert smallest_conflict([0b110, 0b010], 0b111) is None
    assert smallest_conflict([], 0) == ()


def by_solver(masks: list[int], start: int, cells: int) -> int | None:
    """The size of a smallest subset that leaves nothing, by a MaxSAT solver: some statement excludes each cell of ``start``."""
    formula = WCNF()
    for cell in range(cells):
        if start >> cell & 1:
            formula.append([n + 1 for n, mask in enumerate(masks) if not mask >> cell & 1])
    for n in range(len(masks)):
        formula.append([-(n + 1)], weight=1)
    with RC2(formula) as solver:
        return None if solver.compute() is None else solver.cost


@pytest.mark.parametrize("seed", range(60))
def test_larger_conflicts_are_as_small_as_a_solver_finds(seed: int):
    draw = random.Random(seed)
    cells, statements = draw.randrange(20, 60), draw.randrange(10, 40)
    most = max(1, cells // draw.randrange(2, 7))
    full = 2**cells - 1
    masks = [full & ~sum(1 << cell for cell in draw.sample(range(cells), draw.randrange(1, most + 1))) for _ in range(statements)]
    start = full if seed % 3 else draw.getrandbits(cells)
    found = smallest_conflict(masks, start)
    assert (None if found is None else len(found)) == by_solver(masks, start, cells)
