"""Broken and hostile files: each is read or told as a reject, and none takes more than its length asks for."""

import json
import os
import time

import pytest

from auditor.intake import open_one, open_paths
from auditor.intake.longest import LONGEST
from auditor.intake.markup import fault
from auditor.values import Listing, Reject

LD = '<script type="application/ld+json">'
TEASER = {"@type": "Product", "name": "x", "description": "first edition " * 9 + "..."}
OPEN = '<div itemscope itemtype="https://schema.org/Product"><p itemprop=name>x</p>'
PRODUCT = OPEN + "<p itemprop=description>{} words</p></div>"
NAMES_ITSELF = {
    "@graph": [
        {"@id": "#a", "itemListElement": [{"@id": "#a"}] * 1000},
        {"@id": "#b", "@type": "Product", "name": "The Ore Dock"},
    ]
}

# name -> what a file of size n holds; each was, or might be, quadratic or worse
GROWING = {
    "elements in one another.html": lambda n: "<body>" + "<div>" * n + "first edition book jacket copy price",
    "things in one another.html": lambda n: OPEN * n,
    "end tags that end nothing.html": lambda n: "<body>first edition book copy" + "<div>" * n + "</p>" * n,
    "attributes.html": lambda n: "<body><p " + " ".join(f"a{i}=1" for i in range(n)) + ">first edition book jacket copy",
    "links in one another.html": lambda n: "<body>first edition book copy jacket" + "<a href=x>" * n,
    "bold in one another.html": lambda n: "<body>first edition book copy jacket" + "<b>" * n,
    "tables in one another.html": lambda n: "<body>first edition book copy jacket" + "<table>" * n,
    "many things.html": lambda n: "".join(PRODUCT.format(i) for i in range(n // 10)),
    "many teasers.html": lambda n: LD + json.dumps([TEASER] * (n // 40)) + "</script>" + "<div>first edition</div>" * n,
    "a teaser in one another.html": lambda n: LD + json.dumps(TEASER) + "</script>" + "<div>" * n + "first edition " * 10,
    "many things in a block.html": lambda n: LD + json.dumps([{"@type": "Product", "sku": i} for i in range(n)]) + "</script>",
    "blanks behind an arrow.html": lambda n: f"{LD}-->{' ' * n}x</script>",
    "blanks in a description.html": lambda n: (
        LD + json.dumps({"@type": "Product", "name": "x", "description": f"first{' ' * n}x"}) + "</script>"
    ),
    "a block that never closes.html": lambda n: LD + "[" * n,
    "entities.html": lambda n: '<!DOCTYPE x [<!ENTITY a "aa"><!ENTITY b "&a;&a;">]><body>first edition book' + "&b;" * n,
    "quotation marks.csv": lambda n: "title,text\n" + 'a","\n' * n,
    "empty lines.csv": lambda n: "title,text\n" + "\n" * n,
    "separators.csv": lambda n: "title,text\n" + "," * n,
    "columns.csv": lambda n: ",".join(f"c{i}" for i in range(n)) + ",text\n" + "," * n + "x\n",
    "one id.csv": lambda n: "id,text\n" + "a,first edition\n" * n,
    "tags in a cell.json": lambda n: json.dumps([{"text": "<b " * n}, {"text": "<b " + " " * n}, {"text": "<b a" + "a" * n}]),
    "prices.json": lambda n: json.dumps([{"title": "a", "price": word * n} for word in ("1 111", "1", "1.", "$", " ", "1,")]),
    "open brackets.json": lambda n: "[" * n,
    "open braces.jsonl": lambda n: '{"a":' * n,
    "a subject.eml": lambda n: "Subject: " + "=?utf-8?q?a?= " * n + "\n\nfirst edition",
    "heads.eml": lambda n: "a: b\n" * n + "\nfirst edition",
}


def _items(tmp_path, name, data):
    path = tmp_path / name
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    items = list(open_paths([path]))
    return [i for i in items if isinstance(i, Listing)], [i for i in items if isinstance(i, Reject)], items


def _work(tmp_path, name, data):
    began = time.process_time()
    _items(tmp_path, name, data)
    return time.process_time() - began


@pytest.mark.parametrize("name", GROWING)
def test_four_times_the_file_is_some_four_times_the_work(tmp_path, name):
    """Measured as in tests/reading/test_growth.py, at the size where what is refused outright would be."""
    _work(tmp_path, name, GROWING[name](100))
    size = 5_000
    small, large = (min(_work(tmp_path, name, GROWING[name](n)) for _ in range(2)) for n in (size, 4 * size))
    assert large < 9 * max(small, 0.04)


def test_what_is_told_of_each(tmp_path):
    told = {name: _items(tmp_path, name, make(6_000)) for name, make in GROWING.items()}
    for name, (listings, rejects, _) in told.items():
        assert listings or rejects or name in ("empty lines.csv", "separators.csv"), name
        assert all(len(reject.reason) < 4_000 for reject in rejects), name
    assert "beyond the 500 things" in told["many things.html"][1][0].reason
    assert len(told["many things.html"][0]) == 500
    assert "quotation marks don't pair" in told["quotation marks.csv"][1][-1].reason


def test_nodes_that_name_one_another_are_walked_once(tmp_path):
    [listing], rejects, _ = _items(tmp_path, "a.html", f"{LD}{json.dumps(NAMES_ITSELF)}</script>")
    assert (listing.title, rejects) == ("The Ore Dock", [])


def test_a_large_page_with_markup_as_pages_have_it_is_not_refused():
    row = "<tr><td><p>First edition<br>fine<img src=x><li>one<li>two</td><td class=a data-b='c d'>x</td></tr>"
    assert fault(f"<html><body><table>{row * 20_000}</table></body></html>") is None
    assert fault("<body><p>" + "a < b " * 50_000) is None
    assert fault('<img src="data:image/png;base64,' + "A/b+" * 100_000 + '">') is None
    assert fault("<div>" * 30_000) is not None


def test_a_listing_beyond_the_longest_is_cut_and_said_so(tmp_path):
    whole = {name: "x" * (length + 7) for name, length in LONGEST.items()}
    [listing], rejects, _ = _items(tmp_path, "a.json", json.dumps(whole))
    for name, length in LONGEST.items():
        assert len(getattr(listing, name)) == length
    assert f"text, characters {LONGEST['text'] + 1:,} to {LONGEST['text'] + 7:,}" in rejects[0].place
    assert len(rejects) == len(LONGEST)
    [at_most], none, _ = _items(tmp_path, "b.json", json.dumps({name: "x" * length for name, length in LONGEST.items()}))
    assert (len(at_most.text), none) == (LONGEST["text"], [])


def test_the_one_listing_of_a_check_is_cut_as_well(tmp_path):
    path = tmp_path / "long"
    path.write_text("no " * 400_000)
    listing, reject = open_one(str(path))
    assert (len(listing.text), type(reject)) == (LONGEST["text"], Reject)


def test_a_cell_of_ten_megabytes_is_told_and_the_rows_around_it_are_read(tmp_path):
    listings, [reject], _ = _items(tmp_path, "a.csv", 'title,text\na,first\nb,"' + "no " * 3_500_000 + '"\nc,last\n')
    assert [listing.title for listing in listings] == ["a", "c"]
    assert "row 2 (line 3)" in reject.place
    assert "longer than" in reject.reason


def test_numbers_and_marks_that_json_can_hold_and_nobody_means(tmp_path):
    text = '[{"text":"a","price":1e999},{"text":"b","price":NaN},{"text":"\\ud800","id":"\\udfff"},{"text":"d","price":-0.0}]'
    listings, rejects, _ = _items(tmp_path, "a.json", text)
    assert [listing.asking for listing in listings] == [None] * 4
    assert rejects == []
    assert json.dumps(listings[2].to_dict(), ensure_ascii=False).encode()
    _, [reject], _ = _items(tmp_path, "b.json", '{"text":"a","price":' + "1" * 5_000 + "}")
    assert "thousands of digits" in reject.reason


@pytest.mark.parametrize(
    ("data", "words", "said"),
    [
        ("First edition £9".encode("latin-1"), "First edition £9", "windows-1252"),
        ("First edition “£9”".encode("cp1252"), "First edition “£9”", "windows-1252"),
        ("First edition £9".encode("utf-16"), "First edition £9", "utf-16"),
        ("First edition, fine".encode("utf-16-le"), "First edition, fine", "utf-16"),
        ("First edition £9".encode("utf-32"), "First edition £9", "utf-32"),
        ("First edition £9".encode("utf-8-sig"), "First edition £9", ""),
        ("First edition £9é".encode()[:-1], "First edition £9Ã", "windows-1252"),
        (b"First edition\r\nfine\rnear\n", "First edition\r\nfine\rnear\n", ""),
        (f"{'First edition, fine. ' * 400}\0".encode(), f"{'First edition, fine. ' * 400}\0", ""),
    ],
    ids=range(9),
)
def test_encodings_are_found_out_and_told(tmp_path, data, words, said):
    [listing], rejects, items = _items(tmp_path, "a.txt", data)
    assert (listing.text, rejects) == (words, [])
    told = " ".join(item.text for item in items if hasattr(item, "text") and item is not listing)
    assert said in told
    assert bool(said) == bool(told)


@pytest.mark.parametrize("data", [b"\0" * 5000, b"\x89PNG\r\n\x1a\n\0\0\0\r", b"MZ\x90\0\x03\0\0\0"], ids=range(3))
def test_binary_data_are_told(tmp_path, data):
    for name in ("a.txt", "a.csv", "a.html", "a.json", "a.jsonl"):
        _, [reject], _ = _items(tmp_path, name, data)
        assert "binary data" in reject.reason


def test_a_folder_with_loops_pipes_and_dead_ends_is_read(tmp_path):
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / "up").symlink_to(tmp_path)
    (tmp_path / "in" / "round.txt").symlink_to("round.txt")
    (tmp_path / "in" / "nowhere.csv").symlink_to("gone.csv")
    (tmp_path / "in" / "endless.txt").symlink_to("/dev/zero")
    os.mkfifo(tmp_path / "in" / "pipe.json")
    (tmp_path / "in" / "good.txt").write_text("First edition")
    os.symlink(tmp_path / "in" / "good.txt", tmp_path / "in" / "again.txt")
    items = list(open_paths([tmp_path], leave_out=[tmp_path / "in" / "round.txt"]))
    assert [item.text for item in items if isinstance(item, Listing)] == ["First edition"] * 2
    reasons = {os.path.basename(item.source): item.reason for item in items if isinstance(item, Reject)}
    assert reasons == {
        "nowhere.csv": "no such file or folder",
        "endless.txt": "is neither a file nor a folder: not read",
        "pipe.json": "is neither a file nor a folder: not read",
    }


def test_a_file_whose_name_is_no_text_is_read(tmp_path):
    name = os.fsencode(tmp_path) + b"/caf\xe9.txt"
    with open(name, "wb") as file:
        file.write(b"First edition")
    [listing] = [item for item in open_paths([tmp_path]) if isinstance(item, Listing)]
    assert json.dumps([listing.id, listing.source], ensure_ascii=False).encode()
