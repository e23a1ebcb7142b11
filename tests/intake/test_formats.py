"""Parquet files, workbooks, packed files, saved mails and pages in mail's form."""

import email.policy
import gzip
import io
import zipfile
from datetime import datetime
from decimal import Decimal
from email.message import EmailMessage

import openpyxl
import pyarrow as arrow
import pytest
from pyarrow import parquet

from auditor.intake import file as packing
from auditor.intake import open_paths
from tests.intake.test_paths import kinds

PAGE = (
    "<html><body><main><h1>The Ore Dock</h1><p>First edition, first printing, fine in dust jacket. £12.</p></main></body></html>"
)


def texts(*paths, **columns):
    return [listing.text for listing in kinds(open_paths(paths, columns))[0]]


def reasons(*paths):
    listings, rejects, _ = kinds(open_paths(paths))
    assert not listings
    return [reject.reason for reject in rejects]


def test_a_parquet_file_is_read_row_by_row(tmp_path):
    path = tmp_path / "shop.parquet"
    table = arrow.table(
        {
            "sku": [7, 8, None],
            "Body": ["First edition.\r\n", b"Fine copy.".decode(), None],
            "price": [Decimal("45.50"), None, Decimal("1")],
            "currency": ["GBP", "GBP", "GBP"],
            "photo": [b"\xff", b"", b""],
        }
    )
    parquet.write_table(table, path)
    listings, rejects, notes = kinds(open_paths([path]))
    assert [(each.id, each.text, each.asking) for each in listings] == [
        ("7", "First edition.\r\n", "45.50 GBP"),
        ("8", "Fine copy.", None),
    ]
    assert [(each.place, each.reason) for each in rejects] == [("row 3", "neither text nor title")]
    assert "text from column Body" in notes[0].text
    (tmp_path / "torn.parquet").write_bytes(path.read_bytes()[:-50])
    assert "no sound Parquet file" in reasons(tmp_path / "torn.parquet")[0]
    parquet.write_table(arrow.table({"colour": ["red"]}), path)
    assert "name it with --column" in reasons(path)[0]


def test_a_workbook_is_read_sheet_by_sheet(tmp_path):
    path = tmp_path / "shop.xlsx"
    book = openpyxl.Workbook()
    first, second = book.active, book.create_sheet("More")
    first.append(["id", "Description", "Price", "Listed"])
    first.append([1, "First edition.", 45, datetime(2025, 1, 2)])
    first.append([])
    first.append([2, None, 3, None])
    first.append(["03", "'=Fine", "$9.50", None])
    second.append(["Text"])
    second.append(["A later printing."])
    book.create_sheet("Sums").append(["total", 57])
    book.save(path)
    listings, rejects, notes = kinds(open_paths([path]))
    assert [(each.id, each.text, each.asking) for each in listings] == [
        ("1", "First edition.", "45.00"),
        ("03", "=Fine", "9.50 USD"),
        ("shop-4", "A later printing.", None),
    ]
    assert listings[1].source == f"{path}, sheet 'Sheet', row 5"
    assert [each.place for each in rejects] == ["sheet 'Sheet', row 4"]
    assert any("'Sums' has no column of words" in note.text for note in notes)


@pytest.mark.parametrize("name", ["shop.xlsx", "shop.parquet", "shop.zip", "shop.csv.gz", "shop.eml"])
@pytest.mark.parametrize("data", [b"", b"PK\x03\x04 no zip at all", b"\x1f\x8b\x08 and then nothing", b"\0" * 100])
def test_what_only_bears_the_name_is_a_reject(tmp_path, name, data):
    (tmp_path / name).write_bytes(data)
    assert len(reasons(tmp_path / name)) == 1


def test_packed_files_are_what_is_in_them(tmp_path):
    table = "id,text\n1,First edition.\n2,Fine.\n"
    workbook = io.BytesIO()
    book = openpyxl.Workbook()
    book.active.append(["text"])
    book.active.append(["From a workbook."])
    book.save(workbook)
    with gzip.open(tmp_path / "shop.CSV.gz", "wb") as stream:
        stream.write(table.encode("utf-16"))
    with zipfile.ZipFile(tmp_path / "all.zip", "w", zipfile.ZIP_DEFLATED) as packed:
        packed.writestr("b/page.html", PAGE)
        packed.writestr("a.csv", table)
        packed.writestr("b/list.xlsx", workbook.getvalue())
        packed.writestr("photo.jpg", b"\xff\xd8")
        packed.writestr("__MACOSX/a.csv", table)
        packed.writestr("c/inner.zip", b"PK")
    listings, rejects, notes = kinds(open_paths([tmp_path]))
    assert [(each.source.removeprefix(f"{tmp_path}/"), each.id) for each in listings] == [
        ("all.zip/a.csv, row 1 (line 2)", "1"),
        ("all.zip/a.csv, row 2 (line 3)", "2"),
        ("all.zip/b/list.xlsx, sheet 'Sheet', row 2", "list-1"),
        ("all.zip/b/page.html", "page"),
        ("shop.CSV.gz, row 1 (line 2)", "1"),
        ("shop.CSV.gz, row 2 (line 3)", "2"),
    ]
    assert not rejects
    assert any(note.text == "2 files of no known kind skipped (1 .jpg, 1 .zip)" for note in notes)


