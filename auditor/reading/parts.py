"""Which part of the copy a claim is of: the noun that governs it, else the part last spoken of, else the book."""

from __future__ import annotations

from dataclasses import dataclass

from auditor.reading.nouns import GOVERNED, behind, draft_of, head, is_noun, named, noun_of
from auditor.reading.phrases import Phrase
from auditor.reading.readers.jackets import read_jackets
from auditor.reading.scene import Draft, Scene, roles
from auditor.values import Part, Stance

_LISTED = GOVERNED | {"remainder_mark", "signed", "price_clipped"}
_BOTH_OF = {"volumes", "vols", "books", "copies", "titles", "novels", "paperbacks", "hardbacks", "hardcovers"}
_ON = {";", "—", "-", "..."}  # marks behind which a sentence goes on


@dataclass(frozen=True, slots=True)
class Governor:
    """The part a claim goes to and the word that decided it (None: nothing did)."""

    part: Part
    word: str | None


def part_of(scene: Scene, draft: Draft, stance: Stance, spoken: Part) -> Governor:
    """The part of a governed draft. ``spoken`` is the part last spoken of before the draft's clause.

    A denial of everything is the copy's; a denial without a noun of its own, but of writing, names or bookplates, is the book's;
    in a list of denials the first member decides. A fault that by its nature is the book's goes to the jacket only where the
    jacket is named with it.
    """
    own = _own_words(scene, draft)
    if own is not None:
        return Governor(own, None)
    noun = noun_of(scene, draft, stance)
    if stance == "denied" and noun is not None and _of_both(scene, noun, draft):
        return Governor("copy", None)
    if noun is not None:
        return Governor(_part_of_noun(scene, noun, draft, spoken), " ".join(scene.norm[noun.first : noun.last]))
    if stance == "denied":
        return Governor(_denied(scene, draft, spoken), None)
    if _of_book(draft):
        return Governor("book", None)
    return Governor(last_spoken(scene, scene.clause(draft.first).first, draft.first, spoken), None)


def _own_words(scene: Scene, draft: Draft) -> Part | None:
    """ "Hinges strengthened", "flaps yellow as butter": the part that the fault's own words name."""
    said = set(scene.norm[draft.first : draft.last]) if draft.value != "offsetting" else set()
    if said & roles()["words_of_jacket"]:
        return "jacket"
    return "book" if said & roles()["words_of_book"] else None


def _of_both(scene: Scene, noun: Phrase, draft: Draft) -> bool:
    """ "Book and jacket near fine, no dings": what is denied of both is denied of the copy."""
    nouns = [other for other in scene.between(scene.segment(noun.first)[0], draft.first) if is_noun(other)]
    return nouns[-1:] == [noun] and len(nouns) > 1 and _joined(scene, nouns[-2], noun)


def last_spoken(scene: Scene, first: int, last: int, before: Part) -> Part:
    """The part last spoken of among words ``first`` to ``last``, else the one before; never a jacket that is lacking."""
    part = before
    for phrase in scene.between(first, last):
        part = named(phrase) or part
    return "book" if part == "jacket" and scene.once(_jacketless) else part


def _noun_spoken(scene: Scene, last: int) -> Part | None:
    """The part of the last noun before a word that names one: "does its jacket sit crooked. Latter torn"."""
    nouns = (phrase for phrase in reversed(scene.between(0, last)) if is_noun(phrase) and named(phrase) is not None)
    noun = next(nouns, None)
    return named(noun) if noun is not None else None


def both_parts(scene: Scene, phrase: Phrase) -> bool:
    """Whether book and jacket share a fault: "light wear to book and jacket", "book and jacket both lightly worn"."""
    first, last = scene.segment(phrase.first)
    noun = behind(scene, draft_of(phrase), last)
    if noun is None and any(cue.row.kind == "denial" for cue in scene.cues_between(first, phrase.first)):
        return False  # "book and jacket fine no dings": a denial of everything is the copy's
    if noun is None or named(noun) is None:  # "book and jacket both sunned", "... at the spine"
        nouns = [other for other in scene.between(first, phrase.first) if is_noun(other)]
        if noun is None and "both" in scene.norm[first : phrase.first] and not nouns:
            return not _BOTH_OF & set(scene.norm[first : phrase.first])
        if len(nouns) > 1 and _joined(scene, nouns[-2], nouns[-1]) and _subjects(scene, nouns[-2], nouns[-1], phrase):
            return True
    if noun is None:
        return False
    other = _next_noun(scene, noun.last, last)
    return other is not None and _joined(scene, noun, other) and not _fault_at(scene, other.last)


def _joined(scene: Scene, one: Phrase, other: Phrase) -> bool:
    """ "book and jacket", "jacket & boards": two nouns of different parts with an "and" between them."""
    between = [word for word in scene.norm[one.last : other.first] if word not in ("the", "its", "to", "on")]
    parts = {named(one), named(other)}
    return parts == {"book", "jacket"} and len(between) == 1 and between[0] in ("and", "&", "/", "+", "nor")


def _subjects(scene: Scene, one: Phrase, other: Phrase, fault: Phrase) -> bool:
    """Whether two joined nouns share what is said behind them: "tears along the jacket and the fore-edge is foxed" do not."""
    index = one.first - 1
    while index >= 0 and scene.norm[index] in roles()["determiners"] - roles()["linkers"]:
        index -= 1
    placed = index >= 0 and scene.norm[index] in roles()["linkers"]
    return not placed or not roles()["linking_verbs"] & set(scene.norm[other.last : fault.first])


