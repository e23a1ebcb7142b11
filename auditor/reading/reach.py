"""How far a cue reaches: the rules by which a denial, a hedge or talk of other copies ends.

Each function looks at one word of a clause and answers whether a cue that was running stops there.
"""

from __future__ import annotations

from auditor.reading.phrases import Phrase
from auditor.reading.scene import Clause, Scene, roles

_LISTED = {
    "defect", "owner_mark", "repair", "remainder_mark", "ex_library", "book_club", "price_clipped", "blind_stamp", "signed",
    "proof",
}  # fmt: skip
_COMMAS = {",", "(", ")"}


def ends(scene: Scene, clause: Clause, index: int, cue: Phrase, listed: bool) -> bool:
    """Whether the cue's reach ends at this word. ``listed`` tells whether it has named anything yet."""
    word, row = scene.norm[index], cue.row
    comma = word in _COMMAS
    if word == ")" and _opened_before(scene, clause, cue, index):
        return True
    if index == cue.last and inserted(scene, cue):
        return False
    if row.reach == "segment":
        return comma and not (
            row.kind == "elsewhere" and scene.norm[index + 1 : index + 2] and scene.norm[index + 1] in roles()["relatives"]
        )
    if row.kind == "hedge" and word in roles()["grounds"]:
        return True
    if row.sign == "asked" and word == ":":
        return True
    if row.reach == "list":
        return _ends_list(scene, clause, index, cue, listed)
    if (
        (row.kind in ("hedge", "unchecked") or row.sign == "asked")
        and word == "and"
        and scene.norm[index + 1 : index + 2]
        and scene.norm[index + 1] in roles()["new_subjects"]
    ):
        return True
    if row.kind == "unchecked" and comma:
        return not _still_unchecked(scene, clause, index + 1)
    return row.kind == "hedge" and comma and not _goes_on(scene, clause, index + 1, cue)


def inserted(scene: Scene, cue: Phrase) -> bool:
    """ "It is, I rather think, the second": an aside between a verb and what the verb says hedges what follows."""
    norm, first = scene.norm, cue.first
    return (
        cue.row.kind == "hedge"
        and norm[max(0, first - 1) : first] == [","]
        and norm[cue.last : cue.last + 1] == [","]
        and norm[max(0, first - 2) : first - 1] != []
        and norm[first - 2] in roles()["copulas"]
    )


def _opened_before(scene: Scene, clause: Clause, cue: Phrase, index: int) -> bool:
    """Whether the bracket closed here was opened before the cue: nothing inside brackets reaches out of them."""
    depth = 0
    for word in reversed(scene.norm[max(clause.first, cue.first - 30) : cue.first]):
        if word == ")":
            depth += 1
        elif word == "(":
            if depth == 0:
                return "(" not in scene.norm[cue.first : index]
            depth -= 1
    return False


def _goes_on(scene: Scene, clause: Clause, index: int, cue: Phrase) -> bool:
    """Whether a hedge runs on over a comma: what follows is again of edition and printing, or one more item of a list."""
    words = roles()
    if cue.row.sign == "modal" and listable(scene, clause, index):
        return True
    for word in scene.norm[index : min(index + 4, clause.last)]:
        if word in words["ordinals"] or word in words["edition_nouns"] or word == "or":
            return True
        if word not in ("and", "a", "the", "also", "possibly", "probably", "likely", "perhaps", "if", "not"):
            return False
    return False


def _segment_end(scene: Scene, clause: Clause, first: int) -> int:
    """The comma or bracket that ends the segment beginning at a word, or the clause's end."""
    return next((at for at in range(first, clause.last) if scene.norm[at] in _COMMAS), clause.last)


def _still_unchecked(scene: Scene, clause: Clause, first: int) -> bool:
    """Whether what was not looked at goes on behind a comma: "haven't checked for stamps, names or a gutter code"."""
    words, last = roles(), _segment_end(scene, clause, first)
    inside = scene.norm[first:last]
    if inside[:1] and inside[0] in words["unchecked_goes_on"]:
        return True
    return (
        bool(inside)
        and len(inside) <= 5
        and not any(
            word in words["list_closers"] or word in words["list_enders"] or word in words["item_openers"] - {"the", "a"}
            for word in inside
        )
    )


