"""Words that have no meaning in the trade, or claim without evidence."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from auditor.values import Claim, Finding
from auditor.weighing.case import spans
from auditor.weighing.practice import table


def loose_wording(claims: Sequence[Claim]) -> Iterator[Finding]:
    """One note on the lapses asserted."""
    lapses = [claim for claim in claims if claim.feature == "lapse" and claim.stance == "asserted"]
    known = table("lapses")
    rows = [known[value] for value in dict.fromkeys(claim.value for claim in lapses) if value in known]
    if rows:
        text = "; ".join(f"{row['text']} ({row['source']})" for row in rows)
        yield Finding("loose wording", "note", f"{text[0].upper()}{text[1:]}.", spans(lapses))
