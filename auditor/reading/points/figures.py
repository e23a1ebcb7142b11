"""Points that other claims tell already: prices, number lines, gutter codes and the club's blind stamp."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache

from auditor.knowledge.houses import lowest
from auditor.knowledge.points import Reading
from auditor.reading.points.model import Index, Told
from auditor.reading.readers.money import amount_of
from auditor.reading.scene import Draft
from auditor.reading.stance import Layers

_FEATURES = {"jacket_price": "price", "number_line": "number line", "gutter_code": "gutter", "blind_stamp": "blind stamp"}


def by_figures(index: Index, drafts: Sequence[Draft], laid: Layers) -> Iterator[Draft]:
    """Drafts of points from the drafts of those features, with their stance."""
    for draft in drafts:
        wanted = _FEATURES.get(draft.feature)
        if wanted is None or draft.value == "":
            continue
        stance = draft.stance or laid.at(draft.first)[0]
        if draft.value.startswith("to ") and (draft.denied or stance == "denied"):
            continue  # "the 1 is missing": the line is told by what is left of it
        if stance == "unchecked" and draft.feature in ("blind_stamp", "gutter_code"):
            continue
        for told in index.points:
            if told.of_kind(wanted):
                yield from _point(told, draft, laid)


def _point(told: Told, draft: Draft, laid: Layers) -> Iterator[Draft]:
    negative = draft.negative
    if draft.feature == "blind_stamp":
        negative = draft.denied or laid.at(draft.first)[0] == "denied"
        matching = [said.reading for said in told.said if said.lack is negative]
        negative = negative and bool(matching)
        matching = matching or [said.reading for said in told.said if not said.lack]
    else:
        same = {"jacket_price": _same_price, "number_line": _same_line, "gutter_code": _same_code}[draft.feature]
        matching = [said.reading for said in told.said if same(said.reading, draft.value, said.lack)]
        negative = negative or draft.value == "none"
    if len(matching) == 1:
        value = f"{told.point.id}={matching[0].value}"
        yield Draft(
            "point",
            value,
            draft.first,
            draft.last,
            f"point {told.point.id}",
            told.point.part,
            draft.stance,
            draft.denied and not negative,
            negative,
        )


@lru_cache(maxsize=10_000)
def _amount(text: str) -> str | None:
    return amount_of(text)


def _same_price(reading: Reading, value: str, lack: bool) -> bool:
    if value == "none":
        return lack and _amount(reading.value) is None and "clip" not in reading.value
    amount = _amount(reading.value)
    return amount is not None and value in (amount, amount.split()[0])


def _same_code(reading: Reading, value: str, _: bool) -> bool:
    return re.sub(r"\W", "", reading.value).lower() == re.sub(r"\W", "", value).lower()


def _same_line(reading: Reading, value: str, lack: bool) -> bool:
    if value == "none":
        return lack and not re.search(r"\d", reading.value)
    low = lowest(value)
    return low is not None and _has_low(reading, low)


def _has_low(reading: Reading, low: int) -> bool:
    """Whether a reading of a line stands for that lowest number: told by the line itself or in words, else by its hints."""
    for texts in ((reading.value,), reading.said_as):
        ranges = [found for text in texts if (found := _range(text)) is not None]
        if ranges:
            return any(first <= low and (last is None or low <= last) for first, last in ranges)
    return False


def _range(text: str) -> tuple[int, int | None] | None:
    """ "lowest number 2 or 3", "ends in 3 or higher", "10 9 8 7 6 5", "2 is the lowest"; None where a text tells no number."""
    numbers = [int(number) for number in re.findall(r"\d+", text)]
    if not numbers or re.match(r"no\b|without\b", text):
        return None
    if re.search(r"\d+(?: or| and)? (?:higher|more|above|up|later|over|greater|upwards?)\b|\d\+", text):
        return numbers[-1], None
    if len(numbers) == 2 and re.search(r"\d+ (?:or|to) \d+", text):
        return min(numbers), max(numbers)
    low = numbers[0] if len(numbers) == 1 else lowest(" ".join(map(str, numbers)))
    return None if low is None else (low, low)
