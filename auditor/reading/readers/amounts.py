"""Amounts of money as sellers write them: "$24.95", "US $5", "12/6", "18s 6d", "£1 5s", "half a crown", "35c"."""

from __future__ import annotations

from decimal import Decimal
from functools import cache
from typing import Any, NamedTuple

from auditor.knowledge import lexicon
from auditor.reading.readers.counts import below_hundred, count_at, counting
from auditor.reading.scene import Scene
from auditor.reading.starts import Start

_LETTERS = {"usd", "gbp", "cad", "aud", "eur", "dm"}
_SIGNS = {"$": "USD", "£": "GBP", "₤": "GBP", "€": "EUR"}


class Amount(NamedTuple):
    """A sum as the contract writes it and the words ``first`` up to and without ``last``; ``sure`` if nothing else reads so."""

    value: str
    first: int
    last: int
    sure: bool


@cache
def table(name: str) -> dict[str, Any]:
    """A table of lexicon/money.toml, lists as frozensets."""
    found = lexicon.table("money")[name]
    return {key: frozenset(value) if isinstance(value, list) else value for key, value in found.items()}


@cache
def _openers() -> frozenset[str]:
    """Words besides figures that an amount may begin with."""
    return frozenset({*_SIGNS, *table("currencies"), *counting("ones"), *counting("tens"), "a", "c", "half", "sixpence"})


@cache
def _behind_one() -> frozenset[str]:
    """Behind "a" one of these makes a sum: "a guinea", "A$5"."""
    return frozenset({*table("coins"), *table("currencies"), "$", "-"})


AMOUNT = Start(lambda word: word[0].isdecimal() or word in _openers())


def amount_at(scene: Scene, index: int) -> Amount | None:
    """The amount that begins at a word."""
    word = scene.norm[index]
    if not AMOUNT.serves(word) or (word == "a" and _at(scene, index + 1) not in _behind_one()):
        return None
    if word == "£":
        old = _pounds_shillings(scene, index)
        if old is not None:
            return old
    return _signed(scene, index) or _shillings(scene, index) or _coins(scene, index) or _counted(scene, index)


def _show(amount: Decimal, currency: str) -> str:
    whole, _, cents = f"{amount.normalize():f}".partition(".")
    return f"{whole}.{cents.ljust(2, '0')} {currency}".strip()


def _number(word: str) -> Decimal | None:
    plain = word[:-3] + "." + word[-2:] if word[-3:-2] == "," else word.replace(",", "")  # "22,00" is 22
    return Decimal(plain) if plain.replace(".", "", 1).isdecimal() and plain[0].isdecimal() else None


def _glued(scene: Scene, index: int) -> bool:
    """Whether a word stands right behind the one before it."""
    return 0 < index < len(scene.norm) and scene.words.start[index] == scene.words.end[index - 1]


def _at(scene: Scene, index: int) -> str:
    return scene.norm[index] if 0 <= index < len(scene.norm) else ""


def _named(scene: Scene, index: int) -> str | None:
    """The currency that a word before or behind an amount names."""
    word = _at(scene, index)
    return (
        table("currencies").get(word)
        if word not in ("can", "au", "us", "ir", "aus") or scene.words.text[scene.words.start[index]].isupper()
        else None
    )


def _signed(scene: Scene, index: int) -> Amount | None:
    """A currency sign and a number; letters before or behind the number may name another dollar."""
    first = index
    if _glued(scene, index + 1) and _at(scene, index) in ("a", "c") and _at(scene, index + 1) == "$":
        currency = "AUD" if scene.norm[index] == "a" else "CAD"
        index += 1
    elif _named(scene, index) and (
        _at(scene, index + 1) in _SIGNS or _at(scene, index) in ("usd", "gbp", "cad", "aud", "eur", "dm")
    ):
        currency = table("currencies")[scene.norm[index]]
        index += _at(scene, index + 1) in _SIGNS
    elif _at(scene, index) in _SIGNS:
        currency = _SIGNS[scene.norm[index]]
    else:
        return None
    amount = _number(_at(scene, index + 1)) if _at(scene, index + 1) else None
    if amount is None:
        return None
    last = index + 2
    behind = last + (_at(scene, last) in ("in", "("))
    if currency in ("USD", "GBP") and (named := _named(scene, behind)) and named not in ("USD", "GBP"):
        currency = named
        last = behind + 1
    return Amount(_show(amount, currency), first, last, True)


