"""Book numbers: ISBN-13, ISBN-10 and the nine-digit SBN that British and American books carried before it.

The check digits are those of the International ISBN Agency's manual: weights 10 to 1 modulo 11 (X is ten) for ISBN-10, weights
1 and 3 in turn modulo 10 for ISBN-13. An SBN is an ISBN-10 without the 0 in front.
"""

from __future__ import annotations

import re

_SEPARATORS = re.compile(r"[\s\-‐-―−]+")


def to_13(text: str) -> str | None:
    """The number as 13 digits if ``text`` is a valid ISBN-13, ISBN-10 or SBN (hyphens and spaces allowed), else None."""
    number = _SEPARATORS.sub("", text).upper()
    if re.fullmatch(r"97[89][0-9]{10}", number):
        return number if number[-1] == _check_13(number[:12]) else None
    if re.fullmatch(r"[0-9]{8}[0-9X]", number):
        number = "0" + number
    if re.fullmatch(r"[0-9]{9}[0-9X]", number) and number[-1] == _check_10(number[:9]):
        stem = "978" + number[:9]
        return stem + _check_13(stem)
    return None


def _check_10(nine: str) -> str:
    rest = -sum(weight * int(digit) for weight, digit in zip(range(10, 1, -1), nine, strict=True)) % 11
    return "X" if rest == 10 else str(rest)


def _check_13(twelve: str) -> str:
    return str(-sum(int(digit) * (3 if place % 2 else 1) for place, digit in enumerate(twelve)) % 10)
