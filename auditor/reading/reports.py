"""Other people's word for it and asides that limit a statement, found by form.

"First edition, says the slip", "billed to me as", "according to the chap I had it off, ...", "so far as lamplight shows", "to my
untrained eye": each hedges what it stands by. The words stand in lexicon/reports.toml.
"""

from __future__ import annotations

from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.phrases import Phrase
from auditor.reading.rows import Row
from auditor.reading.scene import Clause, Scene

_SAID_BACK = Row(
    id="says the slip", kind="hedge", phrases=("says the slip",), reason="somebody else's word", direction="back", reach="segment"
)
_REPORTED = Row(id="billed as", kind="hedge", phrases=("billed to me as",), reason="somebody else's word")
_ASIDE = Row(
    id="aside, by form",
    kind="hedge",
    phrases=("so far as lamplight shows",),
    reason="as far as one looked",
    direction="both",
    reach="segment",
    sign="aside",
)
_OPENING = Row(id="opening aside, by form", kind="hedge", phrases=("so far as I know,",), reason="as far as one looked")
_LONGEST = 8  # words of an aside or a report


@cache
def _lexicon() -> dict[str, frozenset[str]]:
    return {name: frozenset(words) for name, words in lexicon.table("reports").items()}


def reports(scene: Scene) -> list[Phrase]:
    """Cues of kind ``hedge`` over the words of each report or aside."""
    found = []
    for clause in scene.clauses:
        index = clause.first
        while index < clause.last:
            cue = _at(scene, clause, index)
            if cue is not None:
                found.append(cue)
            index = cue.last if cue is not None else index + 1
    return found


def _at(scene: Scene, clause: Clause, index: int) -> Phrase | None:
    words, word = _lexicon(), scene.norm[index]
    if word in words["said"]:
        return _inverted(scene, clause, index)
    if word in words["reported"]:
        return _reported(scene, clause, index)
    if word in words["sources"]:
        return _source(scene, clause, index)
    last = _aside(scene, clause, index)
    return _placed(scene, clause, index, last) if last is not None else None


def _inverted(scene: Scene, clause: Clause, verb: int) -> Phrase | None:
    """ "says the slip", "swears the previous owner": a verb of saying before the one who says."""
    words, norm = _lexicon(), scene.norm
    if norm[verb] == "has" or norm[verb + 1 : verb + 2] == [] or norm[verb + 1] not in words["determiners"]:
        return None
    for at in range(verb + 2, min(verb + 6, clause.last)):
        if norm[at] in words["people"] or norm[at] in words["documents"]:
            return Phrase(_SAID_BACK, verb, at + 1)
        if not norm[at][0].isalpha():
            return None
    return None


def _reported(scene: Scene, clause: Clause, participle: int) -> Phrase | None:
    """ "billed to me as", "was once described to us as", "bought as": told by another, or before this listing."""
    words, norm = _lexicon(), scene.norm
    at = participle + 1
    while at < min(clause.last, participle + _LONGEST) and norm[at] in words["between_report"] | words["people"]:
        at += 1
    if at >= clause.last or norm[at] != "as" or norm[at + 1 : at + 2] in (["is"], ["new"], ["seen"], ["found"], ["such"]):
        return None
    around = {*norm[max(clause.first, participle - 2) : participle], *norm[participle + 1 : at]}
    by_another = "by" in around and bool(around & words["people"])
    told = norm[participle] in words["acquired"] or by_another or around & words["earlier"]
    return Phrase(_REPORTED, participle, at + 1) if told else None


def _source(scene: Scene, clause: Clause, index: int) -> Phrase | None:
    """ "according to the chap I had it off," hedges what follows its comma; without one what stands before."""
    words, norm = _lexicon(), scene.norm
    opener = norm[index : index + 2]
    if opener not in (["according", "to"], ["going", "by"]) and norm[index] != "per":
        return None
    reach = range(index + 1, min(index + 14, clause.last))
    last = next((at for at in reach if norm[at] in (",", ":", ".", ";", ")", "\n")), clause.last)
    told = set(norm[index:last])
    if not told & (words["people"] | words["documents"]):
        return None
    opens = all(word in ("as", '"', "(", "so") for word in norm[clause.first : index])
    if opens and last < clause.last and norm[last] in (",", ":"):
        return Phrase(_OPENING, index, last + 1)
    return Phrase(_SAID_BACK, index, last) if not opens else None


def _aside(scene: Scene, clause: Clause, index: int) -> int | None:
    """The word behind an aside that begins here, or None."""
    words, norm = _lexicon(), scene.norm
    if norm[index] in ("as", "so") and index + 1 < clause.last and norm[index + 1] in words["far"]:
        seen = None
        for at in range(index + 2, min(index + 2 + _LONGEST, clause.last)):
            if norm[at] in words["perceiving"] or (seen == at and norm[at] == "out"):
                seen = at + 1
            elif not norm[at][0].isalpha() or (seen is not None and norm[at] not in ("out", "it", "of", "from", "be", "been")):
                break
        return seen if norm[index] == "as" or "as" in norm[index + 2 : index + 4] else None
    if norm[index] in words["sense_openers"]:
        for at in range(index + 1, min(index + 6, clause.last)):
            if norm[at] in words["senses"] and set(norm[index + 1 : at]) & words["possessives"]:
                return at + 1
            if not norm[at][0].isalpha() or norm[at] in ("book", "jacket", "copy"):
                return None
    return None


def _placed(scene: Scene, clause: Clause, first: int, last: int) -> Phrase | None:
    """An aside that opens its statement goes on over its comma; one behind looks back."""
    before = [word for word in scene.norm[clause.first : first] if word[0].isalnum()]
    opens = all(word in ("nor", "and", "but", "so", "well", "not", "yet", "or") for word in before)
    if opens and scene.norm[last : last + 1] == [","]:
        return Phrase(_OPENING, first, last + 1)
    while not opens and last < clause.last and scene.norm[last] in _lexicon()["grounds"] and last + 1 < clause.last:
        last = next(
            (at for at in range(last, clause.last) if not scene.norm[at][0].isalnum() and scene.norm[at] != "-"), clause.last
        )
    return Phrase(_ASIDE, first, last)
