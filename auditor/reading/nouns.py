"""The noun that governs a fault: behind it ("chips to the jacket"), before it ("jacket chipped"), or behind its list."""

from __future__ import annotations

from auditor.reading.phrases import Phrase
from auditor.reading.scene import Draft, Scene, roles
from auditor.values import Part, Stance

_NEXT = {"no", "not", "without"}  # what they deny is another thing: "inscribed from grandpa no jackets"
_ANEW = {"with", "there", "there's", "it", "i"}  # before a linker these begin another statement
_JOINTS = {"but", "and", "&", ","}
GOVERNED = {"defect", "repair", "owner_mark"}  # features whose part a noun decides


def governing(scene: Scene, phrase: Phrase) -> Phrase | None:
    """The noun that governs a term's phrase."""
    return noun_of(scene, draft_of(phrase), "asserted")


def noun_of(scene: Scene, draft: Draft, stance: Stance) -> Phrase | None:
    """The governing noun: behind the draft in the same segment first, then the nearest one before it, then behind its list."""
    first, _ = scene.segment(draft.first)
    found = behind(scene, draft, reach(scene, draft))
    if found is not None:
        return found
    if draft.feature == "owner_mark":
        return None
    before = [phrase for phrase in scene.between(first, draft.first) if is_noun(phrase)]
    if before:
        return head(before)
    return _behind_list(
        scene, draft, scene.clause(draft.first).last, frozenset() if stance == "denied" else roles()["item_openers"]
    )


def reach(scene: Scene, draft: Draft) -> int:
    """The end of the draft's segment, or of the one behind a bracket or comma that a place follows: "tear (1cm) to the rear of
    the jacket", "a coffee ring, on the jacket"."""
    last = scene.segment(draft.last - 1)[1]
    if scene.norm[draft.last : draft.last + 1] == [","] and scene.norm[draft.last + 1 : draft.last + 2] in (
        ["on"],
        ["to"],
        ["at"],
    ):
        return scene.segment(draft.last + 1)[1]
    bracket = scene.norm[draft.last : draft.last + 1] == ["("]
    closing = (
        next((index for index in range(last, min(last + 9, len(scene.norm))) if scene.norm[index] == ")"), None)
        if bracket
        else None
    )
    return scene.segment(closing + 1)[1] if closing is not None and closing + 1 < scene.clause(draft.first).last else last


def behind(scene: Scene, draft: Draft, last: int) -> Phrase | None:
    """A noun that a linker ties to the draft ("chips to the jacket", other faults in between sharing it), or that the draft
    stands before as an adjective ("a worn and chipped jacket")."""
    words, norm = roles(), scene.norm
    linked = next((word for word in norm[draft.first : draft.last] if word in words["linkers"]), None)  # "coffee on the"
    index = draft.last
    exceptions = scene.once(_exceptions)
    while index < last:
        phrase = scene.at.get(index)
        word = norm[index]
        if index in exceptions:
            return None
        if phrase is not None and is_noun(phrase):
            inside = word == "inside" and index == draft.last
            governs = _linked(scene, draft, linked, phrase) if linked else inside or _attributive(scene, draft, phrase)
            return _compound(scene, phrase) if governs else None
        if word in words["linkers"]:
            linked = linked or word
        elif phrase is not None and phrase.row.kind in ("term", "grade"):
            if linked:
                return None
        elif (word in words["list_enders"] and word != "is") or word in _NEXT or (word in _ANEW and not linked):
            return None
        index = phrase.last if phrase is not None else index + 1
    return None


def _exceptions(scene: Scene) -> frozenset[int]:
    """Where exceptions begin: no noun behind one governs what is denied before it."""
    return frozenset(cue.first for cue in scene.cues if cue.row.kind == "exception")


def _linked(scene: Scene, draft: Draft, linker: str, noun: Phrase) -> bool:
    """Any linker but the "in" of a book in its jacket: "tear in jacket" is the jacket's, "slightly worn in dust jacket" isn't."""
    return linker != "in" or noun.row.feature != "jacket" or not _adjective(scene.norm[draft.last - 1])


def _adjective(word: str) -> bool:
    return word.endswith("ed") or word in roles()["fault_adjectives"]


