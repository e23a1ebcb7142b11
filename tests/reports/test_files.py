"""Report files: whole or not at all, and read back as they were written."""

import csv
import json

import openpyxl
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pyarrow import parquet
from selectolax.lexbor import LexborHTMLParser

from auditor.intake import Note, open_paths
from auditor.reports import files, overview, page, workbook
from auditor.reports.screen import console
from auditor.reports.tally import Tally
from auditor.values import Finding, Listing, Question, Reject, Scores, Verdict
from auditor.weighing.scores import concern

NOTHING = Verdict(None, (), "unclaimed")


def write(path, results):
    with files.writing(path) as add:
        for listing, verdict in results:
            add(listing, verdict)


@pytest.mark.parametrize("suffix", [".jsonl", ".csv", ".CSV", ".parquet", ".xlsx", ".html"])
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


@given(TEXTS, st.sampled_from([".csv", ".jsonl", ".parquet", ".xlsx"]))
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


def test_no_cell_of_a_workbook_is_a_formula(tmp_path):
    starts = ("=1", "+1", "-1", "@a", "\t1", "\r1", "#N/A", "_x0041_", "'=1")
    write(tmp_path / "r.xlsx", ((Listing(start, f"{start}cmd", start), NOTHING) for start in starts))
    rows = openpyxl.load_workbook(tmp_path / "r.xlsx").active.iter_rows(min_row=2)
    cells = [cell for row in rows for cell in row]
    assert {cell.data_type for cell in cells if cell.value is not None} == {"s", "n"}
    assert not [cell for cell in cells if str(cell.value).startswith(("=", "+", "-", "@", "\t", "\r"))]
    found = [item for item in open_paths([tmp_path / "r.xlsx"]) if isinstance(item, Listing)]
    assert [each.text for each in found] == [f"{start}cmd" for start in starts]


def test_a_cell_longer_than_a_workbook_holds_is_cut_and_says_so(tmp_path):
    write(tmp_path / "r.xlsx", [(Listing("1", "fine " * 10_000), NOTHING)])
    [found] = [item for item in open_paths([tmp_path / "r.xlsx"]) if isinstance(item, Listing)]
    assert len(found.text) == workbook.LONGEST
    assert found.text.endswith(workbook.CUT)


def test_a_workbook_goes_on_on_another_sheet(tmp_path, monkeypatch):
    monkeypatch.setattr(workbook, "MOST_ROWS", 4)
    write(tmp_path / "r.xlsx", ((Listing(str(number), "words"), NOTHING) for number in range(7)))
    assert openpyxl.load_workbook(tmp_path / "r.xlsx").sheetnames == ["listings", "listings 2", "listings 3"]
    assert [item.id for item in open_paths([tmp_path / "r.xlsx"]) if isinstance(item, Listing)] == [str(n) for n in range(7)]


def test_a_parquet_file_has_the_columns_of_a_table_and_scores_as_numbers(tmp_path):
    results = [(Listing("1", "words"), Verdict(None, (), "unclaimed", scores=Scores(7, 8, 9)))] * 3
    write(tmp_path / "r.parquet", results)
    write(tmp_path / "r.csv", results)
    with (tmp_path / "r.csv").open(newline="", encoding="utf-8") as stream:
        heads = next(csv.reader(stream))
    told = parquet.read_table(tmp_path / "r.parquet")
    assert told.column_names == heads
    assert (
        told.select(["missing", "contradiction", "overclaim"]).to_pylist()
        == [{"missing": 7, "contradiction": 8, "overclaim": 9}] * 3
    )


@pytest.mark.parametrize("suffix", [".jsonl", ".csv", ".parquet", ".xlsx", ".html"])
def test_a_scan_of_nothing_gives_a_whole_file(tmp_path, suffix):
    path = tmp_path / f"r{suffix}"
    write(path, [])
    assert path.exists()
    if suffix in (".csv", ".parquet", ".xlsx"):
        assert [type(item) for item in open_paths([path])] == [Note]


def many(count):
    """Results of every concern, in an order of their own."""
    for number in range(count):
        scores = Scores(overclaim=number * 7919 % 101, missing=number % 13)
        yield (
            Listing(f"n{number}", "words", asking=f"{number % 50 + 1}.00 USD", source=f"{number % 9}.csv"),
            Verdict(None, (), "unclaimed", scores=scores),
        )


@given(st.lists(st.integers(1, 60), min_size=1, max_size=8), st.integers(1, 40))
def test_tallies_merged_are_the_tally_of_all(sizes, most):
    results = list(many(sum(sizes)))
    whole, merged = Tally(most, {}), Tally(most, {})
    for result in results:
        whole.add(*result)
    for size in sizes:
        part = Tally(most, {}, merged.floor)
        for result in results[merged.listings : merged.listings + size]:
            part.add(*result)
        part.reject(Reject("a", "b", "c"))
        merged.merge(Tally.of(json.loads(json.dumps(part.to_dict())), most))
    assert merged.rejects == len(sizes)
    for name in ("listings", "known", "standings", "findings", "sources", "prices"):
        assert getattr(merged, name) == getattr(whole, name), name
    assert [row[:4] for row in merged.rows] == [row[:4] for row in whole.rows]
    ranked = sorted(range(len(results)), key=lambda at: (concern(results[at][1]), -at), reverse=True)
    assert [row.cells[0] for row in merged.rows] == [f"n{at}" for at in ranked[:most]]


def test_a_page_of_very_many_listings_holds_the_worst_and_says_how_many(tmp_path, monkeypatch):
    monkeypatch.setattr(page, "MOST_ROWS", 20)
    write(tmp_path / "r.html", many(500))
    tree = LexborHTMLParser((tmp_path / "r.html").read_text(encoding="utf-8"))
    rows = json.loads(tree.css_first("#rows-data").text())
    worst = sorted(many(500), key=lambda result: concern(result[1]), reverse=True)[:20]
    assert {row[0] for row in rows} == {listing.id for listing, _ in worst}
    assert len(tree.css("[id^=listing-]")) == 20
    words = " ".join(tree.body.text().split())
    assert "500 listings read" in words
    assert "The page holds the 20 of them that want a second look most" in words
    assert "keeps all 500" in words


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


@pytest.mark.parametrize("columns", ["80", "110", "160"])
def test_the_overview_breaks_no_word_and_keeps_the_gravest_finding(columns, monkeypatch, capsys):
    monkeypatch.setenv("COLUMNS", columns)
    tally = Tally(5)
    found = (Finding("contradiction", "grave", "x"),)
    verdict = Verdict("w", (), "contradicted", book=("us-trade:1-", "facsimile:1"), findings=found)
    tally.add(Listing("n1", "words", title="A Mockingbird in Contradistinction"), verdict)
    overview.show(tally, console())
    printed = capsys.readouterr().out
    for word in ("contradicted", "contradiction", "Mockingbird", "missing", "gravest"):
        assert word in printed, word
