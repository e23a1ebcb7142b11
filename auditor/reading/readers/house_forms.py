"""Publishers by the form of what is written: "Published by X", "London: X, 1962", "X Press, 1962"."""

from __future__ import annotations

from functools import cache

from auditor.reading.readers.known_houses import between_marks, listed, tailed, upper, year_of
from auditor.reading.scene import Scene

_JOINERS = frozenset({"&", "and", "of", "the", "'", "-", "."})
_LONGEST = 7
_TITLED = 2  # letters of an initial or a title before a stop: "M.", "Lt."
_LISTING = {",", ";", "("}


@cache
def _joiners() -> frozenset[str]:
    return _JOINERS | listed("joiners")


def run_of_capitals(scene: Scene, index: int) -> int:
    """The end of a run of capitalised words that may be a house's name."""
    norm, end = scene.norm, index
    while end < len(norm) and end - index < _LONGEST and _goes_on(scene, index, end):
        end += 1
    while end > index and norm[end - 1] in _JOINERS:
        end -= 1
    return end


def _partners(scene: Scene, first: int, end: int) -> int:
    """Over the partners in a name behind a comma: "Orme, Fagg & Sons"."""
    if end - first != 1 or scene.norm[end : end + 1] != [","] or end + 1 >= len(scene.norm):
        return end
    behind = _without_place(scene.norm, end + 1, run_of_capitals(scene, end + 1))
    return behind if behind - end == 4 and scene.norm[end + 2] in ("&", "and") else end


def _without_place(norm: list[str], first: int, end: int) -> int:
    """The end of a name before "of" and its place: "Tamarack Press of Duluth", but "University Press of Kentucky"."""
    for at in range(first + 1, end):
        if norm[at] == "of" and norm[at - 1] in listed("house_words") and "university" not in norm[first:at]:
            return at
    return end


def _goes_on(scene: Scene, first: int, at: int) -> bool:
    """Whether a word goes on with a name: a capitalised one, or a joiner or an initial's stop before one."""
    norm = scene.norm
    word = norm[at]
    following = norm[at + 1] if at + 1 < len(norm) else ""
    part = word not in listed("no_house") or (following in listed("house_words") and upper(scene, at + 1) and at > first)
    if word[0].isalpha() and upper(scene, at) and (at == first or part):
        return True
    if at == first or at + 1 >= len(norm) or not norm[at + 1][0].isalpha():
        return False
    if word == ".":
        return len(norm[at - 1]) <= 2 and upper(scene, at + 1)
    return word in _joiners() and (upper(scene, at + 1) or word == "of")


def _alone(scene: Scene, index: int) -> bool:
    """Whether no name goes on behind a word: a plain word follows. True of most words with a capital, and quickly told."""
    following = scene.norm[index + 1] if index + 1 < len(scene.norm) else "."
    return following[0].isalpha() and not upper(scene, index + 1) and following not in _joiners()


def _small_run(scene: Scene, index: int) -> int:
    """The same in a text without capitals: up to three words that belong to no other talk."""
    norm, end = scene.norm, index
    while (
        end < len(norm)
        and end - index < 4
        and (norm[end][0].isalpha() or norm[end] == "&")
        and norm[end] not in listed("no_house")
    ):
        end += 1
        if norm[end - 1] in listed("house_words"):
            break
    return end


def labelled(scene: Scene, index: int) -> tuple[int, int] | None:
    """ "Published by X", "Publisher: X", "published in London by X"."""
    norm = scene.norm
    if norm[index] not in listed("labels") or (norm[index] == "out" and not set(norm[max(0, index - 4) : index]) & listed("put")):
        return None
    at = index + 1 + (norm[index + 1 : index + 2] == ["."])
    for _ in range(4):
        if (
            norm[at : at + 1]
            and norm[at] not in (":", "by", "-", "—", "=")
            and norm[index] == "published"
            and (
                norm[at] in ("in", "first", "thus", "originally", ",")
                or norm[at] in listed("cities") | listed("months")
                or year_of(norm[at])
            )
        ):
            at += 1
    plain = norm[index] == "publisher" and at < len(norm) and upper(scene, at) and norm[at][0].isalpha()
    if (
        at + 1 >= len(norm)
        or not (plain or norm[at] in (":", "by", "-", "—", "="))
        or (norm[index] in listed("made") and norm[at] != "by")
    ):
        return None
    at += not plain
    at += norm[at] == ":"
    if norm[at] == "the" and at + 1 < len(norm) and (not upper(scene, at) or norm[index] == "published"):
        at += 1
    if norm[at] in listed("no_house") or not norm[at][0].isalpha():
        return None
    if not upper(scene, at) and norm[index] in listed("made"):
        return None
    if not upper(scene, at):
        end = _small_run(scene, at)
        return (at, end) if end > at and end - at <= 4 else None
    end = _partners(scene, at, _without_place(norm, at, run_of_capitals(scene, at)))
    while end > at and norm[end - 1] in listed("no_house"):
        end -= 1
    if end > at and norm[end : end + 2] == ["book", "club"]:
        return at, end + 2
    placed = norm[end : end + 1] == [":"] and norm[end - 1] in listed("cities")
    return (at, tailed(scene, end)) if end > at and not placed else None


