"""Speed of reading and audit, told as shares of spaCy's bare tokenizer in the same run: ``python -m tests.bench.speed``.

All contenders take the same listings in turn, a few hundred at a time, so that whatever else the machine does meets all alike.
Times inside the process are seconds of its processor; those of whole commands are seconds on the clock, the quickest of a few.
Nothing is asserted. ``--listings 2000`` is a run of under a minute; the figures in DEVELOPERS.md are of 20,000.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Sequence
from itertools import islice
from pathlib import Path

import spacy
from spacy.language import Language

from auditor.auditing import audit_on
from auditor.knowledge.english import right_words
from auditor.knowledge.points import PointSet
from auditor.knowledge.shelf import Shelf
from auditor.reading import read
from auditor.reading.rows import rows, spread
from auditor.reports import jsonlines
from auditor.values import Listing
from tests.bench.texts import listings, point_folders

_TURN = 250  # listings that each contender takes before the next has its turn
_SHARE = 10  # every so many turns the slow stock of rules takes one
_STARTS = 5  # times a command is started
_TOKENIZER = "bare tokenizer"

Contender = Callable[[Listing], object]


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("--listings", type=int, default=20_000, help="how many distinct listings (default 20,000)")
    options.add_argument("--sets", type=int, default=10_000, help="how many point sets the large shelf holds (default 10,000)")
    chosen = options.parse_args()
    shelf = Shelf.open(point_folders())
    rival = _entity_rules()
    for strange in (False, True):
        print(f"\n{chosen.listings:,} listings{', figures and words swapped so that no sentence comes twice' * strange}")
        _contest(listings(chosen.listings, strange=strange), shelf, rival)
    print("\nPoint sets")
    _shelves(list(listings(min(chosen.listings, 2_000))), list(shelf.sets.values()), chosen.sets)
    print("\nCommands")
    _commands(list(listings(chosen.listings)))


def _contest(texts: Iterator[Listing], shelf: Shelf, rival: Language | None) -> None:
    nlp = spacy.blank("en")
    works = {}

    def reading(one: Listing) -> object:
        return read(one.text, works.get(one.id))

    def whole(one: Listing) -> object:
        verdict = audit_on(shelf, one.text, one.title)
        works[one.id] = shelf.sets.get(verdict.work or "")
        return jsonlines.line(one, verdict)

    contenders: dict[str, Contender] = {_TOKENIZER: lambda one: nlp.tokenizer(one.text), "whole audit": whole, "reading": reading}
    if rival is not None:
        contenders["entity ruler, negspacy"] = lambda one: rival(one.text)
    spent = dict.fromkeys(contenders, 0.0)
    taken = dict.fromkeys(contenders, 0)
    by_turn: list[float] = []
    words = 0
    turn = 0
    while batch := list(islice(texts, _TURN)):
        words += sum(len(one.text.split()) for one in batch)
        for name, take in contenders.items():
            if "negspacy" in name and turn % _SHARE:
                continue
            begun = time.process_time()
            for one in batch:
                take(one)
            spent[name] += time.process_time() - begun
            taken[name] += len(batch)
            if name == "whole audit":
                by_turn.append((time.process_time() - begun) / len(batch))
        works.clear()
        turn += 1
    print(f"  {words / taken[_TOKENIZER]:.0f} words each")
    bare = taken[_TOKENIZER] / spent[_TOKENIZER]
    for name in contenders:
        rate = taken[name] / spent[name]
        print(f"  {name:24} {rate:8,.0f} a second {rate / bare:7.3f} of the tokenizer's")
    if len(by_turn) > 7:  # the first turns fill the caches
        late, early = _mean(by_turn[-len(by_turn) // 4 :]), _mean(by_turn[len(by_turn) // 4 : len(by_turn) // 2])
        print(f"  a listing of the last quarter costs {late / early:.2f} times one of the second")


def _mean(values: Sequence[float]) -> float:
    return sum(values) / len(values)


def _entity_rules() -> Language | None:
    """The usual stock: entity rules over the lexicon's terms and an off-the-shelf component for their denial."""
    try:
        from negspacy.negation import Negex  # noqa: F401  registers the component
    except ImportError:
        print("  (negspacy is not installed: pip install '.[bench]')")
        return None
    nlp = spacy.blank("en")
    nlp.add_pipe("sentencizer")
    terms = [row for row in rows() if row.kind in ("term", "topic")]
    phrases = [{"label": row.feature, "pattern": plain} for row in terms for phrase in row.phrases for plain in spread(phrase)]
    nlp.add_pipe("entity_ruler", config={"phrase_matcher_attr": "LOWER"}).add_patterns(phrases)
    nlp.add_pipe("negex")
    return nlp


