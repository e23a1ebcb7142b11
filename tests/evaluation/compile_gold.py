"""Turn a hand-written annotation file into gold in the contract's form.

    python -m tests.evaluation.compile_gold LISTINGS.jsonl NOTES.txt OUT.jsonl

Annotators write lines, not offsets. NOTES.txt holds, for each listing::

    == lamp-001
    edition | 1 | book | asserted | First edition
    defect | chip | jacket | denied | chips
    defect | tear | jacket | asserted | tear @2
    ? owner_mark | name | book | asserted | name
    verdict | lamplighters | unproven | trade:1-4 | trade:1 | missing evidence, overclaim | loose wording

The last field quotes the words that carry the claim; ``@2`` picks their second occurrence. A line that begins with ``?`` is
arguable: a reading that is not scored either way. A verdict's fields are work, standing, candidates of the book, of the
jacket, finding kinds, optional finding kinds; ``-`` is an empty list and ``null`` means not scored or not applicable.
"""

import json
import re
import sys
from pathlib import Path
from typing import Any

FEATURES = {
    "edition",
    "printing",
    "issue",
    "state",
    "number_line",
    "jacket",
    "jacket_price",
    "price_clipped",
    "book_club",
    "blind_stamp",
    "gutter_code",
    "ex_library",
    "remainder_mark",
    "signed",
    "proof",
    "limitation",
    "print_run",
    "grade",
    "defect",
    "owner_mark",
    "repair",
    "binding",
    "format",
    "isbn",
    "year",
    "publisher",
    "point",
    "lapse",
}
STANCES = {"asserted", "denied", "hedged", "unchecked", "elsewhere"}
PARTS = {"book", "jacket", "copy"}
DEFECTS = {
    "foxing",
    "fading",
    "tanning",
    "chip",
    "tear",
    "crease",
    "bump",
    "rubbing",
    "scratch",
    "stain",
    "soiling",
    "water",
    "lean",
    "loose",
    "crack",
    "missing_leaf",
    "marking",
    "odor",
    "sticker",
    "tape",
    "hole",
    "warp",
    "offsetting",
}
STANDINGS = {"supported", "unproven", "contradicted", "unclaimed", "null"}
KINDS = {
    "missing evidence", "contradiction", "overclaim", "married jacket", "other edition", "made-up copy", "grade conflict",
    "asking price", "loose wording",
}  # fmt: skip


def find(text: str, words: str) -> tuple[int, int]:
    """Offsets of the quoted words; ``words @2`` is their second occurrence. Raises ValueError when they aren't there."""
    match = re.fullmatch(r"(.*?)\s*@(\d+)", words)
    quote, nth = (match[1], int(match[2])) if match else (words, 1)
    at = -1
    for _ in range(nth):
        at = text.find(quote, at + 1)
        if at < 0:
            raise ValueError(f"the text does not hold {quote!r} ({nth})")
    return at, at + len(quote)


def claim(fields: list[str], text: str) -> dict[str, Any]:
    if len(fields) != 5:
        raise ValueError(f"expected feature | value | part | stance | words, got {fields}")
    feature, value, part, stance, words = fields
    for got, known, what in ((feature, FEATURES, "feature"), (part, PARTS, "part"), (stance, STANCES, "stance")):
        if got not in known:
            raise ValueError(f"unknown {what} {got!r}")
    if feature == "defect" and value not in DEFECTS | {"unknown", "no"}:
        raise ValueError(f"unknown defect {value!r}")
    start, end = find(text, words)
    return {"feature": feature, "value": value, "part": part, "stance": stance, "start": start, "end": end}


def items(field: str) -> list[str] | None:
    return None if field == "null" else [piece.strip() for piece in field.split(";") if piece.strip() not in ("", "-")]


def verdict(fields: list[str]) -> dict[str, Any]:
    if len(fields) != 6:
        raise ValueError(f"expected work | standing | book | jacket | kinds | optional kinds, got {fields}")
    work, standing, book, jacket, kinds, optional = fields
    if standing not in STANDINGS:
        raise ValueError(f"unknown standing {standing!r}")
    named = [[k.strip() for k in part.split(",") if k.strip() not in ("", "-")] for part in (kinds, optional)]
    for kind in named[0] + named[1]:
        if kind not in KINDS:
            raise ValueError(f"unknown finding kind {kind!r}")
    return {
        "work": work,
        "standing": None if standing == "null" else standing,
        "candidates": {"book": items(book), "jacket": items(jacket)},
        "finding_kinds": named[0],
        "finding_kinds_optional": named[1],
    }


def main(listings_path: str, notes_path: str, out_path: str) -> int:
    listings = {
        row["id"]: row for row in map(json.loads, filter(str.strip, Path(listings_path).read_text(encoding="utf-8").split("\n")))
    }
    gold: dict[str, dict[str, Any]] = {}
    mistakes = 0
    current: dict[str, Any] = {}
    for number, line in enumerate(Path(notes_path).read_text(encoding="utf-8").splitlines(), 1):
        line = line.strip()
        if not line or line.startswith("#"):
            continue
        try:
            if line.startswith("=="):
                name = line[2:].strip()
                if name not in listings or name in gold:
                    raise ValueError(f"listing {name!r} is unknown or annotated twice")
                current = gold[name] = {"id": name, "work": None, "claims": [], "verdict": None, "arguable": []}
                continue
            fields = [field.strip() for field in line.lstrip("? ").split("|")]
            if fields[0] == "verdict":
                found = verdict(fields[1:])
                current["work"] = found.pop("work")
                current["verdict"] = found
            else:
                kind = "arguable" if line.startswith("?") else "claims"
                current[kind].append(claim(fields, listings[current["id"]]["text"]))
        except ValueError as error:
            mistakes += 1
            print(f"{notes_path}:{number}: {error}", file=sys.stderr)
    for name in listings.keys() - gold.keys():
        mistakes += 1
        print(f"{notes_path}: listing {name!r} has no annotation", file=sys.stderr)
    with Path(out_path).open("w", encoding="utf-8") as out:
        for name in listings:
            if name in gold:
                out.write(json.dumps(gold[name], ensure_ascii=False) + "\n")
    print(f"{len(gold)} listings, {sum(len(g['claims']) for g in gold.values())} claims, {mistakes} mistakes")
    return 1 if mistakes else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
