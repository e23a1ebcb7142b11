"""A point set as a guide that a teacher could hand out: on the terminal and as a page."""

import io
import json
import subprocess
import sys
import tomllib
from pathlib import Path

import jsonschema
import pytest

from auditor.knowledge.checks import review
from auditor.knowledge.shelf import Shelf
from auditor.knowledge.skeleton import schema, skeleton
from auditor.reports.guide import guide, show
from auditor.reports.page.guide import page
from auditor.reports.screen import console

ROOT = Path(__file__).parents[2]
DEMO = ROOT / "corpora_demo" / "points"
SHELF = Shelf.open((DEMO,))


def printed(stem: str) -> str:
    stream = io.StringIO()
    show(SHELF.sets[stem], console(stream))
    return stream.getvalue()


def test_what_a_first_printing_shows_and_what_it_does_not():
    told = guide(SHELF.sets["heron-year"])
    assert told.first == "First edition, printing 1"
    shows = {(sign.place, sign.reading): sign.have for sign in told.shows}
    assert shows["page 88, line 2", "heroin for heron"] == "Lakeland Book Guild edition"
    assert shows["front flap", "$10.95"] == "First edition, printing 2"
    assert {sign.reading for sign in told.others} >= {"heron", "$11.95", "gray paper boards"}
    assert not {(sign.place, sign.reading) for sign in told.others} & shows.keys()


def test_the_guide_is_told_with_sources_prices_and_the_caution():
    words = " ".join(printed("heron-year").split())
    for expected in (
        "120 to 180 USD, as of 2025-04-01 (invented for the demo)",
        "source: invented for the demo",
        "ask a specialist",
    ):
        assert expected in words


@pytest.mark.parametrize("stem", sorted(SHELF.sets))
def test_every_set_has_a_guide(stem):
    work = SHELF.sets[stem]
    words, html = printed(stem), page(work)
    assert work.work.author in words
    assert "Text only: neither an authentication nor an appraisal" in html
    assert all(point.place in words.replace("\n      ", " ") or len(point.place) > 60 for point in work.points)


def test_accounts_of_authorities_are_told():
    # Winesburg, Ohio, page 251: Phillips against Bauman, as lexicon/points/winesburg-ohio.toml gives them
    assert "Bauman has it otherwise" in printed("winesburg-ohio")
    assert "Bauman has it otherwise" in page(SHELF.sets["winesburg-ohio"])


def test_a_page_shows_a_hostile_set_as_words():
    work = SHELF.sets["heron-year"]
    hostile = work.model_copy(update={"work": work.work.model_copy(update={"title": "<script>alert(1)</script>"})})
    assert "<script>alert" not in page(hostile)


def test_a_skeleton_reads_and_tells_what_it_lacks():
    found = review(skeleton('The "Ore" Dock', "Ilse Varnum"), "ore-dock", "ore-dock.toml")
    assert found.set is not None
    assert found.set.work.title == 'The "Ore" Dock'
    assert [mistake.message for mistake in found.mistakes] == [
        "point 'number-line': the source is empty: expected where the fact stands, or \"from memory\"; the point is left out"
    ]


def test_a_skeleton_with_every_comment_taken_as_a_key_is_a_sound_set():
    lines = skeleton("The Ore Dock", "Ilse Varnum").splitlines()[3:]  # behind the greeting
    keys = [line.removeprefix("# ") for line in lines]
    found = review("\n".join(keys).replace('source = ""', 'source = "invented"'), "ore-dock", "ore-dock.toml")
    assert (found.mistakes, found.remarks) == ([], [])
    assert [point.id for point in found.set.points] == ["number-line", "jacket-price"]
    assert [edition.kind for edition in found.set.editions] == ["trade", "book club"]


@pytest.mark.parametrize(
    "path", sorted([*DEMO.glob("*.toml"), *(ROOT / "lexicon" / "points").glob("*.toml")]), ids=lambda p: p.stem
)
def test_the_schema_takes_every_set_that_ships(path):
    jsonschema.validate(tomllib.loads(path.read_text(encoding="utf-8")), json.loads(schema()))


@pytest.mark.parametrize("wrong", ['kind = "hardback"', "yaer = 1974", 'printings = "four"'])
def test_the_schema_refuses_what_the_reader_refuses(wrong):
    text = f'[work]\ntitle = "T"\nauthor = "A"\n[[editions]]\nid = "t"\nname = "First"\n{wrong}\n'
    text += "" if wrong.startswith("kind") else 'kind = "trade"\n'
    assert review(text, "t", "t.toml").mistakes
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(tomllib.loads(text), json.loads(schema()))


def run(*arguments):
    return subprocess.run(
        [sys.executable, "-m", "auditor", "points", *map(str, arguments)],
        capture_output=True,
        encoding="utf-8",
        cwd=ROOT,
        timeout=60,
    )


def test_the_commands(tmp_path):
    target = tmp_path / "ore-dock.toml"
    assert run("new", "The Ore Dock", "--out", target).returncode == 0
    again = run("new", "The Ore Dock", "--out", target)
    assert again.returncode == 2
    assert "never written over" in " ".join(again.stderr.split())
    shown = run("show", "heron year", "--points", DEMO, "--out", tmp_path / "guide.html")
    assert (shown.returncode, shown.stdout) == (0, "")
    assert "heroin for heron" in (tmp_path / "guide.html").read_text(encoding="utf-8")
    unknown = run("show", "The Heron Days", "--points", DEMO)
    assert unknown.returncode == 2
    assert "near it are: The Heron Year" in " ".join(unknown.stderr.split())
