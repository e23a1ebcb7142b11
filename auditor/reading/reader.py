"""The whole reading of one text: words, phrases, clauses, drafts of every kind, stances, parts, claims."""

from __future__ import annotations

from functools import cache

from auditor.knowledge.points import PointSet
from auditor.reading.clean import Clean
from auditor.reading.compounds import parted
from auditor.reading.mending import Mender
from auditor.reading.othercopies import names_several
from auditor.reading.phrases import PhraseFinder
from auditor.reading.points import read_points
from auditor.reading.points.cardinals import figure
from auditor.reading.readers.bindings import read_bindings
from auditor.reading.readers.editions import read_editions
from auditor.reading.readers.figures import read_figures
from auditor.reading.readers.grades import read_grades
from auditor.reading.readers.imprints import read_imprints
from auditor.reading.readers.jackets import read_jackets
from auditor.reading.readers.lines import read_lines
from auditor.reading.readers.money import read_prices
from auditor.reading.readers.terms import read_terms
from auditor.reading.rows import rows
from auditor.reading.scene import Draft, Scene, stage
from auditor.reading.settle import settle
from auditor.reading.stance import layers
from auditor.reading.words import words
from auditor.values import Claim


@cache
def finder() -> PhraseFinder:
    """The phrases of lexicon/reading."""
    return PhraseFinder(rows())


@cache
def mender() -> Mender:
    """Mends slips against the words of lexicon/reading."""
    return Mender(rows())


def read(text: str, work: PointSet | None = None) -> tuple[Claim, ...]:
    """The claims of a text in its order. With a ``work`` its points are read as well."""
    return read_text(text, finder(), mender(), work)


def offers_several(text: str) -> bool:
    """Whether a text offers a lot of several books."""
    norm = words(text).norm
    return names_several(norm, range(len(norm)))


def read_text(text: str, finder: PhraseFinder, mender: Mender, work: PointSet | None = None) -> tuple[Claim, ...]:
    """``read`` with a finder and a mender of one's own."""
    clean = Clean(text)
    split = words(clean.text)
    if not len(split):
        return ()
    split = mender.mend(split)
    scene = stage(split, parted(finder.find(split.norm), split.norm))
    drafts = [
        *read_terms(scene),
        *read_jackets(scene),
        *read_editions(scene),
        *read_lines(scene),
        *read_prices(scene),
        *read_grades(scene),
        *read_bindings(scene),
        *read_figures(scene),
        *read_imprints(scene, work),
    ]
    laid = layers(scene)
    if work is not None:
        drafts += read_points(scene, work, drafts, laid)
        drafts = _outside_titles(scene, work, drafts)
    return tuple(clean.back(claim) for claim in settle(scene, drafts, laid))


def _outside_titles(scene: Scene, work: PointSet, drafts: list[Draft]) -> list[Draft]:
    """Without the drafts inside a mention of the work's title: "Low Water Mark" tells of no water, "7 Paper Kites" of none."""
    norm = [figure(word) for word in scene.norm]
    spans = [
        (at, at + len(title))
        for title in ([figure(word) for word in words(name).norm] for name in (work.work.title, *work.work.also_titled))
        if len(title) > 1 and title[0] in norm
        for at in range(len(norm) - len(title) + 1)
        if norm[at] == title[0] and norm[at : at + len(title)] == title
    ]
    if not spans:
        return drafts
    return [draft for draft in drafts if not any(first <= draft.first and draft.last <= last for first, last in spans)]
