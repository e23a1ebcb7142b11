"""``auditor check``: one listing, the whole report."""

import json
import re

import jsonschema

from tests.commands import DEMO, SCHEMA, WORDS, auditor, errors, one_line, out


def test_check_tells_all_parts_of_the_report():
    done = auditor("check", "--title", "The Ore Dock by Ilse Varnum", "--asking", "$45", "--points", DEMO / "points", words=WORDS)
    told = one_line(out(done))
    assert done.returncode == 0, errors(done)
    assert "[First edition" in told
    assert "[-" in told
    assert "{later printings" in told
    for part in (
        "asking 45.00 USD",
        "The work",
        "Ilse Varnum (point set ore-dock)",
        "Standing",
        "The ruler",
        "Findings",
        "Scores",
    ):
        assert part in told
    assert "Text only: neither an authentication nor an appraisal" in told
    assert "\x1b" not in out(done)
    assert not re.search(r" +$", out(done), re.M)


def test_check_asks_what_would_settle_it():
    done = auditor(
        "check", "--title", "The Ore Dock by Ilse Varnum", "--points", DEMO / "points", words="First edition, first printing."
    )
    told = out(done)
    assert "A message to the seller" in told
    message = told[told.index("Good day,") : told.index("Thank you.")]
    assert "your copy of The Ore Dock by Ilse Varnum" in one_line(message)
    assert "\n  - " in message


def test_check_reads_a_page_a_text_file_and_standard_input_alike(tmp_path):
    page = DEMO / "pages" / "gullwing-ore-dock.html"
    [listing] = [
        row for row in map(json.loads, (DEMO / "listings.jsonl").open(encoding="utf-8")) if row["id"] == "page-gullwing-ore-dock"
    ]
    (tmp_path / "words").write_text(listing["text"], encoding="utf-8")
    more = "--title", listing["title"], "--points", DEMO / "points", "--json"
    ways = [
        auditor("check", page, *more),
        auditor("check", tmp_path / "words", *more),
        auditor("check", "-", *more, words=listing["text"]),
        auditor("check", *more, words=page.read_text(encoding="utf-8")),
    ]
    records = [json.loads(out(done)) for done in ways]
    for record in records:
        jsonschema.validate(record, SCHEMA)
        assert record["listing"]["text"] == listing["text"]
        assert record["claims"] == records[0]["claims"]
    assert records[0]["listing"]["asking"] == "300.00 USD"


def test_check_takes_one_listing_only():
    done = auditor("check", DEMO / "listings.csv")
    assert done.returncode == 2
    assert "auditor scan" in errors(done)


def test_an_authority_can_be_chosen():
    # The Late George Apley, page 19: pulitzerprizebooks.blogspot.com/2007/09 against older guidebooks
    words = "The Late George Apley by John P. Marquand. First printing, with Pretty Pearl on page 19."
    plain = json.loads(out(auditor("check", "--json", words=words)))
    chosen = json.loads(out(auditor("check", "--json", "--authority", "older guidebooks", words=words)))
    assert (plain["candidates"]["book"], chosen["candidates"]["book"]) == (["us:2-"], ["us:1a"])


def test_an_authority_that_says_nothing_is_told_with_those_that_do():
    done = auditor("check", "--authority", "Nobody", words="First edition.")
    assert done.returncode == 2
    assert "gives no account" in errors(done).replace("\n", " ")
    assert "Phillips" in errors(done)
