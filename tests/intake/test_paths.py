"""Files and folders."""

from auditor.intake import Note, open_paths
from auditor.values import Listing, Reject


def kinds(items):
    items = list(items)
    return [[item for item in items if isinstance(item, kind)] for kind in (Listing, Reject, Note)]


def test_a_text_file_is_one_listing_untouched(tmp_path):
    (tmp_path / "a.TXT").write_bytes(b" First edition.\r\nFine. ")
    [listing], _, _ = kinds(open_paths([tmp_path / "a.TXT"]))
    assert (listing.id, listing.text) == ("a", " First edition.\r\nFine. ")


def test_a_folder_is_read_in_order_and_what_is_unknown_is_counted(tmp_path):
    for name in ("b.txt", "a.txt", "deep/c.txt", "photo.jpg", "notes.pdf", "more.jpg", ".hidden.txt", "page_files/frame.html"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_text("First edition.", encoding="utf-8")
    (tmp_path / "page.html").write_text("<main>Fine copy of the first edition, signed.</main>", encoding="utf-8")
    listings, rejects, notes = kinds(open_paths([tmp_path]))
    assert [item.id for item in listings] == ["a", "b", "page", "c"]
    assert not rejects
    assert [note.text for note in notes if "skipped" in note.text] == ["3 files of no known kind skipped (2 .jpg, 1 .pdf)"]


def test_what_cannot_be_read_is_told_and_stops_nothing(tmp_path):
    (tmp_path / "good.txt").write_text("First edition.", encoding="utf-8")
    (tmp_path / "empty.txt").write_text(" \n", encoding="utf-8")
    (tmp_path / "data.csv").write_bytes(b"PK\x03\x04\0\0\0\0\0\0")
    (tmp_path / "none").mkdir()
    names = ["missing.csv", "empty.txt", "data.csv", "none", "good.txt", "good.pdf"]
    (tmp_path / "good.pdf").write_bytes(b"%PDF")
    listings, rejects, _ = kinds(open_paths([tmp_path / name for name in names]))
    assert [item.id for item in listings] == ["good"]
    assert [reject.reason.split(":")[0] for reject in rejects] == [
        "no such file or folder",
        "is empty",
        "holds binary data, not text",
        "holds no file of a known kind",
        ".pdf is no known kind",
    ]
    assert [reject.source for reject in rejects] == [str(tmp_path / name) for name in names if name != "good.txt"]


def test_outputs_are_no_input(tmp_path):
    for name in ("a.txt", "b.txt"):
        (tmp_path / name).write_text("First edition.", encoding="utf-8")
    assert [item.id for item in open_paths([tmp_path], leave_out=[tmp_path / "b.txt"])] == ["a"]


def test_reading_streams(tmp_path):
    path = tmp_path / "shop.csv"
    path.write_text("id,text\n" + "1,fine\n" * 50_000, encoding="utf-8")
    items = open_paths([path, tmp_path / "missing.csv"])
    assert isinstance(next(items), Note)
    assert next(items).id == "1"
