"""Every seed, and every finding that was cured, goes through its target; a few broken forms of each, too."""

import random

import pytest

from tests.fuzz.targets import TARGETS, seed_folders

PIECES = (
    b"\0",
    b"\xff",
    b'"',
    b"\\",
    b"]]",
    b"<",
    b"&#",
    b"\xe2\x80\x8b",
    b"\xef\xbb\xbf",
    b"\r",
    b"1e999",
    b"",
    b"{",
    b"=",
    b"no ",
)


def seeds_of(target):
    return [seed.read_bytes() for folder in seed_folders(target) for seed in sorted(folder.iterdir())]


@pytest.mark.parametrize("target", TARGETS)
def test_every_seed_is_taken(target):
    seeds = seeds_of(target)
    assert seeds
    for seed in seeds:
        TARGETS[target](seed)


@pytest.mark.parametrize("target", TARGETS)
def test_broken_forms_of_the_seeds_are_taken(target):
    chance = random.Random(target)
    seeds = seeds_of(target)
    for _ in range(25):
        data = chance.choice(seeds)
        for _ in range(chance.randint(1, 4)):
            at, behind = chance.randint(0, len(data)), chance.choice((0, 0, 1, 8, 200))
            data = data[:at] + chance.choice(PIECES) * chance.choice((1, 1, 30)) + data[at + behind :]
        TARGETS[target](data)
