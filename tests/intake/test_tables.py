"""Tables as shops export them: .csv, .tsv and what calls itself so."""

import csv

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.intake import Note, open_paths
from auditor.intake.cells import neutralised, restored
from auditor.values import Listing, Reject


def read(path, **columns):
    items = list(open_paths([path], columns))
    return [[item for item in items if isinstance(item, kind)] for kind in (Listing, Reject, Note)]


def written(tmp_path, text, name="shop.csv", encoding="utf-8"):
    path = tmp_path / name
    path.write_bytes(text.encode(encoding))
    return path


@pytest.mark.parametrize(
    "heads",
    [
        "id,title,text,asking,seller,url",
        "SKU,Item Title,Item Description,Price,Shop,Link",
        "Item-Number,NAME,Body,Asking_Price,dealer,item url",
        "listing id,Headline,condition description,current bid,Store,URL",
    ],
)
def test_common_column_names_are_recognised_and_told(tmp_path, heads):
    path = written(tmp_path, f"{heads}\n7,Tin Ferry,First edition.,$45,A Shop,https://shop.example/7\n")
    [listing], rejects, notes = read(path)
    assert listing == Listing(
        "7", "First edition.", "Tin Ferry", "45.00 USD", "A Shop", "https://shop.example/7", f"{path}, row 1 (line 2)"
    )
    assert not rejects
    assert f"text from column {heads.split(',')[2]}" in notes[0].text


def test_a_chosen_column_goes_before_the_known_names(tmp_path):
    path = written(tmp_path, "Description,Words of the seller\nnone,First edition.\n")
    assert read(path, text="words of the seller")[0][0].text == "First edition."
    assert read(path)[0][0].text == "none"


def test_a_chosen_column_that_is_not_there_is_told(tmp_path):
    path = written(tmp_path, "id,colour\n1,red\n")
    _, [reject], _ = read(path, text="Body")
    assert "the columns are id, colour" in reject.reason
    path = written(tmp_path, "id,description\n1,red\n")
    assert any("'Body'" in note.text for note in read(path, text="Body")[2])


def test_a_second_column_of_words_is_told_not_mixed_in(tmp_path):
    path = written(tmp_path, "description,condition description\nFirst edition.,Fine.\n")
    [listing], _, notes = read(path)
    assert listing.text == "First edition."
    assert any("condition description is not read" in note.text for note in notes)


