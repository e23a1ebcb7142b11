"""Bindings: colour words and material as the seller gives them ("quarter cloth over red boards").

A binding is read by its grammar: colours, finishes and fractions in any order, a material, and a second such group tied to it.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any

from auditor.knowledge import lexicon
from auditor.reading.readers.shades import read_shades
from auditor.reading.scene import Draft, Scene, roles
from auditor.reading.starts import Start
from auditor.reading.words import words
from auditor.values import Stance


@cache
def table() -> dict[str, Any]:
    return {name: frozenset(value) if isinstance(value, list) else value for name, value in lexicon.table("bindings").items()}


@cache
def _materials() -> dict[str, list[list[str]]]:
    """Materials as words, by first word, longest first."""
    found: dict[str, list[list[str]]] = {}
    names = {
        *roles()["materials"],
        *table()["more_materials"],
        *(short for short, full in table()["short"].items() if full in roles()["materials"]),
    }
    for name in sorted(names, key=len, reverse=True):
        pieces = list(words(name).norm)
        found.setdefault(pieces[0], []).append(pieces)
    return found


@cache
def _colours() -> frozenset[str]:
    colours: frozenset[str] = roles()["colours"]
    return colours | {short for short, full in table()["short"].items() if full in roles()["colours"]}


@cache
def _degrees() -> frozenset[str]:
    degrees: frozenset[str] = roles()["colour_degrees"]
    return degrees | {"lt", "dk"}


@cache
def _shades() -> frozenset[str]:
    return _colours() | _degrees()


@cache
def _fractions() -> frozenset[str]:
    fractions: frozenset[str] = roles()["binding_words"] | table()["fractions"]
    return fractions


@cache
def _compounds() -> frozenset[str]:
    return frozenset(name for name in (*roles()["colours"], *roles()["binding_words"]) if "-" in name)


@cache
def _openers() -> frozenset[str]:
    """Words that a binding may begin with."""
    names = {*_shades(), *_fractions(), *_materials(), *table()["between"], *table()["short"]}
    return frozenset(names | {words(name).norm[0] for name in _compounds()})


START = Start(lambda word: word in _openers())


def read_bindings(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``binding``. A material alone is a claim only where it names the binding, not where it carries a fault."""
    behind = 0
    taken: set[int] = set()
    for index in scene.starting(START):
        found = _binding(scene, index) if index >= behind else None
        if found is None:
            continue
        last, claimed = found
        taken.update(range(index, last))
        if claimed and not _not_this(scene.norm, index) and not _of_clothes(scene, index):
            others: Stance | None = "elsewhere" if scene.norm[last : last + 1] in (["copies"], ["ones"], ["examples"]) else None
            yield Draft("binding", _shown(scene, index, last), index, last, "binding", part="book", stance=others)
        behind = last
    yield from read_shades(scene, scene.starting(START), lambda index: _shade(scene.norm, index), taken)


def _of_clothes(scene: Scene, index: int) -> bool:
    """ "A dress of green cloth", "red leather boots", "full board"."""
    first, last = scene.segment(index)
    near = {*scene.norm[max(first, index - 4) : index], *scene.norm[index + 1 : min(last, index + 4)]}
    return bool(table()["clothes"] & near) or scene.norm[index : index + 2] in (["full", "board"], ["half", "board"])


def _not_this(norm: list[str], index: int) -> bool:
    """ "Not the green cloth", "neither the original cloth nor"."""
    before = [word for word in norm[max(0, index - 4) : index] if word not in ("the", "a", "in", "original", "publisher's")]
    return bool(before) and before[-1] in table()["not_this"]


def _shade(norm: list[str], index: int) -> int:
    """The word behind a colour told with its degrees, or ``index``: "dark blue", "red and black"."""
    at = index
    while at < len(norm) and (
        (end := _colour_end(norm, at)) > at or (at > index and _joins(norm, at, norm[at + 1] if at + 1 < len(norm) else ""))
    ):
        at = end if end > at else at + 1
    return at if _colours() & set(norm[index:at]) or "-" in norm[index:at] else index


def _material(norm: list[str], index: int) -> int:
    """The word behind a material that begins here, or ``index``."""
    for pieces in _materials().get(norm[index], ()) if index < len(norm) else ():
        if norm[index : index + len(pieces)] == pieces:
            end = index + len(pieces)
            grained = norm[end : end + 2] == ["-", "grain"] or norm[end : end + 2] == ["-", "textured"]
            return _material(norm, end + 2) if grained and _material(norm, end + 2) > end + 2 else end
    return index


def _colour_end(norm: list[str], index: int) -> int:
    """The word behind a colour word that begins here ("blue", "blue-grey", "blk."), or ``index``."""
    shades = _shades()
    if "".join(norm[index : index + 3]) in _compounds():
        return index + 3
    if (
        norm[index + 1 : index + 2] == ["-"]
        and norm[index] in shades
        and norm[index + 2 : index + 3]
        and norm[index + 2] in _colours()
    ):
        return index + 3
    if norm[index + 1 : index + 4] == ["-", "and", "-"] and {norm[index], *norm[index + 4 : index + 5]} <= _colours():
        return index + 5
    if norm[index] in shades:
        return index + 1 + (norm[index] in table()["short"] and norm[index + 1 : index + 2] == ["."])
    return index


