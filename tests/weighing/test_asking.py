"""Which editions may lack a figure without silencing the word on the price asked. Invented sets and figures."""

from __future__ import annotations

import pytest

from .builders import kinds, make_set, verdict

FIRST = {"edition": "t", "printing": "1", "high": 100}


@pytest.mark.parametrize(
    ("kind", "told"),
    [
        ("book club", True),  # worth less than the trade edition as a rule: its figure isn't needed
        ("reprint", True),
        ("facsimile", True),
        ("limited", False),  # may be worth more
        ("trade", False),  # another country's, perhaps the true first
    ],
)
def test_an_edition_without_a_figure(kind, told):
    editions = [{"id": "t", "printings": 1}, {"id": "other", "kind": kind, "printings": 1}]
    work = make_set(editions, [], [FIRST])
    assert ("asking price" in kinds(verdict(work, "edition=1", asking="301 USD"))) == told
    figures = [FIRST, {"edition": "other", "printing": "1", "high": 200}]
    beside = make_set(editions, [], figures)  # where it has one, the figure counts whatever the kind
    assert ("asking price" in kinds(verdict(beside, "edition=1", asking="601 USD"))) is True
    assert ("asking price" in kinds(verdict(beside, "edition=1", asking="599 USD"))) is False


def test_without_its_jacket_a_copy_is_held_against_the_figures_without():
    rows = [FIRST | {"with_jacket": True}, FIRST | {"with_jacket": False, "high": 20}]
    work = make_set([{"id": "t", "printings": 1}], [], rows)
    assert "asking price" in kinds(verdict(work, "edition=1", "jacket=lacking", asking="61 USD"))
    assert "asking price" not in kinds(verdict(work, "edition=1", asking="61 USD"))
    only_with = make_set([{"id": "t", "printings": 1}], [], rows[:1])  # no figure without: the other bounds it
    assert "asking price" not in kinds(verdict(only_with, "edition=1", "jacket=lacking", asking="300 USD"))
    assert "asking price" in kinds(verdict(only_with, "edition=1", "jacket=lacking", asking="301 USD"))
