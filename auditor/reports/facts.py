"""A draft's facts in one line, in the trade's order, from what is claimed and nothing else (lexicon/drafting.toml)."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache
from typing import Any, NamedTuple

from auditor.knowledge import lexicon
from auditor.values import Claim, Listing, Part, Stance, Verdict


def facts(listing: Listing, verdict: Verdict) -> str:
    """The facts line: ``First edition, first printing (number line 1-10). Fine in near fine unclipped jacket, $21.95.``

    Only what is asserted or denied of this copy stands in it, hedged words never. Two values of one thing both stand, so that
    the line shows what doesn't agree. Empty where nothing is claimed.
    """
    said = _Said.of(listing, verdict)
    sentences = (
        _joined([*said.words("publisher"), *said.values("year")], ", "),
        _edition(said),
        _joined([*said.named("signed"), *(f"number {value}" for value in said.values("limitation"))], ", "),
        _joined(said.words("binding") or said.named("format"), ", "),
        _condition(said),
        _faults(said),
        _joined(
            [*said.named("owner_mark"), *said.named("repair"), *said.flagged("told", "asserted", ("book_club", "proof"))], "; "
        ),
        _joined(said.flagged("denied", "denied"), ", "),
    )
    return " ".join(f"{text[0].upper()}{text[1:]}." for text in sentences if text)


class _Said(NamedTuple):
    """The draft's claims of this copy, each with its own words; the text's before the title's."""

    claims: Sequence[tuple[Claim, str]]

    @classmethod
    def of(cls, listing: Listing, verdict: Verdict) -> _Said:
        told = ((listing.text, verdict.claims), (listing.title or "", verdict.title_claims))
        return cls([(claim, " ".join(text[claim.start : claim.end].split())) for text, claims in told for claim in claims])

    def values(self, feature: str, part: Part | None = None, stance: Stance = "asserted") -> list[str]:
        """The values of a feature, each once, in the order they are said."""
        found = (c.value for c, _ in self.claims if c.feature == feature and c.stance == stance and part in (None, c.part))
        return list(dict.fromkeys(found))

    def points(self, part: Part) -> list[str]:
        """The readings of points told of a part, but for those that another claim of the same words tells already."""
        elsewhere = {(claim.start, claim.end) for claim, _ in self.claims if claim.feature in ("binding", "number_line", "year")}
        told = (c for c, _ in self.claims if c.feature == "point" and c.stance == "asserted" and c.part == part)
        alone = (c for c in told if not any(start < c.end and c.start < end for start, end in elsewhere))
        return list(dict.fromkeys(c.value.partition("=")[2] for c in alone))

    def grades(self, part: Part) -> list[str]:
        """The grades of a part that are on the trade's scale; "mint" is not."""
        return [value for value in self.values("grade", part) if value != "mint"]

    def words(self, feature: str) -> list[str]:
        """The same in the draft's own words, once a value."""
        found: dict[str, str] = {}
        for claim, words in self.claims:
            if claim.feature == feature and claim.stance == "asserted":
                found.setdefault(claim.value, words)
        return list(found.values())

    def named(self, feature: str, part: Part | None = None) -> list[str]:
        """The values in the words of the facts line; one that it has no words for is left out."""
        names = _table()[feature]
        return [names[value] for value in self.values(feature, part) if value in names]

    def flagged(self, table: str, stance: Stance, leave_out: Sequence[str] = ()) -> list[str]:
        """The words for the yes-or-no features that are said in this stance."""
        return [words for name, words in _table()[table].items() if name not in leave_out and self.values(name, stance=stance)]


def _edition(said: _Said) -> str:
    named = [_table()["edition"].get(value) or f"{_ordinal(value)} edition" for value in said.values("edition", "book")]
    named += said.flagged("told", "asserted", ("ex_library", "remainder_mark", "blind_stamp"))
    for feature in ("printing", "issue", "state"):
        values = [value for value in said.values(feature, "book") if value != "unknown"]
        named += [
            f"{_ordinal(value)} {feature}" if value.isdigit() or value == "later" else f"{feature} {value}" for value in values
        ]
    shown = [_line(value) for value in said.values("number_line")]
    shown += said.points("book")
    how = "; ".join(shown)
    return f"{', '.join(named)} ({how})" if named and how else _joined([*named, how], ", ")


def _condition(said: _Said) -> str:
    book = ", ".join(said.grades("book") or said.grades("copy"))
    kinds = said.named("jacket")
    if any(value in said.values("jacket") for value in ("lacking", "none issued")):
        return _joined([book, *kinds], ", ")
    clipping = (
        ["price-clipped"]
        if said.values("price_clipped")
        else ["unclipped"]
        if said.values("price_clipped", stance="denied")
        else []
    )
    price = [
        _money(claim.value, words)
        for claim, words in said.claims
        if claim.feature == "jacket_price" and claim.stance == "asserted"
    ]
    grades = said.grades("jacket")
    if not (kinds or clipping or price or grades or said.values("jacket")):
        return book
    jacket = _joined([", ".join(grades), *clipping, *(kinds or ["jacket"])], " ")
    return _joined([f"{book} in {jacket}".strip(), *dict.fromkeys(price)], ", ")


def _faults(said: _Said) -> str:
    book, jacket = said.named("defect", "book") + said.named("defect", "copy"), said.named("defect", "jacket")
    return _joined([f"{_listed(faults)} to the {part}" for part, faults in (("book", book), ("jacket", jacket)) if faults], "; ")


def _line(value: str) -> str:
    """``10 9 8 7 6 5 4 3 2 1`` as ``number line 1-10``; numbers out of order stay as they stand."""
    if value == "none":
        return "no number line"
    if value == "full":
        return "full number line"
    numbers = [int(number) for number in value.split()] if re.fullmatch(r"\d+( \d+)*", value) else []
    run = sorted(numbers)
    if len(run) > 2 and run == list(range(run[0], run[0] + len(run))):
        return f"number line {run[0]}-{run[-1]}"
    return f"number line {value}"


def _money(value: str, words: str) -> str:
    """The draft's own words where they are a bare sum (``12s 6d``), else the value with its sign."""
    amount, _, currency = value.partition(" ")
    if value == "none":
        return "no price on it"
    if re.fullmatch(r"[\d.,\s/$£€sd-]+", words):
        return words
    sign = _table()["currencies"].get(currency)
    return f"{sign}{amount}" if sign else value


def _ordinal(value: str) -> str:
    ordinals = _table()["ordinals"]
    if not value.isdigit():
        return value
    number = int(value)
    if 1 <= number <= len(ordinals):
        return str(ordinals[number - 1])
    tail = "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{tail}"


def _joined(words: Sequence[str], by: str) -> str:
    return by.join(word for word in words if word)


def _listed(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)


@cache
def _table() -> dict[str, Any]:
    table: dict[str, Any] = lexicon.table("drafting")["facts"]
    return table
