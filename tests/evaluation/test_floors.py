"""The reader's figures on gold may not fall: floors a little below what was measured (DEVELOPERS.md tells when)."""

import pytest

from tests.evaluation.evaluate import cases, figures, folders

FLOORS = {
    "demo": (0.96, 0.97),
    "dev": (0.905, 0.96),
    "snippets": (0.76, 0.91),
    "behaviours": (0.98, 0.98),
    "test": (0.865, 0.95),
}  # F1, stance accuracy


@pytest.mark.parametrize("name", FLOORS)
def test_the_reader_is_no_worse_than_it_was(name: str) -> None:
    found = figures(case for folder in folders(name) for case in cases(folder))
    f1, stance = FLOORS[name]
    assert found.f1 >= f1
    assert found.stance_accuracy >= stance


def test_rare_stances_have_evidence_of_their_own() -> None:
    """At least a hundred positives each of hedged, unchecked and elsewhere stand in the gold that is only reported on."""
    found = figures(case for folder in folders("test") for case in cases(folder))
    for stance in ("hedged", "unchecked", "elsewhere"):
        hit, _, missed = found.by_stance[stance]
        assert hit + missed >= 100
