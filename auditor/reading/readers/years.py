"""The year of publication or printing claimed for the copy, told apart from inscriptions, plots and other editions."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from auditor.reading.readers.known_houses import listed, year_of
from auditor.reading.scene import Draft, Scene
from auditor.reading.starts import Start
from auditor.values import Stance

_ROMAN = re.compile(r"m{1,2}(?:cm|cd|d?c{0,3})(?:xc|xl|l?x{0,3})(?:ix|iv|v?i{0,3})")
_DIGITS = {"m": 1000, "d": 500, "c": 100, "l": 50, "x": 10, "v": 5, "i": 1}


def read_years(scene: Scene, publishers: Sequence[Draft]) -> Iterator[Draft]:
    """Drafts of ``year``, each year once. A year stands for publication unless its surroundings make it another date."""
    beside = {draft.last for draft in publishers} | {draft.first - 1 for draft in publishers}
    found: list[tuple[int, str, Stance | None]] = []
    firsts: list[int] = []
    for index in scene.starting(_START):
        year = _year(scene.norm[index])
        if year is None or _no_year(scene, index):
            continue
        imprint = any(0 <= index - end <= 3 for end in beside) or index + 1 in beside
        if not imprint and (_another_date(scene, index) or _another_edition(scene, index)):
            continue
        if _first_published(scene, index):
            firsts.append(len(found))
        found.append((index, year, _stance(scene, index)))
    latest = max((year for _, year, _ in found), default="")
    seen: set[str] = set()
    for number, (index, year, stance) in enumerate(found):
        older = number in firsts and year < max(latest, _reprinted(scene, index))
        if older:
            seen.add(year)
        elif year not in seen:
            seen.add(year)
            yield Draft("year", year, index, index + 1, "year", part="book", stance=stance)


def _year(word: str) -> str | None:
    return None if len(word) < 4 else word if year_of(word) else _roman(word)


_START = Start(lambda word: _year(word) is not None)


def _roman(word: str) -> str | None:
    """ "mcmlxii" as "1962"."""
    if word[0] != "m" or not _ROMAN.fullmatch(word):
        return None
    values = [_DIGITS[letter] for letter in word]
    total = sum(
        -value if value < max(values[at + 1 :], default=0) and value < values[at + 1] else value
        for at, value in enumerate(values)
    )
    return str(total) if year_of(str(total)) else None


def _no_year(scene: Scene, index: int) -> bool:
    """Sums, counts, ranges, decades, telephone numbers, dates to the day."""
    norm = scene.norm
    before, after = norm[index - 1] if index else "", norm[index + 1] if index + 1 < len(norm) else ""
    label = norm[index - 2] if index > 1 and before == ":" else before
    titled = label == "page" and bool({"title", "copyright", "imprint"} & set(norm[max(0, index - 3) : index]))
    counted = (
        (label in listed("not_years") - {"of"} and not titled)
        or (before == "of" and after == "copies" and index > 1 and norm[index - 2] in ("one", "edition", "limitation", "run"))
        or after in listed("units")
    )
    if counted or before.isdecimal() or (after.isdecimal() and len(after) > 2):
        return True
    if before in ("-", "—", "/", "to") and index > 1 and norm[index - 2].isdecimal():
        return True
    if after in ("-", "—", "/") and norm[index + 2 : index + 3] and norm[index + 2].isdecimal():
        return True
    if index == 0 and after in ("by", "george", ",") and norm[index + 1 : index + 3] != [",", "first"]:
        return after != ","  # the title 1984
    day = before in listed("months") and index > 1 and re.match(r"\d", norm[index - 2]) is not None
    return day and not set(norm[max(0, index - 7) : index]) & listed("published")


def _nearby(scene: Scene, index: int) -> list[str]:
    clause = scene.clause(index)
    return scene.norm[max(clause.first, index - 7) : index]


def _another_date(scene: Scene, index: int) -> bool:
    """An inscription's, a film's, a plot's: by the words before it in its clause, or "in 1943" without a word of publishing."""
    norm = scene.norm
    before = _nearby(scene, index)
    bare = [word for word in before if word not in ("(", "[", ",", ":", "the", "'", '"')]
    last = bare[-1] if bare else ""
    second = bare[-2] if len(bare) > 1 else ""
    published = bool(set(before) & listed("published")) or _came_out(before)
    if last == "and" and "between" in before[:-1]:
        return True
    if last in listed("months") and {"followed", "follows", "follow"} & set(before):
        return True
    if last == "reprinted" or (last == "and" and "reprinted" in before):
        return not set(norm[max(0, index - 6) : index]) & {"impression", "printing"}
    if _inscribed(scene, index) and (last == "dated" or not set(before[-3:]) & listed("publication")):
        return True
    if published and last not in listed("up_to"):
        return False
    if last == "in" or last in listed("up_to"):
        return True
    if last == "of":
        return second not in listed("of_this") or "facsimile" in before
    low, high = scene.segment(index)
    near = set(norm[max(low, index - 9) : index]) | set(norm[index + 1 : min(index + 3, high)]) - listed("editions")
    near -= {last} & listed("about") if second in listed("before_about") or not second else set()
    if near & (listed("other_dates") - {"in", "by"}) or "inscription" in before:
        return not set(before[-2:]) & listed("publication") - {"dated", "first", "1st"} or bool(
            near & {"inscription", "inscribed", "gift"}
        )
    return (
        index > 0
        and norm[index - 1][0].isalpha()
        and not any(norm[index - 1] in listed(name) for name in ("months", "publication", "about"))
        and _in_running_talk(scene, index)
    )


