"""Rows of figures or letters that count printings, as a copyright page prints them and a seller copies them out."""

from __future__ import annotations

from collections.abc import Sequence

from auditor.reading.readers.row_words import LETTERS, Row, listed, number, with_makers, written_out, years_before
from auditor.reading.scene import Scene

_GAPS = {",", "-", "/", "—", ".", "•", "_", "*", "|", "&"}
_DOTS = {"...", ".."}
_HIGHEST = 45  # more printings than that have no line; figures above are two-digit years
_FEWEST_IN_WORDS = 4
_LONGEST_NAMED = 8  # digits in one piece that may be a telephone's
_LONGEST = 60  # figures of a row, years and printings together: more count nothing


def row_at(scene: Scene, index: int, signed: bool) -> Row | None:
    """The row that begins at a word; ``signed`` says that the words around speak of a number line."""
    if _behind_other(scene, index):
        return None
    behind = years_before(scene, index)
    if behind > index:
        line = row_at(scene, behind, True)
        return Row(f"{scene.words.quote(index, behind)} {line.value}", index, line.last) if line is not None else None
    glued = _glued_by_commas(scene.norm[index], signed)
    if glued is not None:
        row: Row | None = with_makers(scene, Row(glued, index, index + 1))
    elif scene.norm[index].isdecimal() or number(scene.norm[index]) is not None:
        row = _figures(scene, index, signed)
    else:
        row = _letters(scene, index, signed)
    return None if row is None or _counts_else(scene, row, signed) else row


def _behind_other(scene: Scene, index: int) -> bool:
    """Whether figures stand behind a word that they number: "page 10", "tel: 555", but not "copyright page: 10 9 8"."""
    norm = scene.norm
    mark = index > 1 and norm[index - 1] in (".", ":")
    at = index - 1 - mark
    before = norm[at] if at >= 0 else ""
    if before in ("page", "pg", "p") and norm[max(0, at - 1)] in ("copyright", "imprint", "title", "c"):
        return False
    return before in listed("not_before") or before in ("$", "£", "€", "+")


def _counts_else(scene: Scene, row: Row, signed: bool) -> bool:
    """A telephone number ("are the last digits of my phone"), or chapters told on: "chapters 1 2 3 ..., 6 7 8 9"."""
    norm, clause = scene.norm, scene.clause(row.first)
    near = norm[max(row.first - 8, clause.first) : row.first] + norm[row.last : min(row.last + 8, clause.last)]
    if set(near) & listed("else_numbered"):
        return True
    if signed:
        return False
    piece = row.last - row.first == 1 and len(norm[row.first]) >= _LONGEST_NAMED
    if piece and set(norm[max(0, row.first - 4) : row.first]) & (listed("not_before") - {"page"} | {"no", "number"}):
        return True
    before = range(clause.first, row.first - 1)
    return any(norm[at] in listed("numbered_on") and norm[at + 1].isdecimal() for at in before)


def _glued_by_commas(word: str, signed: bool) -> str | None:
    """ "1,2,3,4,5" and "10.9.8.7" are one word to the tokenizer."""
    pieces = word.replace(".", ",").split(",")
    if len(pieces) < 3 or not all(piece.isdecimal() and len(piece) <= 2 for piece in pieces):
        return None
    return _shown(pieces, signed, [" "] * (len(pieces) - 1))


def _pieces(scene: Scene, first: int) -> tuple[list[int], list[str]]:
    """Places of the figures of a row that begins at ``first``, and what parts each from the next.

    All are parted alike: where another mark begins the row ends, unless both stretches are rows of their own (years and
    printings, odd and even numbers).
    """
    norm, places, gaps = scene.norm, [first], []
    index = first + 1
    while index < len(norm) and len(places) < _LONGEST:
        gap = ""
        if norm[index] in _GAPS | _DOTS and index + 1 < len(norm):
            gap, index = norm[index], index + 1
            if gap == "," and (norm[index] in _DOTS or norm[index : index + 3] == [".", ".", "."]):  # "8, ... 1"
                gap, index = norm[index], index + 1
            if gap == "." and norm[index : index + 2] == [".", "."]:
                gap, index = "...", index + 2
            if gap == "..." and index < len(norm) and norm[index] == ",":
                index += 1
        same_kind = (
            index < len(norm)
            and norm[index].isdecimal() == norm[first].isdecimal()
            and (norm[index].isdecimal() or number(norm[index]) is not None)
        )
        if not same_kind or len(norm[index]) > 11:
            break
        if gap == "." and scene.words.start[index] - scene.words.end[places[-1]] > 1:
            break
        gaps.append(gap)
        places.append(index)
        index += 1
    return _alike(places, gaps)


