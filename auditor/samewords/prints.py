"""The fingerprints of a description: hashes of runs of its words, a fixed sample of them, the same in every text.

A sample by the hashes' own values is known as "0 mod p" selection (Manber 1994; Schleimer, Wilkerson and Aiken 2003 compare it
with others): two texts that share a run of words both keep its hash or both drop it.
"""

from __future__ import annotations

import re
import zlib
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

RUN = 6  # words to a run: longer than the trade's set phrases, shorter than a sentence
_SAMPLE = 4  # every so many-th hash is kept
_WORD = re.compile(r"[^\W_]+")
_POWERS = np.array([pow(0x9E3779B97F4A7C15, power, 1 << 64) for power in range(RUN)], dtype=np.uint64)


@dataclass(frozen=True, slots=True, eq=False)
class Print:
    """``hashes`` are distinct, 64 bits each; ``subject`` is the hash of what the listing is about, 0 where that isn't known."""

    hashes: npt.NDArray[np.uint64]
    subject: int


def print_of(text: str, subject: str | None = None) -> Print:
    """The print of a description. ``subject`` is its work, or else its title: words under many subjects are boilerplate.

    Case, punctuation and line ends don't count. A text of fewer words than a run has no hashes.
    """
    words = _WORD.findall(text.casefold())
    about = zlib.crc32(" ".join(sorted(set(_WORD.findall(subject.casefold())))).encode()) if subject else 0
    if len(words) < RUN:
        return Print(np.empty(0, np.uint64), about)
    codes = np.fromiter((zlib.crc32(word.encode("utf-8", "replace")) for word in words), np.uint64, len(words))
    runs = np.lib.stride_tricks.sliding_window_view(codes + np.uint64(1), RUN)
    hashes = _mixed((_mixed(runs) * _POWERS).sum(axis=1, dtype=np.uint64))
    return Print(np.unique(hashes[hashes % np.uint64(_SAMPLE) == 0]), about)


def _mixed(codes: npt.NDArray[np.uint64]) -> npt.NDArray[np.uint64]:
    """The finalizer of SplitMix64 (Steele, Lea and Flood 2014): bits that look like chance from any numbers."""
    codes = (codes ^ (codes >> np.uint64(30))) * np.uint64(0xBF58476D1CE4E5B9)
    codes = (codes ^ (codes >> np.uint64(27))) * np.uint64(0x94D049BB133111EB)
    return codes ^ (codes >> np.uint64(31))