def _ends_list(scene: Scene, clause: Clause, index: int, cue: Phrase, listed: bool) -> bool:
    words, word = roles(), scene.norm[index]
    if word == "," and index == cue.last and scene.norm[index - 1] == "nor":
        return False  # "nor, as far as we can tell, is it"
    if word == ",":
        return not listed or _stated(scene, clause, index + 1, cue) or not listable(scene, clause, index + 1)
    if word == ":" and (listed or cue.row.id == "is not" or index > cue.last):
        return True
    if word in words["list_closers"]:
        return cue.row.sign != "subject" or listed
    if not listed:
        following = scene.norm[index + 1] if index + 1 < clause.last else ""
        return word in _COMMAS or (word in words["joiners"] and following in words["new_subjects"])
    if word in words["list_enders"] or _stated(scene, clause, index, cue):
        return True
    if word in words["joiners"]:
        following = scene.norm[index + 1] if index + 1 < clause.last else ""
        phrase = scene.at.get(index + 1)
        return following in words["item_openers"] or (
            phrase is not None and phrase.row.kind == "noun" and _fault_follows(scene, phrase)
        )
    before = scene.norm[index - 1] if index else ""
    return word in words["item_openers"] and before not in words["alternatives"] and word not in ("the", "its")


def _stated(scene: Scene, clause: Clause, index: int, cue: Phrase) -> bool:
    """ "No bookplate, ex-library", "NO WRITING NO STAINS FIRST EDITION": what is said of the copy itself ends a list of things
    that it hasn't got, unless an "or" goes on with it."""
    words, norm = roles(), scene.norm
    if (
        index >= clause.last
        or cue.row.id == "is not"
        or words["denies_all"] & set(norm[cue.first : cue.last])
        or norm[index - 1] in words["alternatives"]
    ):
        return False
    if norm[index] in words["ordinals"] and norm[index + 1 : index + 2] != [] and norm[index + 1] in words["edition_nouns"]:
        return norm[index - 1] not in words["determiners"]
    phrase = scene.at.get(index)
    if phrase is None or phrase.row.feature not in words["stated"] or phrase.row.kind != "term" or index <= cue.last:
        return False
    things = words["things_of_state"] & {*norm[phrase.last - 1 : phrase.last], *norm[phrase.last : phrase.last + 1]}
    return not things and not words["alternatives"] & set(norm[phrase.last : _segment_end(scene, clause, phrase.last) + 2])


def _fault_follows(scene: Scene, noun: Phrase) -> bool:
    following = scene.at.get(noun.last)
    return following is not None and following.row.kind == "term"


def listable(scene: Scene, clause: Clause, first: int) -> bool:
    """Whether the segment behind a comma can be one more item of a list of denials: "no tears, chips or writing"."""
    words, last = roles(), _segment_end(scene, clause, first)
    inside = scene.norm[first:last]
    if not inside:
        return False
    alternative = any(word in ("or", "nor") for word in scene.norm[first : clause.last])
    if inside[0] in ("or", "nor"):
        return True
    if inside[0] in words["item_openers"] and not (alternative and inside[0] not in ("a", "an", "the", "its", "some")):
        return False
    terms = [
        phrase for phrase in scene.between(first, last) if phrase.row.kind in ("term", "grade") and phrase.row.feature != "jacket"
    ]
    if not terms or any(phrase.row.kind == "grade" or phrase.row.feature not in _LISTED for phrase in terms):
        return alternative and not terms and len(inside) <= 3
    openers = {
        word
        for before, word in zip(["", *inside], inside, strict=False)
        if word in words["item_openers"] and word != "the" and before not in ("or", "nor") and before not in words["linkers"]
    }
    if openers or any(word in words["list_enders"] or word in words["list_closers"] for word in inside):
        return False
    located = any(word in ("to", "on", "at", "along") for word in inside)
    opening = scene.at.get(first)
    subject = opening is not None and opening.row.kind == "noun" and _fault_follows(scene, opening)
    return alternative or not (located or subject)
