"""The publisher: one of the work's own, one known in the trade, or a name by its label, its place or its form."""

from __future__ import annotations

import html
from collections.abc import Iterator

from auditor.knowledge.points import PointSet
from auditor.reading.readers.house_forms import formed, labelled, listed_house, placed_house
from auditor.reading.readers.house_talk import at_other_time, talked_of
from auditor.reading.readers.known_houses import (
    Names,
    Span,
    listed,
    opens_trade_name,
    own_house,
    own_names,
    possessive,
    trade_house,
)
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start
from auditor.values import Stance


def read_publishers(scene: Scene, work: PointSet | None) -> Iterator[Draft]:
    """Drafts of ``publisher``, each with the name as given."""
    own = own_names(tuple(edition.publisher for edition in work.editions if edition.publisher)) if work else {}
    behind = 0
    for index in _starts(scene, own):
        if index < behind:
            continue
        found = _known(scene, index, own) or _by_form(scene, index, own)
        if found is None:
            continue
        first, last = found
        behind = last
        if not _of_another_book(scene, first):
            value = " ".join(html.unescape(scene.words.quote(first, last)).split())
            if possessive(scene.norm[last - 1]):
                value = value[:-2]
            others: Stance | None = "elsewhere" if at_other_time(scene, last) else None
            yield Draft("publisher", value, first, last, "publisher", part="book", stance=others)


_MARK = Start(lambda word: word in (":", ",") or word in listed("labels"))
_NAME = Start(lambda word: opens_trade_name(word) or (word[0].isalpha() and word not in listed("no_house")))


def _starts(scene: Scene, own: Names) -> list[int]:
    """The words that a publisher may be told from: a label or a mark, a name with a capital, one of the work's own."""
    text, start = scene.words.text, scene.words.start
    capitals = [index for index in scene.starting(_NAME) if text[start[index]].isupper()]
    named = [at for at, word in enumerate(scene.norm) if word in own or (word[-2:] == "'s" and word[:-2] in own)] if own else ()
    return sorted({*capitals, *scene.starting(_MARK), *named})


def _known(scene: Scene, index: int, own: Names) -> Span | None:
    return own_house(scene, index, own) or trade_house(scene, index)


def _by_form(scene: Scene, index: int, own: Names) -> Span | None:
    """A name by label, place or form; where it begins like a known one, that one: "London: John Lane, The Bodley Head"."""
    if scene.norm[index] in (":", ","):
        found = placed_house(scene, index)
    else:
        found = labelled(scene, index) or listed_house(scene, index) or formed(scene, index) or talked_of(scene, index)
    if found is None:
        return None
    known = _known(scene, found[0], own)
    return known if known is not None and known[1] >= found[1] else found


def _of_another_book(scene: Scene, first: int) -> bool:
    """Whether the name is of the edition that this one reprints, or of a shop."""
    before = " ".join(word for word in scene.norm[max(0, first - 4) : first] if word != "the")
    return any(before.endswith(phrase.removesuffix(" the")) for phrase in listed("other_books"))