def _alike(places: list[int], gaps: list[str]) -> tuple[list[int], list[str]]:
    for at, gap in enumerate(gaps):
        if gap in ("...", "..") or gap == gaps[0] or gaps[0] in ("...", "..") or "..." in gaps:
            continue
        rest = gaps[at + 1 :]
        two_rows = at >= 2 and len(rest) >= 2 and all(other == gaps[0] for other in rest)
        return (places, gaps) if two_rows else (places[: at + 1], gaps[:at])
    return places, gaps


def _figures(scene: Scene, first: int, signed: bool) -> Row | None:
    places, gaps = _pieces(scene, first)
    words = [scene.norm[place] for place in places]
    last = places[-1] + 1
    if "..." in gaps or ".." in gaps:
        value = _shortened(words, gaps)
        return Row(value, first, last) if value else None
    while words and len(words[-1]) == 4 and gaps and gaps[-1] == ",":  # "... 2 1, 1994"
        words, places, gaps = words[:-1], places[:-1], gaps[:-1]
        last = places[-1] + 1
    if len(words) == 1:
        run = _unspaced(words[0]) if words[0].isdecimal() and len(words[0]) >= (4 if signed else 8) else None
        return Row(" ".join(map(str, run)), first, last) if run else None
    shown = _shown(words, signed, gaps)
    return with_makers(scene, Row(shown, first, last)) if shown else None


def _unspaced(word: str) -> list[int] | None:
    """ "12345678910", "1234567890", "13579108642" as numbers; a 0 stands for 10."""
    numbers: list[int] = []
    index = 0
    while index < len(word):
        if word[index : index + 2] == "10" and (index + 2 == len(word) or word[index + 2] != "0"):
            numbers.append(10)
            index += 2
        else:
            numbers.append(int(word[index]) or 10)
            index += 1
    return numbers if _is_line(numbers, 0) else None


def _shortened(words: Sequence[str], gaps: Sequence[str]) -> str | None:
    """ "1 2 3...10", "1 3 5 ... 6 4 2" written out."""
    numbers = [one for word in words if (one := number(word)) is not None]
    if (
        len(numbers) != len(words)
        or max(numbers) > _HIGHEST
        or numbers[0] == numbers[-1]
        or (abs(numbers[0] - numbers[-1]) < 2 and len(numbers) < 4)
    ):
        return None
    cut = next(at for at, gap in enumerate(gaps) if gap in _DOTS) + 1
    head, tail = numbers[:cut], numbers[cut:]
    if len(head) > 1 and len(tail) > 1 and head[1] - head[0] == 2 and tail[-1] - tail[-2] == -2:
        odd, even = list(range(head[0], 11, 2)), [n for n in range(10, tail[-1] - 1, -1) if n % 2 == tail[-1] % 2]
        return " ".join(map(str, odd + even))
    return written_out(numbers[0], numbers[-1])


def _shown(words: Sequence[str], signed: bool, gaps: Sequence[str]) -> str | None:
    """A row's numbers as given if they count printings; years may stand among them."""
    if len(words) == 2 and gaps[0] in ("-", "—"):
        return None  # a range, told by its ends
    shown: list[str] = []
    numbers: list[int] = []
    for word in words:
        if len(word) == 4 and word.isdecimal() and 1950 <= int(word) <= 2035:
            shown.append(word)
            continue
        run = [one] if (one := number(word)) is not None else _unspaced(word)
        if run is None:
            return None
        numbers += run
        shown += [word] if word.isdecimal() and len(word) <= 2 else [str(one) for one in run]
    printings, years = _without_years(numbers)
    if words[0].isalpha() and len(words) < _FEWEST_IN_WORDS and min(numbers) > 1:
        return None  # "ten, nine, eight": anybody's counting
    least = 2 if signed and not years else 3 if signed or years else 4
    if len(printings) < least or not _is_line(printings, 1 if len(printings) > 3 or signed else 0):
        return None
    if not signed and ((len(printings) < 5 and "," in gaps) or (len(printings) == 4 and min(printings) > 7)):
        return None
    return " ".join(shown)


