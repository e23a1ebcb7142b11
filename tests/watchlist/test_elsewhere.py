"""The same words on the list are told with where else they stand, and blame nobody."""

import csv
import json

from auditor.auditing import open_shelf
from auditor.desk.app import create
from auditor.values import Listing
from auditor.watchlist.elsewhere import elsewhere
from auditor.watchlist.keeping import keep
from auditor.watchlist.store import opened
from auditor.watchlist.telling import also_in
from auditor.watchlist.values import moment
from tests.commands import DEMO, auditor, one_line, out
from tests.test_desk import Desk

SHELF = open_shelf(DEMO / "points")
COPIED = (
    "First printing in gray cloth, the boards a little bowed at the fore-edge, a faint ring on the rear panel where a cup once "
    "stood, and the owner's pencilled page numbers of favourite passages on the last endpaper. The jacket has a nick at the head "
    "of the spine and a mended tear of about an inch along the front fold, else clean, and priced at $6.95 on its flap."
)
OTHER = (
    "Third printing, black boards as always, in the dearer jacket. Bought new in the harbour shop in Duluth on the day of the "
    "storm, read once on the night train and shelved out of the light ever since. A bright and square copy without any names."
)


def kept(path, *listings):
    with opened(path) as store:
        for number, (seller, text) in enumerate(listings):
            keep(store, SHELF, Listing(f"s{number}", text, "The Ore Dock by Ilse Varnum", None, seller), moment())
        return elsewhere(store)


def test_copied_words_are_told_in_both_and_in_no_other(tmp_path):
    found = kept(tmp_path / "list.sqlite", ("quietshelf", COPIED), ("Bramble", OTHER), ("heron", f"{COPIED} Postage 4 USD."))
    assert found == {1: (3,), 3: (1,)}
    done = auditor("watch", "show", 1, "--file", tmp_path / "list.sqlite", "--points", DEMO / "points")
    assert "These words also stand in #3: they may describe another copy." in one_line(out(done))
    auditor("watch", "export", tmp_path / "o.csv", tmp_path / "o.jsonl", "--file", tmp_path / "list.sqlite")
    rows = list(csv.DictReader((tmp_path / "o.csv").open(newline="", encoding="utf-8")))
    assert [row["same_words"] for row in rows] == ["#3", "", "#1"]
    records = map(json.loads, (tmp_path / "o.jsonl").read_text(encoding="utf-8").splitlines())
    assert [record["watch"]["same_words"] for record in records] == [[3], [], [1]]
    desk = Desk(create(SHELF, 8431, tmp_path, tmp_path / "list.sqlite"))
    assert 'these words also stand in <a href="/watch/3">#3</a>' in desk.get("/watch").text
    assert 'These words also stand in <a href="/watch/1">#1</a>' in desk.get("/watch/3").text
    assert "also stand in" not in desk.get("/watch/2").text


def test_words_that_changed_are_no_longer_the_same(tmp_path):
    path = tmp_path / "list.sqlite"
    assert kept(path, ("quietshelf", COPIED), ("heron", COPIED)) == {1: (2,), 2: (1,)}
    with opened(path) as store:
        keep(store, SHELF, Listing("s1", OTHER, "The Ore Dock by Ilse Varnum", None, "heron"), moment(), into=2)
        assert elsewhere(store) == {}


def test_the_sentence():
    assert also_in(()) == ""
    assert also_in((3, 7, 9)) == "These words also stand in #3, #7 and #9: they may describe another copy."
