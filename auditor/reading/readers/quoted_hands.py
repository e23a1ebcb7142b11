"""What a hand wrote, given in quotation marks with its place: "To Dad, Xmas 1929" inside, "J. Tillery" up front.

A dedication signed with a name that the listing gives elsewhere is the author's, any other a giver's; a name alone is an owner's.
"""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.starts import Start

_MARK = Start(lambda word: word == '"')
_LONGEST = 18  # words of a quotation
_NEAR = 5  # words before it in which a mark or signature has claimed it already
_PLACE = 8  # words behind it in which its place stands


def read_quoted_hands(scene: Scene) -> Iterator[Draft]:
    """A draft for each quotation that a hand has put where hands put things."""
    for first, last in _quotations(scene):
        if not _claimed(scene, first, last):
            yield from _hand(scene, first, last)


def _quotations(scene: Scene) -> Iterator[tuple[int, int]]:
    """(first, last) of the words between quotation marks; behind a figure a mark is one of inches."""
    norm, behind = scene.norm, 0
    marks = scene.starting(_MARK)
    for number, index in enumerate(marks):
        if index < behind or (index and norm[index - 1][-1].isdecimal()):
            continue
        closing = next((at for at in marks[number + 1 : number + 2] if at <= index + _LONGEST + 1), None)
        if closing is not None and closing > index + 1 and "\n" not in norm[index:closing]:
            yield index + 1, closing
            behind = closing + 1


def _claimed(scene: Scene, first: int, last: int) -> bool:
    """Whether a mark or a signature before it has claimed it, or it quotes what the printer or the publisher says."""
    before = scene.between(max(scene.clause(first).first, first - _NEAR), first)
    if any(phrase.row.feature in ("owner_mark", "signed") for phrase in before):
        return True
    words = roles()["edition_nouns"] | set(roles()["ordinals"])
    return any(phrase.row.kind == "term" and phrase.row.feature != "owner_mark" for phrase in scene.between(first, last)) or bool(
        words & set(scene.norm[first:last])
    )


def _hand(scene: Scene, first: int, last: int) -> Iterator[Draft]:
    said = scene.norm[first:last]
    given = said[0] in roles()["dedication_openers"] or bool(roles()["dedication_words"] & set(said))
    owned = said[:2] in (["property", "of"], ["ex", "libris"], ["belongs", "to"]) or _names_alone(scene, first, last)
    if not (given or owned) or not _placed(scene, last + 1, inked=given):
        return
    if given:
        authors = _named_elsewhere(scene, first, last)
        feature, value = ("signed", "inscribed") if authors else ("owner_mark", "inscription")
        yield Draft(feature, value, first, last, "quoted hand", part="book")
    elif not _named_elsewhere(scene, first, last):
        yield Draft("owner_mark", "name", first, last, "quoted hand", part="book")


def _names_alone(scene: Scene, first: int, last: int) -> bool:
    """Capitalised words, initials and a date, one of them a name of more than one letter: "J. Tillery, Tuscaloosa"."""
    text, start = scene.words.text, scene.words.start
    names = [index for index in range(first, last) if scene.norm[index].isalpha()]
    return bool(names) and all(text[start[index]].isupper() for index in names) and max(len(scene.norm[at]) for at in names) > 1


def _named_elsewhere(scene: Scene, first: int, last: int) -> bool:
    """Whether the name that ends the quotation stands, capitalised, in the listing elsewhere too."""
    text, start = scene.words.text, scene.words.start
    name = next((scene.norm[at] for at in range(last - 1, first - 1, -1) if scene.norm[at].isalpha()), "")
    others = (at for at, word in enumerate(scene.norm) if word == name and not first <= at < last)
    return any(text[start[at]].isupper() for at in others)


def _placed(scene: Scene, index: int, *, inked: bool) -> bool:
    """Whether an owner's place follows, pen and colour aside; a dedication in ink may stand on the title page as well."""
    words, norm = roles(), scene.norm
    fillers = words["hand_fillers"] | words["colours"]
    pen = False
    for at in range(index, min(len(norm), index + _PLACE)):
        word = norm[at]
        pen = pen or word in words["pens"] or (norm[at - 1] == "in" and word in words["colours"])
        if word in words["hand_places"] or (inked and (word == "half" or (pen and word == "title"))):
            return True
        if word == "inside" and (at + 1 == len(norm) or norm[at + 1] in words["behind_inside"]):
            return True
        if norm[at : at + 2] in (["up", "front"], ["in", "front"], ["at", "front"]):
            return True
        if word not in fillers:
            return False
    return False
