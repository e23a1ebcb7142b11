"""How well the reader reads: precision, recall and F1 against gold, by feature and by stance.

    python -m tests.evaluation.evaluate dev            # whole listings that the reader was built on, in full
    python -m tests.evaluation.evaluate snippets       # a sentence or two each, as oddly put as people put things
    python -m tests.evaluation.evaluate behaviours     # plain sentences in pairs: what must not change a claim, what must
    python -m tests.evaluation.evaluate test           # looked at only to report: figures
    python -m tests.evaluation.evaluate demo --worst 5

A claim counts as found when feature, value, part and stance are all equal (``normal`` says what spelling is forgiven). Arguable
readings are scored neither way.
"""

from __future__ import annotations

import argparse
import json
import re
import sys
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from auditor import audit

ROOT = Path(__file__).resolve().parents[2]
GOLD = ROOT / "corpora_demo" / "gold"
SPLITS = {"dev": "dev-[a-h]", "snippets": "dev-[i-l]", "behaviours": "dev-m", "test": "test-*"}  # folders of GOLD

Key = tuple[str, str, str, str]


@dataclass(frozen=True)
class Case:
    """One listing with its gold and what the program reads."""

    id: str
    text: str
    gold: frozenset[Key]
    arguable: frozenset[Key]
    found: frozenset[Key]
    spans: dict[Key, tuple[int, int]]


def normal(claim: dict[str, Any]) -> Key:
    """What is compared: letter case, blanks, "and" for "&" and stops in names don't count; an unchecked claim's value doesn't."""
    feature, part, stance = claim["feature"], claim["part"], claim["stance"]
    value = re.sub(r"\s+", " ", claim["value"].lower()).strip()
    if feature in ("publisher", "binding"):
        value = re.sub(r"[.,]", "", value.replace(" and ", " & ")).strip()
        value = re.sub(r"\bqtr\b", "quarter", value) if feature == "binding" else value
    return feature, "*" if stance == "unchecked" else value, part, stance


def folders(name: str) -> list[Path]:
    """The folders of a split, of the demo, or one folder by its name."""
    return [ROOT / "corpora_demo"] if name == "demo" else sorted(GOLD.glob(SPLITS.get(name, name)))


def cases(folder: Path) -> Iterator[Case]:
    listings = {row["id"]: row for row in _rows(folder / "listings.jsonl")}
    points = (folder / "points",) if (folder / "points").exists() else ()
    for row in _rows(folder / "gold.jsonl"):
        listing = listings[row["id"]]
        verdict = audit(listing["text"], title=listing.get("title"), points=points)
        found = [claim.to_dict() for claim in verdict.claims]
        gold = frozenset(map(normal, row["claims"]))
        arguable = frozenset(map(normal, row["arguable"])) - gold
        spans = {normal(claim): (claim["start"], claim["end"]) for claim in [*found, *row["claims"]]}
        yield Case(row["id"], listing["text"], gold, arguable, frozenset(map(normal, found)) - arguable, spans)


def _rows(path: Path) -> list[dict[str, Any]]:
    return [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines() if line.strip()]


def rates(hits: int, extra: int, missed: int) -> tuple[float, float, float]:
    """Precision, recall, F1."""
    precision = hits / (hits + extra) if hits + extra else 1.0
    recall = hits / (hits + missed) if hits + missed else 1.0
    return precision, recall, 2 * precision * recall / (precision + recall) if precision + recall else 0.0


@dataclass(frozen=True)
class Figures:
    """Counts over many listings, ready to be told."""

    overall: tuple[int, int, int]
    by_feature: dict[str, tuple[int, int, int]]
    by_stance: dict[str, tuple[int, int, int]]
    stances: Counter[tuple[str, str]]
    parts: Counter[tuple[str, str]]

    @property
    def f1(self) -> float:
        return rates(*self.overall)[2]

    @property
    def stance_accuracy(self) -> float:
        total = sum(self.stances.values())
        return sum(n for (gold, found), n in self.stances.items() if gold == found) / total if total else 1.0


