"""How far two independent annotations of one set agree, before the gold was settled.

    python -m tests.evaluation.agreement FOLDER [--all]

Compares FOLDER/first.jsonl with FOLDER/second.jsonl: F1 on (feature, value, part, stance), readings that either side calls
arguable left out; and the stricter F1 that counts a reading called arguable as not claimed. Then each difference, with the words.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from tests.evaluation.evaluate import normal, rates


def load(path: Path) -> dict[str, dict[str, Any]]:
    return {row["id"]: row for row in map(json.loads, path.read_text(encoding="utf-8").splitlines())}


def main(folder: Path, everything: bool) -> int:
    first, second = load(folder / "first.jsonl"), load(folder / "second.jsonl")
    listings = map(json.loads, (folder / "listings.jsonl").read_text(encoding="utf-8").splitlines())
    texts = {row["id"]: row["text"] for row in listings}
    both = 0
    only = {"first": 0, "second": 0}
    strictly = {"first": 0, "second": 0}
    lines: list[str] = []
    for name, one in first.items():
        other = second[name]
        a, b = {normal(c): c for c in one["claims"]}, {normal(c): c for c in other["claims"]}
        arguable = {normal(c) for c in one["arguable"] + other["arguable"]}
        both += len(a.keys() & b.keys())
        for side, mine, theirs in (("first", a, b), ("second", b, a)):
            strictly[side] += len(mine.keys() - theirs.keys())
            for key in mine.keys() - theirs.keys() - arguable:
                only[side] += 1
                lines.append(f"{name} only {side}: {' | '.join(key)}    {around(texts[name], mine[key])}")
    f1, strict = (rates(both, n["second"], n["first"])[2] for n in (only, strictly))
    print(f"{folder.name}: {both} the same, {only['first']} only in the first, {only['second']} only in the second")
    print(f"F1 {f1:.3f}, strictly {strict:.3f}")
    if everything:
        print("\n".join(sorted(lines)))
    return 0


def around(text: str, claim: dict[str, Any]) -> str:
    """The claim's words in their surroundings, on one line."""
    start, end = claim["start"], claim["end"]
    return f"{text[max(0, start - 50) : start]}«{text[start:end]}»{text[end : end + 40]}".replace("\n", " / ")


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), "--all" in sys.argv))
