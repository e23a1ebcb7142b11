"""The batch in one picture: for each standing, how many listings ask how much. One picture a currency, as sums don't convert."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import accumulate
from typing import get_args

from auditor.values import Standing

WIDTH, LANE, GAP, LEFT, RIGHT = 580, 34, 10, 96, 18  # in the picture's own units
_STEPS = 8  # bars to a tenfold price: fine enough for a shape, wide enough to be seen
_MOST_PICTURES, _WORTH = 3, 10  # a currency of fewer listings than this is only told, unless it is the commonest


@dataclass(frozen=True, slots=True)
class Bar:
    """One bar: place and size in the picture's units, and what it says."""

    x: float
    y: float
    width: float
    height: float
    told: str


@dataclass(frozen=True, slots=True)
class Lane:
    standing: Standing
    base: float
    count: int
    bars: tuple[Bar, ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """Prices of one currency along a logarithmic axis, a lane for each standing; ``told`` says the same in words."""

    currency: str
    count: int
    lanes: tuple[Lane, ...]
    ticks: tuple[tuple[float, str], ...]
    height: float
    told: str
    width: int = WIDTH
    left: int = LEFT


def pictures(priced: Mapping[tuple[Standing, float, str], int]) -> tuple[Picture, ...]:
    """One picture for each of the commonest currencies; ``priced`` counts listings by (standing, amount, currency)."""
    by: dict[str, Counter[tuple[Standing, float]]] = {}
    for (standing, amount, currency), count in priced.items():
        if amount > 0:
            by.setdefault(currency, Counter())[standing, amount] += count
    common = sorted(by, key=lambda name: -by[name].total())[:_MOST_PICTURES]
    return tuple(_picture(name, by[name]) for name in common if name == common[0] or by[name].total() >= _WORTH)


def _picture(currency: str, priced: Counter[tuple[Standing, float]]) -> Picture:
    amounts = [amount for _, amount in priced]
    low = math.floor(math.log10(min(amounts)) * _STEPS)
    high = max(math.floor(math.log10(max(amounts)) * _STEPS) + 1, low + 1)
    spare = max(_STEPS - (high - low), 0)
    low, high = low - spare // 2, high + (spare + 1) // 2
    step = (WIDTH - LEFT - RIGHT) / (high - low)
    counts: Counter[tuple[Standing, int]] = Counter()
    for (standing, amount), count in priced.items():
        counts[standing, math.floor(math.log10(amount) * _STEPS)] += count
    most = max(counts.values())
    lanes = []
    told = []
    for number, standing in enumerate(get_args(Standing)):
        own = sorted((amount, count) for (each, amount), count in priced.items() if each == standing)
        size = sum(count for _, count in own)
        base = (number + 1) * (LANE + GAP)
        bars = tuple(
            Bar(
                LEFT + (place - low) * step + 0.5,
                base - height,
                step - 1,
                height,
                f"{count} {standing}, {_sum(10 ** (place / _STEPS))} to {_sum(10 ** ((place + 1) / _STEPS))} {currency}".strip(),
            )
            for place in range(low, high)
            if (count := counts[standing, place])
            for height in [max(LANE * count / most, 3.0)]
        )
        lanes.append(Lane(standing, base, size, bars))
        if own:
            told.append(f"{standing} {size:,}, median {_sum(_median(own))}")
    height = len(lanes) * (LANE + GAP) + 26
    return Picture(currency, priced.total(), tuple(lanes), tuple(_ticks(low, high, step)), height, "; ".join(told))


def _median(counted: list[tuple[float, int]]) -> float:
    """Of sorted (amount, count) pairs."""
    at = accumulate(count for _, count in counted)
    half = sum(count for _, count in counted) // 2
    return next(amount for (amount, _), seen in zip(counted, at, strict=True) if seen > half)


def _ticks(low: int, high: int, step: float) -> Iterator[tuple[float, str]]:
    for power in range(low // _STEPS, high // _STEPS + 1):
        for digit in (1, 2, 5) if high - low <= 3 * _STEPS else (1,):
            place = math.log10(digit * 10.0**power) * _STEPS
            if low <= place <= high:
                yield LEFT + (place - low) * step, _sum(digit * 10.0**power)


def _sum(amount: float) -> str:
    return f"{amount:,.0f}" if amount >= 10 else f"{amount:.2g}"
