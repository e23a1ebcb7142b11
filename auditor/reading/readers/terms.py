"""Claims that a phrase of the lexicon states outright."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.nouns import GOVERNED
from auditor.reading.parts import both_parts
from auditor.reading.phrases import Phrase
from auditor.reading.readers.colours import by_cause, tanned
from auditor.reading.readers.echoes import read_echoes
from auditor.reading.readers.hands import owner_or_author, read_signature
from auditor.reading.readers.plainly import read_plainly
from auditor.reading.readers.quoted_hands import read_quoted_hands
from auditor.reading.readers.silence import silent
from auditor.reading.scene import Draft, Scene


def read_terms(scene: Scene) -> Iterator[Draft]:
    """A draft for each ``term`` or ``topic`` phrase. A denied row ("unclipped") is turned again by a denial around it."""
    drafts = _price_left(scene, list(_read(scene)))
    yield from drafts
    yield from read_echoes(scene, drafts)


def _price_left(scene: Scene, drafts: list[Draft]) -> list[Draft]:
    """ "The corner of the flap is clipped but the price is intact" is a denial: the corner told before it is no second claim."""
    whole = [draft for draft in drafts if draft.feature == "price_clipped" and draft.denied]
    if not whole:
        return drafts

    def only_corner(draft: Draft) -> bool:
        if draft.feature != "price_clipped" or draft.denied or "price" in scene.norm[draft.first : draft.last]:
            return False
        return any(
            other.first > draft.first
            and scene.clause_of[other.first] == scene.clause_of[draft.first]
            and {"but", "though", "although", "yet", "with"} & set(scene.norm[draft.last : other.first])
            for other in whole
        )

    return [draft for draft in drafts if not only_corner(draft)]


def _read(scene: Scene) -> Iterator[Draft]:
    plain = list(read_plainly(scene))
    yield from plain
    yield from read_quoted_hands(scene)
    told = {index for draft in plain for index in range(draft.first, draft.last)}
    for phrase in scene.content:
        row = phrase.row
        if row.feature is None or row.feature == "jacket":  # jackets have a reader of their own
            continue
        if row.feature in GOVERNED and phrase.first in told:  # part of a form
            continue
        if row.kind == "topic":
            yield Draft(row.feature, "", phrase.first, phrase.last, row.id, part=row.part)
        elif row.value and not silent(scene, phrase):
            yield from _term(scene, phrase, row.feature, row.value)


def _term(scene: Scene, phrase: Phrase, feature: str, value: str) -> Iterator[Draft]:
    row = phrase.row
    draft = Draft(feature, value, phrase.first, phrase.last, row.id, part=row.part, denied=row.stance == "denied")
    if row.stance == "unchecked":
        draft = replace(draft, stance="unchecked")
    if feature == "lapse":
        yield replace(draft, part="copy")
    elif feature == "format" and _other_format(scene, phrase):
        yield replace(draft, stance="elsewhere")
    elif feature == "signed" and value == "signed":
        yield from read_signature(scene, draft)
    elif row.sign == "hand":
        yield owner_or_author(scene, draft)
    elif feature == "owner_mark" and _not_there(scene, draft.last):
        yield replace(draft, stance="denied")
    elif draft.part is None and both_parts(scene, phrase):
        yield from (replace(draft, part="book"), replace(draft, part="jacket"))
    else:
        told = tanned(scene, draft) if value == "tanning" else by_cause(scene, draft) if value == "fading" else draft
        if told is not None:
            yield told


def _other_format(scene: Scene, phrase: Phrase) -> bool:
    """ "Reprint of a 1988 hardcover", "that's for the hardback", "never a hardcover until the reissue": another edition's."""
    before = scene.norm[max(0, phrase.first - 4) : phrase.first]
    if "never" in before and scene.norm[phrase.last : phrase.last + 1] in (["until"], ["till"], ["before"]):
        return True
    dated = before[-1:] != [] and before[-1].isdecimal() and before[-3:-1] in (["of", "a"], ["of", "the"], ["from", "the"])
    return dated or before[-2:] == ["for", "the"] or before[-3:] == ["reprint", "of", "the"]


def _not_there(scene: Scene, index: int) -> bool:
    """ "Nan's name is NOT in it", "my name isn't inside": a denial behind the mark itself."""
    said = scene.norm[index : index + 2]
    return said[:1] in (["isn't"], ["isnt"], ["aren't"]) or said in (["is", "not"], ["are", "not"], ["is", "nowhere"])
