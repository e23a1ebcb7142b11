"""Number lines told of in words: their lowest number, that they are full or wanting, that nobody looked."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.phrases import Phrase
from auditor.reading.readers.figure_rows import listed, number
from auditor.reading.scene import Draft, Scene
from auditor.values import Stance

STRONG = "number line"
WEAK = "number line, perhaps"  # "line", "numbers": names of a line only beside the figures that tell it
_REACH = 15  # words between a line's name and the number it is told by


def line_draft(value: str, first: int, last: int, stance: Stance | None = None, negative: bool = False) -> Draft:
    """A draft of ``number_line``."""
    return Draft("number_line", value, first, last, "number line", part="book", stance=stance, negative=negative)


def told_of(scene: Scene, sign: Phrase, rows: list[Draft]) -> Iterator[Draft]:
    """What is said of a line that is named: its lowest number, that it is full, that there is none, that nobody looked."""
    clause = scene.clause(sign.first)
    strong = sign.row.sign == STRONG
    if not strong and sign.first and scene.norm[sign.first - 1] in listed("other_lines"):
        return
    near = [row for row in rows if clause.first <= row.first < clause.last + 12 and abs(row.first - sign.last) < 14]
    missing = _missing(scene, sign)
    if missing is not None:
        if not any(int(missing.value[3:]) > low for row in near for low in map(int, filter(str.isdecimal, row.value.split()))):
            yield missing
        return
    lacking = _lacking(scene, sign)
    if lacking is not None and (strong or _on_page(scene, sign)):
        yield lacking
        return
    if (full := _full(scene, sign)) is not None:
        yield full
        if full.last > sign.last + 3:
            return
    if near:
        return
    lowest = list(_lowest(scene, sign))
    yield from lowest
    if not lowest and full is None:
        yield line_draft("", sign.first, sign.last, "unchecked" if _unread(scene, sign) else None)


def _unread(scene: Scene, sign: Phrase) -> bool:
    """ "The number line is under a sticker", "line of digits: not recorded", "the numbers are hidden"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    ahead = [word for word in norm[sign.last : min(sign.last + 9, clause.last)] if word not in listed("of_place")]
    if ahead[:1] == ["not"]:
        return ahead[1:2] != [] and ahead[1] in listed("read")
    return ahead[:1] != [] and ahead[0] in listed("unread")


def _on_page(scene: Scene, sign: Phrase) -> bool:
    clause = scene.clause(sign.first)
    return bool({"copyright", "verso", "imprint"} & set(scene.norm[clause.first : clause.last]))


def _missing(scene: Scene, sign: Phrase) -> Draft | None:
    """ "The 1 is missing", "lacks the 1", "no 1 in the number line"."""
    clause, norm = scene.clause(sign.first), scene.norm
    for at in range(clause.first, clause.last):
        figure = number(norm[at])
        if figure is None or abs(at - sign.first) > 20:
            continue
        after = [
            word
            for word in norm[at + 1 : min(at + 7, clause.last)]
            if word not in ("'", '"', "has", "been", "is", "was", "having", "already")
        ]
        before = [word for word in norm[max(clause.first, at - 5) : at] if word not in ("'", '"', "the", "a", "number", "its")]
        negated = norm[at + 1 : at + 3] in (["is", "not"], ["is", "n't"]) or norm[at + 1 : at + 2] in (["isn't"], ["not"])
        if after[:1] and (after[0] in listed("gone") or (negated and set(after[:4]) & {"there", "present", "in", "on"})):
            return line_draft(f"to {figure}", at, at + 2, "denied")
        if before[-1:] and (
            before[-1] in ("no", "lacks", "lacking", "without", "missing", "minus", "drops", "dropped")
            or before[-2:] in (["doesn't", "have"], ["not", "have"], ["doesn't", "include"], ["not", "include"])
        ):
            return line_draft(f"to {figure}", at, at + 1, "denied")
    return None