def _pounds_shillings(scene: Scene, index: int) -> Amount | None:
    """£1 5s, £1 5s 6d, £1/5/-, £1.5.0, £1-10-0: pounds, shillings and pence."""
    pounds = _at(scene, index + 1)
    parts = pounds.split(".")
    if len(parts) == 3 and all(part.isdecimal() for part in parts):
        return Amount(_old(int(parts[0]), int(parts[1]), Decimal(parts[2])), index, index + 2, True)
    if not pounds.isdecimal():
        return None
    mark = _at(scene, index + 2)
    if mark in ("/", "-", ":") and _at(scene, index + 3).isdecimal() and _at(scene, index + 4) == mark:
        pence = _at(scene, index + 5)
        if pence.isdecimal() or pence == "-":
            return Amount(
                _old(int(pounds), int(_at(scene, index + 3)), Decimal(pence if pence.isdecimal() else 0)), index, index + 6, True
            )
    at = index + 2 + (mark in (",", "."))
    shillings = _shillings(scene, at) if at < len(scene.norm) else None
    if shillings is not None and shillings.sure:
        return Amount(_show(Decimal(pounds) + Decimal(shillings.value.split()[0]), "GBP"), index, shillings.last, True)
    return None


def _old(pounds: int, shillings: int, pence: Decimal) -> str:
    return _show(pounds + Decimal(shillings) / 20 + pence / 240, "GBP")


def _shillings(scene: Scene, index: int) -> Amount | None:
    """18s, 12s 6d, 12s.6d., 18/-, 12/6, 9d: money before decimals."""
    norm, lists = scene.norm, table("words")
    if not norm[index].isdecimal() or len(norm[index]) > 2 or _at(scene, index - 1) in ("/", *_SIGNS):
        return None
    count, at = int(norm[index]), index + 1
    decade = (
        norm[index][-1] == "0"
        and count > 10
        and _at(scene, index - 1) in ("the", "'", "-", "—", "early", "late", "mid", "to", "&", "and")
    )
    if (
        _at(scene, at) in lists["shillings"]
        and not decade
        and not _coded(scene, at)
        and (norm[at] != "s" or scene.words.start[at] - scene.words.end[index] <= 1)
    ):
        pence = at + 1 + (_at(scene, at + 1) in (".", ",", "and"))
        if _at(scene, pence).isdecimal() and _at(scene, pence + 1) in lists["pence"]:
            return Amount(_old(0, count, Decimal(norm[pence])), index, pence + 2, True)
        return Amount(_old(0, count, Decimal(0)), index, at + 1, True)
    if _at(scene, at) == "/" and _glued(scene, at) and _glued(scene, at + 1):
        pence_word = _at(scene, at + 1)
        if pence_word == "-" and count < 100:
            return Amount(_old(0, count, Decimal(0)), index, at + 2, True)
        if pence_word.isdecimal() and int(pence_word) < 12 and _at(scene, at + 2) != "/":
            return Amount(_old(0, count, Decimal(pence_word)), index, at + 2, False)
    if _at(scene, at) == "d" and _glued(scene, at):
        return Amount(_old(0, 0, Decimal(count)), index, at + 1, False)
    return None


def _coded(scene: Scene, index: int) -> bool:
    """ "36S" in a text that isn't all in capitals is a code unless a price is spoken of."""
    text, words = scene.words.text, table("words")
    if not (_glued(scene, index) and text[scene.words.start[index] : scene.words.end[index]] == "S") or text.isupper():
        return False
    clause = scene.clause(index)
    return not set(scene.norm[clause.first : clause.last]) & (words["printed"] | words["jacket"])


def _coins(scene: Scene, index: int) -> Amount | None:
    """ "A guinea", "half a crown", "seven and six", "ten bob", "six-shilling", "dollar jacket"."""
    norm, coins = scene.norm, table("coins")
    if norm[index] == "half":
        at = index + 1
        while _at(scene, at) in ("a", "-"):
            at += 1
        if _at(scene, at) in ("crown", "guinea") and at > index + 1:
            return Amount(_old(0, 0, Decimal(coins[norm[at]]) / 2), index, at + 1, True)
        return None
    if norm[index] == "dollar" and _at(scene, index + 1) in table("words")["jacket"] | {"dust"}:
        return Amount(_show(Decimal(1), "USD"), index, index + 1, True)
    if norm[index] == "sixpence":
        return Amount(_old(0, 0, Decimal(6)), index, index + 1, True)
    return _in_words(scene, index)


