"""Words of the lexicon that claim nothing where they stand: quoted, in a plot, of a slipcase, or too common to claim alone."""

from __future__ import annotations

from auditor.reading.closing import LABEL_ENDS, closes
from auditor.reading.headings import crossed
from auditor.reading.nouns import governing
from auditor.reading.phrases import Phrase
from auditor.reading.readers.senses import everyday
from auditor.reading.readers.tales import in_tale, of_goods, sentence, tale_words
from auditor.reading.scene import Scene, roles

_FAULTS = {"defect", "repair", "owner_mark"}
_OF_PEOPLE = _FAULTS | {"lapse"}  # claimed by no sentence that tells of people
_LONGEST_QUOTE = 25  # words
_NEAR = 7  # words within which a cue or a place bears on a bare word
_LEAVES = {"ffep", "fep", "rfep", "endpaper", "flyleaf", "leaf", "page", "pages", "endpapers"}
_OLD = frozenset({"old", "neat", "early", "in", "ink'd", "inked"})
_OWNED = {"ownership", "owner's", "owners", "owner"}  # no story's
_CUES = frozenset({"denial", "unchecked", "exception"})


def silent(scene: Scene, phrase: Phrase) -> bool:
    """Whether a term phrase claims nothing here."""
    row = phrase.row
    if row.sign == "cued" and not _cued(scene, phrase):
        return True
    if row.sign == "denied" and not _cued(scene, phrase, frozenset({"denial"})):
        return True
    if row.sign == "listed" and not _beside_owner_mark(scene, phrase):
        return True
    if row.id == "cued club" and set(scene.norm[phrase.last : phrase.last + 1]) & roles()["club_devices"]:
        return True  # "no club dot" denies the stamp
    if row.sign == "beside signature" and all(other.row.feature != "signed" or other is phrase for other in scene.content):
        return True
    if row.sign == "placed" and not (_cued(scene, phrase) or _placed(scene, phrase) or _listed(scene, phrase)):
        return True
    if scene.norm[max(0, phrase.first - 1)] in tale_words("titles") or everyday(scene, phrase):
        return True
    if row.feature in _OF_PEOPLE and (in_tale(scene, phrase.first) or of_goods(scene, phrase.last)):
        return True
    if row.feature == "price_clipped":
        return _leaf_clipped(scene, phrase)
    if row.feature not in _FAULTS:
        return row.feature == "ex_library" and _in_plot(scene, phrase)
    if scene.norm[max(0, phrase.first - 1)] in roles()["before_clipped"] and row.value in ("chip", "missing_leaf"):
        return True
    if _told_already(scene, phrase) or _proper_name(scene, phrase) or _of_other_thing(scene, phrase):
        return True
    if (row.id == "owner stamp" or row.value == "marking") and _library_near(scene, phrase):
        return True
    asked = scene.clause(phrase.first).end == "?"
    if scene.norm[phrase.first - 1 : phrase.first] == ["any"] and not asked and not _cued(scene, phrase):
        return True  # "ask for photos of any wear"
    owned = phrase.row.value == "name" and bool(_OWNED & set(scene.norm[phrase.first : phrase.last]))
    return _outside(scene, phrase) or _quoted(scene, phrase) or (not owned and _in_plot(scene, phrase))


def _leaf_clipped(scene: Scene, phrase: Phrase) -> bool:
    """ "Corner of the ffep clipped": of a leaf, and no price."""
    before = [noun for noun in scene.between(scene.segment(phrase.first)[0], phrase.first) if noun.row.kind == "noun"][-1:]
    return any(_LEAVES & set(scene.norm[noun.first : noun.last]) for noun in before)


def _outside(scene: Scene, phrase: Phrase) -> bool:
    """Whether the fault is a slipcase's or of whatever else goes round the copy."""
    noun = governing(scene, phrase) if phrase.row.feature != "owner_mark" else None
    if noun is None or noun.row.sign == "outside":
        return noun is not None
    before = scene.between(scene.segment(phrase.first)[0], phrase.first)
    named = [other.row.sign == "outside" for other in before if other.row.sign == "outside" or other.row.part is not None]
    return noun.row.part is None and named[-1:] == [True]


