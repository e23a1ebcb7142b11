"""The walker of spoken forms: what each field of a form asks for, with forms and texts made for it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as some

from auditor.reading.forms import Form, WordList
from auditor.reading.phrases import PhraseFinder
from auditor.reading.scene import stage
from auditor.reading.walker import Walker
from auditor.reading.words import words

TOLD = {"reason": "made for a test", "fires": (), "quiet": ()}
LISTS = {
    "openings": WordList(id="openings", words=("and", ","), **TOLD),
    "colour": WordList(id="colour", words=("red", "sea-green"), **TOLD),
}


def found(text: str, **fields: object) -> list[str]:
    """The words of each place where a form of these fields stands."""
    split = words(text)
    scene = stage(split, PhraseFinder(()).find(split.norm))
    form = Form.model_validate({"id": "x", "kind": "claim", "feature": "defect", "value": "tear", **TOLD, **fields})
    walked = Walker(({"x": form}, LISTS)).claims(scene, range(len(split.norm)))
    return [" ".join(split.norm[one.first : one.last]) for one in walked]


PLAIN = {"opener": ("owl",), "between": ("is", "very"), "target": ("grey", "far away")}


@pytest.mark.parametrize(
    ("text", "fields", "expected"),
    [
        ("The owl is very grey.", {}, ["owl is very grey"]),
        ("Owls: owl far away.", {}, ["owl far away"]),
        ("The owl's grey.", {}, ["owl's grey"]),
        ("The owl is not grey.", {}, []),
        ("The owl is. Very grey.", {}, []),
        ("The owl is very grey.", {"widest": 1}, []),
        ("The owl is very grey.", {"needs": ("very",)}, ["owl is very grey"]),
        ("The owl is grey.", {"needs": ("very",)}, []),
        ("The owl is grey.", {"needs": ("owl",)}, ["owl is grey"]),
        ("The owl so to say is grey.", {"between": ("#word",)}, ["owl so to say is grey"]),
        ("The owl, so to say, is grey.", {"between": ("#word",)}, []),
        ("The owl so to say is grey.", {"between": ("#word",), "barred": ("say",)}, []),
        ("The owl is grey by now.", {"closer": ("by", "now")}, ["owl is grey by now"]),
        ("The owl is grey by now though.", {"closer": ("by", "now")}, ["owl is grey"]),
        ("The owl is grey and red.", {"not_behind": ("and",)}, []),
        ("The owl is grey and red.", {"behind": ("and",)}, ["owl is grey"]),
        ("The owl is grey, red.", {"behind": ("and",)}, []),
        ("No such owl is grey.", {"after": ("no",)}, ["owl is grey"]),
        ("No such odd old owl is grey.", {"after": ("no",)}, []),
        ("No such odd old owl is grey.", {"ahead": ("no",)}, ["owl is grey"]),
        ("No. The owl is grey.", {"ahead": ("no",)}, []),
        ("Barn owl is grey.", {"not_after": ("barn",)}, []),
        ("A barn. The owl is grey.", {"about": ("barn",)}, ["owl is grey"]),
        ("A wood. The owl is grey.", {"about": ("barn",)}, []),
        ("The bird? Owl is grey.", {"asked": ("bird",)}, ["owl is grey"]),
        ("The bird. Owl is grey.", {"asked": ("bird",)}, []),
        ("And, owl is grey.", {"place": "opening"}, ["owl is grey"]),
        ("The owl is grey.", {"place": "opening"}, []),
        ("The owl is grey.", {"place": "later"}, ["owl is grey"]),
        ("An owl of sea green, a red one.", {"opener": ("owl (of|in) @colour",), "target": ()}, ["owl of sea green"]),
        ("An owl at $4.50 net.", {"target": ("(at|) $ #amount",), "between": ()}, ["owl at $ 4.50"]),
        ("4.50 is grey, 7 is grey.", {"opener": ("#amount",)}, ["4.50 is grey"]),
    ],
)
def test_what_a_field_asks_for(text: str, fields: dict[str, object], expected: list[str]) -> None:
    assert found(text, **{**PLAIN, **fields}) == expected


@given(some.lists(some.sampled_from(("owl", "is", "very", "grey", "red", ".", ",")), max_size=12))
def test_the_walker_finds_what_a_plain_search_finds(spoken: list[str]) -> None:
    """Beside the walker a search that tries every pair of words: the nearest target over fillers alone, none inside another."""
    expected, behind = [], 0
    for first, word in enumerate(spoken):
        if word != "owl" or first < behind:
            continue
        for last in range(first + 1, len(spoken)):
            if spoken[last] == "grey" and set(spoken[first + 1 : last]) <= {"is", "very"} and last - first <= 4:
                expected.append(" ".join(spoken[first : last + 1]))
                behind = last + 1
                break
    assert found(" ".join(spoken), opener=("owl",), between=("is", "very"), target=("grey",), widest=3) == expected


@pytest.mark.parametrize(
    ("fields", "message"),
    [
        ({"opener": ("@nothing",)}, "names no"),
        ({"opener": ("owl",), "feature": None}, "feature and a value"),
        ({"opener": ("owl",), "kind": "hedge"}, "feature and a value"),
        ({"opner": ("owl",)}, "opner"),
    ],
)
def test_a_wrong_form_is_told(fields: dict[str, object], message: str) -> None:
    with pytest.raises(ValueError, match=message):
        found("An owl.", **fields)
