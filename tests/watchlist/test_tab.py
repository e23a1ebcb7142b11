"""The watchlist's tab without a browser: what its forms do to the file, and what they refuse."""

import pytest

from auditor.auditing import open_shelf
from auditor.desk.app import create
from auditor.watchlist.store import opened
from tests.commands import DEMO
from tests.test_desk import OWN, Desk

WORDS = "First printing, gray cloth. Near fine in a very good jacket at $6.95, from a house where books were read."


@pytest.fixture
def path(tmp_path):
    return tmp_path / "data" / "watchlist.sqlite"


@pytest.fixture
def desk(tmp_path, path):
    return Desk(create(open_shelf(DEMO / "points"), 8431, tmp_path, path))


def add(desk, **told):
    return desk.post("/watch", data={"title": "The Ore Dock by Ilse Varnum", "asking": "$45", "text": WORDS, **told}, headers=OWN)


def the_one(path):
    with opened(path) as store:
        [watched] = store.all()
    return watched


def test_a_pasted_listing_is_kept_asked_about_answered_and_decided(desk, path):
    assert add(desk, seller="quietshelf").headers["location"] == "/watch/1"
    assert the_one(path).listing.asking == "45.00 USD"
    done = desk.post("/watch/1/asked", data={"place": "copyright page"}, headers=OWN)
    assert (done.status_code, done.headers["location"]) == (303, "/watch/1#questions")
    desk.post("/watch/1/note", data={"words": "the copy\r\nto beat"}, headers=OWN)
    desk.post("/watch/1/decision", data={"words": "buy"}, headers=OWN)
    again = add(desk, seller="quietshelf", text=WORDS + " Number line to 1.")
    assert again.headers["location"] == "/watch/1"
    watched = the_one(path)
    assert (watched.notes, watched.decision) == (("the copy\nto beat",), "buy")
    page = desk.get("/watch/1").text
    assert "“Number line to 1” was added after you asked (copyright page)." in page
    assert "Your question (copyright page) is answered." in page
    assert "buy" in desk.get("/watch?by=asking").text


def test_a_doubt_is_told_and_merged_only_when_asked(desk, path):
    add(desk)
    location = add(desk, title="", asking="", text=WORDS + " Number line to 1.").headers["location"]
    assert location == "/watch/2?maybe=1"
    assert "Nothing was merged" in desk.get(location).text
    assert desk.post("/watch/2/merge", data={"into": "1"}, headers=OWN).headers["location"] == "/watch/1"
    assert len(the_one(path).readings) == 2


def test_the_collector_may_say_which_it_is(desk, path):
    add(desk)
    add(desk, title="", asking="$40", text="Sorry, no time to describe it.", into="1")
    assert [reading.listing.asking for reading in the_one(path).readings] == ["45.00 USD", "40.00 USD"]


def test_dropped_it_is_gone(desk, path):
    add(desk)
    assert desk.post("/watch/1/drop", headers=OWN).headers["location"] == "/watch"
    assert desk.get("/watch/1").status_code == 404
    assert "Nothing is on it yet" in desk.get("/watch").text


def test_all_are_read_anew(desk, path):
    add(desk)
    assert desk.post("/watch/recheck", headers=OWN).status_code == 303
    assert len(the_one(path).readings) == 1


@pytest.mark.parametrize(
    ("address", "data", "told"),
    [
        ("/watch", {"text": "  "}, "no words to keep"),
        ("/watch", {"text": "First edition.", "asking": "cheap"}, "expected something like 45.00 USD"),
        ("/watch", {"text": "First edition.", "into": "77"}, "there is no #77"),
        ("/watch/1/asked", {"place": "nowhere"}, "expected &#39;copyright page&#39;"),
        ("/watch/1/merge", {"into": "1"}, "expected another number"),
        ("/watch/1/merge", {"into": "x"}, "expected another number"),
        ("/watch/1/merge", {"into": "9" * 30}, "expected another number"),
    ],
)
def test_what_can_not_be_done_is_told(desk, path, address, data, told):
    add(desk)
    answer = desk.post(address, data=data, headers=OWN)
    assert answer.status_code == 400
    assert told in answer.text
    assert len(the_one(path).readings) == 1


@pytest.mark.parametrize("address", ["/watch/7", "/watch/99999999999999999999999", "/watch/x", "/watch/1/praise"])
def test_what_is_not_there(desk, address):
    add(desk)
    method = "POST" if address.endswith("praise") else "GET"
    assert desk.ask(method, address, headers=OWN).status_code in (404, 405)


def test_a_file_that_is_none_is_told(desk, path):
    path.parent.mkdir()
    path.write_text("words and more words " * 100, encoding="utf-8")
    answer = desk.get("/watch")
    assert answer.status_code == 500
    assert "watchlist.sqlite" in answer.text