def bomb(path, size):
    """A table of one letter over and over: packed to a thousandth."""
    if path.suffix == ".gz":
        with gzip.open(path, "wb") as stream:
            stream.write(b"text\n")
            for _ in range(size >> 20):
                stream.write(b"a\n" * (1 << 19))
    else:
        with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as packed, packed.open("shop.csv", "w") as stream:
            stream.write(b"text\n")
            for _ in range(size >> 20):
                stream.write(b"a\n" * (1 << 19))
    return path


@pytest.mark.parametrize("name", ["shop.csv.gz", "shop.zip", "shop.xlsx"])
def test_a_file_that_unpacks_without_end_is_not_read_to_it(tmp_path, monkeypatch, name):
    monkeypatch.setattr(packing, "LARGEST_PACKED", 1 << 20)
    path = bomb(tmp_path / name, 8 << 20)
    assert path.stat().st_size * packing.MOST_TIMES < 8 << 20
    _, rejects, _ = kinds(open_paths([path]))
    assert "unpack" in rejects[-1].reason


def test_a_page_that_would_not_fit_is_a_reject(tmp_path, monkeypatch):
    monkeypatch.setattr(packing, "LARGEST_WHOLE", 1000)
    (tmp_path / "page.html").write_text(PAGE + " " * 1000, encoding="utf-8")
    assert "is larger than" in reasons(tmp_path / "page.html")[0]


def test_a_member_under_a_password_is_a_reject(tmp_path):
    with zipfile.ZipFile(tmp_path / "shop.zip", "w") as packed:
        packed.writestr("a.txt", "First edition.")
    data = bytearray((tmp_path / "shop.zip").read_bytes())
    for mark in (b"PK\x03\x04", b"PK\x01\x02"):  # the flag in the file's own head and in the directory
        data[data.index(mark) + (6 if mark == b"PK\x03\x04" else 8)] |= 1
    (tmp_path / "shop.zip").write_bytes(data)
    assert reasons(tmp_path / "shop.zip") == ["is under a password"]


@pytest.mark.parametrize("charset", ["utf-8", "iso-8859-1", "utf-16"])
@pytest.mark.parametrize("encoding", ["quoted-printable", "base64"])
@pytest.mark.parametrize("suffix", [".eml", ".mhtml", ".mht"])
def test_a_saved_page_in_mails_form(tmp_path, charset, encoding, suffix):
    message = EmailMessage(policy=email.policy.SMTP)
    message["Subject"] = "The Ore Dock"
    message["Snapshot-Content-Location"] = "https://shop.example/7"
    message.set_content(PAGE, subtype="html", charset=charset, cte=encoding)
    message.add_related(b"\xff\xd8", "image", "jpeg")
    message.add_related(PAGE.replace("First", "Second"), subtype="html")
    (tmp_path / f"page{suffix}").write_bytes(message.as_bytes())
    [listing], rejects, _ = kinds(open_paths([tmp_path]))
    assert "First edition, first printing, fine in dust jacket. £12." in listing.text
    assert (listing.id, listing.title, listing.url) == ("page", "The Ore Dock", "https://shop.example/7")
    assert not rejects


def test_a_mail_in_plain_text_goes_by_its_subject(tmp_path):
    message = EmailMessage()
    message["Subject"] = "=?utf-8?q?The_Ore_Dock=2C_=C2=A312?="
    message.set_content("First edition.\n")
    message.add_attachment("<p>Second printing in jacket</p>", subtype="html", filename="terms.html")
    (tmp_path / "offer.eml").write_bytes(message.as_bytes())
    [listing], _, _ = kinds(open_paths([tmp_path]))
    assert (listing.id, listing.title, listing.text) == ("offer", "The Ore Dock, £12", "First edition.\n")


def test_ids_are_unique_within_a_file_however_many(tmp_path):
    path = tmp_path / "shop.csv"
    path.write_text("id,text\n" + "same,fine\n" * 3000, encoding="utf-8")
    listings, _, notes = kinds(open_paths([path]))
    assert [each.id for each in listings] == ["same", *(f"same-{number}" for number in range(2, 3001))]
    assert sum("used before" in note.text for note in notes) == 2999
