"""What a line of words says for points: stems, colours with the noun they are said of, and the statements of a copyright page."""

from __future__ import annotations

import re
from collections.abc import Sequence

from auditor.reading.points.lexis import NO, Token, beyond, colours, head, kind
from auditor.reading.points.table import lexis

_STOPS = (",", ";", "/", ".", "?", ":", "-", "—", "!", ")")
_STATING = {"says", "copyright", "#so"}


def features(line: Sequence[Token], homes: frozenset[str]) -> list[Token]:
    """All that a hint says: its stems, its colours (without a noun of their own said of the point's) and its statements."""
    stems = [(at, one) for at, one in line if one not in colours()]
    return [*stems, *shades(line, homes, hint=True), *statements(line)]


def shades(line: Sequence[Token], homes: frozenset[str], *, hint: bool = False) -> list[Token]:
    """Colours with the kind of noun they are said of: "navy@board"; the point's own nouns are "home"."""
    found: list[Token] = []
    known = colours()
    for number, (at, one) in enumerate(line):
        if one in known:
            said_of = head(line, number, homes)
            alone = said_of is None and _by_itself(line, number)
            home = (
                said_of in homes
                or (said_of is None and hint)
                or (alone and ("board" in homes or _named_last(line, number, homes)))
            )
            found.append((at, f"{one}@home" if home else f"{one}@{said_of}"))
        elif one in NO and _denies_home(line, number, homes):
            found.append((at, "plain@home"))
    return found


def _by_itself(line: Sequence[Token], number: int) -> bool:
    """ "Hardback, navy, no jacket", "Boards? Green.", "only white": a colour between two stops."""
    before = number - 1
    while before >= 0 and line[before][1] in ("alone", "still", "now", "plain", "a", "all", "no"):
        before -= 1
    opens = before < 0 or line[before][1] in _STOPS
    return opens and (number + 1 == len(line) or line[number + 1][1] in _STOPS) and number > 0


def _named_last(line: Sequence[Token], number: int, homes: frozenset[str]) -> bool:
    """Whether the last noun before that takes a colour is one of a point's own."""
    for _, one in reversed(line[:number]):
        if one in homes or kind(one) is not None:
            return one in homes or kind(one) in homes
    return False


def _denies_home(line: Sequence[Token], number: int, homes: frozenset[str]) -> bool:
    """ "Nothing (printed) on the flap", "the flap says nothing", "no topstain", "no dye on the top edge"."""
    if _blank_behind(line, number, homes) or _blank_before(line, number, homes) or _answers(line, number, homes):
        return True
    if "top" not in homes:
        return False
    for step, (_, one) in enumerate(line[number + 1 : number + 4], number + 1):
        before = {word for _, word in line[max(0, number - 3) : number]}
        if one == "topstain" or (kind(one) == "stain" and ("top" in before or head(line, step) == "top")):
            return True
        if kind(one) is not None or one in (",", ".", ";"):
            return False
    return False


def _answers(line: Sequence[Token], number: int, homes: frozenset[str]) -> bool:
    """ "Topstain: nil", "rear flap - nothing"."""
    noun = line[number - 2][1] if number > 1 and line[number - 1][1] in (":", "-", "=", "?", "—") else ""
    behind = line[number + 1][1] if number + 1 < len(line) else "."
    return (noun in homes or kind(noun) in homes) and not behind[0].isalnum()


def _blank_behind(line: Sequence[Token], number: int, homes: frozenset[str]) -> bool:
    """ "Nothing on the flap", "nothing whatever printed on the back"."""
    step = number + 1
    while step < len(line) and line[step][1] in lexis()["blank_fillers"]:
        step += 1
    if step == len(line) or line[step][1] not in ("on", "at", "to", "across", "behind"):
        return False
    return head(line, step - 1 if step == number + 1 else number, homes) in homes or beyond(line, step, homes) in homes


def _blank_before(line: Sequence[Token], number: int, homes: frozenset[str]) -> bool:
    """ "The rear flap says nothing", "the verso carries no print"."""
    ahead = [one for _, one in line[number + 1 : number + 3]]
    if line[number][1] == "nothing":
        if ahead and ahead[0] in lexis()["nothing_of"]:
            return False
    elif not ahead or ahead[0] not in lexis()["print"]:
        return False
    step = number - 1
    while step >= 0 and number - step <= 3 and line[step][1] in lexis()["bearing"]:
        step -= 1
    if step < 0 or step == number - 1:
        return False
    noun = line[step][1]
    return noun in homes or kind(noun) in homes


def statements(line: Sequence[Token]) -> list[Token]:
    """What a copyright page says in all its wordings.

    "#nolater": no later printing is told; "#later": one is; "#state": a word for stating, or the page itself.
    """
    found: list[Token] = []
    for number, (at, one) in enumerate(line):
        if one in _STATING:
            found.append((at, "#state"))
        elif one in NO:
            if one == "nothing" and _follows_the_date(line, number):
                found.append((at, "#nolater"))
            if _followed_by_none(line, number) or _no_later(one, [word for _, word in line[number + 1 : number + 7]]):
                found.append((at, "#nolater"))
        elif one in ("#nothing", "alone") and _of_the_first(line, number):
            found.append((at, "#nolater"))
        elif one in ("later", "list") or (one.endswith("th") and one != "1th" and one[0].isdecimal()):
            before = [word for _, word in line[max(0, number - 3) : number]]
            ahead = [word for _, word in line[number + 1 : number + (5 if one == "list" else 3)]]
            if "printing" in ahead and not NO & set(before):
                found.append((at, "#later"))
            if one == "list" and "printing" in ahead + before:
                found.append((at, "#state"))
    return found


def _followed_by_none(line: Sequence[Token], number: int) -> bool:
    """ "Followed by no impressions"."""
    before, ahead = ({word for _, word in part} for part in (line[max(0, number - 3) : number], line[number + 1 : number + 3]))
    return "follow" in before and not ahead.isdisjoint(("printing", "reprint"))


def _follows_the_date(line: Sequence[Token], number: int) -> bool:
    """ "Nothing follows 1958", "under the date there's nothing"."""
    before = [one for _, one in line[max(0, number - 6) : number]]
    below = "later" in before and {"date", "year", "publish", "copyright"} & set(before[before.index("later") :])
    return bool(below) or any(one in ("follow", "succeed") for _, one in line[number + 1 : number + 2])


def _of_the_first(line: Sequence[Token], number: int) -> bool:
    """ "Only 'First published 1957'", "published March 1931 alone"."""
    before = [one for _, one in line[max(0, number - 3) : number]]
    ahead = [one for _, one in line[number + 1 : number + 5]]
    if before[-1:] and before[-1] in (",", "."):
        before = []
    return "publish" in [*before, *ahead] or any(re.fullmatch(r"1[6-9]\d\d|20\d\d", one) for one in [*before, *ahead[:3]])


def _no_later(opening: str, ahead: list[str]) -> bool:
    """ "No further impressions listed", "no reprints", "no other dates", "nothing after it"."""
    if opening == "nothing":
        return "later" in ahead[:3]
    if "later" in ahead[:3]:
        behind = ahead[ahead.index("later") + 1 :]
        return any(word in ("printing", "reprint", "date", "edition", "month", "year", "issue", "line") for word in behind[:3])
    return "reprint" in ahead[:3]
