"""The jacket: present wherever one of this copy is named, unless it is said to lack, to be a facsimile or another copy's.

The words for each stand in lexicon/forms/jackets.toml, the jacket's names
in the row "jacket present" of lexicon/reading/copy.toml.
"""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.nouns import GOVERNED
from auditor.reading.phrases import Phrase
from auditor.reading.readers.tales import in_tale
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start
from auditor.reading.walker import walker

_BEFORE, _BEHIND = 7, 14  # words looked at on either side


def _words(name: str) -> frozenset[str]:
    return walker().words(f"jacket-{name}")


_WITHOUT = Start(lambda word: word == "without")
_SWAPPING = Start(lambda word: word in _words("swapping"))


def read_jackets(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``jacket``, one for each time that a jacket is named."""
    yield from _swapped(scene)
    yield from _without(scene)
    for phrase in scene.content:
        if in_tale(scene, phrase.first):
            continue
        if phrase.row.kind == "noun" and phrase.row.part == "jacket" and _names_it(scene, phrase):
            told = _told_behind(scene, phrase) if phrase.last - phrase.first == 1 else None  # "the jacket's a photocopy"
            value, last = told or ("present", phrase.last)
            yield Draft("jacket", value, phrase.first, last, "jacket part", part="jacket")
        if phrase.row.feature != "jacket":
            continue
        if phrase.row.kind == "topic":
            yield Draft("jacket", "", phrase.first, phrase.last, phrase.row.id, part="jacket")
            continue
        value, last = phrase.row.value or "present", phrase.last
        before = _told_before(scene, phrase, value)
        if before is not None:
            value = before
        elif value == "present":
            value, last = _told_behind(scene, phrase) or (value, last)
        if value == "present" and (kind := _not_another(scene, phrase)) is not None:
            yield Draft("jacket", kind, phrase.first, phrase.last, f"jacket {kind}", part="jacket", stance="denied")
        denied = bool(_words("negations") & set(scene.norm[phrase.last : last]))  # "not its own"
        yield Draft("jacket", value, phrase.first, last, f"jacket {value}", part="jacket", negative=denied)


def _swapped(scene: Scene) -> Iterator[Draft]:
    """ "The rear panel has the review, so somebody has swopped it for a later one": a jacket spoken of before."""
    norm = scene.norm
    for at in scene.starting(_SWAPPING):
        first = scene.clause(at).first
        spoken = any(phrase.row.part == "jacket" for phrase in scene.between(first, at))
        if spoken and norm[at + 1 : at + 3] == ["it", "for"]:
            yield Draft("jacket", "supplied", at, at + 3, "jacket supplied", part="jacket")


def _without(scene: Scene) -> Iterator[Draft]:
    """ "Two with jackets and one without": of some books of a lot."""
    norm = scene.norm
    for at in scene.starting(_WITHOUT):
        ends = at + 1 == len(norm) or not norm[at + 1][0].isalnum() or norm[at + 1] in ("and", "but")
        some = at > 0 and (norm[at - 1] in _words("some-of-a-lot") or norm[at - 1].isdecimal())
        jackets = (phrase.row.part == "jacket" for phrase in scene.between(scene.clause(at).first, at))
        if ends and some and any(jackets):
            yield Draft("jacket", "lacking", at - 1, at + 1, "jacket lacking", part="jacket", negative=True)


def _names_it(scene: Scene, phrase: Phrase) -> bool:
    """ "Jacket flap", "back of the dj" name the jacket; "front flap" alone doesn't."""
    return any(
        word.removesuffix("'s") in _words("names") or word == "wrapper's" for word in scene.norm[phrase.first : phrase.last]
    )


def _told_before(scene: Scene, phrase: Phrase, value: str) -> str | None:
    norm = scene.norm
    clause = scene.clause(phrase.first)
    if (fault := scene.at.get(phrase.last)) is not None and value == "present" and fault.row.feature in GOVERNED:
        return None  # "no jacket tears"
    lacking = value == "lacking"
    at = phrase.first - 1
    while at >= max(clause.first, phrase.first - _BEFORE):
        word = norm[at]
        if word in _words("facsimile-before"):
            return "facsimile"
        if word in _words("supplied-before"):
            return "supplied"
        if word in _words("lacking-before") or (word in _words("have-not") and norm[at + 1] in _words("having")):
            lacking = not (
                phrase.row.value == "present" and scene.norm[phrase.last - 1].endswith("s")
            )  # "two without jackets": of others
            break
        if word not in _words("between") | _words("having"):
            break
        at -= 1
    if not lacking:
        return None
    behind = [word for word in norm[phrase.last : phrase.last + 5] if word not in (",", "(", "with")]
    told = {" ".join(behind[:width]) for width in (1, 2, 3)}
    around = norm[max(clause.first, phrase.first - 4) : phrase.last]
    issued_before = "issued" in around or (
        "never" in around
        and "had" in around
        and behind[:1] not in (["while"], ["when"], ["since"], ["in"])
        and not {"i", "we", "the", "i've", "we've"} & set(around)
    )
    return "none issued" if told & _words("never-issued") or issued_before else "lacking"


def _told_behind(scene: Scene, phrase: Phrase) -> tuple[str, int] | None:
    """What is said of the jacket behind its name, and the word behind the one that says it."""
    norm = scene.norm
    clause = scene.clause(phrase.first)
    negated = False
    for at in range(phrase.last, min(clause.last, phrase.last + _BEHIND)):
        word = norm[at]
        negated = word not in (":", "—", ";") and (negated or word in _words("negations"))
        for value in ("facsimile", "supplied", "lacking"):
            if word == "own":
                return ("supplied", at + 1) if negated else None
            copied = value == "facsimile" and word == "copy" and norm[at - 1] in _words("copied")
            if word in _words(f"{value}-behind") or copied:
                return None if negated or (value == "lacking" and not _gone(scene, at)) else (value, at + 1)
        if word in _words("sources") and norm[at - 1] != ",":
            return ("supplied", at + 1) if _another_copy(norm, at + 1) else None
        if negated and word in _words("lacking-behind-not") and at - phrase.last <= (6 if norm[at - 1] == "longer" else 4):
            return "lacking", at + 1
        if negated and word in ("original", "issued", "called"):
            return "supplied" if word == "original" else "none issued", at + 1
        if word not in _words("behind"):
            return None
    return None


def _not_another(scene: Scene, phrase: Phrase) -> str | None:
    """ "The jacket is no reproduction", "not supplied from elsewhere": what the jacket is said not to be."""
    norm, negated = scene.norm, False
    for at in range(phrase.last, min(scene.clause(phrase.first).last, phrase.last + _BEHIND)):
        word = norm[at]
        negated = negated or word in _words("negations")
        for value in ("facsimile", "supplied"):
            if negated and word != "own" and word in _words(f"{value}-behind"):
                return value
        if not any(word in _words(name) for name in ("behind", "negations", "rightful")):
            return None
    return None


def _gone(scene: Scene, at: int) -> bool:
    """Whether the jacket itself is gone: "jacket gone years ago", and not "missing a piece" or "gone from red to pink"."""
    norm = scene.norm
    following = norm[at + 1] if at + 1 < len(norm) else "."
    if norm[at] == "went" and not following[0].isalpha():
        return False
    if norm[at] == "away" and norm[at - 1] not in ("thrown", "gone", "is", "jacket's", "given"):
        return False
    return following in _words("lacking-ends") and f"{norm[at]} {following}" not in _words("lacking-ends-not")


def _another_copy(norm: list[str], index: int) -> bool:
    """ "from a later printing", "to the third", "from another copy"."""
    return any(word in _words("other-copy") for word in norm[index : index + 4] if word not in (",", "."))
