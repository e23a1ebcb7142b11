"""What a change of colour is, by what it befell and what did it: paper tans, cloth fades, hands and dust soil."""

from __future__ import annotations

from dataclasses import replace

from auditor.reading.nouns import noun_of
from auditor.reading.scene import Draft, Scene, roles

_TAPES = ("tape", "sellotape", "selotape", "cellotape")
_SPINES = {"spine panel", "spine", "spines", "backstrip", "spine-ends", "spine ends", "jacket spine", "dj spine"}


def by_cause(scene: Scene, draft: Draft) -> Draft:
    """ "Gone grey from a hundred thumbs", "darkened by handling": soiled, where hands or dust are told as the cause."""
    behind = scene.norm[draft.last : scene.segment(draft.last - 1)[1]]
    because = next((at for at, word in enumerate(behind) if word in ("from", "by", "with", "through")), None)
    dirty = because is not None and roles()["dirt_causes"] & set(behind[because : because + 6])
    return replace(draft, value="soiling") if dirty else draft


def faded(scene: Scene, draft: Draft) -> Draft | None:
    """A draft of fading as what it is: paper that has gone brown is tanned, by the contract; None of tape that has."""
    if _of_tape(scene, draft):
        return None
    draft = by_cause(scene, draft)
    noun = noun_of(scene, draft, "asserted") if draft.value == "fading" else None
    paper = noun is not None and bool(roles()["paper"] & set(scene.norm[noun.first : noun.last]))
    return replace(draft, value="tanning") if paper else draft


def tanned(scene: Scene, draft: Draft) -> Draft | None:
    """A draft of tanning as what it is: a toned or browned spine is `fading` by the contract, "toned at the spine"; None of
    tape that has yellowed."""
    if _of_tape(scene, draft):
        return None
    if _of_spine(scene, draft):
        return replace(draft, value="fading")
    return by_cause(scene, draft)


def _of_tape(scene: Scene, draft: Draft) -> bool:
    """ "Sellotape, long since gone brown", "yellowed tape"."""
    before = scene.between(scene.clause(draft.first).first, draft.first)[-1:]
    beside = [word for phrase in before for word in scene.norm[phrase.first : phrase.last]]
    return any(word.startswith(_TAPES) for word in (*beside, *scene.norm[draft.last : draft.last + 1]))


def _of_spine(scene: Scene, draft: Draft) -> bool:
    first, last = scene.segment(draft.first)
    fillers = roles()["spine_links"] | roles()["degrees"]

    def spine(noun_first: int, noun_last: int) -> bool:
        return " ".join(scene.norm[noun_first:noun_last]) in _SPINES or scene.norm[noun_first] == "spine"

    for noun in scene.between(first, draft.first):
        if spine(noun.first, noun.last) and all(word in fillers for word in scene.norm[noun.last : draft.first]):
            return True
    behind = (noun for noun in scene.between(draft.last, last) if spine(noun.first, noun.last))
    return any(all(word in fillers for word in scene.norm[draft.last : noun.first]) for noun in behind)
