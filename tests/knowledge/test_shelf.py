"""The shelf: built-in sets, the user's own folder, and what it does with bad files."""

from __future__ import annotations

import re

import pytest

from auditor.knowledge import lexicon
from auditor.knowledge.shelf import Shelf
from tests.knowledge.bad_point_sets import GOOD

_ISBN = '[[editions]]\nid = "paper"\nname = "Paperback"\nkind = "trade"\nisbn = ["0-306-40615-2", "9783161484100"]\n'


@pytest.fixture(scope="module")
def built_in() -> Shelf:
    return Shelf.open()


def _write(folder, **files):
    for stem, text in files.items():
        (folder / f"{stem.replace('_', '-')}.toml").write_text(text, encoding="utf-8")
    return folder


def test_the_published_sets_load_without_a_mistake(built_in):
    assert len(built_in.sets) >= 52
    assert built_in.mistakes == ()


def test_every_published_fact_has_a_source(built_in):
    for work in built_in.sets.values():
        assert all(point.source.strip() for point in work.points), work.stem
        assert all(value.source.strip() for value in work.values), work.stem


def test_hints_are_wording_that_tells_the_readings_of_a_point_apart(built_in):
    with_hints = [work for work in built_in.sets.values() if any(r.said_as for p in work.points for r in p.readings)]
    assert len(with_hints) >= 25
    for work in with_hints:
        for point in work.points:
            hints = [hint.lower() for reading in point.readings for hint in reading.said_as]
            assert len(hints) == len(set(hints)), (work.stem, point.id)
            assert all(re.search(r"\w", hint) and hint == hint.strip() for hint in hints)


def test_hints_of_one_work_never_name_two_points_of_other_copies(built_in):
    """The same words under two points would claim both, so they must mean the same copies."""
    for work in built_in.sets.values():
        meant: dict[str, set] = {}
        for point in work.points:
            for reading in point.readings:
                for hint in reading.said_as:
                    meant.setdefault(f"{point.part} {hint.lower()}", set()).add(point.id)
        assert all(len(points) == 1 for points in meant.values()), (work.stem, meant)


def test_the_users_folder_wins_by_stem(tmp_path):
    mine = GOOD.replace("The Salt Road", "Dune").replace("Nora Wynd", "Frank Herbert")
    shelf = Shelf.open([_write(tmp_path, dune=mine)])
    assert [edition.name for edition in shelf.sets["dune"].editions] == ["First edition"]
    assert shelf.mistakes == ()


def test_the_users_folder_wins_by_title_and_author(tmp_path):
    mine = GOOD.replace("The Salt Road", "DUNE").replace("Nora Wynd", "frank herbert")
    shelf = Shelf.open([_write(tmp_path, my_dune=mine)])
    assert "dune" not in shelf.sets
    assert shelf.match("", "Dune by Frank Herbert, first edition").stem == "my-dune"


def test_a_bad_file_of_the_users_leaves_the_built_in_one_and_the_others(tmp_path):
    shelf = Shelf.open([_write(tmp_path, dune="[work\n", salt_road=GOOD)])
    assert "salt-road" in shelf.sets
    assert shelf.sets["dune"].work.author == "Frank Herbert"
    assert [(mistake.file, mistake.line) for mistake in shelf.mistakes] == [(str(tmp_path / "dune.toml"), 1)]


def test_one_file_a_missing_folder_and_a_file_of_other_bytes(tmp_path):
    folder = _write(tmp_path, salt_road=GOOD)
    (folder / "latin.toml").write_bytes(b'[work]\ntitle = "Caf\xe9"\n')
    assert list(Shelf.of([folder / "salt-road.toml"]).sets) == ["salt-road"]
    assert "no such folder" in Shelf.of([tmp_path / "nowhere"]).mistakes[0].message
    assert ["UTF-8" in mistake.message for mistake in Shelf.of([folder]).mistakes] == [True]


def test_a_mistake_reads_as_a_place_and_a_sentence(tmp_path):
    told = str(Shelf.of([_write(tmp_path, bad=GOOD.replace('"USD"', '"dollars"'))]).mistakes[0])
    assert told.startswith(f"{tmp_path / 'bad.toml'}:23: value number 1: currency 'dollars'")


def test_an_isbn_decides_before_the_title(tmp_path):
    text = GOOD.replace("[[points]]", _ISBN + "[[points]]", 1)
    shelf = Shelf.open([_write(tmp_path, salt_road=text)])
    match = shelf.match("No title here", "Unknown", ["9780306406157"])
    assert match is not None
    assert (match.stem, match.doubtful) == ("salt-road", False)
    assert shelf.match("No title here", "Unknown", ["316148410X", "3-16-148410-0"]).stem == "salt-road"
    assert shelf.match("No title here", "Unknown", ["0306406153"]) is None


def test_disputed_points_stay_marked(built_in):
    assert built_in.sets["salems-lot"].point("gutter").disputed
    assert sum(bool(point.disputed) for work in built_in.sets.values() for point in work.points) >= 15
    assert not list((lexicon.root() / "points").glob("*.md"))
