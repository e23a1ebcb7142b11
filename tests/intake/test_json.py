"""JSON in the shapes that exports take."""

import json

import pytest

from auditor.intake import Note, open_paths
from auditor.values import Listing, Reject

ONE = {"id": 7, "title": "Tin Ferry", "description": "First edition.", "price": 45.5, "currency": "USD"}


def read(tmp_path, content, name="shop.json", **columns):
    path = tmp_path / name
    path.write_text(content, encoding="utf-8")
    items = list(open_paths([path], columns))
    return [[item for item in items if isinstance(item, kind)] for kind in (Listing, Reject, Note)]


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("shop.json", json.dumps(ONE)),
        ("shop.json", json.dumps([ONE])),
        ("shop.json", json.dumps({"listings": [ONE], "page": 1}, indent=1)),
        ("shop.json", "\ufeff" + json.dumps([ONE])),
        ("shop.jsonl", json.dumps(ONE) + "\n\n"),
    ],
)
def test_every_shape_gives_the_listing(tmp_path, name, text):
    [listing], rejects, notes = read(tmp_path, text, name)
    assert (listing.id, listing.title, listing.text, listing.asking) == ("7", "Tin Ferry", "First edition.", "45.50 USD")
    assert not rejects
    assert "text from column description" in notes[0].text


def test_an_object_a_line_under_the_wrong_suffix(tmp_path):
    assert [item.id for item in read(tmp_path, '{"id": 1, "text": "a"}\n{"id": 2, "text": "b"}\n')[0]] == ["1", "2"]


def test_our_own_result_lines_are_read_again(tmp_path):
    line = {
        "id": "x",
        "listing": {"title": "T", "text": "First.", "asking": "9.00 GBP", "seller": "S", "url": None},
        "work": None,
    }
    [listing], _, _ = read(tmp_path, json.dumps(line), "result.jsonl")
    assert (listing.id, listing.title, listing.text, listing.asking, listing.seller) == ("x", "T", "First.", "9.00 GBP", "S")


def test_a_bad_line_is_told_and_the_others_are_read(tmp_path):
    text = '{"id": 1, "text": "a"}\n{"id": 2, "text": \n[1]\n{"id": 4, "text": "d"}\n{"colour": "red"}\n'
    listings, rejects, _ = read(tmp_path, text, "shop.jsonl")
    assert [item.id for item in listings] == ["1", "4"]
    assert [reject.place for reject in rejects] == ["line 2", "line 3", "line 5"]
    assert "no valid JSON" in rejects[0].reason
    assert "expected an object, found an array" in rejects[1].reason
    assert "the keys are colour" in rejects[2].reason


def test_an_array_cut_short_gives_what_stands_before_the_cut(tmp_path):
    listings, [reject], _ = read(tmp_path, '[{"id": 1, "text": "a"},\n {"id": 2, "text": "b"},\n {"id": 3, "te')
    assert [item.id for item in listings] == ["1", "2"]
    assert reject.place == "item 3"
    assert "line 3" in reject.reason


@pytest.mark.parametrize(
    "text", ["", "nothing like it", "[1, 2", "[" * 100_000, "{" * 10, '[{"id":1,"text":"a"} "b"]', '[{"text":"a"}] more']
)
def test_what_is_no_json_is_rejected(tmp_path, text):
    assert read(tmp_path, text)[1]


def test_prices_and_sellers_may_be_objects(tmp_path):
    one = {"text": "a", "price": {"value": "45.00", "currency": "GBP"}, "seller": {"username": "shop"}}
    [listing], _, _ = read(tmp_path, json.dumps(one))
    assert (listing.asking, listing.seller, listing.id) == ("45.00 GBP", "shop", "shop-1")


def test_half_a_character_keeps_its_place(tmp_path):
    [listing], _, _ = read(tmp_path, '{"text": "a\\ud800b"}')
    assert listing.text == "a\ufffdb"


def test_a_chosen_key(tmp_path):
    assert read(tmp_path, '{"Worte": "First."}', text="Worte")[0][0].text == "First."
