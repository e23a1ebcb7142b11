"""How many copies there are: a limitation ("number 34 of 250", "limited to forty") or a print run ("just 250 were run off")."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from auditor.reading.readers.counts import count_at, counting, openers
from auditor.reading.readers.known_houses import year_of
from auditor.reading.readers.lettered import lettered
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start
from auditor.values import Stance

_LABELS = {"copy", "number", "numbered", "no", "nr", "num", "#", "handnumbered", "limitation"}
_BETWEEN = {"no", "number", ".", ":", "#", "of", "the"}
_OF_ALL = {
    "an",
    "a",
    "the",
    "only",
    "just",
    "edition",
    "limitation",
    "run",
    "total",
    "of",
    "limited",
    "to",
    "special",
    "signed",
    "numbered",
    "deluxe",
    "first",
}
_THIS = {"this", "ours", "mine", "it", "here", "copy", "being", "is", "and", "one"}
_FEWEST_LIMITED = 5
_FEWEST_RUN = 20
_FEWEST_BARE = 100  # a run of which neither copies nor printing are told in so many words
_BEFORE, _BEHIND = 8, 9
_FURTHEST = 25  # words from the limitation to the copy's own number


_START = Start(lambda word: word[0].isdecimal() or word in openers())


class Count(NamedTuple):
    """A number of copies at words ``first`` up to and without ``last``."""

    value: int
    first: int
    last: int


def read_copies(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``limitation`` and ``print_run``."""
    limited: list[Count] = []
    index = 0
    letters = list(lettered(scene))
    yield from letters
    for at in scene.starting(_START):
        found = count_at(scene.norm, at) if at >= index else None
        if found is None:
            continue
        count = Count(found[0], at, found[1])
        index = count.last
        numbered = _numbered(scene, count)
        if numbered is not None:
            index = numbered.last
            yield numbered
            continue
        if _counts_else(scene, count) or any(letter.first < count.first < letter.last for letter in letters):
            continue
        kind = _kind(scene, count)
        if kind == "limitation" and count.value >= _FEWEST_LIMITED:
            limited.append(_opened(scene, count))
        elif kind == "print_run":
            general: Stance | None = "elsewhere" if scene.norm[count.last : count.last + 1] == ["firsts"] else None
            yield Draft(
                "print_run", str(count.value), _opened(scene, count).first, count.last, "print run", part="book", stance=general
            )
    for count in limited:
        yield _with_own_number(scene, count)


def _numbered(scene: Scene, count: Count) -> Draft | None:
    """ "Number 34 of 250". "One of 250" is no copy's own number."""
    of_all = _of_all(scene, count)
    own = _label(scene, count.first) if of_all is not None else None
    if of_all is None or own is None or (scene.norm[count.first] == "one" and scene.norm[own] not in _LABELS):
        return None
    plain = {"no", "nr"} & set(scene.norm[own : count.first])
    stance: Stance | None = "asserted" if plain else None
    return Draft("limitation", f"{count.value} of {of_all.value}", own, of_all.last, "limitation", part="book", stance=stance)


def _of_all(scene: Scene, count: Count) -> Count | None:
    """ "34 of 250", "34/250", "7 of an edition of forty": the whole number behind a copy's own."""
    norm, at = scene.norm, count.last
    stroke = norm[at : at + 1] == ["/"]
    if stroke or norm[at : at + 1] in (["of"], ["from"]):
        at += 1
    elif norm[at : at + 2] == ["out", "of"]:
        at += 2
    else:
        return None
    while not stroke and at < len(norm) and norm[at] in _OF_ALL and at - count.last < 8:
        at += 1
    found = count_at(norm, at) if at < len(norm) else None
    if found is None or not 0 < count.value <= found[0] or found[0] < (13 if stroke else _FEWEST_LIMITED):
        return None
    behind = norm[found[1] : found[1] + 1]
    glued = behind == ["."] and norm[found[1] + 1 : found[1] + 2] and scene.words.start[found[1] + 1] == scene.words.end[found[1]]
    dated = behind == ["/"] or (glued and norm[found[1] + 1].isdecimal())
    return (
        None
        if dated or set(norm[found[1] : found[1] + 4]) & {"series", "set", "volumes", "vols", "parts"}
        else Count(found[0], at, found[1])
    )


def _label(scene: Scene, index: int) -> int | None:
    """The word that makes a number before ``index`` a copy's own: "copy no.", "#", "being"."""
    norm, at = scene.norm, index - 1
    while at >= 0 and norm[at] in _BETWEEN and norm[at] not in _LABELS:
        at -= 1
    if at >= 0 and norm[at] in _LABELS | {"numbering"}:
        while at > 0 and norm[at - 1] in _LABELS | {"."}:
            at -= 1
        return at + (norm[at] == ".")
    if index and norm[index - 1] in ("is", "being") and norm[index + 1 : index + 2] != ["/"]:
        return index - 1
    return None