def _came_out(before: list[str]) -> bool:
    """ "Came out in 1951", "out in 1931", but not "inked out by a charity in 1974"."""
    at = len(before) - 1 - before[::-1].index("out") if "out" in before else -1
    return at >= 0 and (
        before[at + 1 :] in (["in"], ["in", "the", "year"], []) or bool(set(before[max(0, at - 3) : at]) & listed("put"))
    )


def _inscribed(scene: Scene, index: int) -> bool:
    """ "Inscribed to her accompanist, dated 1979": the date is the writing's."""
    clause = scene.clause(index)
    near = scene.norm[max(clause.first, index - 16) : index]
    return bool(listed("inscribed") & set(near)) or (near[-1:] == ["dated"] and "signed" in near)


def _in_running_talk(scene: Scene, index: int) -> bool:
    """ "the winter 1947 storms": small words on both sides."""
    norm, text = scene.norm, scene.words
    after = norm[index + 1] if index + 1 < len(norm) else "."
    before = text.text[text.start[index - 1]]
    return (
        after[0].isalpha()
        and before.islower()
        and norm[index - 1] in ("from", "since", "than", "until", "during", "over")
        and after not in listed("of_this")
    )


def _another_edition(scene: Scene, index: int) -> bool:
    """ "The 1931 first had it wrong", "reprints of 1936", "no 1977 reprint"."""
    norm = scene.norm
    unread = listed("months") | {"(", "[", '"', "'", "."}
    before = [word for word in norm[max(0, index - 5) : index] if word not in unread]
    after = norm[index + 1 : index + 3]
    if before[-1:] == ["original"] and before[-3:-1] in (["of", "the"], ["from", "the"]):
        before = before[:-1]
    if before[-1:] in (["no"], ["not"]) and after[:1] and after[0] in listed("editions"):
        return True
    if before[-1:] == ["of"] and before[-2:-1] and before[-2] in listed("plural_editions"):
        return True
    articled = before[-1:] in (["the"], ["whose"], ["that"], ["a"])
    named = bool(after) and bool(set(after) & listed("editions"))
    opens = scene.clause(index).first >= index - 1
    if after[:1] in (["one"], ["ones"]):  # "the black-board 1957 one"
        return not {"is", "its", "it's", "this", "be"} & set(before)
    if before[-2:] == ["of", "a"] and "reprint" in before[-3:-2]:
        return named
    own: bool = before[-2:-1] in (["is"], ["this"], ["it's"]) or (before[-1:] == ["a"] and bool(after))
    return bool(articled and named and not own and not (opens and index < 6))


def _reprinted(scene: Scene, index: int) -> str:
    """ "First published 1949 but then also Reprinted 1955": the latest year of reprinting told behind, else ""."""
    norm = scene.norm
    years = [norm[at] for at in range(index + 2, min(index + 14, len(norm))) if year_of(norm[at]) and norm[at - 1] == "reprinted"]
    return max(years, default="")


def _first_published(scene: Scene, index: int) -> bool:
    before = _nearby(scene, index)[-5:]
    told = {"published", "out", "appeared", "issued", "printed", "pub", "publ"}
    return bool(told & set(before)) and bool({"first", "1st", "originally"} & set(before))


def _stance(scene: Scene, index: int) -> Stance | None:
    """ "c. 1929" is hedged; "May 1936" is no "may"; "none listed below 'First published 1957'" denies no year."""
    norm = scene.norm
    before = [word for word in norm[max(0, index - 2) : index] if word not in (".", "(", "[")]
    if (before[-1:] and before[-1] in listed("about")) or norm[index + 1 : index + 3] in (["or", "thereabouts"], ["or", "so"]):
        return "hedged"
    if norm[index - 1 : index] in (['"'], ["'"]):
        return None
    clause = scene.clause(index)
    cues = scene.cues_between(clause.first, index)
    if before[-1:] == ["may"]:
        cues = [cue for cue in cues if cue.last != index]
        return None if cues else "asserted"
    if _first_published(scene, index) and cues and all(cue.row.kind == "denial" for cue in cues):
        return "asserted"
    return None
