"""Printings and editions in everyday talk: "the fourth time it went through the press", "first time in paperback", "the second
run", "the printing after the first"."""

from __future__ import annotations

from dataclasses import replace

from auditor.reading.othercopies import edition_words
from auditor.reading.readers.edition_kinds import drafted
from auditor.reading.scene import Draft, Scene, roles

_PRESS = 9  # words behind "the fourth time" within which the press is named


def told_in_talk(scene: Scene, first: int, number: int, index: int) -> Draft | None:
    """The printing or edition that an ordinal at ``first`` up to ``index`` counts, where no noun of the trade says so."""
    at = index + (scene.norm[index : index + 1] == ["-"])
    if at >= len(scene.norm):
        return None
    if number == 1 and (found := _in_form(scene, first, index)) is not None:
        return found
    return _after(scene, first, number, at) or _run(scene, first, number, at) or _time(scene, first, number, at)


def last_told(scene: Scene, index: int) -> Draft | None:
    """ "Went back to press three times and this is the last of these", "of three impressions this is the last"."""
    norm, words, opening = scene.norm, edition_words(), scene.clause(index).first
    behind = norm[index + 1] if index + 1 < len(norm) else "."
    if norm[index - 1 : index] != ["the"] or (behind[0].isalpha() and behind not in ("of", "one")):
        return None
    counts = roles()["numbers"]
    for at in range(opening, index - 1):
        counted = counts.get(norm[at], 2 if norm[at] == "twice" else 0)
        ahead, around = norm[at + 1 : at + 2], set(norm[opening : index - 1])
        if counted > 1 and ahead and words["nouns"].get(ahead[0]) == "printing" and ahead[0].endswith("s"):
            return drafted("printing", str(counted), index - 1, index + 1, row="last of so many")
        if counted > 1 and (ahead == ["times"] or norm[at] == "twice") and around & words["press"]:
            return drafted("printing", str(counted + 1), index - 1, index + 1, row="last of so many")
    return None


def _after(scene: Scene, first: int, number: int, at: int) -> Draft | None:
    """ "The printing after the first": the next. Its words are those before "after", for what follows is of the other."""
    norm, nouns = scene.norm, edition_words()["nouns"]
    before = norm[max(0, first - 4) : first]
    if before[:1] != ["the"] or before[2:] not in (["after", "the"], ["following", "the"]):
        return None
    if nouns.get(before[1]) == "printing" or (before[1] == "one" and nouns.get(norm[at]) == "printing"):
        return drafted("printing", str(number + 1), first - 4, first - 2, row="the one after")
    return None


def _in_form(scene: Scene, first: int, index: int) -> Draft | None:
    """ "First time in paperback", "first appearance in hardback", "first in paperback", "first U.K. appearance"."""
    norm, words = scene.norm, edition_words()
    at = index
    while at < len(norm) and norm[at] in words["appeared"]:
        at += 1
    if norm[at : at + 1] != ["in"] or at + 1 >= len(norm):
        return None
    form = norm[at + 1]
    qualifier = words["qualifiers"].get(form)
    if qualifier not in ("paperback", "hardcover"):
        return None
    return drafted("edition", f"1 {qualifier}", first, at + 2, row="first in a form")


def _run(scene: Scene, first: int, number: int, at: int) -> Draft | None:
    """ "The second print run", "from the third batch run off": but not "a first print run of 500"."""
    norm, before = scene.norm, scene.norm[max(0, first - 2) : first]
    if norm[at] in ("print", "printing", "press") and norm[at + 1 : at + 2] == ["run"]:
        last = at + 2
    elif norm[at] in ("run", "batch") and before in (["from", "the"], ["of", "the"], ["in", "the"], ["the"], []):
        last = at + 1
    else:
        return None
    if norm[at] not in ("run", "batch") and any(word[0].isdecimal() for word in norm[last : last + 5]):
        return None
    own = before == ["from", "the"] and scene.clause(first).first >= first - 2
    return replace(drafted("printing", str(number), first, last, row="print run"), stance="asserted" if own else None)


def _time(scene: Scene, first: int, number: int, at: int) -> Draft | None:
    """ "The fourth time the book went through the press", "sixth trip to the printers"."""
    norm, words = scene.norm, edition_words()
    if norm[at] not in words["goings"]:
        return None
    last = min(at + 1 + _PRESS, scene.clause(at).last)
    press = next((place for place in range(at + 1, last) if norm[place] in words["press"]), None)
    if press is None or (norm[at] == "time" and {"i", "i've", "we", "he", "she"} & set(norm[at + 1 : press])):
        return None
    return drafted("printing", str(number), first, press + 1, row="time through the press")
