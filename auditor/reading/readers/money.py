"""The price printed on a jacket, told apart from what is asked, paid or charged for postage."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from auditor.reading.readers.amounts import AMOUNT, Amount, amount_at, table
from auditor.reading.readers.printed_sums import of_jacket
from auditor.reading.scene import Draft, Scene, stage
from auditor.reading.starts import Start
from auditor.reading.words import words
from auditor.values import Stance

_NAMED = {"price", "priced", "prices"}
_PRICE_WORDS = _NAMED | {"unpriced", "priceless"}
_PRICE = Start(lambda word: word in _PRICE_WORDS or word in table("words")["figures"])
_NO_SUM = Start(lambda word: word in ("price", "it", "cost"))


def read_prices(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``jacket_price``: the amounts that are no asking price or postage, jackets without one, prices not looked at."""
    told: set[int] = set()
    behind = 0
    for index in scene.starting(AMOUNT):
        amount = amount_at(scene, index) if index >= behind else None
        if amount is None:
            continue
        behind = amount.last
        if of_jacket(scene, amount):
            told.add(scene.clause_of[index])
            yield Draft(
                "jacket_price", amount.value, amount.first, amount.last, "money", part="jacket", stance=_stance(scene, amount)
            )
    for draft in _no_price(scene):
        told.add(scene.clause_of[draft.first])
        yield draft
    yield from _untold(scene, told)


def _stance(scene: Scene, amount: Amount) -> Stance | None:
    """ "Without the six-shilling wrapper", "the $3.75 jackets" are said of other copies; "whether it was £4.95" is not known."""
    norm, clause = scene.norm, scene.clause(amount.first)
    before = [word for word in norm[max(0, amount.first - 3) : amount.first] if word not in ("the", "its", "a", "original")]
    if (before[-1:] and before[-1] in table("words")["lacking"]) or norm[amount.last : amount.last + 1] in (
        ["jackets"],
        ["copies"],
        ["ones"],
    ):
        return "elsewhere"
    before = norm[max(clause.first, amount.first - 8) : amount.first]
    if _moved(scene, amount, before) or _of_finished(before):
        return "elsewhere"
    return "unchecked" if "whether" in norm[max(clause.first, amount.first - 8) : amount.first] else None


def _moved(scene: Scene, amount: Amount, before: list[str]) -> bool:
    """ "Rose from 12s 6d to 15s", "the reissues went up to a guinea"; "this one went up to $6.95" is this copy's."""
    moved = [at for at, word in enumerate(before) if word in table("words")["moved"]]
    if not moved:
        return False
    behind = before[moved[-1] :]
    if "from" in behind:
        return True
    first = amount.first - len(before) + moved[-1]
    said = set(scene.norm[scene.clause(amount.first).first : first])
    return behind[-1:] == ["to"] and not said & {"this", "mine", "ours", "has", "here", "my", "our"}


def _of_finished(before: list[str]) -> bool:
    """ "The finished book ($27.00, in a jacket)": told of the book that a proof came before."""
    lists = table("words")
    return any(first in lists["finished"] and second in lists["finished_books"] for first, second in pairwise(before))


def _no_price(scene: Scene) -> Iterator[Draft]:
    """ "No price on the jacket", "never priced", "flap blank where a price would go", "unpriced": the jacket carries none."""
    lists, norm = table("words"), scene.norm
    for index in scene.starting(_PRICE):
        word = norm[index]
        following = norm[index + 1 : index + 4]
        if _priceless(norm[index - 1] if index else "", word, following):
            yield _none(index, index + 1)
        elif _names_price(scene, index) and following[:1] != ["free"] and not set(following[:1]) & lists["never_of_price"]:
            first = _lacking(scene, index)
            if first is not None:
                yield _none(first, index + 1)
            elif (first := _emptied(scene, index)) is not None:
                yield replace(_none(first, index + 1), stance="asserted" if first < index else None)


def _names_price(scene: Scene, index: int) -> bool:
    """The word "price", or "figure" and its like where the flap is spoken of."""
    word = scene.norm[index]
    if word in _NAMED:
        return True
    clause = scene.clause(index)
    return word in table("words")["figures"] and bool(set(scene.norm[clause.first : clause.last]) & table("words")["flap_places"])