def figures(done: Iterable[Case]) -> Figures:
    counts: dict[str, Counter[str]] = defaultdict(Counter)
    stance_counts: dict[str, Counter[str]] = defaultdict(Counter)
    stances: Counter[tuple[str, str]] = Counter()
    parts: Counter[tuple[str, str]] = Counter()
    for case in done:
        kinds = {"hit": case.gold & case.found, "extra": case.found - case.gold, "missed": case.gold - case.found}
        for kind, keys in kinds.items():
            for key in keys:
                counts[key[0]][kind] += 1
                stance_counts[key[3]][kind] += 1
        gold_stances, found_stances = _grouped(case.gold, 3), _grouped(case.found, 3)
        for key in gold_stances.keys() & found_stances.keys():
            stances["+".join(sorted(gold_stances[key])), "+".join(sorted(found_stances[key]))] += 1
        gold_parts, found_parts = _grouped(case.gold, 2), _grouped(case.found, 2)
        for key in gold_parts.keys() & found_parts.keys():
            parts["+".join(sorted(gold_parts[key])), "+".join(sorted(found_parts[key]))] += 1
    triple = {name: (c["hit"], c["extra"], c["missed"]) for name, c in counts.items()}
    overall = tuple(sum(t[i] for t in triple.values()) for i in range(3))
    return Figures(
        (overall[0], overall[1], overall[2]),
        triple,
        {name: (c["hit"], c["extra"], c["missed"]) for name, c in stance_counts.items()},
        stances,
        parts,
    )


def _grouped(keys: frozenset[Key], place: int) -> dict[tuple[str, ...], set[str]]:
    found: dict[tuple[str, ...], set[str]] = defaultdict(set)
    for key in keys:
        found[key[:place] + key[place + 1 :]].add(key[place])
    return found


def tell(name: str, done: list[Case], worst: int) -> None:
    result = figures(done)
    precision, recall, f1 = rates(*result.overall)
    print(f"{name}: {len(done)} listings, precision {precision:.3f} recall {recall:.3f} F1 {f1:.3f}")
    print(f"hit, extra, missed: {result.overall}")
    print(f"stance accuracy where feature, value and part agree: {result.stance_accuracy:.3f}")
    for title, table in (("feature", result.by_feature), ("stance", result.by_stance)):
        print(f"\n{title:16s}  prec   rec    F1    gold extra missed")
        for key, counts in sorted(table.items(), key=lambda item: -item[1][0] - item[1][2]):
            shown = " ".join(f"{rate:6.3f}" for rate in rates(*counts))
            print(f"{key:16s} {shown}  {counts[0] + counts[2]:5d} {counts[1]:5d} {counts[2]:5d}")
    for title, confusion in (("stance", result.stances), ("part", result.parts)):
        wrong = [(pair, n) for pair, n in confusion.most_common() if pair[0] != pair[1]]
        print(f"\n{title} confused (gold -> read): " + "; ".join(f"{g} -> {f} {n}" for (g, f), n in wrong[:10]))
    for case in sorted(done, key=lambda c: -len(c.gold ^ c.found))[:worst]:
        print(f"\n== {case.id}: {len(case.gold ^ case.found)} errors\n{marked(case)}")
        for sign, keys in (("-", case.gold - case.found), ("+", case.found - case.gold)):
            for key in sorted(keys, key=lambda k: case.spans.get(k, (0, 0))):
                start, end = case.spans[key]
                print(f"  {sign} {' | '.join(key)}    «{case.text[start:end]}»")


def marked(case: Case) -> str:
    """The text with ``[-missed-]`` and ``[+too many+]`` around the words in question."""
    marks = [(case.spans[key], "-" if key in case.gold else "+") for key in case.gold ^ case.found]
    text = case.text
    for (start, end), sign in sorted(marks, reverse=True):
        text = f"{text[:start]}[{sign}{text[start:end]}{sign}]{text[end:]}"
    return text


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("name", help="dev, snippets, behaviours, test, demo, or one folder under corpora_demo/gold")
    parser.add_argument("--worst", type=int, default=0, help="show that many listings with most errors, marked in the text")
    given = parser.parse_args()
    done = [case for folder in folders(given.name) for case in cases(folder)]
    if not done:
        print(f"no gold under the name {given.name!r}", file=sys.stderr)
        return 2
    tell(given.name, done, given.worst)
    return 0


if __name__ == "__main__":
    sys.exit(main())
