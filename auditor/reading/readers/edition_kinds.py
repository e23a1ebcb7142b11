"""Editions told without an ordinal before a noun: kinds ("revised edition", "later printing", "firsts"), labels ("Edition: 1st",
"printing 7", "state B") and "which printing"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.othercopies import edition_words, jacket_before
from auditor.reading.readers.edition_context import more_figures, noun_behind, of_jacket, ordinal
from auditor.reading.scene import Draft, Scene
from auditor.values import Part, Stance


def opens_kind(word: str) -> bool:
    """Whether `without_ordinal` may find something at a word."""
    words = edition_words()
    return word in words["kinds"] or word in words["labels"] or word in ("reprints", "firsts", "1sts", "which", "what")


def without_ordinal(scene: Scene, index: int) -> Iterator[Draft]:
    """Kinds ("revised edition", "later printing", "firsts") and labels ("Edition: 1st", "printing 7", "state B")."""
    norm, words = scene.norm, edition_words()
    word = norm[index]
    if word in words["kinds"]:
        yield from _kind(scene, index, words["kinds"][word])
    elif word == "reprints" and norm[max(0, index - 1) : index] in (["are"], ["all"], ["both"], ["mostly"]):
        yield drafted("edition", "reprint", index, index + 1, row="reprints")
    elif word in ("firsts", "1sts"):
        before = words["qualifiers"].get(norm[index - 1] if index else "")
        yield drafted("edition", f"1 {before}" if before and before != "trade" else "1", index, index + 1, row="firsts")
    elif word in words["labels"]:
        yield from _labelled(scene, index, words["labels"][word])
    elif (
        word in ("which", "what")
        and norm[index + 1 : index + 2]
        and norm[index + 1] in words["nouns"]
        and norm[index + 1] != "thus"
    ):
        yield drafted(words["nouns"][norm[index + 1]], "", index, index + 2, "book", row="which printing")


def _kind(scene: Scene, index: int, value: str) -> Iterator[Draft]:
    norm, words = scene.norm, edition_words()
    at = index + 1
    while at < len(norm) and norm[at] in words["between_kind_and_noun"]:
        at += 1
    noun = words["nouns"].get(norm[at]) if at < len(norm) else None
    part: Part = "jacket" if of_jacket(norm, at + 1) or jacket_before(scene, index) else "book"
    before = norm[index - 1] if index else ""
    if value == "another":
        if noun == "printing" and norm[at].endswith("s") and words["none"] & set(norm[max(0, index - 3) : index]):
            yield drafted("printing", "later", index, at + 1, part, row="later")
    elif value == "later":
        if noun in ("printing", "edition"):
            feature = noun
        elif norm[index + 1 : index + 2] in (["one"], ["ones"]) and before in ("a", "the", "some", "any"):
            if edition_words()["swapping"] & set(norm[max(0, index - 5) : index]):
                return  # the jacket's
            feature, at = "printing", index + 1
        else:
            return
        yield replace(drafted(feature, "later", index, at + 1, part, row="later"), stance=_one_of(norm, index))
    elif value == "reprint":
        noted = (
            before in ("no", "any") and norm[index + 1 : index + 2] and norm[index + 1] in words["noted"]
        )  # the line is spoken of
        if (
            noun in (None, "edition", "printing")
            and not noted
            and norm[index + 1 : index + 2] not in (["society"], ["house"], ["houses"], ["publisher"], ["library"], ["series"])
        ):
            yield drafted("edition", "reprint", index, index + 1, row="reprint")
    elif value == "facsimile":
        if (
            noun == "edition"
            or (norm[max(0, index - 2) : index] == ["not", "a"] and _at_mark(norm, index + 1))
            or (at < len(norm) and norm[at] in ("reprint", "copy", "reissue"))
            or _of_a_work(norm, index)
        ):
            yield drafted("edition", "facsimile", index, min(at + 1, len(norm)), row="facsimile")
    elif before not in ("first", "1st") and (
        noun == "edition"
        or (value == "limited" and noun == "issue")
        or (value in ("revised", "limited") and _behind_edition(norm, index))
        or (value == "limited" and before in ("signed", "numbered") and _at_mark(norm, index + 1))
    ):
        yield drafted("edition", value, index, at + 1 if noun else index + 1, row=value)


def _one_of(norm: list[str], index: int) -> Stance | None:
    """ "One of the later impressions": this copy is one of them."""
    return "asserted" if norm[max(0, index - 3) : index] == ["one", "of", "the"] else None


def _of_a_work(norm: list[str], index: int) -> bool:
    """ "A facsimile of the 1889 first edition", "of a county history of 1786": of a book, not of a map or a page in it."""
    behind = norm[index + 1 : index + 10]
    if behind[:1] != ["of"] or behind[1:2] not in (["a"], ["an"], ["the"]):
        return False
    thing = next((word for word in behind[2:] if word in edition_words()["copied"] | edition_words()["copied_part"]), None)
    return thing is not None and thing in edition_words()["copied"]


def _behind_edition(norm: list[str], index: int) -> bool:
    """ "Second edition, revised", "edition limited"."""
    before = norm[max(0, index - 2) : index]
    return before[-1:] in (["edition"], ["ed"], ["edn"]) or before in (["edition", ","], ["ed", ","], ["edn", ","], ["ed", "."])


def _at_mark(norm: list[str], index: int) -> bool:
    """Whether no word follows: "not a facsimile, the paper is old"."""
    return index >= len(norm) or not norm[index][0].isalnum()


def _labelled(scene: Scene, index: int, feature: str) -> Iterator[Draft]:
    norm, text = scene.norm, scene.words.text
    at = index + 1
    while at < len(norm) and at < index + 4 and norm[at] in edition_words()["behind_label"]:
        at += 1
    if at >= len(norm):
        return
    labelled = at > index + 1
    part: Part | None = "book" if feature in ("edition", "printing") else "jacket" if of_jacket(norm, at + 1) else None
    found = ordinal(norm, at) if labelled else None
    if found is not None:
        if noun_behind(norm, at, *found) is None:
            yield drafted(feature, str(found[0]), index, found[1], part, row="label")
    elif (
        norm[at].isdecimal()
        and int(norm[at]) <= 99
        and feature != "edition"
        and norm[index] != "print"
        and not more_figures(norm, at)
    ):
        if feature == "printing" or labelled or norm[at] in "1234":
            yield drafted(feature, str(int(norm[at])), index, at + 1, part, row="label")
    elif feature == "state" and not labelled and norm[at] in tuple("abcdef") and text[scene.words.start[at]] != "a":
        yield drafted("state", norm[at], index, at + 1, part, row="letter")


def drafted(feature: str, value: str, first: int, last: int, part: Part | None = "book", row: str = "ordinal") -> Draft:
    return Draft(feature, value, first, last, row, part=part)