def _priceless(before: str, word: str, following: list[str]) -> bool:
    """ "Unpriced", "priceless flap", "price-free jacket"."""
    on = following[-1:] if following[:1] == ["-"] else following[:1]
    if word == "priceless":
        return before == "flap" or before in table("words")["jacket"] or bool(set(on) & (table("words")["jacket"] | {"flap"}))
    return word == "unpriced" or (word == "price" and following[:2] in (["-", "free"], ["free", "jacket"], ["free", "flap"]))


def _none(first: int, last: int) -> Draft:
    return Draft("jacket_price", "none", first, last, "no price", part="jacket", negative=True)


def _lacking(scene: Scene, index: int) -> int | None:
    """The denial before the word "price" of which only fillers part it; "no date or price" denies both."""
    lists, norm = table("words"), scene.norm
    clause, at, listed = scene.clause(index), index - 1, 0
    while at >= clause.first and index - at <= 9:
        if norm[at] in lists["lacks"]:
            return at
        if norm[at] in ("or", "nor") and not listed:
            listed = 3
        elif listed > 1:
            listed -= 1
        elif norm[at] not in lists["between"]:
            return None
        at -= 1
    return None


def _emptied(scene: Scene, index: int) -> int | None:
    """Where the emptiness begins: "price: none", "price area blank", "flap blank where a price would go"."""
    lists, norm = table("words"), scene.norm
    clause = scene.clause(index)
    opening = max(clause.first, index - 6)
    before = norm[opening:index]
    if before[-1:] and before[-1] in ("this", "that", "my", "our"):
        return None
    ahead = [word for word in norm[index + 1 : min(index + 5, clause.last)] if word not in lists["of_place"]]
    if ahead[:1] and ahead[0] in lists["emptied"]:
        return index
    bare = [at for at, word in enumerate(before) if word in ("blank", "empty", "bare", "nothing")]
    return opening + bare[-1] if bare and set(before) & {"where", "for"} else None


def _untold(scene: Scene, told: set[int]) -> Iterator[Draft]:
    """Prices named without a sum: a claim only where the seller didn't look or can't know."""
    norm = scene.norm
    for index in scene.starting(_NO_SUM):
        word = norm[index]
        cost = word == "it" and bool(set(norm[index + 1 : index + 3]) & table("words")["costs"])
        printed = word == "price" or (norm[index - 1 : index] != [] and norm[index - 1] in table("words")["of_cost"])
        if not (printed or cost) or scene.clause_of[index] in told:
            continue
        unread = _never_read(scene, index) if cost else _illegible(scene, index) or _hidden(scene, index)
        if not (cost and unread) and any(
            phrase.first <= index < phrase.last and phrase.row.kind != "sign" for phrase in scene.between(index - 3, index + 1)
        ):
            continue
        if norm[index + 1 : index + 2] and norm[index + 1] in table("words")["never_of_price"]:
            continue
        yield Draft(
            "jacket_price", "", index, index + 1 + cost, "price not told", part="jacket", stance="unchecked" if unread else None
        )


def _never_read(scene: Scene, index: int) -> bool:
    """ "I never lifted the flap to see what it cost"."""
    before = scene.norm[scene.clause(index).first : index]
    negated = any(word in table("words")["lacks"] or word.endswith("n't") or word in ("guess", "guessing") for word in before)
    return before[-1:] in (["what"], ["much"]) and negated


def _hidden(scene: Scene, index: int) -> bool:
    """ "A sticker covers the printed price", "label over where the price should be"."""
    lists, norm, opening = table("words"), scene.norm, scene.clause(index).first
    at = index - 1
    while at > opening and norm[at] in lists["hidden"]:
        at -= 1
    return norm[at] in lists["hiding"] and bool(set(norm[opening:at]) & lists["added"] or norm[at] != "over")


def _illegible(scene: Scene, index: int) -> bool:
    """ "The price has worn to nothing", "price illegible", "price under a sticker"."""
    lists, norm = table("words"), scene.norm
    ahead = [word for word in norm[index + 1 : min(index + 8, scene.clause(index).last)] if word not in lists["of_place"]]
    if ahead[:1] == ["inked"] and ahead[1:2] in (["on"], ["in"]):
        return False
    if ahead[:1] == ["not"]:
        return ahead[1:2] != [] and ahead[1] in lists["read"]
    return ahead[:1] != [] and ahead[0] in lists["illegible"]


def amount_of(text: str) -> str | None:
    """The first amount of money in a text as the contract writes it, else None: ``"18s net"`` gives ``"0.90 GBP"``."""
    scene = stage(words(text), [])
    for index in scene.starting(AMOUNT):
        found = amount_at(scene, index)
        if found is not None:
            return found.value
    return None
