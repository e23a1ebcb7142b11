"""How the seller stands to a claim: cues with a direction and a reach lay a layer over the words of their clause.

One pass over each clause lays the cues that look ahead; those that look back ("remainder mark: none", "a first, I believe") are
laid behind it, and a question is answered by what follows. Where layers meet, elsewhere wins over unchecked, unchecked over
hedged, hedged over denied.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field

from auditor.reading.answers import asked
from auditor.reading.closing import LABEL_ENDS, answers_label, closes, of_printing, says_something, statement
from auditor.reading.headings import crossed, headings
from auditor.reading.othercopies import is_lot, other_editions
from auditor.reading.phrases import Phrase
from auditor.reading.reach import ends
from auditor.reading.rows import Row
from auditor.reading.scene import Clause, Draft, Scene, roles
from auditor.reading.walker import spoken_cues
from auditor.values import Stance

QUESTION = Row(id="question", kind="elsewhere", phrases=("?",), reason="a question is said of no copy")


@dataclass(slots=True)
class Layers:
    """For each word the cue that rules it, by kind; ``answers`` tells for a question's clause what its answer makes of it."""

    denial: list[Phrase | None]
    hedge: list[Phrase | None]
    unchecked: list[Phrase | None]
    elsewhere: list[Phrase | None]
    answers: dict[int, Stance] = field(default_factory=dict)

    def lay(self, cue: Phrase, first: int, last: int, kind: str | None = None) -> None:
        """Lays a cue over words ``first`` to ``last``; an earlier cue of the kind stays."""
        layer: list[Phrase | None] = getattr(self, kind or cue.row.kind)
        for index in range(first, last):
            layer[index] = layer[index] or cue

    def at(self, index: int) -> tuple[Stance, Phrase | None, bool]:
        """Stance of a word, the cue behind it, and whether a hedge is a doubt or goes with a denial."""
        if cue := self.elsewhere[index]:
            return "elsewhere", cue, False
        if cue := self.unchecked[index]:
            return "unchecked", cue, False
        if cue := self.hedge[index]:
            return "hedged", cue, cue.row.sign == "doubt" or self.denial[index] is not None
        if cue := self.denial[index]:
            return "denied", cue, False
        return "asserted", None, False


def layers(scene: Scene) -> Layers:
    """Lays the stance of each word."""
    size = len(scene.words)
    laid = Layers([None] * size, [None] * size, [None] * size, [None] * size)
    told = _not_within(scene, spoken_cues(scene))
    if scene.once(is_lot):
        told = [cue for cue in told if cue.row.kind != "elsewhere"]  # "some" and "the other" are of the lot
    held = {cue.first for other in told for cue in scene.cues_between(other.first, other.last) if _holds(other, cue)}
    plain = [cue for cue in scene.cues if cue.first not in held]
    cues = {cue.first: cue for cue in (*other_editions(scene), *told, *plain)}
    unknown = {scene.clause_of[cue.first] for cue in cues.values() if cue.row.kind == "unchecked"}
    cued = {scene.clause_of[first] for first in cues}
    for number, clause in enumerate(scene.clauses):
        if number in cued:
            _ahead(scene, clause, cues, laid)
        _question(scene, number, clause, laid, unknown)
    for cue, first, last in (*headings(scene), *scene.once(crossed)):
        laid.lay(cue, first, last)
    for cue in (*plain, *told):
        if cue.row.direction == "back" or (
            cue.row.kind in ("denial", "hedge", "unchecked") and (closes(scene, cue) or answers_label(scene, cue))
        ):
            _behind(scene, cue, laid)
    return laid


def _not_within(scene: Scene, found: list[Phrase]) -> list[Phrase]:
    """Those found by form that overlap no longer cue of the lexicon: a row knows better, unless the form holds all of it."""

    def knows_better(row: Phrase, cue: Phrase) -> bool:
        return row.row.kind in ("hedge", "unchecked", "denial") and row.last - row.first > 1 and not _holds(cue, row)

    return [
        cue
        for cue in found
        if not _unread(scene, cue) and not any(knows_better(row, cue) for row in scene.cues_over(cue.first, cue.last))
    ]