def _counts_else(scene: Scene, count: Count) -> bool:
    """Pages, sums, sizes, volumes."""
    norm, words = scene.norm, counting("copies")
    before = norm[count.first - 1] if count.first else ""
    if before == "." and count.first > 1:
        before = norm[count.first - 2] if norm[count.first - 2] in ("p", "pp", "no", "vol") else before
    behind = norm[count.last] if count.last < len(norm) else ""
    return before in words["other_before"] or behind in words["other_units"] or before in ("/", "x")


def _opened(scene: Scene, count: Count) -> Count:
    """The number with the words that lead up to it: "only 200", "one of the 250", "limited to 300"."""
    first, clause = count.first, scene.clause(count.first)
    while first > clause.first and scene.norm[first - 1] in counting("copies")["openers"]:
        first -= 1
    return count._replace(first=first)


def _kind(scene: Scene, count: Count) -> str | None:
    """What a number of copies tells, by the words before and behind it in its clause."""
    norm, words = scene.norm, counting("copies")
    before = norm[max(scene.clause(count.first).first, count.first - _BEFORE) : count.first]
    behind = _behind(scene, count)
    copied = any(word in words["copy_nouns"] for word in behind)
    linked = _linked(before, copied)
    if linked in words["limits"]:
        return "limitation"
    if year_of(norm[count.first]) and not copied and "were" not in behind and linked not in ("run", "printrun"):
        return None
    run = "print_run" if count.value >= _FEWEST_RUN else None
    marked = bool(set(behind) & words["marks"]) and copied
    printed = bool(set(behind) & (words["printed"] - {"run"})) or "run off" in " ".join(behind)
    many = count.value >= _FEWEST_BARE
    if printed and not marked and (copied or many or "were" in behind):
        return run
    if linked in words["runs"] and "edition" not in before[-3:] and (copied or many):
        return run
    if marked or _of_limited(scene, count, before, copied):
        return "limitation"
    told_of = copied and (set(before[-3:]) & words["printed_before"] or _of_the_printing(scene, count))
    return run if told_of or norm[count.last : count.last + 1] == ["firsts"] else None


def _of_limited(scene: Scene, count: Count, before: list[str], copied: bool) -> bool:
    """ "One of 250 copies", "one of the 250 with the gilt top", "an edition of 300 copies", "300 copies only"."""
    words = counting("copies")
    following = scene.norm[count.last : count.last + 2]
    if [word for word in before[-3:] if word not in ("the", "only", "just")][-2:] == ["one", "of"]:
        of_these = before[-1] == "the" and following[:1] != [] and following[0] in words["goes_on"] and count.value >= _FEWEST_RUN
        return copied or of_these or bool(set(before) & words["limits"])
    if before[-1:] == ["("] and set(before[-3:-1]) & {"edition", "ed", "edn"}:
        return bool(set(before) & (words["limits"] | {"ltd"}))
    if before[-2:] == ["calls", "for"]:
        return bool(set(before) & words["limits"] | {"colophon", "leaf"} & set(before))
    if before[-2:] == ["edition", ":"]:
        return copied
    if set(before[-3:-1]) & {"edition", "ed", "edn"} and "of" in before[-2:]:
        return copied or bool(set(before) & (words["marks"] | {"ltd"}))
    return following == ["copies", "only"]


def _behind(scene: Scene, count: Count) -> list[str]:
    """The words behind a number that go on about the copies counted."""
    words, clause = counting("copies"), scene.clause(count.first)
    known = words["copy_nouns"] | words["kinds"] | words["printed"]
    at = count.last
    while at < min(clause.last, count.last + _BEHIND) and scene.norm[at] in known:
        at += 1
    return scene.norm[count.last : at]


def _linked(before: list[str], copied: bool) -> str | None:
    """The word before a number that tells what it counts, only links between."""
    words = counting("copies")
    for word in reversed(before):
        if word in words["limits"] or word in words["runs"]:
            return word
        if word not in words["links"] and word not in words["marks"] and not (word in (",", "and") and copied):
            return None
    return None


def _of_the_printing(scene: Scene, count: Count) -> bool:
    """ "6,500 copies in the first printing"."""
    following = " ".join(scene.norm[count.last : count.last + 6])
    return (
        re.search(r"^copies (?:in|of|for|to) (?:the|its|this|that|a) (?:\w+ )?(?:printing|impression|print|run)", following)
        is not None
    )


def _with_own_number(scene: Scene, count: Count) -> Draft:
    """ "Limited to 750 copies; this is number 212" is one limitation."""
    norm = scene.norm
    for at in range(count.last, min(count.last + _FURTHEST, len(norm))):
        found = count_at(norm, at)
        if found is None or not 0 < found[0] <= count.value:
            continue
        label = at - 1 if norm[at - 1] in ("bears", "numbered") else _label(scene, at)
        listed = (
            label is not None
            and norm[label - 1] in (",", ")", ";", ":")
            and norm[count.first - 1 : count.first] in (["("], ["of"])
        )
        if (
            label is not None
            and label >= count.last
            and (norm[label] in _LABELS or norm[label] == "bears")
            and (listed or _THIS & set(norm[max(count.last, label - 4) : label]))
        ):
            return Draft("limitation", f"{found[0]} of {count.value}", count.first, found[1], "limitation", part="book")
    return Draft("limitation", f"of {count.value}", count.first, count.last, "limitation", part="book")
