"""Listings to time: distinct texts put together from the sentences of corpora_demo, the same for the same seed."""

from __future__ import annotations

import json
import random
import re
from collections.abc import Iterator
from pathlib import Path

from auditor.values import Listing

DEMO = Path(__file__).resolve().parents[2] / "corpora_demo"
_SHORTEST, _LONGEST = 40, 200  # words of a listing
_SENTENCE = re.compile(r"(?<=[.!?;\n])\s+")
_FIGURE = re.compile(r"\d")
_WORD = re.compile(r"\b[a-z]{5,}\b")
_ALTERED = 0.15  # share of plain words swapped in a listing that is made strange


def folders() -> list[Path]:
    """The demo scenario and the gold it is fair to look at: never the sets kept for testing the reader."""
    return [DEMO, *sorted(path for path in (DEMO / "gold").glob("*") if path.is_dir() and not path.name.startswith("test"))]


def point_folders() -> list[Path]:
    return [folder / "points" for folder in folders() if (folder / "points").is_dir()]


def listings(number: int, seed: int = 20_000, *, strange: bool = False) -> Iterator[Listing]:
    """Distinct listings. Sentences come again in others, as a shop's phrases do; ``strange`` swaps figures and some plain words
    in each, so that hardly a sentence comes twice."""
    chance = random.Random(seed)
    told = [json.loads(line) for folder in folders() for line in (folder / "listings.jsonl").read_text("utf-8").splitlines()]
    sentences = sorted({piece for one in told for piece in _SENTENCE.split(one["text"] or "") if piece.strip()})
    titles = sorted({one["title"] for one in told if one["title"]})
    plain = sorted({word for sentence in sentences for word in _WORD.findall(sentence)})
    seen: set[str] = set()
    while len(seen) < number:
        text = _text(chance, sentences)
        if strange:
            text = _FIGURE.sub(lambda _: str(chance.randint(0, 9)), text)
            text = _WORD.sub(lambda word: chance.choice(plain) if chance.random() < _ALTERED else word[0], text)
        if text not in seen:
            seen.add(text)
            yield Listing(str(len(seen)), text, title=chance.choice(titles))


def _text(chance: random.Random, sentences: list[str]) -> str:
    wanted, pieces, words = chance.randint(_SHORTEST, _LONGEST), list[str](), 0
    while words < wanted:
        piece = chance.choice(sentences)
        size = len(piece.split())
        if words + size <= _LONGEST:
            pieces.append(piece)
            words += size
        elif words >= _SHORTEST:
            break
    return " ".join(pieces)
