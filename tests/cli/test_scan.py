"""``auditor scan``: many listings, a table and files."""

import csv
import json

import jsonschema
import pytest

from tests.commands import DEMO, SCHEMA, auditor, errors, one_line, out


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    """The whole demo scanned once, into both kinds of file."""
    folder = tmp_path_factory.mktemp("demo")
    files = folder / "result.jsonl", folder / "result.csv"
    done = auditor(
        "scan", DEMO / "listings.csv", DEMO / "pages", "--points", DEMO / "points", "--out", files[0], "--out", files[1]
    )
    return done, *files


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
