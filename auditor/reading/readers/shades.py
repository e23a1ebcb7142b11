"""Bindings told by their colour alone: "bound in green", "the cloth is dark blue", "grey, with black letters", "red binding"."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.scene import Draft, Scene

_LINKS = {"is", "are", "was", "in", "the", "a", ":", "—", "=", "being", "of", "remains", "?", "-", "its", "deep", "which"}
_LINKS |= {"colour", "color", "it's", "just", "all"}

_STOPS = {";", ",", ".", "\n", "—"}


@cache
def listed(name: str) -> frozenset[str]:
    """A word list of lexicon/bindings.toml."""
    return frozenset(lexicon.table("bindings")[name])


def read_shades(scene: Scene, places: Sequence[int], colours_from: Callable[[int], int], taken: set[int]) -> Iterator[Draft]:
    """Drafts of ``binding`` for colours without a material. ``places`` are the words that colours may begin at; ``colours_from``
    gives the word behind those that begin there (the word itself if none does); ``taken`` are the words of bindings read."""
    behind = 0
    for index in places:
        last = colours_from(index) if index >= behind else index
        if last == index:
            continue
        bare = last - index > 1 or scene.norm[index] not in listed("no_bare")
        if (bare or _this_one(scene, index)) and index not in taken and _of_binding(scene, index, last):
            first = index - 2 if scene.norm[index - 1] == "," and scene.norm[index - 2] in listed("postposed") else index
            yield Draft("binding", _value(scene, index, last), first, last, "colour of the binding", part="book")
        behind = last


def _of_binding(scene: Scene, first: int, last: int) -> bool:
    norm, clause = scene.norm, scene.clause(first)
    before = norm[max(0, first - 5) : first]
    behind = norm[last] if last < len(norm) else "."
    if behind == "binding":
        return True
    if behind not in listed("behind_shade"):
        return False
    if before[-1:] == ["in"] and set(norm[max(0, clause.first - 1) : first]) & listed("other_bindings"):
        return False
    if _noun_before(before) or (behind in _STOPS and _this_one(scene, first)):
        return True
    if set(norm[clause.first : first]) & listed("coloured_things"):
        return False
    opening = first == clause.first
    if before[-1:] == ["in"] or before[-2:] in (["in", "the"], ["in", "its"]):
        at = first - (1 if before[-1] == "in" else 2)
        bound = norm[at - 1] in ("bound", "casebound") or (norm[at - 1] == "," and before[-1] != "in")
        return (at == clause.first or bound) and not set(norm[max(0, clause.first - 1) : first]) & listed("other_bindings")
    following = norm[last + 1] if behind == "," and last + 1 < len(norm) else behind
    return (opening or norm[first - 1] == ",") and following in listed("lettered")


def _this_one(scene: Scene, first: int) -> bool:
    """ "Binding green, worn", "this one's blue": the noun opens the clause, or the seller's own copy is spoken of."""
    norm, opening = scene.norm, scene.clause(first).first
    if first - opening == 1 and norm[opening] in listed("bindings"):
        return True
    return norm[first - 2 : first] == ["this", "one's"] or norm[first - 3 : first] == ["this", "one", "is"]


def _value(scene: Scene, first: int, last: int) -> str:
    """The colour as given, with the cloth or boards that it is said of: "the cloth is grey"."""
    colour = " ".join(scene.words.quote(first, last).lower().split())
    noun = _noun_before(scene.norm[max(0, first - 5) : first]) or scene.norm[first - 1]
    return f"{colour} {noun}" if noun in listed("postposed") else colour


def _behind_material(before: list[str]) -> bool:
    """ "Buckram, dull violet", "the cloth, which is blue": but not "red cloth, black"."""
    opened = before[-2:-1] in ([], ["in"], ["the"], [","], ["."], ["for"], ["full"], ["original"], ["publisher's"])
    return before[-1:] != [] and before[-1] in listed("postposed") and opened


def _noun_before(before: list[str]) -> str | None:
    """The noun of the binding that stands before a colour with nothing but links between: "the binding's", "boards are"."""
    at, linked = len(before) - 1, False
    while at >= 0 and (before[at] in _LINKS or (before[at] == "," and _behind_material(before[:at]))):
        at, linked = at - 1, True
    if at < 0 or "inside" in before:
        return None
    word = before[at].removesuffix("'s")
    named = word in listed("bindings") or (word in listed("postposed") and before[at + 1 : at + 2] == [","])
    return word if named and (linked or word != before[at]) else None
