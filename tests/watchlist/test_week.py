"""A collector's week on a real file, its main steps processes of their own."""

import csv
import json
import re

import jsonschema
import pytest
from typer.testing import CliRunner

from auditor.cli import app
from tests.commands import DEMO, SCHEMA, auditor, errors, one_line, out


def arguments_of(command, arguments, file):
    points = [] if command in ("note", "decide", "drop") else ["--points", DEMO / "points"]
    return [str(each) for each in ("watch", command, *arguments, *points, "--file", file)]


@pytest.fixture
def process(tmp_path):
    """Runs a command as a process of its own, as a user does."""

    def run(command, *arguments, words=""):
        done = auditor(*arguments_of(command, arguments, tmp_path / "list.sqlite"), words=words)
        assert done.returncode == 0, errors(done)
        return out(done)

    return run


@pytest.fixture
def watch(tmp_path):
    """Runs a command in this process, on a real file, which is quicker; gives what it tells, or its errors where it fails."""

    def run(command, *arguments, words="", code=0):
        done = CliRunner().invoke(app, arguments_of(command, arguments, tmp_path / "list.sqlite"), input=words)
        assert done.exit_code == code, done.stderr
        return done.stdout if code == 0 else done.stderr

    return run


def test_a_week(process, watch, tmp_path):
    # Tuesday: twelve listings, one question asked, a note.
    told = process("add", DEMO / "watchlist.csv", "--on", "2025-09-02")
    assert len(re.findall(r"^#\d+ added", told, re.M)) == 12
    assert "asked: Copyright page" in process("asked", 2, "--on", "2025-09-02")
    process("note", 2, "ask", "for the number line", "--on", "2025-09-02")

    # Thursday: what the shops' pages say now.
    told = process("recheck", DEMO / "listings.csv", "--on", "2025-09-04")
    assert "#2 changed" in told
    assert "The price asked went from 450.00 USD to 425.00 USD (6% less)." in told
    assert "“replaced leaf”, put forward with doubt, was added." in told
    assert "12 read again, 3 changed. 12 on the list; 56 given are not." in one_line(told)
    assert "1 asked" in watch("list")

    # Saturday: the line was added to the page, and that answers the question.
    told = one_line(process("recheck", DEMO / "watchlist-later.csv", "--on", "2025-09-06"))
    assert "The number line “10 9 8 7 6 5 4 3 2 1” was added after you asked (copyright page)." in told
    assert "It now stands as supported; before, unproven." in told
    process("decide", 2, "buy", "--on", "2025-09-06")

    shown = one_line(process("show", 2))
    history = shown[shown.index("Its history") :]
    steps = [
        "Put on the list",
        "You asked about: copyright page",
        "Note ask for the number line",
        "425.00 USD",
        "after you asked",
    ]
    places = [history.index(step) for step in [*steps, "Your question (copyright page) is answered.", "Decision buy"]]
    assert places == sorted(places)
    assert "answered: Copyright page:" in history

    # The list, by what changed last and by the price against its figures.
    first = [line.split()[0] for line in watch("sort", "changed").splitlines() if re.match(r" {1,2}\d+  ", line)]
    assert first[:1] == ["2"]
    assert set(first[1:3]) == {"8", "9"}
    assert len(first) == 12

    # Read anew with the same lexicon, nothing changes; seen twice, nothing is added.
    assert "12 read again, 0 changed." in watch("recheck")
    assert "#2 as before" in watch("add", DEMO / "watchlist-later.csv")

    watch("export", *(tmp_path / f"out.{kind}" for kind in ("csv", "jsonl", "html")))
    rows = {row["number"]: row for row in csv.DictReader((tmp_path / "out.csv").open(newline="", encoding="utf-8"))}
    assert (rows["2"]["decision"], rows["2"]["notes"], rows["2"]["asked"]) == (
        "buy",
        "ask for the number line",
        "answered: copyright page",
    )
    assert "was added after you asked" in rows["2"]["history"]
    records = [json.loads(line) for line in (tmp_path / "out.jsonl").read_text(encoding="utf-8").splitlines()]
    assert [record["watch"]["number"] for record in records] == list(range(1, 13))
    for record in records:
        jsonschema.validate({name: value for name, value in record.items() if name != "watch"}, SCHEMA)
    assert "12 listings read" in (tmp_path / "out.html").read_text(encoding="utf-8")

    assert "#5 is off the list" in watch("drop", 5)
    assert "there is no #5" in watch("show", 5, code=2)
    watch("add", "-", words="Another one. First edition.")
    numbers = re.findall(r"^ {1,2}(\d+)  ", watch("list"), re.M)
    assert numbers == ["1", "2", "3", "4", *map(str, range(6, 14))]  # a number is never given twice


def test_pasted_text_is_new_the_same_or_perhaps_the_same(watch):
    words = "First printing of The Ore Dock by Ilse Varnum, gray cloth, near fine in a very good jacket at $6.95."
    told = watch("add", "-", "--title", "Ore Dock", "--asking", "$45", "--seller", "quietshelf", words=words)
    assert told.strip() == "#1 added: Ore Dock"
    assert "#1 as before" in watch("add", "-", words=words)
    told = watch("add", "-", words=words + " Number line to 1.")
    assert "#2 added" in told
    assert "It may be the same listing as #1" in told
    assert "auditor watch merge 2 1" in one_line(told)
    told = watch("merge", 2, 1)
    assert "“Number line to 1” was added." in told
    shown = one_line(watch("show", 1))
    assert "asking 45.00 USD, quietshelf" in shown  # what a pasted text doesn't tell is as it was
    assert "there is no #2" in watch("show", 2, code=2)
    told = watch("add", "-", "--as", 1, "--asking", "$40", words="First printing. Sorry, no time to describe it.")
    assert "#1 changed" in told
    assert "from 45.00 USD to 40.00 USD" in told
    assert "there is no #9" in watch("add", "-", "--as", 9, words="First printing.", code=3)