def _shelves(texts: list[Listing], known: list[PointSet], many: int) -> None:
    """The same listings against ten point sets and against many: the ten again and invented ones of other titles."""
    few = {work.stem: work for work in known[:10]}
    large = few | {made.stem: made for made in islice(_invented(known, texts), many - len(few))}
    spent = {}
    for sets in (few, large):
        shelf = Shelf(sets)
        shelf.match("", "x")  # builds the index
        for one in texts[:_TURN]:
            audit_on(shelf, one.text, one.title)
        begun = time.process_time()
        for one in texts:
            audit_on(shelf, one.text, one.title)
        spent[len(sets)] = (time.process_time() - begun) / len(texts)
    (ten, fast), (lots, slow) = spent.items()
    print(f"  {ten} sets {fast * 1e3:.2f} ms a listing, {lots:,} sets {slow * 1e3:.2f} ms: {slow / fast:.2f} times")


def _invented(known: list[PointSet], texts: list[Listing]) -> Iterator[PointSet]:
    """Point sets with titles of one word that the listings use and one or two more, and authors of any English word or name."""
    chance = random.Random(len(texts))
    used = sorted({word for one in texts for word in one.text.split() if word.isalpha() and len(word) > 3})
    words = sorted(word for word in right_words() if word.isalpha() and len(word) > 3)
    number = 0
    while True:
        old = known[number % len(known)]
        title = " ".join(word.capitalize() for word in (*chance.sample(words, chance.randint(1, 2)), chance.choice(used)))
        author = " ".join(word.capitalize() for word in chance.sample(words, 2))
        work = old.work.model_copy(update={"title": title, "author": author, "also_titled": ()})
        editions = [edition.model_copy(update={"isbn": None}) for edition in old.editions]
        yield old.model_copy(update={"stem": f"invented-{number}", "work": work, "editions": editions})
        number += 1


def _commands(texts: list[Listing]) -> None:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        draft = folder / "draft.txt"
        draft.write_text(texts[0].text, "utf-8")
        for told, arguments in (("--help", ["--help"]), ("check", ["check", str(draft)])):
            seconds = min(_clocked(*arguments) for _ in range(_STARTS))
            print(f"  {told:12} {seconds:.2f} s")
        source = folder / "listings.jsonl"
        lines = (json.dumps({"id": one.id, "title": one.title, "text": one.text}) for one in texts)
        source.write_text("\n".join(lines), "utf-8")
        if "--workers" not in _run("scan", "--help").stdout:
            print("  scan: no --workers yet")
            return
        points = [piece for path in point_folders() for piece in ("--points", str(path))]
        spent = {
            workers: _clocked("scan", str(source), *points, "--workers", str(workers), "--out", str(folder / f"{workers}.jsonl"))
            for workers in (1, 2)
        }
        for workers, seconds in spent.items():
            print(f"  scan, {workers} worker{'s' * (workers > 1)} {seconds:7.1f} s, {len(texts) / seconds:,.0f} a second")
        print(f"  two workers do {spent[1] / spent[2]:.2f} times what one does ({os.cpu_count()} processors here)")


def _clocked(*arguments: str) -> float:
    begun = time.perf_counter()
    _run(*arguments)
    return time.perf_counter() - begun


def _run(*arguments: str) -> subprocess.CompletedProcess[str]:
    """The command as users start it: with compiled modules kept, which some machines for developers switch off."""
    environment = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    command = [sys.executable, "-m", "auditor", *arguments]
    return subprocess.run(command, env=environment, capture_output=True, text=True, check=False)


if __name__ == "__main__":
    main()
