"""The library: ``auditor.audit`` and ``auditor.audit_frame``."""

import json
import subprocess
import sys
import warnings
from pathlib import Path

import pandas as pd
import pytest

import auditor

DEMO = Path(__file__).parents[1] / "corpora_demo"
POINTS = DEMO / "points"
WORDS = "First edition, first printing. Gray cloth, number line 10 9 8 7 6 5 4 3 2 1. Very good in a very good jacket."


def test_importing_it_loads_no_heavy_room():
    heavy = {"spacy", "pandas", "pydantic", "rich", "typer"}
    code = f"import sys, auditor; auditor.Claim; auditor.Verdict; print({heavy} & sys.modules.keys())"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, cwd=DEMO.parent, check=True)
    assert done.stdout.strip() == "set()"


def test_audit_needs_no_pandas():
    code = "import sys, auditor; auditor.audit('First edition.'); print('pandas' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, cwd=DEMO.parent, check=True)
    assert done.stdout.strip() == "False"


def test_audit_gives_a_verdict_ready_for_json():
    verdict = auditor.audit(WORDS, title="The Ore Dock by Ilse Varnum", asking="£45", points=POINTS)
    assert isinstance(verdict, auditor.Verdict)
    assert verdict.work == "ore-dock"
    assert "1" in {claim.value for claim in verdict.claims if claim.feature == "printing"}
    assert json.loads(json.dumps(verdict.to_dict())) == verdict.to_dict()


@pytest.mark.parametrize("points", [POINTS, str(POINTS), [POINTS], (str(POINTS),)])
def test_points_are_folders_however_they_are_given(points):
    assert auditor.audit(WORDS, title="The Ore Dock by Ilse Varnum", points=points).work == "ore-dock"


def test_without_points_the_built_in_sets_alone_speak():
    assert auditor.audit(WORDS, title="The Ore Dock by Ilse Varnum").work is None


def test_a_price_that_is_none_is_told():
    with pytest.raises(ValueError, match=r"expected something like '45\.00 USD'"):
        auditor.audit(WORDS, asking="cheap")


def test_mistakes_in_point_sets_are_warnings(tmp_path):
    (tmp_path / "bad.toml").write_text("[work\n", encoding="utf-8")
    with pytest.warns(UserWarning, match=r"bad\.toml"):
        auditor.audit(WORDS, points=tmp_path)


@pytest.mark.parametrize("text", ["", " ", "\n", "É", "\ufffd", "x" * 50_000, "1" * 300, "$" * 300])
def test_any_text_has_a_verdict(text):
    assert auditor.audit(text).standing in ("unclaimed", "unproven", "supported", "contradicted")


def test_a_frame_is_audited_row_by_row_and_keeps_its_index():
    frame = pd.DataFrame(
        {
            "Item Title": ["The Ore Dock by Ilse Varnum", None, "Tin Ferry"],
            "Description": [WORDS, "First edition.", None],
            "Price": [45.5, float("nan"), 12],
            "work": ["kept", "as", "it is"],
        },
        index=["x", "y", "z"],
    )
    before = frame.copy()
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        audited = auditor.audit_frame(frame, points=POINTS)
    pd.testing.assert_frame_equal(frame, before)
    pd.testing.assert_frame_equal(audited[list(frame.columns)], frame)
    assert list(audited.index) == ["x", "y", "z"]
    assert list(audited["audit_work"]) == ["ore-dock", "", ""]
    one = auditor.audit(WORDS, title="The Ore Dock by Ilse Varnum", asking="45.50", points=POINTS)
    assert audited.loc["x", "verdict"] == one
    assert audited.loc["x", "standing"] == one.standing
    assert audited.loc["x", "book"] == ", ".join(one.book)
    assert audited.loc["x", "missing"] == one.scores.missing
    for finding in one.findings:
        assert f"{finding.kind}: {finding.text}" in audited.loc["x", "findings"]


def test_a_frame_with_unusual_columns():
    frame = pd.DataFrame({"Worte": ["First edition."], 7: [1]})
    with pytest.raises(ValueError, match="the columns are Worte, 7"):
        auditor.audit_frame(frame)
    assert len(auditor.audit_frame(frame, columns={"text": "Worte"}).loc[0, "verdict"].claims) == 1


def test_an_empty_frame():
    assert list(auditor.audit_frame(pd.DataFrame({"text": []}))["standing"]) == []


def test_the_whole_demo_in_one_frame():
    frame = pd.read_csv(DEMO / "listings.csv")
    audited = auditor.audit_frame(frame, points=POINTS)
    assert len(audited) == len(frame)
    assert (audited["work"] != "").sum() > len(frame) / 2


def test_an_unknown_name_is_told():
    with pytest.raises(AttributeError, match="no attribute 'appraise'"):
        auditor.appraise  # noqa: B018


def test_points_settle_which_work_a_doubtful_title_is_of():
    title = "The Ore Dock, a Novel of the Great Lakes"
    bare = auditor.audit("First edition. Very good.", title, points=POINTS)
    told = auditor.audit("First edition, gray cloth, harbor mater on page 61, $6.95 on the flap.", title, points=POINTS)
    assert (bare.work, bare.doubtful_work) == ("ore-dock", True)
    assert (told.work, told.doubtful_work) == ("ore-dock", False)


def test_a_number_line_and_words_of_other_copies_settle_nothing():
    title = "The Ore Dock, a Novel of the Great Lakes"
    line = auditor.audit("Number line 10 9 8 7 6 5 4 3 2 1.", title, points=POINTS)
    others = auditor.audit(
        "Unlike later copies, which are in gray cloth with harbor mater mended and $6.95.", title, points=POINTS
    )
    assert line.doubtful_work
    assert others.doubtful_work
