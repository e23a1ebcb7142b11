"""Claims in plain speech, found by form: "lost its corner", "gone a bit pink", "stuck back in with tape", "price cut off".

The forms stand in lexicon/forms. Whether one is denied or doubted the words around it tell, as for any other draft.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.readers.colours import faded
from auditor.reading.scene import Draft, Scene
from auditor.reading.walker import Found, carriers, spoken_claims, walker


def read_plainly(scene: Scene) -> Iterator[Draft]:
    """Drafts of all forms that claim."""
    turns = walker().words("turns")
    for found in spoken_claims(scene):
        draft = _draft(scene, found, turns)
        told = faded(scene, draft) if draft.value == "fading" else draft
        if told is not None:
            yield told


def _draft(scene: Scene, found: Found, turns: frozenset[str]) -> Draft:
    """The form's draft: a denial between its opener and its target turns it; a lack in its own words ("lacks", "absent") denies
    nothing."""
    form, (first, last) = found.form, carriers(found)
    draft = Draft(form.feature or "", form.value or "", first, last, form.id, part=form.part, denied=form.denied)
    if form.carried_by != "all":
        return draft
    lack = any(
        cue.row.kind == "denial" and (cue.first == first or cue.first >= found.target) for cue in scene.cues_between(first, last)
    )
    turned = not turns.isdisjoint(scene.norm[first + 1 : found.target])
    return replace(draft, denied=form.denied != turned, negative=lack)