def _fault_at(scene: Scene, index: int) -> bool:
    """Whether a fault is said from this word on, adverbs aside: what stands before it is its subject."""
    adverbs = roles()["degrees"] | roles()["linking_verbs"]
    while index < len(scene.norm) and scene.norm[index] in adverbs:
        index += 1
    phrase = scene.at.get(index)
    return phrase is not None and phrase.row.feature in GOVERNED


def _jacketless(scene: Scene) -> bool:
    """Whether the copy is said to have no jacket, or is a paperback of which no jacket is named."""
    told = [draft.value for draft in read_jackets(scene)]
    if any(value in ("lacking", "none issued") for value in told):
        return "present" not in told
    return not told and any(phrase.row.value in ("paperback", "mass_market") for phrase in scene.content)


def _of_book(draft: Draft) -> bool:
    return draft.feature == "owner_mark" or draft.value in roles()["book_faults"]


def _next_noun(scene: Scene, first: int, last: int) -> Phrase | None:
    return next((phrase for phrase in scene.between(first, last) if is_noun(phrase)), None)


def _part_of_noun(scene: Scene, noun: Phrase, draft: Draft, spoken: Part) -> Part:
    """The noun's own part; "the latter" is what was spoken of last; a spine or an edge goes with what is spoken of."""
    row = noun.row
    if scene.norm[noun.last : noun.last + 2] == ["of", "it"] and noun.first >= draft.first:
        return last_spoken(scene, scene.clause(draft.first).first, draft.first, spoken)
    if row.part is not None:
        return "book" if row.id == "wrapper part" and scene.once(_jacketless) else row.part
    beside = [part for phrase in scene.between(scene.segment(noun.first)[0], noun.first) if (part := named(phrase)) is not None]
    if beside and row.sign is None:
        return beside[-1]
    if row.sign == "block" and draft.value in roles()["block_faults"]:
        return "book"
    spoken = "book" if row.sign in ("corner", "block") else spoken  # "Corners rubbed." of a new sentence are the boards'
    last = last_spoken(scene, scene.clause(noun.first).first, min(noun.first, draft.first), spoken)
    if row.sign == "former":
        return "book" if last == "jacket" else "jacket"
    if row.sign == "latter":
        return _noun_spoken(scene, min(noun.first, draft.first)) or last
    edged = draft.value in roles()["edge_faults"] and bool({"edge", "edges"} & set(scene.norm[noun.first : noun.last]))
    return "book" if _of_book(draft) or edged else last


def _denied(scene: Scene, draft: Draft, spoken: Part) -> Part:
    """The part of a denial without a noun: that of its list's first member or of its sentence, else by its nature."""
    if draft.feature == "owner_mark":
        return "book"
    first = _first_member(scene, draft)
    if first is not None:
        member = draft_of(first)
        return member.part or part_of(scene, member, "denied", spoken).part
    start = scene.clause(draft.first).first
    going = roles()["pronouns"] & set(scene.norm[start : draft.first])
    if (going and spoken == "jacket") or _goes_on(scene, start):
        return last_spoken(scene, start, draft.first, spoken)
    nouns = [phrase for phrase in scene.between(start, draft.first) if is_noun(phrase)]
    subject = head(nouns) if draft.denied and nouns else _subject(scene, start, draft.first, scene.clause_of[draft.first])
    if subject is not None:
        return _part_of_noun(scene, subject, draft, spoken)
    return "book" if draft.value in roles()["book_denials"] else "copy"


def _goes_on(scene: Scene, start: int) -> bool:
    """ "Pages brown but pliable; none is chipped": a sentence goes on about what it named."""
    number = scene.clause_of[start]
    return (
        number > 0 and scene.clauses[number - 1].end in _ON and scene.norm[start : start + 2] in (["none", "is"], ["none", "are"])
    )


def _first_member(scene: Scene, draft: Draft) -> Phrase | None:
    """The first of a list of denials that the draft is a later member of: "no names, no stains"."""
    clause = scene.clause(draft.first)
    denials = (cue for cue in scene.cues_between(clause.first, draft.first) if cue.row.kind == "denial")
    cues = {index for cue in denials for index in range(cue.first, cue.last)}
    phrases = scene.between(clause.first, draft.first)
    ends = {phrase.last: phrase for phrase in phrases if is_noun(phrase) or phrase.row.feature in _LISTED}
    joints = roles()["list_joints"] | roles()["linkers"] | roles()["determiners"]
    found, index = None, draft.first
    while index > clause.first:
        if index in ends:
            found = found if is_noun(ends[index]) else ends[index]
            index = ends[index].first
        elif scene.norm[index - 1] in joints or index - 1 in cues or scene.norm[index - 1] in roles()["degrees"]:
            index -= 1
        else:
            break
    return found


def _subject(scene: Scene, first: int, last: int, number: int) -> Phrase | None:
    """The noun that a denial's sentence is about: it opens the segment before or the clause; or, where a clause runs on, the
    jacket that opens an earlier one."""
    before, _ = scene.segment(max(scene.segment(last)[0] - 1, first))
    for start in (before, first):
        opening = next((phrase for phrase in scene.between(start, min(start + 3, last)) if is_noun(phrase)), None)
        if opening is not None:
            return opening
    while number > 0 and scene.clauses[number - 1].end in _ON:
        number -= 1
        clause = scene.clauses[number]
        opening = next((p for p in scene.between(clause.first, min(clause.first + 3, clause.last)) if is_noun(p)), None)
        if opening is not None:
            return opening if named(opening) == "jacket" else None
    return None
