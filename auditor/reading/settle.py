"""From drafts to claims: each gets its stance and its part, repeats fall together, the contract's settled cases are applied."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from auditor.knowledge.lines import lowest
from auditor.reading.clarity import mixed_clauses
from auditor.reading.degrees import degree_of
from auditor.reading.headings import HEADING
from auditor.reading.nouns import GOVERNED
from auditor.reading.othercopies import is_lot
from auditor.reading.parts import last_spoken, part_of
from auditor.reading.phrases import Phrase
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.stance import QUESTION, Layers, resolve
from auditor.values import Claim, Degree, Part, Stance, Trace

_COUNTRIES = {"1 american", "1 british", "1 canadian", "1 english"}
_BESIDE = 80  # characters between a point's words and the same told as a printing
_DEGREES: tuple[Degree | None, ...] = ("slight", None, "heavy")
_NEGATED = {"lacking", "none issued", "none"}


def settle(scene: Scene, drafts: Sequence[Draft], laid: Layers) -> tuple[Claim, ...]:
    """Claims in the order of the text, each stated once for each value, part and stance."""
    spoken = _spoken(scene)
    scopes = _scopes(scene, laid)
    mixed = mixed_clauses(scene, drafts, laid)
    claims: list[Claim] = []
    ours: set[tuple[str, str, str, str]] = set()
    own_talk = any(cue.row.kind == "this copy" for cue in scene.cues)
    for draft in sorted(drafts, key=lambda draft: (draft.first, draft.last)):
        clause = scene.clause_of[draft.first]
        stance, value, cue = resolve(draft, laid)
        claim = _claim(scene, laid, draft, stance, value, cue, spoken[clause], scopes)
        if claim is None:
            continue
        if clause in mixed:
            claim = replace(claim, clear=False)
        claims.append(claim)
        if own_talk and _said_of_ours(scene, draft):
            ours.add(claim.key)
        answer = laid.answers.get(clause)
        if answer is not None and claim.stance == "elsewhere":
            answered = _answered(claim, answer)
            if answered.stance == "denied" and draft.part is None:
                answered = replace(answered, part=part_of(scene, draft, "denied", spoken[clause]).part)
            claims.append(answered)
    lot = scene.once(is_lot)
    return tuple(_settled(_once(claims if lot else _of_one_copy(claims, ours)), lot))


def _answered(claim: Claim, answer: Stance) -> Claim:
    """What was asked, as its answer puts it: "Has it a jacket? No." tells that it lacks one."""
    if claim.feature == "jacket" and claim.value == "present" and answer == "denied":
        return replace(claim, value="lacking", stance="asserted")
    return replace(claim, stance=answer)


def _said_of_ours(scene: Scene, draft: Draft) -> bool:
    """Whether talk of this copy ("ours", "this one") stands before a draft in its clause."""
    clause = scene.clause(draft.first)
    return any(cue.row.kind == "this copy" for cue in scene.cues_between(clause.first, draft.first))


def _claim(
    scene: Scene,
    laid: Layers,
    draft: Draft,
    stance: Stance,
    value: str,
    cue: Phrase | None,
    spoken: Part,
    scopes: dict[int, tuple[int, int]],
) -> Claim | None:
    feature = draft.feature
    if feature == "jacket":
        if value == "present":
            if stance == "elsewhere" and not _asked_after(scene, draft, cue):
                if cue is None or cue.row is not QUESTION:
                    return None
                stance = "asserted"  # "Has the jacket got tears?" names one
            if _lacking(scene, draft, cue):
                value, stance = "lacking", "asserted" if stance == "denied" else stance
            elif stance in ("denied", "hedged") or (stance == "unchecked" and not _in_doubt(scene, draft)):
                stance = "asserted"
        elif value in _NEGATED and stance == "denied":
            stance = "asserted"
    if feature in ("number_line", "jacket_price") and value == "none" and stance == "denied":
        stance = "asserted"
    if stance == "hedged" and cue is not None and _judged(scene, feature, cue):
        stance = "asserted"
    if draft.row == "bare ordinal" and stance in ("asserted", "unchecked"):
        return None
    if value == "":  # a topic without a value
        if stance != "unchecked" and laid.answers.get(scene.clause_of[draft.first]) != "unchecked":
            return None
        value = "unknown"
    if value == "unknown":
        stance = "unchecked"
    if feature == "binding" and stance == "denied":
        stance = "asserted"
    governor = None
    part = draft.part
    if part is None:
        found = part_of(scene, draft, stance, spoken)
        part, governor = found.part, found.word
    if feature == "lapse":
        part = _lapse_part(scene, draft)
    words = scene.words
    trace = Trace(
        draft.row,
        " ".join(scene.norm[cue.first : cue.last]) if cue else None,
        cue.row.id if cue else None,
        (words.start[cue.first], words.end[cue.last - 1]) if cue else None,
        scopes.get(id(cue)),
        governor,
    )
    return Claim(
        feature, value, part, stance, words.start[draft.first], words.end[draft.last - 1], trace, degree_of(scene, draft)
    )


def _judged(scene: Scene, feature: str, cue: Phrase) -> bool:
    """ "I'd put it at very good", "red cloth I'd call it": a judgement, and no doubt."""
    said = roles()["judging"] & set(scene.norm[cue.first : cue.last])
    return bool(said) and (feature in ("grade", "binding") or (feature == "point" and "call" in said))


def _scopes(scene: Scene, laid: Layers) -> dict[int, tuple[int, int]]:
    """From where to where each cue was laid, as offsets, by the cue's identity."""
    words = scene.words
    found: dict[int, tuple[int, int]] = {}
    for layer in (laid.denial, laid.hedge, laid.unchecked, laid.elsewhere):
        for index, cue in enumerate(layer) if any(layer) else ():
            if cue is not None:
                first, last = found.get(id(cue), (words.start[index], words.end[index]))
                found[id(cue)] = min(first, words.start[index]), max(last, words.end[index])
    return found


