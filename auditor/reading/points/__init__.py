"""Points in plain words: which readings of a work's point set a listing states, however the seller puts it.

``lexis`` brings words to what they mean and a colour to its noun, ``features`` says what a line of words tells, ``index``
prepares a point set (``model``) once. ``match`` reads a clause, a ``sight`` of it for each point, by ``wordings`` and ``slips``;
``aliases`` hears in it what else a point's things are called, ``astray`` the letter or word that a slip lost, ``cardinals``
numbers in words. ``figures`` takes over prices, number lines, gutter codes and blind stamps from the claims already read,
``sums`` finds the set's prices in everyday words.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from auditor.knowledge.points import PointSet
from auditor.reading.points.aliases import heard_as
from auditor.reading.points.figures import by_figures
from auditor.reading.points.index import index_of
from auditor.reading.points.lexis import NO, Token, colours, tokens
from auditor.reading.points.match import drafts_of, stated
from auditor.reading.points.model import Index, Told
from auditor.reading.points.sight import Found, Sight, asked, bare_colours, coloured, heard
from auditor.reading.points.sums import in_words
from auditor.reading.scene import Clause, Draft, Scene
from auditor.reading.stance import Layers

_BY_FIGURES = ("price", "number line")
_LABEL_ENDS = ("?", "-", "—", "|", "=", "\n", "•")
_SIGN = 2  # words of a clause that is no more than "A." or a bullet
_LABEL = 9  # words of a clause that may be a label


def read_points(scene: Scene, work: PointSet, drafts: Sequence[Draft], laid: Layers) -> Iterator[Draft]:
    """Drafts of ``point`` for the readings that the text states; ``drafts`` are those of the other readers."""
    index = index_of(work)
    priced = list(by_figures(index, [draft for draft in drafts if not asked(scene, draft.first)], laid))
    yield from priced
    norm = _as_given(scene, index)
    for order, clause in enumerate(scene.clauses):
        line = [*_label(scene, norm, order), *tokens(norm, clause.first, clause.last)]
        numbers = {number for _, one in line for number in index.touched.get(one, ())}
        if any(laid.unchecked[clause.first : clause.last]):
            numbers = set(range(len(index.points)))
        if not numbers:
            continue
        points = [index.points[number] for number in sorted(numbers)]
        for told in points:
            if told.point.feature == "price":
                yield from in_words(told, line, [*priced, *drafts])
        sights = list(_sights(scene, index, laid, clause, line, points))
        codes = {place for draft in drafts if draft.feature == "gutter_code" for place in range(draft.first, draft.last)}
        found = [(sight, _not_of_figures(sight, stated(sight), codes)) for sight in sights]
        for sight, readings in found:
            yield from drafts_of(sight, [one for one in readings if not _elsewhere_better(sight, one, found)])


def _sights(
    scene: Scene, index: Index, laid: Layers, clause: Clause, line: list[Token], points: Iterable[Told]
) -> Iterator[Sight]:
    """The clause as each point sees it; what points see alike is worked out once."""
    plain = heard(line, laid)
    shaded = not (colours() | NO).isdisjoint(plain)  # only then does a point's own noun matter
    at: dict[frozenset[str], dict[str, list[int]]] = {}
    for told in points:
        if told.point.feature in _BY_FIGURES:
            continue
        own, soft = heard_as(line, told.aliases, told.pages), frozenset[int]()
        if own != line:
            seen = coloured(heard(own, laid), own, told.homes)
            soft = frozenset(place for place, one in line if one in told.aliases)
        else:
            if shaded and told.homes not in at:
                at[told.homes] = coloured(plain, line, told.homes)
            seen = at.get(told.homes, plain)
        seen = bare_colours(scene, clause, seen, index.only[told]) if shaded else seen
        yield Sight(scene, laid, clause, own, told, told in index.alone, seen, index.only[told], soft)


def _not_of_figures(sight: Sight, found: list[Found], codes: set[int]) -> list[Found]:
    """Without the gutter codes that their own reader has read, and so ``by_figures``."""
    if not sight.told.of_kind("gutter"):
        return found
    return [one for one in found if codes.isdisjoint(one.places)]


def _elsewhere_better(sight: Sight, one: Found, found: Sequence[tuple[Sight, list[Found]]]) -> bool:
    """Whether the same words fit another point better: by more words, or because its place is named here and this one's isn't."""
    for other, others in found:
        if other is not sight and other.told.point.part == sight.told.point.part:
            for rival in others:
                if one.places == rival.places and other.at_its_place() and not sight.at_its_place():
                    return True
                if one.places < rival.places and not (sight.at_its_place() and not other.at_its_place()):
                    return True
    return False


def _label(scene: Scene, norm: list[str], order: int) -> list[Token]:
    """The words of the short clause before, where this one answers it: "Boards? Green.", "Rear panel - blank"."""
    before = scene.clauses[order - 1] if order else None
    if before is not None and before.last - before.first <= _SIGN and before.end == "." and order > 1:
        before = scene.clauses[order - 2]  # "A." before an answer
    if before is None or before.end not in _LABEL_ENDS or before.last - before.first > _LABEL:
        return []
    return tokens(norm, before.first, before.last)


def _as_given(scene: Scene, index: Index) -> list[str]:
    """The words, a point's own misprints ("rigth") not mended."""
    if not index.slips:
        return scene.norm
    split, norm = scene.words, scene.norm.copy()
    opening = {slip[0] for slip in index.slips}
    for at, word in enumerate(norm):
        if word[0] in opening and len(word) >= 4:
            given = split.text[split.start[at] : split.end[at]].lower()
            if given in index.slips:
                norm[at] = given
    return norm