def _without_years(numbers: list[int]) -> tuple[list[int], list[int]]:
    """Printings and two-digit years; years after 1999 (00 01 02) are told apart as a row of their own."""
    low, high = [one for one in numbers if one < _HIGHEST], [one for one in numbers if one >= _HIGHEST]
    if high or (len(set(low)) == len(low) and _is_line(low, 1)):
        if high and 0 in low:  # 98 99 00 01: the years run on
            first = last = low.index(0)
            while last + 1 < len(low) and low[last + 1] == low[last] + 1:
                last += 1
            return low[:first] + low[last + 1 :], high
        return low, high
    ahead, behind = _distinct(low), _distinct(low[::-1])
    for cut in range(max(3, len(low) - behind), min(len(low) - 3, ahead) + 1):
        for part, rest in ((low[:cut], low[cut:]), (low[cut:], low[:cut])):
            if _is_line(rest, 1) and _is_line(part, 0, from_zero=True) and len(rest) >= 4:
                return rest, part
    return low, high


def _distinct(numbers: list[int]) -> int:
    """How many numbers stand before the first that came already."""
    seen: set[int] = set()
    for one in numbers:
        if one in seen:
            break
        seen.add(one)
    return len(seen)


def _is_line(numbers: list[int], holes: int, from_zero: bool = False) -> bool:
    """Distinct numbers without gaps, rising, falling, or odd ones one way and even ones the other."""
    if not numbers or len(set(numbers)) != len(numbers) or max(numbers) > _HIGHEST or (min(numbers) < 1 and not from_zero):
        return False
    if max(numbers) - min(numbers) + 1 - len(numbers) > holes:
        return False
    turn = numbers.index(max(numbers))
    bottom = numbers.index(min(numbers))
    peaked = numbers[: turn + 1] == sorted(numbers[: turn + 1]) and numbers[turn:] == sorted(numbers[turn:], reverse=True)
    valley = numbers[: bottom + 1] == sorted(numbers[: bottom + 1], reverse=True) and numbers[bottom:] == sorted(numbers[bottom:])
    return peaked or valley


def _letters(scene: Scene, first: int, signed: bool) -> Row | None:
    """A line of letters: "A B C D E", "ABCDE", "A-E"."""
    norm, text = scene.norm, scene.words.text
    if not text[scene.words.start[first]].isupper() or (
        first and scene.words.end[first - 1] == scene.words.start[first] and norm[first - 1].isalnum()
    ):
        return None
    word = norm[first]
    if signed and len(word) >= 4 and word in LETTERS:
        return Row(" ".join(word.upper()), first, first + 1)
    if len(word) != 1:
        return None
    places, index = [first], first + 1
    while index < len(norm):
        index += norm[index] in _GAPS
        following = norm[index] if index < len(norm) else ""
        if (
            len(following) != 1
            or following not in LETTERS
            or ord(following) != ord(norm[places[-1]]) + 1
            or not text[scene.words.start[index]].isupper()
        ):
            break
        places.append(index)
        index += 1
    if len(places) >= (2 if signed else 4):
        return Row(" ".join(norm[place].upper() for place in places), first, places[-1] + 1)
    if (
        signed
        and first + 2 < len(norm)
        and norm[first + 1] in ("-", "—", "to", "through")
        and len(norm[first + 2]) == 1
        and norm[first + 2] in LETTERS
    ):
        low, high = sorted((LETTERS.index(word), LETTERS.index(norm[first + 2])))
        run = LETTERS[low : high + 1].upper()
        return Row(" ".join(run if word <= norm[first + 2] else run[::-1]), first, first + 3) if high > low else None
    return None
