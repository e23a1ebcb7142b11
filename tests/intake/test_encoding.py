"""Files come in whatever encoding the program that saved them liked."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from auditor.intake.encoding import decode, decode_page, detect
from auditor.intake.file import File

WORDS = "“Fine” copy, £12 — café"


@pytest.mark.parametrize(
    ("name", "told"),
    [("utf-8", ""), ("utf-8-sig", ""), ("utf-16", "utf-16"), ("utf-32", "utf-32"), ("cp1252", "windows-1252")],
)
def test_the_words_come_out_and_an_odd_encoding_is_told(tmp_path, name, told):
    path = tmp_path / "words.txt"
    path.write_bytes(WORDS.encode(name))
    with detect(File(path)).text(File(path).open()) as stream:
        assert stream.read() == WORDS
    assert told in detect(File(path)).said
    assert bool(told) == bool(detect(File(path)).said)


@pytest.mark.parametrize("name", ["utf-16-le", "utf-16-be"])
def test_utf_16_without_a_mark_is_told_by_its_zeros(name):
    assert decode(("First edition, £12. " * 3).encode(name))[0] == "First edition, £12. " * 3


def test_a_stray_windows_character_spoils_no_utf_8_around_it():
    assert decode("café ".encode() + b"\x93Fine\x94")[0] == "café “Fine”"


@pytest.mark.parametrize("data", [b"PK\x03\x04\x00\x00\x00\x08", b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR"])
def test_binary_data_is_refused(data):
    with pytest.raises(ValueError, match="binary"):
        decode(data)


def test_a_page_is_read_as_it_declares_itself_where_it_is_no_utf_8():
    page = '<meta charset="iso-8859-2"><p>Kč</p>'
    assert "Kč" in decode_page(page.encode("iso-8859-2"))[0]
    assert "Kč" in decode_page(page.encode())[0]


@given(st.text().filter(lambda text: "\0" not in text and not text.startswith("\ufeff")))
def test_utf_8_is_never_taken_for_anything_else(text):
    assert decode(text.encode()) == (text, "")
