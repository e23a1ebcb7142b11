"""Editions, printings, issues and states: an ordinal, what may qualify it, and the noun it counts.

"First U.S. edition", "1st/1st", "first edition & first printing", "Edition: 1st", "printing 7", "state B jacket", "the second".
The words that play a part here stand in lexicon/editions.toml.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.othercopies import edition_words, jacket_before
from auditor.reading.readers.bare_ordinals import bare_ordinal
from auditor.reading.readers.edition_context import (
    Counted,
    alternative,
    copied,
    country_before,
    in_story,
    named_alone,
    noun_behind,
    of_jacket,
    only_quoted,
    opens_ordinal,
    ordinal,
    wording,
)
from auditor.reading.readers.edition_kinds import drafted, opens_kind, without_ordinal
from auditor.reading.readers.edition_talk import last_told, told_in_talk
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start
from auditor.values import Part

_START = Start(lambda word: opens_ordinal(word) or opens_kind(word) or word == "last")


def read_editions(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``edition``, ``printing``, ``issue`` and ``state``."""
    behind = 0
    for index in scene.starting(_START):
        if index < behind:
            continue
        found = ordinal(scene.norm, index)
        if found is None:
            yield from without_ordinal(scene, index)
            if scene.norm[index] == "last" and (told := last_told(scene, index)) is not None:
                yield told
            continue
        drafts, behind = _counted(scene, index, *found)
        yield from drafts


def _counted(scene: Scene, first: int, number: int, index: int) -> tuple[list[Draft], int]:
    """Drafts for an ordinal and all the nouns that it counts, and the word to read on from."""
    told = told_in_talk(scene, first, number, index)
    if told is not None:
        return [told], max(told.last, index)
    counted = noun_behind(scene.norm, first, number, index)
    if counted is not None:
        return _drafts(scene, counted)
    shared = alternative(scene.norm, index)  # "first or second printing"
    counted = noun_behind(scene.norm, first, number, shared[1]) if shared is not None else None
    if shared is not None and counted is not None:
        drafts, _ = _drafts(scene, counted)
        return [replace(draft, last=index) for draft in drafts], shared[0]
    country = named_alone(scene.norm, index) if number == 1 else None
    if country is not None:
        return [drafted("edition", f"1 {country}", first, index + 1)], index + 1
    pair = _pair(scene.norm, first, number, index)
    if pair is not None:
        return pair
    return list(bare_ordinal(scene, first, number, index)), index


def _drafts(scene: Scene, found: Counted) -> tuple[list[Draft], int]:
    norm, words = scene.norm, edition_words()
    following = norm[found.last : found.last + 3]
    noun = norm[found.at]
    if following[:1] and following[0] in words["not_behind"].get(found.noun, ()):
        return [], found.last
    jacket_behind = of_jacket(norm, found.last + (following[:1] == ["of"]))
    magazine = found.noun == "issue" and following[:1] == ["of"] and following[1:2] and following[1] in ("the", "a", "his", "her")
    if (magazine and not jacket_behind) or (found.noun == "edition" and in_story(scene, found.first, found.last)):
        return [], found.last
    if (found.noun == "state" and noun == "states") or (found.noun == "issue" and noun == "issues"):
        return [], found.last
    if copied(norm, found.first):
        return [], found.last
    if found.noun == "edition" and (only_quoted(norm, found.first) or wording(norm, found.first, found.last)):
        return [], found.last
    if found.noun == "edition" and found.number == 1 and found.qualifier is None:
        english = following[:2] == ["in", "english"]
        found = replace(found, qualifier="english" if english else country_before(norm, found.first))
    if found.noun == "thus" or (found.noun == "edition" and following[:1] == ["thus"]):
        last = found.last + (found.noun != "thus")
        return [drafted("edition", f"{found.number} thus", found.first, last)], last
    inside = norm[found.first : found.at]
    jacket = noun.endswith("'s") or "jacket" in inside or "dj" in inside or jacket_behind or jacket_before(scene, found.first)
    if found.noun == "edition" and not jacket_before(scene, found.first):
        jacket = False
    part: Part = "jacket" if jacket else "book"
    drafts: list[Draft] = []
    if found.noun == "edition":
        revised = bool({"revised", "rev"} & set(inside))
        if not revised or found.number > 1:
            value = f"1 {found.qualifier}" if found.qualifier and found.number == 1 else str(found.number)
            drafts.append(drafted("edition", value, found.first, found.last, part))
        if revised:
            drafts.append(drafted("edition", "revised", found.first, found.last, part))
    elif found.noun == "printing":
        if found.qualifier and found.number == 1:
            drafts.append(drafted("edition", f"1 {found.qualifier}", found.first, found.last))
        drafts.append(drafted("printing", str(found.number), found.first, found.last, part))
    else:
        drafts.append(drafted(found.noun, str(found.number), found.first, found.last, "jacket" if jacket else None))
    second = _second_noun(scene, found)
    if second is not None:
        drafts.append(second)
        return drafts, second.last
    return drafts, found.last


def _second_noun(scene: Scene, found: Counted) -> Draft | None:
    """ "First edition and printing", "1st edition/printing": one ordinal counts two nouns."""
    norm, nouns = scene.norm, edition_words()["nouns"]
    at = found.last
    while at < len(norm) and norm[at] in ("/", "&", "and", "-"):
        at += 1
    if at == found.last or at >= len(norm) or norm[at] not in nouns:
        return None
    other = nouns[norm[at]]
    if other in ("thus", found.noun) or norm[at].endswith("s"):
        return None
    part: Part | None = "jacket" if of_jacket(norm, at + 1) else "book" if other in ("edition", "printing") else None
    return drafted(other, str(found.number), found.first, at + 1, part)


def _pair(norm: list[str], first: int, number: int, index: int) -> tuple[list[Draft], int] | None:
    """ "1st/1st", "first/first", "1st/2nd printing": edition and printing."""
    if norm[index : index + 1] != ["/"] or index + 1 >= len(norm):
        return None
    other = ordinal(norm, index + 1)
    if other is None:
        return None
    last = other[1] + (norm[other[1] : other[1] + 1] != [] and norm[other[1]] in edition_words()["nouns"])
    return [drafted("edition", str(number), first, index), drafted("printing", str(other[0]), index + 1, last)], last
