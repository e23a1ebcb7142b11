"""Editions, printings, issues and states: an ordinal, what may qualify it, and the noun it counts.

"First U.S. edition", "1st/1st", "first edition & first printing", "Edition: 1st", "printing 7", "state B jacket", "the second".
The words that play a part here stand in lexicon/editions.toml.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.othercopies import edition_words, is_lot, jacket_before
from auditor.reading.readers.edition_context import (
    Counted,
    alternative,
    country_before,
    is_year,
    named_alone,
    noun_behind,
    of_jacket,
    only_quoted,
    opens_ordinal,
    ordinal,
    wording,
)
from auditor.reading.readers.edition_kinds import drafted, opens_kind, without_ordinal
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.starts import Start
from auditor.values import Part

_START = Start(lambda word: opens_ordinal(word) or opens_kind(word))


def read_editions(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``edition``, ``printing``, ``issue`` and ``state``."""
    behind = 0
    for index in scene.starting(_START):
        if index < behind:
            continue
        found = ordinal(scene.norm, index)
        if found is None:
            yield from without_ordinal(scene, index)
            continue
        drafts, behind = _counted(scene, index, *found)
        yield from drafts


def _counted(scene: Scene, first: int, number: int, index: int) -> tuple[list[Draft], int]:
    """Drafts for an ordinal and all the nouns that it counts, and the word to read on from."""
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
    return list(_bare(scene, first, number, index)), index


def _drafts(scene: Scene, found: Counted) -> tuple[list[Draft], int]:
    norm, words = scene.norm, edition_words()
    following = norm[found.last : found.last + 3]
    noun = norm[found.at]
    if following[:1] and following[0] in words["not_behind"].get(found.noun, ()):
        return [], found.last
    if found.noun == "issue" and following[:1] == ["of"] and following[1:2] and following[1] in ("the", "a", "his", "her"):
        return [], found.last  # an issue of a magazine
    if (found.noun == "state" and noun == "states") or (found.noun == "issue" and noun == "issues"):
        return [], found.last
    if found.noun == "edition" and (only_quoted(norm, found.first) or wording(norm, found.first, found.last)):
        return [], found.last
    if found.noun == "edition" and found.number == 1 and found.qualifier is None:
        found = replace(found, qualifier=country_before(norm, found.first))
    if found.noun == "thus" or (found.noun == "edition" and following[:1] == ["thus"]):
        last = found.last + (found.noun != "thus")
        return [drafted("edition", f"{found.number} thus", found.first, last)], last
    inside = norm[found.first : found.at]
    jacket = (
        noun.endswith("'s")
        or "jacket" in inside
        or "dj" in inside
        or of_jacket(norm, found.last)
        or jacket_before(scene, found.first)
    )
    if found.noun == "edition" and not jacket_before(scene, found.first):
        jacket = False
    part: Part = "jacket" if jacket else "book"
    drafts: list[Draft] = []
    if found.noun == "edition":
        value = f"1 {found.qualifier}" if found.qualifier and found.number == 1 else str(found.number)
        drafts.append(drafted("edition", value, found.first, found.last, part))
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


def _bare(scene: Scene, first: int, number: int, index: int) -> Iterator[Draft]:
    """An ordinal alone: "a first", "so not the first", "maybe a 3rd?", "the second has ...". Dropped where it claims nothing."""
    if number > 1 and scene.once(is_lot):
        return
    norm, words = scene.norm, roles()
    before = norm[first - 1] if first else ""
    following = norm[index] if index < len(norm) else "."
    if number == 1 and before in words["likely"] and not following[0].isalnum():
        yield drafted("edition", "1", first, index, row="a first")  # "1923, probably first"
        return
    if number > 1 and before == "a" and norm[max(0, first - 2) : first - 1] and norm[first - 2] in words["before_fraction"]:
        return  # "stained to about a third"
    opens = before in ("a", "the", "trade", "american", "english", "british", "us", "uk", "genuine", "real") or is_year(before)
    closes = not following[0].isalpha() or following in words["behind_bare_ordinal"] or following in words["edition_verbs"]
    if (
        not opens
        or not closes
        or following == "-"
        or (following == "of" and not is_year(norm[index + 1] if index + 1 < len(norm) else ""))
    ):
        return
    if is_year(before) and following in words["edition_verbs"]:
        yield Draft(
            "edition", str(number), first, index, "bare ordinal", part="book", stance="elsewhere"
        )  # "the 1934 first is in blue"
        return
    if (
        before in ("genuine", "real")
        or (before == "a" and number == 1)
        or before in ("trade", "american", "english", "british", "us", "uk")
    ):
        country = edition_words()["qualifiers"].get(before)
        yield drafted("edition", f"1 {country}" if country not in (None, "trade") else "1", first, index, row="a first")
        return
    printing = number > 1 or any(
        word in ("impression", "impressions", "printing", "printings", "line", "times", "reprinted")
        for word in norm[max(0, first - 14) : first]
    )
    part: Part = "jacket" if jacket_before(scene, first) else "book"
    sure = norm[max(0, first - 2) : first - 1] and norm[first - 2] in words["own_copy_openers"]
    sure = sure or (norm[max(0, first - 2) : first - 1] == ["it"] and norm[first - 3] in edition_words()["making"])
    feature = "edition" if not printing or is_year(before) else "printing"
    yield drafted(
        feature,
        str(number),
        first,
        index,
        part,
        row="bare ordinal, said of this copy" if sure or before == "a" or part == "jacket" else "bare ordinal",
    )
