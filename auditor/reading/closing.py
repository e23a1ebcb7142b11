"""Whether a cue looks back, and over which words: "remainder mark: none", "a first, I believe", "no one can say from this"."""

from __future__ import annotations

from auditor.reading.phrases import Phrase
from auditor.reading.reach import inserted
from auditor.reading.scene import Clause, Scene, roles

LABEL_ENDS = {":", "-", "—", "?", "=", "|"}


def closes(scene: Scene, cue: Phrase) -> bool:
    """Whether a cue looks back: one of both directions that ends its segment, or "no" as the answer to a label."""
    clause = scene.clause(cue.first)
    if inserted(scene, cue):
        return False
    if cue.row.sign == "aside" and cue.first > clause.first and scene.norm[cue.first - 1] in (",", "("):
        return True
    if cue.last < clause.last and scene.norm[cue.last] not in roles()["behind_closing_cue"] and not _grounded(scene, clause, cue):
        return False
    if cue.row.direction == "both":
        return True
    before = scene.norm[cue.first - 1] if cue.first > clause.first else ""
    labelled = before in LABEL_ENDS or (before == "," and scene.norm[cue.first : cue.last] in (["no"], ["not"]))  # "torn, no;"
    return cue.row.kind == "denial" and (
        labelled or (cue.first == clause.first and cue.first > 0 and scene.norm[cue.first - 1] in LABEL_ENDS)
    )


def _grounded(scene: Scene, clause: Clause, cue: Phrase) -> bool:
    """ "No one can say from these alone": behind the cue stands only what it rests on, and before it what isn't known."""
    if cue.row.kind != "unchecked" or scene.norm[cue.last] not in ("from", "without", "by", "until", "unless"):
        return False
    last = next((at for at in range(cue.last, clause.last) if not scene.norm[at][0].isalnum()), clause.last)
    return not scene.between(cue.last, last) and says_something(scene, scene.segment(cue.first)[0], cue.first)


def answers_label(scene: Scene, cue: Phrase) -> bool:
    """ "Printing: haven't turned to the verso": what isn't known stands before the colon."""
    before = cue.first - 1
    return (
        cue.row.kind == "unchecked"
        and before > scene.clause(cue.first).first
        and scene.norm[before] in (":", "=")
        and before - scene.segment(before)[0] <= 4
    )


def statement(scene: Scene, cue: Phrase, first: int, last: int) -> tuple[int, int]:
    """The statement before a cue: without "so" or "which" right before it, from the last "so", "but" or "which" on; for a
    cue that hangs on it without a comma ("in film I'd not undo") from its "and" on."""
    hangs = cue.row.kind == "unchecked" and last > first and scene.norm[last - 1][0].isalnum()
    for index in range(last - 1, first - 1, -1):
        word = scene.norm[index]
        if word in ("so", "but", "which") or (hangs and word == "and"):
            if says_something(scene, index + 1, last):
                return index + 1, last
            last = index
    return first, last


def says_something(scene: Scene, first: int, last: int) -> bool:
    """Whether there is any word of weight among these."""
    return any(word not in roles()["says_nothing"] for word in scene.norm[first:last])


def of_printing(scene: Scene, first: int, last: int) -> bool:
    """Whether a segment speaks of edition and printing and of little else."""
    words = [word for word in scene.norm[first:last] if word[0].isalnum()]
    return (
        bool(words) and len(words) <= 5 and any(word in roles()["edition_nouns"] or word in roles()["ordinals"] for word in words)
    )