def _unread(scene: Scene, cue: Phrase) -> bool:
    """ "Mint! Never opened.": praise of a copy that nobody has read, and no word of the seller's not looking."""
    first, last = scene.segment(cue.first)
    said = [word for word in scene.norm[first:last] if word[0].isalnum()]
    return said[-1:] == ["opened"] and len(said) <= 4 and not {"i", "we", "i've", "we've"} & set(said)


def _holds(one: Phrase, other: Phrase) -> bool:
    """Whether a phrase holds another and more."""
    return one.first <= other.first and other.last <= one.last and other.last - other.first < one.last - one.first


def _ahead(scene: Scene, clause: Clause, cues: dict[int, Phrase], laid: Layers) -> None:
    """Walks a clause from left to right with the cues that are running."""
    active: dict[str, Phrase] = {}
    listed = False  # whether the running denial has named anything yet
    index = clause.first
    while index < clause.last:
        cue = cues.get(index)
        if cue is not None:
            listed = _start(scene, clause, cue, active, listed)
            for kind, running in active.items():
                if running is not cue or kind == "elsewhere":
                    laid.lay(running, cue.first, min(cue.last, clause.last), kind)
            index = cue.last
            continue
        if active:
            for kind in [kind for kind, running in active.items() if ends(scene, clause, index, running, listed)]:
                del active[kind]
        phrase = scene.at.get(index)
        behind = index + 1 if phrase is None else phrase.last
        for kind, running in active.items():
            laid.lay(running, index, min(behind, clause.last), kind)
        if phrase is not None:
            listed = listed or (phrase.row.kind == "term" and phrase.row.feature != "jacket")
            for at in range(index + 1, behind):
                if at in cues and cues[at].row.kind == "elsewhere":
                    active["elsewhere"] = cues[at]
        index = behind


def _start(scene: Scene, clause: Clause, cue: Phrase, active: dict[str, Phrase], listed: bool) -> bool:
    """Starts, turns or stops cues at a cue; returns whether the running denial has named anything yet."""
    kind = cue.row.kind
    if kind == "contrast":
        active.clear()
    elif kind == "exception":
        active.pop("denial", None)
        active.pop("hedge", None)
    elif kind == "this copy":
        active.pop("elsewhere", None)
    elif kind == "elsewhere":
        if not _of_this_copy(scene, cue, active):
            active[kind] = cue
    elif cue.row.direction != "back" and not closes(scene, cue) and not _other_sense(scene, cue):
        if kind == "denial" and not listed and scene.norm[cue.first] == "nor" and active.get("denial", cue).row.sign == "subject":
            return listed  # "neither book nor jacket has any tears"
        if kind == "denial" and "denial" in active and _undone(cue, active["denial"], listed):
            active.pop("denial")  # "not without": two denials make none
        else:
            active[kind] = cue
            return False
    return listed


def _undone(cue: Phrase, running: Phrase, listed: bool) -> bool:
    """Whether a denial undoes the one that runs: "not without", "untrue to say that there is no"."""
    return not listed and (cue.first == running.last or running.row.sign == "litotes")


def _other_sense(scene: Scene, cue: Phrase) -> bool:
    """ "May 1936" is no hedge, and a jacket that "wants $5.50" asks it; "good minus" is a grade."""
    following = scene.norm[cue.last] if cue.last < len(scene.norm) else ""
    said = scene.norm[cue.first : cue.last]
    if said == ["may"]:
        return following[:1].isdecimal()
    if said == ["minus"]:
        return scene.norm[cue.first - 1 : cue.first] in (["good"], ["fine"], ["fair"], ["vg"], ["nf"])
    return said == ["wants"] and (following[:1].isdecimal() or following in ("$", "£", "€") or following in roles()["numbers"])


