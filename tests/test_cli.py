"""The commands, run as a user runs them."""

import csv
import json
import os
import re
import subprocess
import sys
from pathlib import Path

import jsonschema
import pytest

ROOT = Path(__file__).parents[1]
DEMO = ROOT / "corpora_demo"
SCHEMA = json.loads((ROOT / "auditor" / "schema.json").read_text(encoding="utf-8"))
WORDS = (
    "First edition, first printing. Gray cloth, number line 10 9 8 7 6 5 4 3 2 1. Not a book club edition. "
    "Very good in a very good jacket. It may be signed; later printings are in black boards."
)


def auditor(*arguments, words="", **environment):
    """Runs the command with ``words`` on standard input."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "utf-8", **environment}
    return subprocess.run(
        [sys.executable, "-m", "auditor", *map(str, arguments)],
        input=words.encode(),
        capture_output=True,
        env=environment,
        timeout=120,
    )


def out(done):
    return done.stdout.decode("utf-8")


def errors(done):
    return done.stderr.decode("utf-8")


def one_line(text):
    return " ".join(text.split())


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    """The whole demo scanned once, into both kinds of file."""
    folder = tmp_path_factory.mktemp("demo")
    files = folder / "result.jsonl", folder / "result.csv"
    done = auditor(
        "scan", DEMO / "listings.csv", DEMO / "pages", "--points", DEMO / "points", "--out", files[0], "--out", files[1]
    )
    return done, *files


def test_check_tells_all_parts_of_the_report():
    done = auditor("check", "--title", "The Ore Dock by Ilse Varnum", "--asking", "$45", "--points", DEMO / "points", words=WORDS)
    told = one_line(out(done))
    assert done.returncode == 0, errors(done)
    assert "[First edition" in told
    assert "[-" in told
    assert "{later printings" in told
    for part in (
        "asking 45.00 USD",
        "The work",
        "Ilse Varnum (point set ore-dock)",
        "Standing",
        "The ruler",
        "Findings",
        "Scores",
    ):
        assert part in told
    assert "Text only: neither an authentication nor an appraisal" in told
    assert "\x1b" not in out(done)
    assert not re.search(r" +$", out(done), re.M)


def test_check_asks_what_would_settle_it():
    done = auditor(
        "check", "--title", "The Ore Dock by Ilse Varnum", "--points", DEMO / "points", words="First edition, first printing."
    )
    told = out(done)
    assert "A message to the seller" in told
    message = told[told.index("Good day,") : told.index("Thank you.")]
    assert "your copy of The Ore Dock by Ilse Varnum" in one_line(message)
    assert "\n  - " in message


def test_check_reads_a_page_a_text_file_and_standard_input_alike(tmp_path):
    page = DEMO / "pages" / "gullwing-ore-dock.html"
    [listing] = [
        row for row in map(json.loads, (DEMO / "listings.jsonl").open(encoding="utf-8")) if row["id"] == "page-gullwing-ore-dock"
    ]
    (tmp_path / "words").write_text(listing["text"], encoding="utf-8")
    more = "--title", listing["title"], "--points", DEMO / "points", "--json"
    ways = [
        auditor("check", page, *more),
        auditor("check", tmp_path / "words", *more),
        auditor("check", "-", *more, words=listing["text"]),
        auditor("check", *more, words=page.read_text(encoding="utf-8")),
    ]
    records = [json.loads(out(done)) for done in ways]
    for record in records:
        jsonschema.validate(record, SCHEMA)
        assert record["listing"]["text"] == listing["text"]
        assert record["claims"] == records[0]["claims"]
    assert records[0]["listing"]["asking"] == "300.00 USD"


def test_check_takes_one_listing_only():
    done = auditor("check", DEMO / "listings.csv")
    assert done.returncode == 2
    assert "auditor scan" in errors(done)


def test_scan_writes_every_listing_by_the_schema(demo):
    done, lines, _ = demo
    assert done.returncode == 0, errors(done)
    records = [json.loads(line) for line in lines.read_text(encoding="utf-8").splitlines()]
    ids = [row["id"] for row in csv.DictReader((DEMO / "listings.csv").open(newline="", encoding="utf-8"))]
    assert [record["id"] for record in records] == ids + sorted(path.stem for path in (DEMO / "pages").glob("*.html"))
    validator = jsonschema.Draft202012Validator(SCHEMA)
    for record in records:
        validator.validate(record)
        text = record["listing"]["text"]
        for claim in record["claims"]:
            assert text[claim["start"] : claim["end"]].strip()
        for finding in record["findings"]:
            assert all(text[start:end].strip() for start, end in finding["spans"])
    assert sum(bool(record["claims"]) for record in records) > len(records) / 2


@pytest.mark.parametrize(
    ("path", "value"),
    [
        (["id"], 7),
        (["standing"], "proven"),
        (["scores", "missing"], 101),
        (["claims", 0, "stance"], "said"),
        (["candidates", "book"], ["1-"]),
    ],
)
def test_the_schema_refuses_what_the_contract_does(demo, path, value):
    record = next(record for record in map(json.loads, demo[1].open(encoding="utf-8")) if record["claims"])
    holder = record
    for step in path[:-1]:
        holder = holder[step]
    holder[path[-1]] = value
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(record, SCHEMA)


def test_scan_prints_the_worst_first_and_a_summary(demo):
    done, lines, table = demo
    printed = out(done)
    records = [json.loads(line) for line in lines.read_text(encoding="utf-8").splitlines()]
    weight = {"grave": 3, "weighty": 2, "note": 0}
    worst = {
        record["id"]: (
            record["scores"]["contradiction"] >= 75,
            sum(weight[finding["severity"]] for finding in record["findings"]),
        )
        for record in records
    }
    shown = [words[0] for line in printed.splitlines() if (words := line.split()) and words[0] in worst]
    assert len(shown) == len(records)
    assert [worst[name] for name in shown] == sorted(worst.values(), reverse=True)
    assert f"{len(records)} listings, {sum(record['work'] is not None for record in records)} of them of a book" in one_line(
        printed
    )
    assert "neither an authentication nor an appraisal" in one_line(printed)
    assert "\x1b" not in printed
    assert "\x1b" not in errors(done)
    with table.open(newline="", encoding="utf-8") as stream:
        rows = list(csv.DictReader(stream))
    assert [(row["id"], row["standing"]) for row in rows] == [(record["id"], record["standing"]) for record in records]


def test_what_was_recognised_is_said(demo):
    assert "text from column text" in errors(demo[0])
    assert "text from JSON-LD" in errors(demo[0])


def test_a_chosen_column(tmp_path):
    (tmp_path / "shop.csv").write_text("Nr.;Worte\n8;First edition.\n", encoding="utf-8")
    done = auditor("scan", tmp_path / "shop.csv", "--column", "text=Worte", "--out", tmp_path / "r.jsonl")
    record = json.loads((tmp_path / "r.jsonl").read_text(encoding="utf-8"))
    assert (record["id"], record["listing"]["text"], done.returncode) == ("8", "First edition.", 0)


def test_what_cannot_be_read_is_told_and_the_rest_is_done(tmp_path):
    (tmp_path / "shop.jsonl").write_text('{"id": "a", "text": "First edition."}\n{broken\n', encoding="utf-8")
    done = auditor("scan", tmp_path, tmp_path / "missing.csv", "--out", tmp_path / "r.jsonl")
    assert done.returncode == 3
    assert f"{tmp_path / 'shop.jsonl'}, line 2: could not be read: no valid JSON" in errors(done)
    assert "missing.csv, file: could not be read: no such file" in errors(done)
    assert json.loads((tmp_path / "r.jsonl").read_text(encoding="utf-8"))["id"] == "a"
    assert "2 things could not be read" in one_line(out(done))


def test_a_second_scan_of_a_folder_does_not_read_its_own_output(tmp_path):
    (tmp_path / "a.txt").write_text("First edition.", encoding="utf-8")
    for _ in range(2):
        done = auditor("scan", tmp_path, "--out", tmp_path / "r.jsonl", "--out", tmp_path / "r.csv")
        assert done.returncode == 0, errors(done)
    assert len((tmp_path / "r.jsonl").read_text(encoding="utf-8").splitlines()) == 1


def test_fail_on_tells_a_script(demo):
    records = [json.loads(line) for line in demo[1].read_text(encoding="utf-8").splitlines()]
    found = {finding["kind"] for record in records for finding in record["findings"]}
    assert "missing evidence" in found
    arguments = "scan", DEMO / "listings.csv", "--points", DEMO / "points", "--fail-on"
    assert auditor(*arguments, "missing evidence").returncode == 1
    more = "check", "--title", "The Ore Dock by Ilse Varnum", "--points", DEMO / "points", "--fail-on"
    assert auditor(*more, "missing evidence", words="First edition, first printing.").returncode == 1
    assert auditor(*more, "made-up copy", words="First edition, first printing.").returncode == 0


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["scan", "x.csv", "--out", "x.pdf"], ".jsonl or .csv"),
        (["scan", "x.csv", "--out", "no/such/folder/x.csv"], "folder does not exist"),
        (["scan", "x.csv", "--column", "text"], "FIELD=COLUMN"),
        (["scan", "x.csv", "--column", "words=Body"], "one of id, title, text"),
        (["scan", "x.csv", "--fail-on", "lying"], "married jacket"),
        (["scan", "x.csv", "--points", "no/such/folder"], "no such folder"),
        (["scan"], "Missing argument"),
        (["check", "--asking", "cheap"], "45.00 USD"),
        (["points", "check", "no/such/folder"], "no such folder"),
        (["frobnicate"], "No such command"),
    ],
)
def test_wrong_use_is_told_with_what_was_expected(arguments, told):
    done = auditor(*arguments)
    assert done.returncode == 2
    assert told in one_line(errors(done))
    assert not out(done)


def test_points_check_tells_file_line_and_what_was_expected(tmp_path):
    done = auditor("points", "check", DEMO / "points")
    assert done.returncode == 0
    assert f"{len(list((DEMO / 'points').glob('*.toml')))} point sets read, 0 mistakes" in out(done)
    good = (DEMO / "points" / "ore-dock.toml").read_text(encoding="utf-8")
    line = next(number for number, words in enumerate(good.splitlines(), 1) if 'copies = ["trade:2"]' in words)
    (tmp_path / "ore-dock.toml").write_text(good.replace('copies = ["trade:2"]', 'copies = ["trade two"]'), encoding="utf-8")
    (tmp_path / "other.toml").write_text("[work\n", encoding="utf-8")
    done = auditor("points", "check", tmp_path)
    assert done.returncode == 3
    assert f"ore-dock.toml:{line}:" in out(done)
    assert "expected edition:1" in out(done)
    assert "other.toml:1:" in out(done)


@pytest.mark.parametrize("command", [[], ["check"], ["scan"], ["points"], ["points", "check"]])
def test_help_shows_an_example(command):
    done = auditor(*command, "--help")
    assert done.returncode == 0
    assert "Usage: auditor" in out(done)
    if command in (["check"], ["scan"], ["points", "check"]):
        assert f"Example: auditor {' '.join(command)}" in out(done)


def test_a_terminal_without_unicode_gets_plain_signs():
    done = auditor(
        "check", "--title", "The Ore Dock", "--points", DEMO / "points", words=WORDS + " Café £5.", PYTHONIOENCODING="ascii"
    )
    assert done.returncode == 0, errors(done)
    assert done.stdout.decode("ascii")
    assert "###" in out(done)


def test_a_closed_pipe_ends_quietly(tmp_path):
    (tmp_path / "many.csv").write_text(
        "id,text\n" + "".join(f"{number},First edition.\n" for number in range(300)), encoding="utf-8"
    )
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    command = [sys.executable, "-m", "auditor", "scan", str(tmp_path / "many.csv")]
    run = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=environment)
    run.stdout.close()
    told = run.stderr.read().decode()
    run.wait(timeout=60)
    assert "Traceback" not in told
    assert "rror" not in told


@pytest.mark.skipif(sys.platform == "win32", reason="pseudo-terminals are POSIX's")
def test_colours_on_a_terminal_and_none_under_no_color(tmp_path):
    import pty

    (tmp_path / "shop.csv").write_text("id,text\n1,First edition. No remainder mark.\n", encoding="utf-8")
    (tmp_path / "words.txt").write_text("First edition. No remainder mark.", encoding="utf-8")

    def on_terminal(*arguments, **more):
        ours, theirs = pty.openpty()
        environment = {**os.environ, "PYTHONPATH": str(ROOT), "TERM": "xterm-256color", **more}
        run = subprocess.Popen([sys.executable, "-m", "auditor", *arguments], stdout=theirs, stderr=theirs, env=environment)
        os.close(theirs)
        told = b""
        try:
            while piece := os.read(ours, 4096):
                told += piece
        except OSError:  # Linux tells the end of a pseudo-terminal so
            pass
        os.close(ours)
        assert run.wait(timeout=60) == 0
        return told.decode()

    colour = re.compile(r"\x1b\[(?:\d+;)*3[0-7](?:;\d+)*m")
    assert colour.search(on_terminal("check", str(tmp_path / "words.txt")))
    assert not colour.search(on_terminal("check", str(tmp_path / "words.txt"), NO_COLOR="1"))
    assert "listings read" in on_terminal("scan", str(tmp_path / "shop.csv"))


def test_help_loads_no_heavy_room():
    code = "import sys, auditor.cli; print({'spacy', 'pandas', 'pydantic'} & sys.modules.keys())"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, cwd=DEMO.parent, check=True)
    assert done.stdout.strip() == "set()"


def test_an_authority_can_be_chosen():
    # The Late George Apley, page 19: pulitzerprizebooks.blogspot.com/2007/09 against older guidebooks
    words = "The Late George Apley by John P. Marquand. First printing, with Pretty Pearl on page 19."
    plain = json.loads(out(auditor("check", "--json", words=words)))
    chosen = json.loads(out(auditor("check", "--json", "--authority", "older guidebooks", words=words)))
    assert (plain["candidates"]["book"], chosen["candidates"]["book"]) == (["us:2-"], ["us:1a"])


def test_an_authority_that_says_nothing_is_told_with_those_that_do():
    done = auditor("check", "--authority", "Nobody", words="First edition.")
    assert done.returncode == 2
    assert "gives no account" in errors(done).replace("\n", " ")
    assert "Phillips" in errors(done)