@pytest.mark.parametrize("separator", [",", ";", "\t", "|"])
@pytest.mark.parametrize("name", ["shop.csv", "shop.tsv"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_separator_and_encoding_are_found(tmp_path, separator, name, encoding):
    rows = [["id", "title", "price", "description"], ["1", "Tin; Ferry", "£9", "First, “fine”; a | b"], ["2", "Ferry", "€1", "é"]]
    text = "\r\n".join(separator.join(f'"{cell}"' for cell in row) for row in rows)
    listings, rejects, _ = read(written(tmp_path, text, name, encoding))
    assert [(item.text, item.title, item.asking) for item in listings] == [
        ("First, “fine”; a | b", "Tin; Ferry", "9.00 GBP"),
        ("é", "Ferry", "1.00 EUR"),
    ]
    assert not rejects


def test_a_spreadsheets_separator_line_is_heeded(tmp_path):
    assert read(written(tmp_path, "sep=;\nid;text\n1;a, b\n"))[0][0].text == "a, b"


def test_tab_separated_files_without_quoting_keep_their_quotation_marks(tmp_path):
    listings, rejects, _ = read(written(tmp_path, 'id\ttext\n1\t"Fine" copy\n2\t7" tall\n', "shop.tsv"))
    assert [item.text for item in listings] == ['"Fine" copy', '7" tall']
    assert not rejects


def test_the_text_is_untouched(tmp_path):
    text = "  First edition.\r\n\tFine\u00a0copy,\n\n“as new”  "
    path = tmp_path / "shop.csv"
    with path.open("w", newline="", encoding="utf-8") as stream:
        csv.writer(stream).writerows([["text"], [text]])
    assert read(path)[0][0].text == text


def test_ids_are_kept_made_and_made_unique(tmp_path):
    path = written(tmp_path, "id,text\n7,a\n,b\n7,c\n7-2,d\n7,e\n")
    listings, _, notes = read(path)
    assert [item.id for item in listings] == ["7", "shop-2", "7-2", "7-2-2", "7-3"]
    assert sum("used before" in note.text for note in notes) == 3


def test_one_bad_row_stops_nothing_and_is_told_with_its_place(tmp_path):
    path = written(
        tmp_path, 'id,title,text\n1,A,fine\n2,B,fine, in jacket\n\n3,,\n4,D,"never closed\n5,E,good\n6,F,"two\nlines"\n'
    )
    listings, rejects, _ = read(path)
    assert [item.id for item in listings] == ["1", "5", "6"]
    assert listings[-1].text == "two\nlines"
    assert [reject.place for reject in rejects] == ["row 2 (line 3)", "row 3 (line 5)", "row 4 (line 6)"]
    assert "4 cells under 3" in rejects[0].reason
    assert "neither text nor title" in rejects[1].reason
    assert "never closed" in rejects[2].reason


def test_stray_quotation_marks_are_mended_and_told(tmp_path):
    listings, rejects, notes = read(written(tmp_path, 'id,text\n1,"Fine" copy\n2,good\n'))
    assert [item.text for item in listings] == ["Fine copy", "good"]
    assert not rejects
    assert any("row 1" in note.text and "not doubled" in note.text for note in notes)


def test_a_quote_never_closed_costs_one_row_of_a_long_table(tmp_path):
    rows = [f"{number},a listing of some length to fill the table up" for number in range(8000)]
    rows[3] = '3,"opened and never closed'
    listings, rejects, _ = read(written(tmp_path, "id,text\n" + "\n".join(rows) + "\n"))
    assert len(listings) == 7999
    assert [reject.place for reject in rejects] == ["row 4 (line 5)"]


def test_an_unreadable_price_is_left_out_and_told(tmp_path):
    [listing], _, notes = read(written(tmp_path, "id,text,price\n1,fine,$40 - $60\n"))
    assert listing.asking is None
    assert any("row 1" in note.text and "$40 - $60" in note.text for note in notes)


def test_a_price_column_may_name_the_currency(tmp_path):
    assert read(written(tmp_path, "text,Price GBP\nfine,12.50\n"))[0][0].asking == "12.50 GBP"


@pytest.mark.parametrize(
    ("text", "reason"), [("", "empty"), ("\n\n", "empty"), ("colour,weight\nred,2\n", "no column holds the text")]
)
def test_a_table_without_words_is_rejected_with_a_reason(tmp_path, text, reason):
    listings, [reject], _ = read(written(tmp_path, text))
    assert not listings
    assert reason in reject.reason


@given(st.text())
def test_a_neutralised_cell_comes_back_as_it_was(cell):
    assert restored(neutralised(cell)) == cell
    assert not neutralised(cell).startswith(("=", "+", "-", "@", "\t", "\r"))


@given(st.lists(st.text(alphabet=st.characters(exclude_categories=["Cs"], exclude_characters="\0")), min_size=1, max_size=5))
def test_any_table_that_csv_writes_is_read_back(tmp_path_factory, texts):
    path = tmp_path_factory.mktemp("tables") / "shop.csv"
    with path.open("w", newline="", encoding="utf-8") as stream:
        csv.writer(stream, quoting=csv.QUOTE_ALL).writerows([["text", "id"], *([neutralised(text), "x"] for text in texts)])
    listings, rejects, _ = read(path)
    assert [item.text for item in listings] == [text for text in texts if text.strip()]
    assert len(rejects) == sum(not text.strip() for text in texts)
