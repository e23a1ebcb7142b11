"""No finding and no question speaks of people or of what they meant: only of what a text says and what a point set says."""

from __future__ import annotations

import json
import re

from auditor.auditing import audit_on, open_shelf
from tests.commands import DEMO

ACCUSING = re.compile(
    r"\b(?:(?:the|this) (?:seller|dealer|shop)|he|she|they"
    r"|fakes?|faked|forge\w*|fraud\w*|lie[sd]?|lying|liar|dishonest\w*|decei\w*|decept\w*|cheat\w*"
    r"|mislead\w*|misrepresent\w*|conceal\w*|hid(?:e|es|den|ing)|pretend\w*|false(?:ly)?|untrue|scam\w*|suspicious\w*|trick\w*|dubious"
    r"|shady|counterfeit\w*|swindle\w*|bogus|genuine|authentic|worth|overpriced|bargain|rip-?off)\b",
    re.IGNORECASE,
)
SETS = ("dev-a", "dev-b", "dev-c", "dev-d", "dev-e", "dev-f")


def test_no_finding_and_no_question_accuses_anyone():
    texts: set[str] = set()
    for folder in (DEMO, *(DEMO / "gold" / name for name in SETS)):
        points = folder / "points"
        shelf = open_shelf(points if points.is_dir() else DEMO / "points")
        for line in (folder / "listings.jsonl").read_text(encoding="utf-8").splitlines():
            listing = json.loads(line)
            verdict = audit_on(shelf, listing["text"], listing["title"], listing.get("asking"))
            texts.update(finding.text for finding in verdict.findings)
            texts.update(question.text for question in verdict.questions)
    assert len(texts) > 200
    for text in texts:
        plain = re.sub(r"“[^”]*”|\([^()]*\)", "", text)  # what the listing and the point set say in their own words
        assert not ACCUSING.search(plain), text