def _lacking(scene: Scene, sign: Phrase) -> Draft | None:
    """ "No number line", "no date or number line", "number line: none"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    if norm[sign.first] == "no" and sign.last - sign.first > 1:
        return line_draft("none", sign.first, sign.last, negative=True)
    if norm[sign.last : sign.last + 2] == ["-", "less"]:
        return line_draft("none", sign.first, sign.last + 2, negative=True)
    at, listing = sign.first - 1, 0
    while at >= clause.first and sign.first - at <= 7:
        if norm[at] in listed("lacks"):
            between = set(norm[at + 1 : sign.first])
            predicate = (
                norm[at] in ("not", "isn't", "wasn't")
                and not between & {"have", "any"}
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


def _lowest(scene: Scene, sign: Phrase) -> Iterator[Draft]:
    """The lowest number where only that is told: "number line ends in 3", "with the 1 still in the number line"."""
    found = _told_behind(scene, sign)
    if found is not None:
        figure, at, telling = found
        last = scene.clause(sign.first).last
        other = _other_end(scene, at + 1, last) if telling else None
        doubtful = set(scene.norm[sign.last : at]) & listed("doubtful")
        yield line_draft(f"to {min(figure, other or figure)}", sign.first, at + 1, "hedged" if doubtful else None)
        yield from _or_another(scene, at + 1, last)
        return
    letter = _letter_behind(scene, sign)
    if letter is not None:
        yield letter
        return
    yield from _told_before(scene, sign)


def _told_behind(scene: Scene, sign: Phrase) -> tuple[int, int, bool] | None:
    """The number that a line named is told by, its place, and whether a word of telling stands between: "the row of figures on
    the imprint page bottoms out at 1"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    strong = sign.row.sign == STRONG
    for at in range(sign.last, min(sign.last + _REACH, clause.last)):
        figure = number(norm[at])
        if figure is None:
            if norm[at] in listed("new_talk") or not (norm[at][0].isalpha() or norm[at] in listed("told_marks")):
                return None
            continue
        if norm[at - 1] in listed("not_before") | {"line", "lines"} and at > sign.last:
            return None
        between = norm[sign.last : at]
        last = [word for word in between[-3:] if word not in ("'", '"', "(")]
        if norm[at] == "one" and last[-1:] not in (["to"], ["at"], ["in"], ["with"], ["from"]):
            continue
        beside = set(last[-3:]) & listed("beside_number") or not between
        known = set(between) <= listed("told_words")
        telling = set(between) & (listed("telling") if strong else listed("turning") | {":"})
        named = strong and (not between or "lowest" in norm[sign.first : sign.last] or "smallest" in norm[sign.first : sign.last])
        measured = norm[at + 1 : at + 2] and norm[at + 1] in listed("measures")
        if (
            0 < figure <= 40
            and not measured
            and (named or (telling and (known or (beside and (strong or _on_page(scene, sign))))))
        ):
            return figure, at, bool(telling)
        return None
    return None


def _letter_behind(scene: Scene, sign: Phrase) -> Draft | None:
    """ "Letter line to C"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    at = sign.last
    while (
        at < clause.last
        and norm[at] in listed("told_words")
        and not (len(norm[at]) == 1 and _capital(scene, at) and norm[at].isalpha())
    ):
        at += 1
    if not sign.last < at < clause.last or "letter" not in " ".join(norm[sign.first : sign.last]):
        return None
    capital = len(norm[at]) == 1 and norm[at].isalpha() and _capital(scene, at)
    return line_draft(f"to {norm[at].upper()}", sign.first, at + 1) if capital else None


def _capital(scene: Scene, index: int) -> bool:
    return scene.words.text[scene.words.start[index]].isupper()


def _told_before(scene: Scene, sign: Phrase) -> Iterator[Draft]:
    """ "With the 1 still in the number line", "a 3 at the end of the line", "the 1 sits at the left end of the row"."""
    norm, clause = scene.norm, scene.clause(sign.first)
    strong = sign.row.sign == STRONG
    at = sign.first - 1
    while at >= clause.first and sign.first - at <= _REACH and number(norm[at]) is None:
        if norm[at] in listed("new_talk") or not (norm[at][0].isalpha() or norm[at] in ("'", '"')):
            return
        at -= 1
    if at < clause.first or number(norm[at]) is None:
        return
    opening = norm[at - 1] if at > clause.first else ""
    inside = norm[at + 1 : sign.first]
    if norm[at] == "one" and opening not in ("the", "a", "number"):
        return
    known = strong and set(inside) <= listed("inside_words")
    placed = opening in ("the", "a", "number", "numeral", "its", "'", '"') and bool(
        set(inside) & {"end", "start", "sits", "stands", "there", "still", "present", "left", "right", "tail", "foot"}
    )
    figure = number(norm[at])
    if figure is not None and 0 < figure <= 40 and set(inside) & {"in", "of", "on", "to", "at"} and (known or placed):
        yield line_draft(f"to {figure}", at, sign.last)


def _other_end(scene: Scene, index: int, last: int) -> int | None:
    """ "Starts at 3 and ends at 2": the other end of a line whose numbers run both ways."""
    norm = scene.norm
    at = index
    while at < last and at - index < 5 and norm[at] in listed("to_words"):
        at += 1
    ended = set(norm[index:at]) & listed("span_words") - {"-", "—", "to"}
    return number(norm[at]) if at < last and ended else None


def _or_another(scene: Scene, index: int, last: int) -> Iterator[Draft]:
    """ "Down to a 2 or it's a 1"."""
    if index < last and scene.norm[index] == "or":
        for at in range(index + 1, min(index + 5, last)):
            figure = number(scene.norm[at])
            if figure is not None:
                yield line_draft(f"to {figure}", at, at + 1)
                return