def _told_already(scene: Scene, phrase: Phrase) -> bool:
    """ "Name written inside", "name in crayon on the first page" is the name alone, and a signed bookplate is no owner's."""
    if phrase.row.value == "marking" and scene.norm[max(0, phrase.first - 1)] == "in":
        return any(other.row.feature == "owner_mark" for other in scene.between(max(0, phrase.first - _NEAR), phrase.first))
    before = [other for other in scene.between(max(0, phrase.first - 8), phrase.first) if other.last == phrase.first]
    if scene.norm[phrase.first] == "written":
        return bool(before) and before[0].row.feature == "owner_mark"
    clause = scene.clause(phrase.first)
    hands = [other for other in scene.between(clause.first, clause.last) if other.row.feature == "signed"]
    denied = bool({"not", "than"} & set(scene.norm[max(0, phrase.first - 3) : phrase.first]))  # "signed, not a bookplate"
    denied = denied or any(other.first - phrase.last in (0, 1) for other in hands)  # "bookplate signed by the author"
    return phrase.row.value == "bookplate" and bool(hands) and (denied or any(other.row.value == "bookplate" for other in hands))


def _proper_name(scene: Scene, phrase: Phrase) -> bool:
    """Whether it is capitalised within a run of capitalised words of a clause that has plain words too: "Low Water Mark"."""
    clause, text, start = scene.clause(phrase.first), scene.words.text, scene.words.start
    if phrase.first > 2 and scene.norm[phrase.first - 1] == "." and text[start[phrase.first]].isupper():
        initial = scene.norm[phrase.first - 2]
        if len(initial) == 1 and initial.isalpha() and scene.norm[phrase.first - 3] in ("by", ".", "and", "&"):
            return True  # "by R. Chipping"

    def capital(index: int) -> bool:
        return text[start[index]].isupper() and not text[start[index] + 1 : start[index] + 2].isupper()

    before = phrase.first - 1
    if before <= clause.first or not capital(before) or not scene.norm[before].isalpha():
        return False
    if not all(capital(i) for i in range(phrase.first, phrase.last)):
        return False
    opening = before
    while opening > clause.first and capital(opening - 1) and scene.norm[opening - 1].isalpha():
        opening -= 1
    titled = opening > clause.first and scene.norm[opening - 1] in ("of", "by")
    return titled or sum(text[start[i]].islower() and len(scene.norm[i]) > 3 for i in range(clause.first, clause.last)) > 1


def _of_other_thing(scene: Scene, phrase: Phrase) -> bool:
    """Whether it describes a thing that no copy has: "a wet winter", "the torn glove"."""
    norm = scene.norm
    if phrase.first == 0 or phrase.last >= len(norm) or norm[phrase.first - 1] not in roles()["articles"]:
        return False
    if norm[phrase.last - 1][-2:] != "ed" and norm[phrase.last - 1] not in roles()["fault_adjectives"]:
        return False
    thing, words = norm[phrase.last], roles()
    covered = any(other.first <= phrase.last < other.last for other in scene.between(phrase.last - 3, phrase.last + 1))
    common = (
        words["copy_things"]
        | words["linkers"]
        | words["list_enders"]
        | words["joiners"]
        | words["degrees"]
        | words["alternatives"]
    )
    return thing.isalpha() and not covered and thing not in common and scene.words.text[scene.words.start[phrase.last]].islower()


def _cued(scene: Scene, phrase: Phrase, kinds: frozenset[str] = _CUES) -> bool:
    """Whether a denial, a doubt or an exception stands before it: "no pencil", "except for a name"."""
    if any(start <= phrase.first < end for _, start, end in scene.once(crossed)):
        return True
    clause = scene.clause(phrase.first).first
    first = max(clause, phrase.first - _NEAR)
    inside = {index for other in scene.between(first, phrase.first) for index in range(other.first, other.last)}
    far = scene.cues_between(max(clause, phrase.first - 2 * _NEAR), first)
    cues = [*(cue for cue in far if cue.row.kind == "unchecked"), *scene.cues_between(first, phrase.first)]
    inside |= {index for cue in cues for index in range(cue.first, cue.last)}
    words = roles()
    fillers = words["linking_verbs"] | words["degrees"] | words["determiners"] | words["list_joints"] | words["sight_verbs"]
    for cue in cues:
        between = range(cue.last, phrase.first)
        if cue.last <= phrase.first and (cue.row.kind in kinds or (cue.row.sign == "modal" and kinds is _CUES)):
            if cue.row.kind == "denial" and all(index in inside or scene.norm[index] in fillers for index in between):
                return True
            if cue.row.kind != "denial" and not words["list_enders"] & {scene.norm[index] for index in between}:
                return True
    answer = phrase.last + (scene.norm[phrase.last : phrase.last + 1] != [] and scene.norm[phrase.last] in LABEL_ENDS)
    answers = scene.cues_between(answer, answer + 1)  # "writing: no"
    return any(cue.row.kind in kinds and closes(scene, cue) for cue in answers)


