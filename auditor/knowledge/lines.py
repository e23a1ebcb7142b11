"""Number lines: the printings that a row of figures or letters still names. The plain rule, whoever the publisher is.

The lowest number left is the printing, in whatever order the numbers stand; two-digit years and a maker's letters beside them
are no printings (Craig Stark, "A Guide to Understanding Number Lines in Books", BookThink no. 91, 26 March 2007).
"""

from __future__ import annotations

import re
from string import ascii_uppercase

_LATEST_PRINTING = 49  # a two-digit figure above this is read as a year; a line of such figures alone does not decide
_SPLIT_STEP = 2  # odd figures up and even ones down: neighbours in one line lie at most two apart


def lowest(line: str) -> int | None:
    """The lowest printing that the line names: ``"10 9 8 7"`` 7, ``"B C D E"`` 2, ``"to 3"`` 3, ``"full"`` 1.

    None where the line names none or leaves it open: years alone, a date code such as ``8.65``, two rows that could both be
    printings, or ``0 2 4 6 8 A 9 7 5 3 1``, a row that later printings share (Stark, as above, questions and answers).
    """
    line = line.strip()
    if told := re.fullmatch(r"to (\d+)", line):
        return int(told[1]) or None
    if line.lower() == "full":
        return 1
    if re.search(r"\d\.\d", line):
        return None
    tokens = _tokens(line)
    if "0" in tokens and any(token.isalpha() and len(token) == 1 for token in tokens[1:-1]):
        return None
    if any(_is_figure(token) for token in tokens):
        return _lowest_figure(tokens)
    return _lowest_letter(tokens)


def letter_value(letter: str) -> int:
    """A is the first printing, B the second."""
    return ascii_uppercase.index(letter.upper()) + 1


def _tokens(line: str) -> list[str]:
    return [token for word in re.findall(r"[A-Za-z]+|\d+", line) for token in (_unspaced(word) if len(word) >= 5 else [word])]


def _unspaced(word: str) -> list[str]:
    """``13579108642`` as its figures. A 1 and a 0 side by side are ten, unless they end a row that counts down to nought."""
    return re.findall(r"(?<!2)10|\d", word) if word.isdigit() else [word]


def _is_figure(token: str) -> bool:
    """A printing's figure or a nought for ten; not a year (70, 05, 1970) nor a longer code."""
    return token == "0" or (token.isdigit() and token[0] != "0" and int(token) <= _LATEST_PRINTING)


def _lowest_figure(tokens: list[str]) -> int | None:
    groups = _groups(tokens)
    figures = [figure for group in groups for figure in group]
    if len(set(figures)) == len(figures) == max(figures) - min(figures) + 1:
        return min(figures)
    rows = [group for group in groups if min(group) < 10] or groups  # a row of two-digit figures alone may be the years 10 to 49
    figures = [figure for group in rows for figure in group]
    if len(set(figures)) < len(figures) or (len(rows) > 1 and min(figures) >= 10):
        return None
    return min(figures)


def _groups(tokens: list[str]) -> list[list[int]]:
    """The figures, parted where a letter or a year stands between them or where they jump."""
    groups: list[list[int]] = [[]]
    for token in tokens:
        if not _is_figure(token):
            groups.append([])
            continue
        figure = int(token) or 10
        if groups[-1] and abs(figure - groups[-1][-1]) > _SPLIT_STEP:
            groups.append([])
        groups[-1].append(figure)
    return [group for group in groups if group]


def _lowest_letter(tokens: list[str]) -> int | None:
    """Letters that follow one another in the alphabet, at least three of them, spaced or not."""
    letters = "".join(token for token in tokens if token.isalpha()).upper()
    row = "".join(sorted(set(letters)))
    return letter_value(row[0]) if len(row) >= 3 and len(row) == len(letters) and row in ascii_uppercase else None