def _lacking(scene: Scene, draft: Draft, cue: Phrase | None) -> bool:
    """Whether a jacket named is denied itself ("dust jacket: no", "jacket may not be included") and not something about it."""
    if cue is None:
        return False
    if cue.row.kind == "hedge":
        beside = cue.first == draft.last or 0 <= draft.first - cue.last <= 1
        return "not" in scene.norm[cue.first : cue.last] and beside
    if any(other.row.feature in GOVERNED for other in scene.between(draft.last, cue.first)):
        return False  # "jacket: chips none"
    if cue.last == draft.first and (behind := scene.at.get(draft.last)) is not None and behind.row.feature in GOVERNED:
        return False  # "no jacket tears"
    if cue.row.kind == "denial" and scene.norm[cue.first] in ("nor", "neither") and _has_verb(scene, draft):
        return False
    return cue.row is HEADING or (cue.row.kind == "denial" and (0 <= cue.first - draft.last <= 4 or cue.last == draft.first))


def _has_verb(scene: Scene, draft: Draft) -> bool:
    """ "Neither book nor jacket has tears": what is denied is said behind."""
    return bool(roles()["linking_verbs"] & set(scene.norm[draft.last : draft.last + 1]))


def _asked_after(scene: Scene, draft: Draft, cue: Phrase | None) -> bool:
    """ "Has it got a jacket?", "Any jacket?", "Jacket?": the jacket itself is asked after, and not something about it."""
    if cue is None or cue.row is not QUESTION:
        return False
    before = scene.norm[max(0, draft.first - 1) : draft.first]
    behind = scene.norm[draft.last : draft.last + 1]
    return (
        before in (["a"], ["any"])
        or behind in (["there"], ["present"], ["included"])
        or all(not word[0].isalpha() for word in scene.norm[scene.clause(draft.first).first : draft.first])
    )


def _in_doubt(scene: Scene, draft: Draft) -> bool:
    """ "Not sure if there was ever a jacket": the jacket itself wasn't looked for, and not something about it."""
    before = scene.norm[max(scene.clause(draft.first).first, draft.first - 8) : draft.first]
    return (
        "ever" in before
        or before[-2:] in (["had", "a"], ["has", "a"], ["have", "a"])
        or before[-3:-1] in (["had", "a"], ["has", "a"], ["have", "a"])
    )


def _lapse_part(scene: Scene, draft: Draft) -> Part:
    """A lapse said of the jacket is the jacket's: "rare jacket", "jacket is pristine"."""
    following = scene.between(draft.last, draft.last + 4)
    if (
        following
        and following[0].row.feature == "jacket"
        and not any(w in (".", ",", ";", "in") for w in scene.norm[draft.last : following[0].first])
    ):
        return "jacket"
    first, _ = scene.segment(draft.first)
    before = scene.between(first, draft.first)
    if before and before[-1].row.feature == "jacket" and before[-1].row.value == "present":
        between = scene.norm[before[-1].last : draft.first]
        if all(word in ("is", "in", "also", "absolutely", "itself", "condition", "a", "too", "remains", ":") for word in between):
            return "jacket"
    return "copy"