def _beside_owner_mark(scene: Scene, phrase: Phrase) -> bool:
    """Whether a name, a stamp or an inscription is told close by: "no name, no plate"."""
    near = scene.between(max(0, phrase.first - _NEAR), phrase.last + _NEAR)
    features = {"owner_mark", "signed"} if _cued(scene, phrase) else {"owner_mark"}
    return any(other.row.feature in features and other is not phrase for other in near)


def _placed(scene: Scene, phrase: Phrase) -> bool:
    """Whether an owner's place or hand stands by: "name on the flyleaf", "name penned inside", "ffep with a name"."""
    first, end = scene.segment(phrase.first)
    before = scene.norm[max(first, phrase.first - _NEAR) : phrase.first]
    behind = scene.norm[phrase.last : min(end + 1, phrase.last + _NEAR)]
    if (
        before[-2:] in (["has", "a"], ["have", "a"])
        and set(before[-3:-2]) & roles()["holders"]
        and scene.norm[phrase.last : phrase.last + 1] in ([], [","], ["."])
    ):
        return True
    return bool((roles()["owner_places"] | roles()["end_places"]) & set(behind) or roles()["end_places"] & set(before))


def _listed(scene: Scene, phrase: Phrase) -> bool:
    """Whether it is an item by itself in a list of faults: "hinge strained, name, sl. foxed"."""
    first, last = scene.segment(phrase.first)
    alone = all(
        phrase.first <= index < phrase.last or not word[0].isalnum() or word in roles()["degrees"] | roles()["pens"] | _OLD
        for index, word in enumerate(scene.norm[first:last], first)
    )
    clause = scene.clause(phrase.first)
    others = (other for other in scene.between(clause.first, clause.last) if not first <= other.first < last)
    return alone and any(other.row.feature == "defect" for other in others)


def _library_near(scene: Scene, phrase: Phrase) -> bool:
    """A library's stamps are part of `ex_library`; a bookseller's or a dated one is not."""
    words = scene.norm[phrase.first : phrase.last]
    if any(word.startswith(("book", "date")) for word in words):
        return False
    if scene.norm[max(0, phrase.first - 1)] == "usual":
        return any(other.row.feature == "ex_library" for other in scene.content)
    first, last = scene.clause(phrase.first).first, scene.clause(phrase.first).last
    if _cued(scene, phrase):  # "no regimental stamps, not a library discard"
        first, last = scene.segment(phrase.first)
    stamped = phrase.row.feature == "owner_mark"
    return stamped and any(other.row.feature == "ex_library" for other in scene.between(first, last))


def _quoted(scene: Scene, phrase: Phrase) -> bool:
    """Whether it stands between quotation marks of one line; behind a figure the mark is one of inches."""
    norm = scene.norm
    open_at: int | None = None
    for index in range(max(0, phrase.first - _LONGEST_QUOTE), phrase.first):
        if norm[index] == "\n":
            open_at = None
        elif norm[index] == '"' and not (open_at is None and index and norm[index - 1][-1].isdecimal()):
            open_at = index if open_at is None else None
    if open_at is None:
        return False
    rest = norm[phrase.last : open_at + _LONGEST_QUOTE]
    return '"' in rest and "\n" not in rest[: rest.index('"')]


def _in_plot(scene: Scene, phrase: Phrase) -> bool:
    """Whether its sentence tells the story or the author's life and names no part of the copy."""
    first, last = sentence(scene, phrase.first)
    if not roles()["plot_words"] & set(scene.norm[first:last]):
        return False
    copy_words, stories = roles()["copy_words"], roles()["story_nouns"]
    if copy_words & set(scene.norm[first:last]):
        return False
    nouns = (other for other in scene.between(first, last) if other.row.feature == "jacket" or other.row.part is not None)
    return all(other.row.kind == "noun" and set(scene.norm[other.first : other.last]) <= stories for other in nouns)