def _plural(word: str) -> bool:
    return len(word) > 3 and word.endswith("s") and not word.endswith("ss")


def _attributive(scene: Scene, draft: Draft, noun: Phrase) -> bool:
    """Whether the draft stands before its noun as an adjective: what leads up to it is an article, "in" or nothing."""
    fillers = roles()["degrees"] | {"and", "&", ",", "but", "original", "pictorial", "printed"}
    norm = scene.norm
    between = range(draft.last, noun.first)
    inside = {covered for phrase in scene.between(draft.last, noun.first) for covered in range(phrase.first, phrase.last)}
    if any(norm[index] not in fillers and index not in inside for index in between):
        return False
    if norm[noun.first - 1] in _JOINTS or _plural(norm[draft.last - 1]):
        return False  # "shows wear but the book is clean", "no stains spine tight": a new subject
    clause = scene.clause(draft.first)
    index = draft.first - 1
    while index >= clause.first:
        governed = next((p for p in scene.between(clause.first, index + 1) if p.last == index + 1), None)
        if governed is not None and (is_noun(governed) or governed.row.feature not in GOVERNED):
            return not is_noun(governed)
        if governed is None and norm[index] not in fillers:
            return True
        index = governed.first - 1 if governed is not None else index - 1
    return True


def _behind_list(scene: Scene, draft: Draft, last: int, openers: frozenset[str]) -> Phrase | None:
    """ "chips, creases and tears to the jacket": a list that runs over commas shares the noun behind its last item."""
    index = scene.segment(draft.first)[1]
    words = roles()
    allowed = {",", "and", "or", "nor", "&", "any", "other", "no", "anywhere"} | openers
    member: Phrase | None = None
    while index < last:
        phrase = scene.at.get(index)
        word = scene.norm[index]
        if phrase is not None and phrase.row.kind == "term" and phrase.row.feature in GOVERNED:
            member = phrase
        elif word in words["linkers"] and member is not None:
            anchor = Draft("", "", member.first, member.last, "")
            return behind(scene, anchor, scene.segment(index)[1])
        elif phrase is not None or word not in allowed:
            return None
        index = phrase.last if phrase is not None else index + 1
    return None


def _compound(scene: Scene, noun: Phrase) -> Phrase:
    """ "the head of the spine of the jacket", "spine of jacket": a noun yields to the one that it is of."""
    norm = scene.norm
    index = noun.last
    if index < len(norm) and norm[index] in ("of", "on", "to", "at"):
        if norm[index] != "of" and noun.row.part is not None:
            return noun
        index += 1
        while index < len(norm) and norm[index] in roles()["determiners"] and index not in scene.at:
            index += 1
    elif noun.row.part is not None:
        return noun
    following = scene.at.get(index)
    apart = index == noun.last and norm[index : index + 1] == ["book"]  # "torn at foot of spine book itself sound"
    return _compound(scene, following) if following is not None and is_noun(following) and not apart else noun


def head(nouns: list[Phrase]) -> Phrase:
    """Of the nouns before a fault the nearest that names a part; "jacket spine" and "spine of the jacket" name the jacket."""
    nearest = nouns[-1]
    if nearest.row.part is None and nearest.row.sign is None and nearest.row.kind == "noun":
        return next((noun for noun in reversed(nouns) if named(noun) is not None), nearest)
    return nearest


def is_noun(phrase: Phrase) -> bool:
    return phrase.row.kind == "noun" or (
        phrase.row.feature == "jacket" and phrase.row.value in ("present", "facsimile", "supplied")
    )


def named(phrase: Phrase) -> Part | None:
    """The part that a phrase speaks of."""
    row = phrase.row
    if row.kind == "noun":
        return row.part
    if row.feature == "jacket":
        return "jacket" if row.value not in ("lacking", "none issued") else "book"
    return "book" if row.kind == "term" and (row.part == "book" or row.feature in ("owner_mark", "ex_library")) else None


def draft_of(phrase: Phrase) -> Draft:
    row = phrase.row
    return Draft(row.feature or "", row.value or "", phrase.first, phrase.last, row.id, row.part)