def test_questions_are_marked_by_hand(watch):
    watch("add", "-", "--title", "The Ore Dock, Ilse Varnum", words="First printing in gray cloth.")
    assert "has no question that is asked" in watch("answered", 1, code=2)
    assert "expected 'copyright page'" in one_line(watch("asked", 1, "spine", code=2))
    watch("asked", 1, "copyright page")
    assert "1 asked" in watch("list")
    watch("answered", 1, "--words", "line to 1, by mail")
    assert "1 answered" in watch("list")
    assert "line to 1, by mail" in one_line(watch("show", 1))
    watch("recheck")
    assert "1 answered" in watch("list")


def test_a_question_that_other_words_settle_is_no_longer_needed(watch):
    watch("add", "-", "--title", "The Ore Dock, Ilse Varnum", words="First printing in gray cloth.")
    watch("asked", 1)
    told = one_line(watch("add", "-", "--as", 1, words="First printing, black boards, harbor master on page 61."))
    assert "after you asked" not in told
    assert "Your question (copyright page) is no longer needed." in one_line(watch("show", 1))


def test_without_its_point_set_a_listing_stays_as_it_was(watch, tmp_path):
    watch("add", DEMO / "watchlist-later.csv")
    done = auditor("watch", "recheck", "--file", tmp_path / "list.sqlite")
    assert done.returncode == 3
    assert "give its folder by --points" in one_line(errors(done))
    assert "supported" in watch("list")


def test_what_cannot_be_read_is_told_and_the_rest_is_kept(watch, tmp_path):
    (tmp_path / "shop.csv").write_text("id,text\na,First edition.\nb,\n", encoding="utf-8")
    assert "neither text nor title" in watch("add", tmp_path / "shop.csv", code=3)
    assert "First edition." in watch("list")
    assert "a later day" in watch("add", "-", "--as", 1, "--on", "2001-01-01", words="First printing.", code=3)


def test_wrong_use_is_told_with_what_was_expected(watch, tmp_path):
    assert "expected added, standing, missing" in one_line(watch("sort", "beauty", code=2))
    assert "speak of one listing" in one_line(watch("add", DEMO / "watchlist.csv", "--as", 1, code=2))
    assert "is still to come" in one_line(watch("add", DEMO / "watchlist.csv", "--on", "2999-01-01", code=2))
    assert "suffix must tell the kind" in one_line(watch("export", tmp_path / "x.pdf", code=2))
    (tmp_path / "list.sqlite").unlink(missing_ok=True)
    (tmp_path / "list.sqlite").write_text("no database, but words enough to fill a header and more " * 20, encoding="utf-8")
    assert "list.sqlite" in one_line(watch("list", code=2))


def test_each_command_shows_an_example():
    told = CliRunner().invoke(app, ["watch", "--help"]).output
    commands = re.findall(r"^  (\w+)  ", told[told.index("Commands:") :], re.M)
    assert {"add", "list", "show", "sort", "recheck", "drop", "export"} <= set(commands)
    for command in commands:
        assert f"Example: auditor watch {command}" in one_line(CliRunner().invoke(app, ["watch", command, "--help"]).output)


def test_the_list_lies_in_the_users_data_folder(tmp_path):
    home = {"HOME": str(tmp_path), "XDG_DATA_HOME": str(tmp_path / "data"), "LOCALAPPDATA": str(tmp_path / "data")}
    assert auditor("watch", "add", "-", words="First edition.", **home).returncode == 0
    assert "The list is empty" not in out(auditor("watch", "list", **home))
    assert list(tmp_path.rglob("watchlist.sqlite"))


def test_todays_knowledge_reads_the_kept_words_anew(tmp_path):
    points, more = tmp_path / "points", ["--file", tmp_path / "list.sqlite", "--points", tmp_path / "points"]
    points.mkdir()

    def run(*arguments, words=""):
        return one_line(CliRunner().invoke(app, ["watch", *map(str, (*arguments, *more))], input=words).stdout)

    known = (DEMO / "points" / "ore-dock.toml").read_text(encoding="utf-8")
    (points / "ore-dock.toml").write_text(known, encoding="utf-8")
    run("add", "-", "--title", "The Ore Dock, Ilse Varnum", words="First printing in gray cloth.")
    for cloth, was, now in (("gray cloth", "1-2", "1"), ("black paper boards", "3-4", "2-4")):
        row = f'value = "{cloth}"\n  copies = ["trade:{was}"]'
        assert row in known
        known = known.replace(row, row.replace(was, now))
    (points / "ore-dock.toml").write_text(known, encoding="utf-8")
    told = run("recheck")
    assert "It now stands as supported; before, unproven." in told
    assert "The text changed" not in told
    assert "Read anew, the words unchanged" in run("show", 1)