def _in_words(scene: Scene, index: int) -> Amount | None:
    """A sum told in words: "twelve shillings and sixpence", "two dollars fifty", "twenty-three ninety-five"."""
    norm, coins = scene.norm, table("coins")
    counted = (1, index + 1) if norm[index] == "a" else count_at(norm, index)
    if counted is None or (counted[0] > 999 and norm[index].isalpha()) or _at(scene, index - 1) in _SIGNS:
        return None
    number, at = counted
    unit = at + (_at(scene, at) == "-")
    word = _at(scene, unit)
    worded = norm[index].isalpha() and norm[index] != "a"
    if word in coins and word not in ("crown", "sixpence"):
        return _with_pence(scene, index, number * Decimal(str(coins[word])), unit + 1)
    nation = table("currencies").get(word) if word.isalpha() and _at(scene, unit + 1) in table("words")["spoken"] else None
    if nation is not None and norm[index].isalpha() and word not in table("words")["spoken"]:
        return _with_hundredths(scene, index, number, nation, unit + 2)
    if norm[index].isalpha() and word in table("currencies") and word in table("words")["spoken"]:
        currency = _nation(scene, unit + 1) or table("currencies")[word]
        return _with_hundredths(scene, index, number, currency, unit + 1)
    if not worded:
        return None
    hyphened = word == "and" and _at(scene, unit + 1) == "-"
    if word == "and" and _at(scene, unit + 1) == "sixpence" and number < 40:
        return Amount(_old(0, number, Decimal(6)), index, unit + 2, True)
    behind = (
        below_hundred(norm, unit + 1 + hyphened)
        if word == "and" and _at(scene, index - 1) not in table("words")["titled"]
        else None
    )
    if behind is not None and behind[0] < 12 and number < 100:
        return Amount(_old(0, number, Decimal(behind[0])), index, behind[1], False)
    cents = below_hundred(norm, at) if at < len(norm) else None
    if cents is not None and cents[0] in (25, 45, 49, 50, 75, 90, 95, 98, 99) and 0 < number < 100:
        return Amount(_show(number + Decimal(cents[0]) / 100, ""), index, cents[1], False)
    return None


def _nation(scene: Scene, index: int) -> str | None:
    """ "Dollars Canadian", "pounds (Irish)"."""
    named = _named(scene, index + (_at(scene, index) in ("in", "(")))
    return named if _at(scene, index) not in table("words")["spoken"] else None


def _with_pence(scene: Scene, first: int, pence: Decimal, last: int) -> Amount:
    """Shillings with the pence behind them: "twelve shillings and six pence"."""
    at = last + (_at(scene, last) in ("and", ",", "&"))
    if _at(scene, at) == "sixpence":
        return Amount(_old(0, 0, pence + 6), first, at + 1, True)
    more = count_at(scene.norm, at) if at < len(scene.norm) else None
    if more is not None and more[0] < 12 and _at(scene, more[1]) in table("words")["pence"]:
        return Amount(_old(0, 0, pence + more[0]), first, more[1] + 1, True)
    return Amount(_old(0, 0, pence), first, last, True)


def _with_hundredths(scene: Scene, first: int, number: int, currency: str, last: int) -> Amount:
    """Dollars with cents behind them: "two dollars fifty", "four dollars and fifty cents", "three pounds ten shillings"."""
    at = last + (_at(scene, last) in ("and", "&"))
    more = count_at(scene.norm, at) if at < len(scene.norm) else None
    if more is not None and more[0] < 100:
        unit = _at(scene, more[1])
        if unit in table("words")["shillings"]:
            return Amount(_old(number, more[0], Decimal(0)), first, more[1] + 1, True)
        if unit in table("words")["hundredths"] or (at == last and scene.norm[at].isalpha() and more[0] > 9):
            return Amount(
                _show(number + Decimal(more[0]) / 100, currency), first, more[1] + (unit in table("words")["hundredths"]), True
            )
    return Amount(_show(Decimal(number), currency), first, last, True)


def _counted(scene: Scene, index: int) -> Amount | None:
    """A number with its currency or its hundredths behind it, or a bare one with two decimals."""
    amount = _number(scene.norm[index])
    if amount is None:
        return None
    last = index + 1
    if named := _named(scene, last):
        return Amount(_show(amount, named), index, last + 1, True)
    if (
        _at(scene, last) in table("words")["hundredths"]
        and "." not in scene.norm[index]
        and (len(scene.norm[last]) > 1 or _glued(scene, last))
    ):
        british = scene.norm[last] in ("p", "pence")
        return Amount(_show(amount / 100, "GBP" if british else "USD"), index, last + 1, british or scene.norm[last] != "c")
    _, dot, cents = scene.norm[index].partition(".")
    if not dot or len(cents) != 2 or amount > 999:
        return None
    for at in range(max(1, index - 4), index):  # "in pounds not dollars 5.25"
        if scene.norm[at] in ("pounds", "dollars") and scene.norm[at - 1] == "in":
            return Amount(_show(amount, table("currencies")[scene.norm[at]]), at, last, True)
    return Amount(_show(amount, ""), index, last, False)
