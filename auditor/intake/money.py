"""Prices as tables and pages write them, brought into one form: amount and ISO currency."""

from __future__ import annotations

import re
from decimal import Decimal, InvalidOperation
from functools import cache

from auditor.knowledge.lexicon import table

_NUMBER = re.compile(r"\d{1,3}(?:[ '’]\d{3})+(?:[.,]\d+)*(?!\d)|\d+(?:[.,]\d+)*")
_WEAK = "$"
_SHOWN = 60  # characters of a price that a message shows


def asking(text: str, currency: str | None = None) -> str | None:
    """``"US $1,234.56"`` as ``"1234.56 USD"``; a price without a currency is the amount alone; None if it isn't one clear price.

    ``currency`` is what a currency column says: it settles a bare ``$`` and an amount without a mark, and never overrules a
    mark. A range, two amounts, a percentage, a sum below a cent, and ``1.234`` (a thousand or one and a bit?) are not clear.
    """
    text = " ".join(text.replace("\N{NO-BREAK SPACE}", " ").replace("\N{NARROW NO-BREAK SPACE}", " ").split())
    numbers = list(_NUMBER.finditer(text))
    if len(numbers) != 1:
        return None
    number = numbers[0]
    before, after = text[: number.start()], re.sub(r"^[.,][-–—]+", "", text[number.end() :])
    amount = _amount(number[0])
    if amount is None or amount < Decimal("0.01") or before.endswith(("-", "–", "−")) or after.lstrip().startswith("%"):
        return None
    marks, ahead, behind = _marks()
    said = {marks[_key(found[1])] for found in (ahead.search(before), behind.search(after)) if found}
    strong = said - {_WEAK}
    if len(strong) > 1:
        return None
    code = strong.pop() if strong else _column_code(currency) or ("USD" if said else None)
    return f"{amount:.2f} {code}" if code else f"{amount:.2f}"


def unclear(price: str) -> str:
    """That a price is left out, in words."""
    shown = price.strip()
    return f"the price {shown[:_SHOWN] + '...' if len(shown) > _SHOWN else shown!r} is no single clear amount and is left out"


def _amount(number: str) -> Decimal | None:
    number = re.sub(r"[ '’]", "", number)
    points, commas = number.count("."), number.count(",")
    if points and commas:
        decimal = max(".,", key=number.rfind)
    elif points + commas == 1:
        behind = len(number) - max(number.rfind("."), number.rfind(",")) - 1
        if points and behind == 3:
            return None
        # One comma before three digits parts thousands ("1,234"), before two it is a decimal comma ("30,00").
        decimal = "." if points or behind == 3 else ","
    else:
        decimal = "." if commas else ","
    thousands = "," if decimal == "." else "."
    whole, _, cents = number.partition(decimal)
    if decimal in cents or (thousands in whole and not re.fullmatch(rf"\d{{1,3}}(?:{re.escape(thousands)}\d{{3}})+", whole)):
        return None
    try:
        return Decimal(f"{whole.replace(thousands, '')}.{cents or '0'}")
    except InvalidOperation:
        return None


def _column_code(currency: str | None) -> str | None:
    """What a currency column says, as an ISO code: it may hold a code, a mark or a name."""
    key = _key(currency or "")
    code = _marks()[0].get(key)
    return "USD" if code == _WEAK else code or (key.upper() if re.fullmatch(r"[a-z]{3}", key) else None)


def _key(mark: str) -> str:
    return mark.replace(" ", "").casefold()


@cache
def _marks() -> tuple[dict[str, str], re.Pattern[str], re.Pattern[str]]:
    """The currencies' marks by key, and where they may stand: directly before the amount, directly behind it."""
    rows = [(mark, row["code"]) for row in table("columns")["currencies"] for mark in row["marks"]]
    codes = {_key(mark): _WEAK if mark == _WEAK else code for mark, code in rows}
    longest_first = sorted((mark for mark, _ in rows), key=len, reverse=True)
    any_mark = "|".join(r"\s*".join(map(re.escape, mark.split())) for mark in longest_first)
    ahead = re.compile(rf"(?<![^\W\d_])({any_mark})\s*$", re.I)
    behind = re.compile(rf"^\s*({any_mark})(?![^\W\d_])", re.I)
    return codes, ahead, behind
