"""Number lines told of in words: their lowest number, that they are full or wanting, that nobody looked."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.phrases import Phrase
from auditor.reading.readers.line_ends import STRONG, line_draft, lowest, missing, on_page
from auditor.reading.readers.row_words import listed
from auditor.reading.scene import Draft, Scene


def told_of(scene: Scene, sign: Phrase, rows: list[Draft]) -> Iterator[Draft]:
    """What is said of a line that is named: its lowest number, that it is full, that there is none, that nobody looked."""
    clause = scene.clause(sign.first)
    strong = sign.row.sign == STRONG
    if not strong and sign.first and scene.norm[sign.first - 1] in listed("other_lines"):
        return
    near = [row for row in rows if clause.first <= row.first < clause.last + 12 and abs(row.first - sign.last) < 14]
    left = {number for row in near for number in _numbers(row)}
    gone = [draft for draft in missing(scene, sign) if not any(int(draft.value[3:]) > number for number in left)]
    if gone:
        yield from gone
        places = {place for draft in gone for place in (draft.first, draft.last - 1)}
        yield from (draft for draft in lowest(scene, sign) if not near and not {draft.first, draft.last - 1} & places)
        return
    lacking = _lacking(scene, sign)
    if lacking is not None and (strong or on_page(scene, sign)):
        yield lacking
        return
    if (full := _full(scene, sign)) is not None:
        yield full
        if full.last > sign.last + 3:
            return
    if near:
        return
    told = list(lowest(scene, sign))
    yield from told
    if not told and full is None:
        yield line_draft("", sign.first, sign.last, "unchecked" if _unread(scene, sign) else None)


def _unread(scene: Scene, sign: Phrase) -> bool:
    """ "The number line is under a sticker", "line of digits: not recorded", "the numbers are hidden"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    ahead = [word for word in norm[sign.last : min(sign.last + 9, clause.last)] if word not in listed("of_place")]
    if ahead[:1] == ["not"]:
        return ahead[1:2] != [] and ahead[1] in listed("read")
    return ahead[:1] != [] and ahead[0] in listed("unread")


def _numbers(row: Draft) -> list[int]:
    return [int(word) for word in row.value.split() if word.isdecimal()]


def _lacking(scene: Scene, sign: Phrase) -> Draft | None:
    """ "No number line", "no date or number line", "number line: none"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    if norm[sign.first] == "no" and sign.last - sign.first > 1 and norm[sign.first + 1] != ".":
        return line_draft("none", sign.first, sign.last, negative=True)
    if norm[sign.last : sign.last + 2] == ["-", "less"]:
        return line_draft("none", sign.first, sign.last + 2, negative=True)
    at, listing = sign.first - 1, 0
    while at >= clause.first and sign.first - at <= 7:
        if norm[at] in listed("lacks"):
            between = set(norm[at + 1 : sign.first])
            predicate = (
                norm[at] in ("not", "isn't", "wasn't")
                and not between & listed("having")
                and "there" not in norm[max(at - 3, 0) : at]
            )
            return None if predicate else line_draft("none", at, sign.last, negative=True)
        if norm[at] in ("or", "nor") and not listing:
            listing = 3
        elif listing > 1:
            listing -= 1
        elif norm[at] not in listed("lacks_between"):
            break
        at -= 1
    ahead = [word for word in norm[sign.last : min(sign.last + 4, clause.last)] if word not in (":", "-", "—", "is", "=", "not")]
    following = scene.norm[sign.last + 1 : sign.last + 2] if clause.end == "—" and sign.last + 1 == clause.last else ahead[:1]
    if following and (
        following[0] in listed("wanting") or (following[0] == "present" and "not" in norm[sign.last : sign.last + 3])
    ):
        return line_draft("none", sign.first, sign.last, negative=True)
    return None


def _full(scene: Scene, sign: Phrase) -> Draft | None:
    """ "Full number line", "number line appears to be complete", "all the numbers"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    if norm[sign.first] in listed("complete"):
        return line_draft("full", sign.first, sign.last)
    at = sign.first - 1
    while at >= clause.first and sign.first - at <= 4 and norm[at] in listed("complete_between"):
        if norm[at] == "all":
            break
        at -= 1
    if at >= clause.first and norm[at] in listed("complete") and sign.first - at <= 4:
        return line_draft("full", at, sign.last)
    at = sign.last
    while at < clause.last and at - sign.last <= 4 and norm[at] in listed("complete_between") - {"all"}:
        at += 1
    if at < clause.last and norm[at] in listed("complete") and (norm[at] != "all" or norm[at + 1 : at + 2] == ["present"]):
        return line_draft("full", sign.first, at + 1)
    return None