def _of_this_copy(scene: Scene, cue: Phrase, active: dict[str, Phrase]) -> bool:
    """ "All first editions", "these are later printings", "here in the first impression": said of this copy after all."""
    before = scene.norm[cue.first - 1] if cue.first else ""
    if cue.row.sign == "printings" and before == "of" and scene.norm[cue.first - 2] in roles()["listing_nouns"]:
        return True
    if cue.row.sign == "printings" and before in roles()["own_printings"]:
        return True
    if any(other.last == cue.first and other.row.kind == "this copy" for other in scene.cues_over(cue.first - 1, cue.first)):
        return True
    return any(
        kind != "elsewhere" and other.row.sign != "report" and 0 <= cue.first - other.last <= 1 for kind, other in active.items()
    )


def _behind(scene: Scene, cue: Phrase, laid: Layers) -> None:
    """Lays a cue over what stands before it: its segment, the one before a comma, or the label that it answers."""
    clause = scene.clause(cue.first)
    first, _ = scene.segment(cue.first)
    first, last = max(first, clause.first), cue.first
    first, last = statement(scene, cue, first, last)
    while not says_something(scene, first, last) and first > clause.first:
        last = first
        first = max(scene.segment(first - 1)[0], clause.first)
    if not says_something(scene, first, last):
        number = scene.clause_of[cue.first]
        if number == 0 or not _alone(scene, cue, clause):
            return
        before = scene.clauses[number - 1]
        if cue.row.kind == "denial" and before.end not in LABEL_ENDS:
            return
        if before.end == "?" and cue.row.kind != "denial":
            return
        first, last = scene.segment(before.last - 1)[0], before.last
        clause = before
        if cue.row.kind == "denial" and number - 1 not in laid.answers:
            for index in range(first, last):
                laid.elsewhere[index] = laid.hedge[index] = None
    if cue.row.kind == "hedge" and not scene.norm[cue.first - 1][0].isalnum():
        while first > clause.first and of_printing(scene, *scene.segment(first - 1)) and of_printing(scene, first, last):
            first = scene.segment(first - 1)[0]
    laid.lay(cue, max(first, clause.first), last)


def _alone(scene: Scene, cue: Phrase, clause: Clause) -> bool:
    """Whether a clause says nothing but the cue."""
    return not says_something(scene, clause.first, cue.first)


def _question(scene: Scene, number: int, clause: Clause, laid: Layers, unknown: Collection[int]) -> None:
    """A question is said of no copy; a yes or no behind it asserts or denies what was asked."""
    found = asked(scene, number, unknown)
    if found is None:
        return
    first, answer = found
    mark = Phrase(QUESTION, clause.last - 1, clause.last)
    for index in range(first, clause.last):
        laid.elsewhere[index] = mark
    if answer is not None:
        laid.answers[number] = answer


def resolve(draft: Draft, laid: Layers) -> tuple[Stance, str, Phrase | None]:
    """Stance and value of a draft, and the cue behind them.

    A weak denial of a feature that is only ever "yes" has the value "no", hedged; a doubt about a feature of several values
    keeps the value that it doubts.
    """
    if draft.stance is not None:
        return draft.stance, draft.value, None
    stance, cue, doubt = laid.at(draft.first)
    if cue is None and draft.last - draft.first > 1:
        stance, cue, doubt = laid.at(draft.last - 1)
    value = draft.value
    if stance == "denied" and cue is not None and draft.feature in roles()["hard_facts"] and abs(draft.first - cue.last) > 1:
        return "asserted", value, None
    if draft.negative and stance == "denied":
        return "asserted", value, None  # "no blind stamp" is the reading "none": its own words hold the denial
    if draft.denied:
        if stance == "asserted" or (
            stance == "denied" and cue is not None and cue.last != draft.first and cue.row.sign != "litotes"
        ):
            stance = "denied"
        elif stance == "denied":
            stance = "asserted"
        elif stance == "hedged":
            value = "no" if value == "yes" else value
    elif stance == "hedged" and doubt and value == "yes":
        value = "no"
    return stance, value, cue
