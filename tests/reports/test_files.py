"""Report files: whole or not at all, and read back as they were written."""

import csv
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.intake import open_paths
from auditor.reports import files, overview
from auditor.reports.screen import console
from auditor.reports.tally import Tally
from auditor.values import Finding, Listing, Question, Scores, Verdict

NOTHING = Verdict(None, (), "unclaimed")


def write(path, results):
    with files.writing(path) as add:
        for listing, verdict in results:
            add(listing, verdict)


@pytest.mark.parametrize("suffix", [".jsonl", ".csv", ".CSV"])
def test_a_failed_run_leaves_the_old_file_and_no_rubbish(tmp_path, suffix):
    path = tmp_path / f"result{suffix}"
    path.write_text("old", encoding="utf-8")

    def breaking():
        yield Listing("1", "words"), NOTHING
        raise RuntimeError

    with pytest.raises(RuntimeError):
        write(path, breaking())
    assert path.read_text(encoding="utf-8") == "old"
    assert list(tmp_path.iterdir()) == [path]


def test_nothing_shows_before_all_is_written(tmp_path):
    path = tmp_path / "result.jsonl"
    with files.writing(path) as add:
        add(Listing("1", "words"), NOTHING)
        assert not path.exists()
    assert json.loads(path.read_text(encoding="utf-8"))["id"] == "1"
    assert list(tmp_path.iterdir()) == [path]


TEXTS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), min_size=1).filter(lambda text: text.strip())


@given(TEXTS, st.sampled_from([".csv", ".jsonl"]))
def test_what_a_report_file_holds_is_read_back_exactly(tmp_path_factory, text, suffix):
    path = tmp_path_factory.mktemp("out") / f"result{suffix}"
    given_listing = Listing("=1+1", text, "@title", "45.00 USD", "-seller", "https://a.example", "x")
    write(path, [(given_listing, NOTHING)])
    [found] = [item for item in open_paths([path]) if isinstance(item, Listing)]
    assert (found.id, found.text, found.title, found.asking, found.seller) == ("=1+1", text, "@title", "45.00 USD", "-seller")


def test_no_cell_of_a_table_is_a_formula(tmp_path):
    finding = Finding("contradiction", "grave", '=HYPERLINK("x")')
    verdict = Verdict("w", (), "contradicted", book=(), jacket=("t:1",), findings=(finding,), questions=(Question("a", "+1"),))
    write(
        tmp_path / "r.csv", ((Listing(start, f"{start}cmd", start), verdict) for start in ("=1", "+1", "-1", "@a", "\t1", "\r1"))
    )
    with (tmp_path / "r.csv").open(newline="", encoding="utf-8") as stream:
        rows = list(csv.DictReader(stream))
    assert len(rows) == 6
    for row in rows:
        assert not any(cell.startswith(("=", "+", "-", "@", "\t", "\r")) for cell in row.values())
    assert (rows[0]["book"], rows[0]["jacket"], rows[0]["gravest"]) == ("none", "t:1", "contradiction")


def test_the_overview_has_the_worst_first_and_stays_small(capsys):
    tally = Tally(200)
    for number in range(1000):
        tally.add(Listing(f"n{number:03}", "words"), Verdict(None, (), "unclaimed", scores=Scores(overclaim=number % 90)))
    tally.add(
        Listing("worst", "\x1b[2Jwords"),
        Verdict("w", (), "contradicted", findings=(Finding("contradiction", "grave", "x"),), scores=Scores(0, 100, 100)),
    )
    tally.add(
        Listing("next", "words"),
        Verdict("w", (), "unproven", findings=(Finding("overclaim", "weighty", "x"),), scores=Scores(90, 25, 90)),
    )
    overview.show(tally, console())
    printed = capsys.readouterr().out
    rows = [line.split()[0] for line in printed.splitlines() if line.startswith((" n", " w"))]
    assert rows[:3] == ["worst", "next", "n089"]
    assert len(rows) == 200
    assert "802 more listings" in printed
    assert (
        "1002 listings, 2 of them of a book with a point set: 0 supported, 1 unproven, 1 contradicted, 1000 unclaimed."
        in " ".join(printed.split())
    )
    assert "neither an authentication nor an appraisal" in " ".join(printed.split())
    assert "\x1b" not in printed