def placed_house(scene: Scene, index: int) -> tuple[int, int] | None:
    """ "London: X, 1962", "New York: X (1974)", "London, X, 1962"."""
    norm = scene.norm
    if (
        norm[index] not in (":", ",")
        or not index
        or index + 2 >= len(norm)
        or not norm[index - 1][0].isalpha()
        or not upper(scene, index - 1)
    ):
        return None
    city = norm[index - 1] in listed("cities")
    if not norm[index + 1][0].isalpha() or not upper(scene, index + 1) or (norm[index] == "," and not city):
        return None
    end = run_of_capitals(scene, index + 1)
    dated = _dated(scene, end)
    if end == index + 1 or norm[index + 1] in listed("no_house") or norm[index + 1] in listed("cities"):
        return None
    if norm[index] == ",":
        return (index + 1, tailed(scene, end)) if dated or norm[end - 1] in listed("tails") | {"sons"} else None
    return (index + 1, tailed(scene, end)) if city or (dated and norm[index - 1] not in listed("other_labels")) else None


def listed_house(scene: Scene, index: int) -> tuple[int, int] | None:
    """A name that stands last in a list of title and author, or behind "paperback from", a year after it: "The Ninth Ferryman;
    Ottoline Gage; Harbinger 2001", "Memoir by Hollis Crane, Maple Gate, 1946"."""
    norm = scene.norm
    if index < 2 or not upper(scene, index) or not norm[index][0].isalpha() or norm[index] in listed("no_house"):
        return None
    from_it = norm[index - 1] == "from" and norm[index - 2] in listed("formats")
    if not from_it and norm[index - 1] not in _LISTING:
        return None
    end = run_of_capitals(scene, index)
    run = norm[index:end]
    if not run or set(run) & (listed("cities") | listed("months")) or not (_dated(scene, end) or (from_it and "&" in run)):
        return None
    return (index, tailed(scene, end)) if from_it or _behind_author(scene, index - 1) else None


def _behind_author(scene: Scene, mark: int) -> bool:
    """Whether a list's items before a mark hold an author: one behind "by", or a second capitalised item."""
    norm, first = scene.norm, mark
    while first > 0 and norm[first - 1] != "\n" and (norm[first - 1] != "." or len(norm[first - 2]) <= _TITLED):
        first -= 1
    if "by" in norm[first:mark]:
        return True
    opens = [at + 1 for at in range(first - 1, mark) if at < first or norm[at] in _LISTING]
    return len(opens) > 1 and all(norm[at][0].isalpha() and upper(scene, at) for at in opens)


def _dated(scene: Scene, end: int) -> bool:
    after = [
        word for word in scene.norm[end : end + 5] if word not in (",", "(", "[", ".", "c", "©", "n", "d", "stated", "/", "|")
    ]
    return bool(after) and year_of(after[0])


def formed(scene: Scene, index: int) -> tuple[int, int] | None:
    """A run of capitalised words that ends like a house's name or joins two with "&", where an imprint may stand.

    "Gledhill, London, 1953": any run with a place and a year behind it.
    """
    norm = scene.norm
    if (
        not norm[index][0].isalpha()
        or not upper(scene, index)
        or norm[index] in listed("no_house")
        or norm[index] in _JOINERS - {"the"}
    ):
        return None
    if index and norm[index - 1][0].isalpha() and upper(scene, index - 1) and norm[index - 1] not in listed("no_house"):
        return None
    if _alone(scene, index):
        return None
    end = run_of_capitals(scene, index)
    run = norm[index:end]
    if (
        norm[end : end + 1] == [","]
        and end + 1 < len(norm)
        and set(norm[end + 1 : end + 3]) & listed("cities")
        and _dated(scene, run_of_capitals(scene, end + 1))
        and not set(run) & {"of", "the"}
    ):
        return index, end
    housed = run[-1:] and (run[-1] in listed("house_words") or run[0] in listed("house_openers"))
    if end - index < 2 or not (housed or ("&" in run and len(run) <= 4)):
        return None
    if "&" in run and len(run) > 3 and scene.words.quote(index, end).isupper():  # "ON MALTA PELLOW & STRANG 1968"
        index += run.index("&") - 1
    marked = between_marks(scene, index, end) and ("&" not in run or set(norm[end + 1 : end + 2]) & listed("behind_house"))
    named = index > 0 and norm[index - 1] in ("by", "from", "the", "a", "both", "for") and run[-1] in listed("named_houses")
    behind = norm[end : end + 1] and norm[end] in listed("behind_house") and (end == len(norm) or run[-1] != "books" or index > 0)
    return (index, end - (run[-1] == "pub")) if _dated(scene, end) or marked or named or behind else None