def _described(norm: list[str], index: int) -> tuple[int, bool]:
    """The word behind colours, degrees, fractions and finishes that begin here ("dark blue", "half red and black", "stiff
    printed"), and whether a colour or a fraction is among them."""
    at, shaded = index, False
    while at < len(norm):
        end = _colour_end(norm, at)
        following = norm[at + 1] if at + 1 < len(norm) else ""
        if end > at:
            at, shaded = end, True
            at += (
                1 + (norm[at] == "-")
                if norm[at : at + 1] and (norm[at] in table()["coloured"] or norm[at : at + 2] == ["-", "coloured"])
                else 0
            )
        elif norm[at] in _fractions():
            at += 3 if norm[at + 1 : at + 3] == ["-", "bound"] else 1 + (following == "." and norm[at] in table()["short"])
            shaded = True
        elif at > index and _joins(norm, at, following):
            at += 1
        elif _finish(norm, at):
            at += 1 + (following == "." and norm[at] in table()["short"])
        else:
            break
    return at, shaded


def _finish(norm: list[str], at: int) -> bool:
    """Whether a word tells how a material is finished and more of the binding follows it."""
    word = table()["short"].get(norm[at], norm[at])
    return (norm[at] in table()["between"] or word in table()["between"]) and _material(norm, at) == at and at + 1 < len(norm)


def _joins(norm: list[str], at: int, following: str) -> bool:
    """ "Red and black", "deep, dark green"."""
    if norm[at] == ",":
        return following in _colours() and norm[at - 1] in _degrees()
    return norm[at] in ("and", "&", "/") and following in _shades() and norm[at - 1] in _colours()


def _binding(scene: Scene, index: int) -> tuple[int, bool] | None:
    """The word behind a binding that begins here, and whether it makes a claim."""
    norm = scene.norm
    at, shaded = _described(norm, index)
    end = _material(norm, at)
    if end == at:
        return None
    if norm[end : end + 1] == ["-"] and norm[end + 1 : end + 2] and norm[end + 1] in table()["tools"]:
        return None
    first_end = end
    while (step := _second(scene, index, end)) > end:
        end = step
    if norm[end : end + 1] and norm[end] in table()["tools"]:
        return None
    if not shaded and not _claims_alone(scene, index, end):
        return None
    half = norm[end - 1] in table()["half_bound"] or norm[end : end + 1] == ["spine"]
    return end, not (half and end <= first_end + 1)


def _second(scene: Scene, first: int, end: int) -> int:
    """The word behind a second material tied to the first: "over red boards", "-backed blue boards", ", green cloth back"."""
    norm = scene.norm
    short = (
        norm[end - 1] in table()["short"]
        and norm[end : end + 1] == ["."]
        and norm[end + 1 : end + 2]
        and norm[end + 1] in table()["links"]
    )
    back = norm[end : end + 1] != [] and norm[end] in table()["half_bound"] and norm[end + 1 : end + 2] == [","]
    link = end + bool(short or back)
    if link >= len(norm) or norm[link] not in table()["links"]:
        return end
    step = link + 1
    while (
        step < len(norm)
        and norm[step] in table()["second"]
        and _material(norm, step) == step
        and norm[step] not in table()["between"]
    ):
        step += 1
    adjectives = _described(norm, step)[0] if step < len(norm) else step
    material = _material(norm, adjectives)
    if material == adjectives:
        shaded_spine = norm[link] == "with" and adjectives > step and norm[adjectives : adjectives + 1] == ["spine"]
        shaded_spine &= not {"lettering", "letters", "label", "titles"} & set(norm[adjectives + 1 : adjectives + 2])
        return adjectives + 1 if shaded_spine else end
    if norm[link] == ",":
        behind = _behind_comma(norm, first, link, adjectives, material)
        return behind if behind > link else end
    tied = (
        adjectives > step
        or norm[step] in table()["second"]
        or norm[link] in ("over", "-", "backed", "spine")
        or norm[step - 1] == "over"
    )
    return material if tied else end


def _behind_comma(norm: list[str], first: int, comma: int, adjectives: int, material: int) -> int:
    """ "Brown boards, green cloth back", "red cloth spine, black boards": spine and sides of one binding, told on both sides of a
    comma; the comma's place where they are not."""
    half, before = table()["half_bound"], norm[comma - 1 - (norm[comma - 1] == ".")]
    behind = material + (norm[material : material + 1] != [] and norm[material] in half)
    if norm[behind - 1] in half and before in table()["sides"]:
        return behind
    back = before in half or table()["short"].get(norm[first], norm[first]) in ("quarter", "half")
    described = adjectives > comma + 1 or material > adjectives + 1
    return material if back and norm[material - 1] in table()["sides"] and described else comma


def _shown(scene: Scene, first: int, last: int) -> str:
    """The value: the words as given without those dropped, abbreviations written out."""
    text = ""
    for at in range(first, last):
        word = scene.norm[at]
        kept = (text and word in ("a", "the")) or (word == "bright" and scene.norm[at + 1] in _colours())
        if word == "," or (table()["short"].get(word, word) in table()["dropped"] and not kept):
            continue
        glued = at > first and scene.words.start[at] == scene.words.end[at - 1] and scene.norm[at - 1] != "."
        piece = table()["short"].get(word, word)
        text += piece if glued or not text else f" {piece}"
    return text


def _claims_alone(scene: Scene, first: int, last: int) -> bool:
    """Whether a material without a colour names the binding: "full calf", "binding: cloth", "pictorial boards"."""
    norm = scene.norm
    if set(norm[first:last]) & table()["paper_covers"]:
        return False
    following = scene.at.get(last)
    if following is not None and following.row.kind == "term" and following.row.feature == "defect":
        return False
    if last - first > 1:
        return norm[last - 1] not in ("bound", "spine")
    if norm[first] in table()["vague"] or norm[first] in ("cl", "clth"):
        return False
    before = norm[first - 1] if first else ""
    return before in ("original", "publisher's", "publishers", "full") or norm[max(0, first - 2) : first] == ["binding", ":"]