def _spoken(scene: Scene) -> list[Part]:
    """For each clause the part last spoken of before it."""
    parts: list[Part] = []
    part: Part = "book"
    for clause in scene.clauses:
        parts.append(part)
        part = last_spoken(scene, clause.first, clause.last, part)
    return parts


def _of_one_copy(claims: list[Claim], ours: set[tuple[str, str, str, str]]) -> list[Claim]:
    """A copy shows one reading at a place and has one price: where a text asserts two, the one beside talk of this copy is its
    own, else the first told; the rest is of other copies."""
    own: dict[str, str] = {}
    told = [claim for claim in claims if claim.feature in ("point", "jacket_price") and claim.stance == "asserted"]
    for claim in (*(claim for claim in told if claim.key in ours), *told):
        own.setdefault(_place(claim), claim.value)
    kept = []
    for claim in claims:
        other = claim.feature in ("point", "jacket_price") and claim.stance == "asserted" and own[_place(claim)] != claim.value
        kept.append(replace(claim, stance="elsewhere") if other else claim)
    return kept


def _place(claim: Claim) -> str:
    """What a copy shows one of: a point, or a price in a currency."""
    return claim.value.partition("=")[0] if claim.feature == "point" else claim.value.partition(" ")[2]


def _given(told: str, lines: set[str]) -> bool:
    """Whether a line written out has the lowest number that is told of it."""
    return any(line[:1].isdecimal() and f"to {lowest(line)}" == told for line in lines)


def _once(claims: Iterable[Claim]) -> list[Claim]:
    """Each claim once, where it is first told; of a fault told twice the heavier degree counts; one clear telling is enough."""
    seen: dict[tuple[str, str, str, str], Claim] = {}
    for claim in claims:
        first = seen.setdefault(claim.key, claim)
        if _heavier(claim.degree, first.degree) or (claim.clear and not first.clear):
            degree = claim.degree if _heavier(claim.degree, first.degree) else first.degree
            seen[claim.key] = replace(first, degree=degree, clear=claim.clear or first.clear)
    return list(seen.values())


def _heavier(degree: Degree | None, other: Degree | None) -> bool:
    return _DEGREES.index(degree) > _DEGREES.index(other)


def _told_as_point(claim: Claim, claims: list[Claim]) -> bool:
    """ "No later printings listed" is the point where the set has a reading of it: "first published 1957, nothing after it"."""
    beside = [point for point in claims if point.feature == "point" and abs(point.start - claim.start) < _BESIDE]
    return any({"nothing", "later", "alone", "only"} & set(point.value.partition("=")[2].lower().split()) for point in beside)


def _settled(claims: list[Claim], lot: bool) -> list[Claim]:
    """The contract's rules about claims side by side."""
    said: dict[tuple[str, str], set[str]] = {}
    for claim in claims:
        said.setdefault((claim.feature, claim.stance), set()).add(claim.value)
    editions = said.get(("edition", "asserted"), set()) | said.get(("edition", "hedged"), set())
    jackets = said.get(("jacket", "asserted"), set()) - ({"lacking"} if lot else set())  # "one without" beside one with
    lines = said.get(("number_line", "asserted"), set())
    kept = []
    for claim in claims:
        if claim.key[:2] == ("printing", "later") and claim.stance in ("denied", "hedged") and _told_as_point(claim, claims):
            continue
        if claim.feature == "edition" and claim.value == "1" and claim.stance in ("asserted", "hedged") and editions & _COUNTRIES:
            continue
        if (
            claim.feature == "jacket"
            and claim.value == "present"
            and claim.stance != "elsewhere"
            and jackets & {"supplied", "facsimile", "lacking", "none issued"}
        ):
            continue
        if claim.feature == "jacket" and claim.value == "lacking" and "none issued" in jackets:
            continue
        if (
            claim.feature == "number_line"
            and claim.value in ("full",)
            and any(v[:1].isdecimal() or v.startswith("to ") for v in lines)
            and claim.stance == "asserted"
        ):
            continue
        if (
            claim.feature == "number_line"
            and claim.value.startswith("to ")
            and claim.stance == "asserted"
            and _given(claim.value, lines)
        ):
            continue
        kept.append(claim)
    return kept
