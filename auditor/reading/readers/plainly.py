"""Claims in plain speech, found by form: "lost its corner", "gone a bit pink", "stuck back in with tape", "price cut off".

The forms stand in lexicon/forms. Whether one is denied or doubted the words around it tell, as for any other draft.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.nouns import noun_of
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.walker import Found, carriers, spoken_claims, walker


def read_plainly(scene: Scene) -> Iterator[Draft]:
    """Drafts of all forms that claim."""
    turns = walker().words("turns")
    for found in spoken_claims(scene):
        yield _draft(scene, found, turns)


def _draft(scene: Scene, found: Found, turns: frozenset[str]) -> Draft:
    """The form's draft: a denial between its opener and its target turns it; a lack in its own words ("lacks", "absent") denies
    nothing. Paper that has gone brown is tanned, by the contract, and not faded."""
    form, (first, last) = found.form, carriers(found)
    draft = Draft(form.feature or "", form.value or "", first, last, form.id, part=form.part, denied=form.denied)
    if form.carried_by != "all":
        return draft
    lack = any(
        cue.row.kind == "denial" and (cue.first == first or cue.first >= found.target) for cue in scene.cues_between(first, last)
    )
    turned = not turns.isdisjoint(scene.norm[first + 1 : found.target])
    draft = replace(draft, denied=form.denied != turned, negative=lack)
    noun = noun_of(scene, draft, "asserted") if form.value == "fading" else None
    paper = noun is not None and bool(roles()["paper"] & set(scene.norm[noun.first : noun.last]))
    return replace(draft, value="tanning") if paper else draft
