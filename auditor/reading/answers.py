"""Questions and their answers: "Is it signed? Sadly not.", "Has it a jacket? It has.", "asked whether it is the club's".

What is asked is said of no copy; what the answer right behind makes of it is told by its first words, which stand in
lexicon/forms/answers.toml.
"""

from __future__ import annotations

from collections.abc import Collection

from auditor.reading.scene import Clause, Scene, roles
from auditor.reading.starts import Start
from auditor.reading.walker import walker
from auditor.values import Stance

_BEFORE = {":", ".", ",", "-", '"', "'", "("}
_SPEAKERS = {"a", "answer", "reply", "seller"}
_LONGEST = 5  # words of a set answer


_ASKING = Start(lambda word: word in walker().words("asking"))


def asked(scene: Scene, number: int, unknown: Collection[int] = ()) -> tuple[int, Stance | None] | None:
    """The word from which a clause asks something and what the answer makes of it (None: neither yes nor no); None where
    nothing is asked. ``unknown`` are the clauses in which something is said not to be known."""
    clause = scene.clauses[number]
    indirect = _indirect(scene, clause)
    if indirect is not None:
        return indirect, _answer(scene, number, unknown)
    if clause.end != "?":
        return None
    opening = [word for word in scene.norm[clause.first : clause.first + 5] if word not in _BEFORE]
    answer = _answer(scene, number, unknown)
    if opening and opening[0] in roles()["question_openers"]:
        return clause.first, answer
    if answer in ("asserted", "denied") or (answer == "unchecked" and _by_itself(scene, clause)):
        return max(clause.first, scene.segment(clause.last - 1)[0]), answer
    return None


def _by_itself(scene: Scene, clause: Clause) -> bool:
    """ "Cigarette smell? Can't tell.": a question of its own; in "a first impression?? don't know" the mark is a doubt."""
    doubled = scene.norm[clause.last : clause.last + 1] == ["?"]
    return not doubled and scene.segment(clause.last - 1)[0] == clause.first


def _indirect(scene: Scene, clause: Clause) -> int | None:
    """ "We've been asked whether ours is the Guild's": the word behind "whether"."""
    words, norm = walker().words, scene.norm
    for at in scene.starting(_ASKING):
        if clause.first <= at < clause.last - 1 and set(norm[at + 1 : at + 4]) & words("whether"):
            if norm[clause.first] in ("please", "do", "just", "feel"):
                return None
            return at + 1
    return None


def _answer(scene: Scene, number: int, unknown: Collection[int]) -> Stance | None:
    for at, clause in enumerate(scene.clauses[number + 1 : number + 4], number + 1):
        inside = range(clause.first, clause.last)
        first = next((word for word in inside if scene.norm[word][0].isalpha() and scene.norm[word] not in _SPEAKERS), None)
        if first is None:
            continue
        if clause.end == "?":
            return None
        answer = _said(scene, clause, first)
        if at in unknown and answer != "hedged" and _nothing_told(scene, clause, first):
            return "unchecked"
        return "asserted" if answer is None and _placed(scene, scene.clauses[number], first) else answer
    return None


def _nothing_told(scene: Scene, clause: Clause, first: int) -> bool:
    """Whether an answer's first words, up to a mark, name nothing and are no plain no."""
    last = next((at for at in range(first, clause.last) if not scene.norm[at][0].isalnum()), clause.last)
    return not scene.between(first, last) and scene.norm[first] not in walker().words("no")


def _placed(scene: Scene, question: Clause, first: int) -> bool:
    """ "Foxed? On the top edge, faintly.": where or how much answers a question after a fault."""
    asked_after = [phrase for phrase in scene.between(question.first, question.last) if phrase.row.kind == "term"]
    return (
        scene.norm[first] in walker().words("answers-where")
        and bool(asked_after)
        and all(p.row.feature == "defect" for p in asked_after)
    )


def _said(scene: Scene, clause: Clause, first: int) -> Stance | None:
    """What an answer says that begins at this word."""
    words, norm = walker().words, scene.norm
    plain = [word for word in norm[first : clause.last] if word[0].isalpha()][:_LONGEST]
    openings = {" ".join(plain[start:width]) for start in (0, 1) for width in range(start + 1, _LONGEST + 1)}
    if openings & (words("answers-unlooked") | words("answers-unknown")):
        return "unchecked"
    if openings & words("answers-perhaps"):
        return "hedged"
    at = _behind_softeners(scene, clause, first)
    following = norm[at + 1] if at + 1 < clause.last else "."
    if norm[at] in words("answer-pronouns"):
        return _verb(scene, clause, at + 1)
    if norm[at] in words("yes"):
        return "asserted" if norm[at] != "so" or norm[at - 1 : at] == ["afraid"] else None
    if norm[at] not in words("no"):
        return "denied" if norm[at - 1 : at] == ["afraid"] and not norm[at][0].isalnum() else None
    if norm[at] == "not" and following == "that":
        return None  # "not that I noticed" denies by half
    if norm[at] == "no" and following[0].isalnum():
        return None  # "Club edition? No price on the flap." answers nothing
    return "denied"


def _behind_softeners(scene: Scene, clause: Clause, at: int) -> int:
    """The word of an answer behind "I'm afraid", "well", "sadly"."""
    words, norm = walker().words, scene.norm
    softeners = words("softeners") | words("afraid") | {","}
    while at < clause.last - 1 and norm[at] in softeners and norm[at + 1] not in (".", "!"):
        if norm[at] in words("answer-pronouns") and norm[at + 1] in words("answer-verbs") | words("answer-verbs-not"):
            break
        at += 1
    return at


def _verb(scene: Scene, clause: Clause, at: int) -> Stance | None:
    """A pronoun's verb that says no more than yes or no: "it does", "they have, in green", "it is not: red cloth"."""
    words, norm = walker().words, scene.norm
    if at >= clause.last:
        return None
    following = norm[at + 1] if at + 1 < clause.last else "."
    alone = not following[0].isalnum() or following in words("behind-an-answer")
    if norm[at] in words("answer-verbs-not") and alone:
        return "denied"
    if norm[at] in words("answer-verbs") and following in ("not", "n't"):
        behind = norm[at + 2] if at + 2 < clause.last else "."
        return "denied" if not behind[0].isalnum() or behind in words("behind-an-answer") else None
    return "asserted" if norm[at] in words("answer-verbs") and alone else None
