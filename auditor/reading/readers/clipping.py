"""The corner with the price, cut away or whole: "price cut off", "never snipped", "$5.95, uncut", "still has its corner".

Found by form: a word of cutting beside a price, a corner or a flap; a word of wholeness behind a price or an amount. The words
stand in lexicon/clipping.toml; whether it is denied or doubted is settled by the words around, as of any claim.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from auditor.knowledge import lexicon
from auditor.reading.scene import Clause, Draft, Scene

_REACH = 10  # words between a thing and what is said of it


@cache
def _lexicon() -> dict[str, frozenset[str]]:
    return {name: frozenset(words) for name, words in lexicon.table("clipping").items()}


def read_clipping(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``price_clipped``, denied where the price is told whole."""
    words = _lexicon()
    for clause in scene.clauses:
        for index in range(clause.first, clause.last):
            word = scene.norm[index]
            if word in words["unsnipped"] and _jacket_near(scene, clause):
                yield _draft(index, index + 1, denied=True)
            elif word in words["whole"] and _amount_at(scene.norm, index) and _jacket_near(scene, clause):
                yield _draft(index, index + 2, denied=True)  # "uncut at $5.95"
            elif _cut(scene, clause, index):
                yield _draft(index, index + 1)
            elif word in words["things"] or _amount(scene.norm, index):
                yield from _whole(scene, clause, index)


def _draft(first: int, last: int, *, denied: bool = False) -> Draft:
    return Draft(
        "price_clipped",
        "yes",
        first,
        last,
        "price whole, by form" if denied else "price cut, by form",
        part="jacket",
        denied=denied,
    )


def _cut(scene: Scene, clause: Clause, index: int) -> bool:
    words, norm = _lexicon(), scene.norm
    word = norm[index]
    if (
        word not in words["lost"]
        and norm[index - 2 : index] != ["price", "corner"]
        and any(
            other.first <= index < other.last and other.row.feature is not None for other in scene.between(index - 4, index + 1)
        )
    ):
        return False  # a row of the lexicon reads it
    if word in words["snipped"] and norm[index - 1 : index] != ["paper"]:
        return _jacket_near(scene, clause) or norm[index - 1 : index] in (["never"], ["not"])
    if word in words["scissors"]:
        return _jacket_near(scene, clause)
    if word in words["lost"]:
        behind = norm[index + 1 : index + 5]
        at = next((at for at, other in enumerate(behind) if other in ("corner", "price")), None)
        jacket = any(other in words["jackets"] for other in norm[clause.first : index])
        return jacket and at is not None and at > 0 and all(other in words["own"] for other in behind[:at])
    if word in words["gone"]:
        return (
            _thing_before(scene, clause, index)
            and "corner" in norm[max(clause.first, index - 6) : index]
            and _jacket_near(scene, clause)
        )
    return word in words["cut"] and (
        _thing_before(scene, clause, index) or norm[index + 1 : index + 2] == ["corner"] or _at_the_price(scene, clause, index)
    )


def _at_the_price(scene: Scene, clause: Clause, index: int) -> bool:
    """ "Trimmed at the price corner", "shorn of its price"."""
    behind = scene.norm[index + 1 : min(index + 6, clause.last)]
    if behind[:1] not in (["at"], ["of"], ["by"], ["along"], ["across"], ["for"]) or not _jacket_near(scene, clause):
        return False
    at = next((at for at, word in enumerate(behind) if word in ("price", "corner")), None)
    return at is not None and all(word in _lexicon()["own"] for word in behind[1:at])


def _amount_at(norm: list[str], index: int) -> bool:
    """Whether "at" and an amount follow."""
    if norm[index + 1 : index + 2] != ["at"]:
        return False
    at = index + 2 + (norm[index + 2 : index + 3] in (["$"], ["£"], ["€"]))
    return at < len(norm) and _amount(norm, at)


def _thing_before(scene: Scene, clause: Clause, index: int) -> bool:
    """Whether a price, corner or flap is what was cut; in "Price? Cut away." it stands in the question."""
    words, norm = _lexicon(), scene.norm
    at = index - 1
    while at >= clause.first and norm[at] in words["between"] and norm[at] not in words["things"]:
        at -= 1
    if at >= clause.first:
        priced = _amount(norm, at) or (norm[at] in ("s", "d", "net", "-") and _amount(norm, at - 1))
        return norm[at] in words["things"] or (priced and norm[index - 1] in words["hands"])
    before = scene.clauses[scene.clause_of[index] - 1] if scene.clause_of[index] else clause
    if before.end == "." and norm[before.first : before.last] == ["a", "."] and scene.clause_of[before.first]:
        before = scene.clauses[scene.clause_of[before.first] - 1]
    return (
        before.end == "?"
        and before.last - before.first <= 4
        and any(word in words["things"] for word in norm[before.first : before.last])
    )


def _jacket_near(scene: Scene, clause: Clause) -> bool:
    number = scene.clause_of[clause.first]
    first = scene.clauses[max(0, number - 1)].first
    return any(word in _lexicon()["jackets"] for word in scene.norm[first : clause.last])


def _amount(norm: list[str], index: int) -> bool:
    """Whether a word is an amount: behind a sign of currency, with decimals, or before a shilling's "s" or stroke."""
    if not norm[index][0].isdecimal():
        return False
    before, behind = norm[index - 1 : index], norm[index + 1 : index + 2]
    return before in (["$"], ["£"], ["€"]) or "." in norm[index] or behind in (["s"], ["/"], ["d"])


def _whole(scene: Scene, clause: Clause, thing: int) -> Iterator[Draft]:
    words, norm = _lexicon(), scene.norm
    before = norm[max(clause.first, thing - 5) : thing]
    kept = any(word in words["keeps"] for word in before) or ("still" in before and bool(words["still_has"] & set(before)))
    keeps = any(word in words["keeps"] for word in before) and norm[thing][0].isdecimal() and "its" in before[-2:]
    if keeps or (kept and norm[thing] in ("price", "corner")):
        yield _draft(thing - 1, thing + 1, denied=True)
        return
    amount = norm[thing][0].isdecimal()
    still = False
    for at in range(thing + 1, min(clause.last, thing + _REACH)):
        word = norm[at]
        still = still or word == "still" or (word == "all" and norm[thing] in ("corner", "corner's"))
        if word in words["whole"] or (amount and norm[at - 1 : at + 1] == ["all", "corners"]):
            yield _draft(thing, at + 1, denied=True)
            return
        if (
            (amount or norm[thing] in ("corner", "corner's"))
            and word in words["present"]
            and (still or word == "present" or "price" in before or "flap" in before)
        ):
            yield _draft(thing, at + 1, denied=True)
            return
        amount = amount or _amount(norm, at)
        if word not in words["whole_between"] and not word[0].isdecimal():
            return
