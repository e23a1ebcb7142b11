"""Number lines told by the end of them: the lowest number that is left, or the one that is gone.

"Number line ends in 3", "of which 4 is the lowest", "counts down to 2 on the copyright page", "the 1 has gone".
"""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.othercopies import other_editions
from auditor.reading.phrases import Phrase
from auditor.reading.readers.row_words import listed, number
from auditor.reading.scene import Draft, Scene
from auditor.values import Stance

STRONG = "number line"
WEAK = "number line, perhaps"  # "line", "numbers": names of a line only beside the figures that tell it
_GAPS = {",", "-", "/", "."}
_REACH = 15  # words between a line's name and the number it is told by
_HIGHEST_LEFT = 20  # what a line may be counted down to where nothing names it
_FURTHEST = 20  # words between a line's name and the number that it lacks


def line_draft(value: str, first: int, last: int, stance: Stance | None = None, negative: bool = False) -> Draft:
    """A draft of ``number_line``."""
    return Draft("number_line", value, first, last, "number line", part="book", stance=stance, negative=negative)


def on_page(scene: Scene, sign: Phrase) -> bool:
    """Whether the page is named that a number line stands on."""
    clause = scene.clause(sign.first)
    return bool({"copyright", "verso", "imprint"} & set(scene.norm[clause.first : clause.last]))


def missing(scene: Scene, sign: Phrase) -> Iterator[Draft]:
    """ "The 1 is missing", "lacks the 1", "no 1 in the number line", "the 1 and the 2 have been dropped"."""
    clause, norm = scene.clause(sign.first), scene.norm
    for at in range(max(clause.first, sign.first - _FURTHEST), min(clause.last, sign.first + _FURTHEST)):
        figure = number(norm[at])
        if figure is None:
            continue
        last = _gone_behind(norm, at, clause.last)
        before = [word for word in norm[max(clause.first, at - 5) : at] if word not in listed("before_figure")]
        if last is None and _lacked(before):
            last = at + 1
        if last is not None:
            yield line_draft(f"to {figure}", at, last, "elsewhere" if _of_others(scene, at) else "denied")


def _lacked(before: list[str]) -> bool:
    """Whether words before a figure say that it isn't there: "lacks the", "lacks both 1 and", "doesn't include the"."""
    listing = before[-1:] == ["and"] and len(before) > 2 and number(before[-2]) is not None and before[-3] in listed("drops")
    doing = before[-2:] in (["doesn't", "have"], ["not", "have"], ["doesn't", "include"], ["not", "include"])
    return listing or doing or before[-3:] == ["and", "so", "has"] or (before[-1:] != [] and before[-1] in listed("drops"))


def _gone_behind(norm: list[str], at: int, end: int) -> int | None:
    """The word behind "is missing", "has been dropped", "and the 2 have gone" that stands behind a figure, else None."""
    behind = [(place, norm[place]) for place in range(at + 1, min(at + 9, end))]
    said = [(place, word) for place, word in behind if word not in listed("before_gone") and number(word) is None]
    if not said:
        return None
    words = [word for _, word in said]
    if words[0] in listed("gone") and not (words[1:2] and words[1] in ("down", "to")):
        return at + 2
    negated = norm[at + 1 : at + 3] in (["is", "not"], ["is", "n't"]) or norm[at + 1 : at + 2] in (["isn't"], ["not"])
    return at + 2 if negated and {"there", "present", "in", "on"} & set(words[:4]) else None


def _of_others(scene: Scene, index: int) -> bool:
    """ "Later batches lost the 1 from their row": said of other copies."""
    first = scene.clause(index).first
    general = any(cue.row.kind == "elsewhere" for cue in scene.cues_between(first, index))
    return general or any(first <= cue.first < index for cue in scene.once(other_editions))


def lowest(scene: Scene, sign: Phrase) -> Iterator[Draft]:
    """The lowest number where only that is told: "number line ends in 3", "with the 1 still in the number line"."""
    found = _told_behind(scene, sign)
    if found is not None:
        figure, at, telling = found
        last = scene.clause(sign.first).last
        other = _other_end(scene, at + 1, last) if telling else None
        between = set(scene.norm[sign.last : at])
        seen = {"see", "find", "make"} & between  # "the smallest number I could find" is no weak denial
        doubtful = between & listed("doubtful") - ({"could"} if seen else set())
        stance: Stance | None = "hedged" if doubtful else "asserted" if seen and not _doubted(scene, sign.first) else None
        yield line_draft(f"to {min(figure, other or figure)}", sign.first, at + 1, stance)
        yield from _or_another(scene, at + 1, last)
        return
    letter = _letter_behind(scene, sign)
    if letter is not None:
        yield letter
        return
    yield from _told_before(scene, sign)


def _doubted(scene: Scene, index: int) -> bool:
    """Whether a cue stands before a word in its clause."""
    first = scene.clause(index).first
    return bool(scene.cues_between(first, index))


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
        if (norm[at - 1] in listed("not_before") | {"line", "lines"} and at > sign.last) or _row_behind(norm, at):
            return None
        between = norm[sign.last : at]
        last = [word for word in between[-3:] if word not in ("'", '"', "(")]
        if norm[at] == "one" and not (last[-1:] and last[-1] in listed("before_one")):
            continue
        if strong and "which" in between and norm[at + 1 : at + 2] == ["is"] and set(norm[at + 2 : at + 5]) & listed("lowest"):
            return figure, at, True
        beside = set(last[-3:]) & listed("beside_number") or not between
        known = set(between) <= listed("told_words")
        telling = set(between) & (listed("telling") if strong else listed("turning") | {":"})
        named = strong and (not between or "lowest" in norm[sign.first : sign.last] or "smallest" in norm[sign.first : sign.last])
        measured = norm[at + 1 : at + 2] and norm[at + 1] in listed("measures")
        if (
            0 < figure <= 40
            and not measured
            and (named or (telling and (known or (beside and (strong or on_page(scene, sign))))))
        ):
            return figure, at, bool(telling)
        return None
    return None


def _row_behind(norm: list[str], at: int) -> bool:
    """Whether a number is the first of several: a row that reads as no line tells no lowest number either."""
    following = norm[at + 1 : at + 4]
    if following[:1] and following[0] not in _GAPS:
        return number(following[0]) is not None
    numbers = sum(number(word) is not None for word in following)
    return numbers > 1 and all(word in _GAPS or number(word) is not None for word in following)


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
    placed = opening in ("the", "a", "number", "numeral", "figure", "digit", "its", "'", '"') and bool(
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


def counted_down(scene: Scene, index: int) -> Draft | None:
    """ "Counts down to 1 on the copyright page", "seems to go down as far as 2": no line is named; ``index`` is at "down"."""
    norm, clause = scene.norm, scene.clause(index)
    before = norm[max(clause.first, index - 4) : index]
    at = index + 1
    while at < clause.last and norm[at] in listed("down_to"):
        at += 1
    figure = number(norm[at]) if at < clause.last and at > index + 1 else None
    if figure is None or not 0 < figure <= _HIGHEST_LEFT or not set(before) & listed("counting"):
        return None
    behind = norm[at + 1] if at + 1 < clause.last else "."
    opens = all(word in listed("counting") | listed("before_counting") for word in norm[clause.first : index])
    paged = {"copyright", "verso", "imprint"} & set(norm[clause.first : clause.last])
    if not (paged or opens) or (behind[0].isalnum() and behind not in listed("behind_end")):
        return None
    return line_draft(f"to {figure}", index, at + 1)
