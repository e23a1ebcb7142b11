"""Publishers known by name: the work's own in every form that sellers use, and the houses of the trade."""

from __future__ import annotations

from functools import cache, lru_cache

from auditor.knowledge import lexicon
from auditor.knowledge.houses import houses
from auditor.reading.scene import Scene
from auditor.reading.words import words

_AND = {"and": "&"}
_SKIPPED = {",", "."}

Names = dict[str, list[tuple[str, ...]]]
Span = tuple[int, int]


@cache
def listed(name: str) -> frozenset[str]:
    """A word list of lexicon/imprints.toml."""
    return frozenset(lexicon.table("imprints")[name])


def year_of(word: str) -> bool:
    """Whether a word can be a year in print."""
    return len(word) == 4 and word.isdecimal() and 1780 <= int(word) <= 2029


def _plain(name: str) -> tuple[str, ...]:
    """A name's words without commas and stops, "&" for "and"."""
    return tuple(_AND.get(word, word) for word in words(name).norm if word not in _SKIPPED)


def _by_first(names: set[tuple[str, ...]]) -> Names:
    found: Names = {}
    for name in sorted(names, key=len, reverse=True):
        found.setdefault(name[0], []).append(name)
    return found


@lru_cache(maxsize=10_000)
def own_names(names: tuple[str, ...]) -> Names:
    """The work's publishers in every form that sellers use: whole, without "The" and "Press", by surname, each of two."""
    forms: set[tuple[str, ...]] = set()
    for name in names:
        if " for " in name or "printed by" in name or name.islower():
            continue
        for part in (name, *(name.split(", ") if ", The" in name or ", Paris" in name else ())):
            forms |= _forms(_plain(part))
    return _by_first({form for form in forms if form[0] not in listed("cities")})


def _forms(whole: tuple[str, ...]) -> set[tuple[str, ...]]:
    """Forms of one name: ("j.", "b.", "lippincott") also as ("lippincott",)."""
    bare = whole
    while len(bare) > 1 and bare[-1] in listed("dropped"):
        bare = bare[:-1]
    while len(bare) > 1 and (bare[0] in listed("dropped") or len(bare[0]) == 1):
        bare = bare[1:]
    forms = {whole, whole[1:] if whole[0] == "the" else whole, bare}
    if len(bare) > 1 and len(whole) > 2 and not {"&", "press", "house"} & set(whole):
        forms.add(bare[-1:])
    return {form for form in forms if form and (len(form) > 1 or len(form[0]) > 3)}


@cache
def _trade() -> Names:
    names = {_plain(name) for name in lexicon.table("imprints")["houses"]}
    names |= {
        _plain(name)
        for house in houses()
        for name in (house.publisher, *house.aliases)
        if not set("()/") & set(name) and "any" not in name
    }
    return _by_first(names)


def opens_trade_name(word: str) -> bool:
    """Whether a name known in the trade may begin with a word."""
    return word in _trade() or word.removesuffix("'s") in _trade()


def upper(scene: Scene, index: int) -> bool:
    """Whether a word begins with a capital."""
    return scene.words.text[scene.words.start[index]].isupper()


def _match(scene: Scene, index: int, names: Names) -> int | None:
    """The word behind the longest of the names that stands at a word, commas and stops left out; "Cape's" is "Cape"."""
    norm = scene.norm
    bare = norm[index].removesuffix("'s")
    if norm[index] not in names and bare not in names:
        return None
    for name in [*names.get(norm[index], ()), *(names.get(bare, ()) if bare != norm[index] else ())]:
        at = index
        for step, wanted in enumerate(name):
            while step and at < len(norm) and norm[at] in _SKIPPED and norm[at] != wanted:
                at += 1
            if at >= len(norm) or not _same(norm[at], wanted, step + 1 == len(name)):
                break
            at += 1
        else:
            return at
    return None


def _same(word: str, wanted: str, last: bool) -> bool:
    return _AND.get(word, word) == wanted or (last and word == f"{wanted}'s")


@cache
def _own_genitives() -> frozenset[str]:
    return frozenset(word for names in _trade().values() for name in names for word in name if word.endswith("'s"))


def possessive(word: str) -> bool:
    """Whether a name's last word stands in the genitive ("Cape's") and isn't written so ("Scribner's")."""
    return word.endswith("'s") and word not in _own_genitives()


def tailed(scene: Scene, last: int) -> int:
    """Over what belongs to a name behind it: "Ltd", "& Co.", "and Company"."""
    norm = scene.norm
    while last < len(norm):
        if norm[last] in listed("tails") and upper(scene, last):
            last += 1
        elif norm[last] in ("&", "and", "-") and norm[last + 1 : last + 2] and norm[last + 1] in ("co", "company", "sons", "op"):
            last += 2
        else:
            break
    return last


def own_house(scene: Scene, index: int, own: Names) -> Span | None:
    """One of the work's own publishers; a single word without a capital only where an imprint stands."""
    last = _match(scene, index, own)
    if last is None:
        return None
    single = last - index == 1
    if single and not upper(scene, index) and not _imprint_near(scene, index, last):
        return None
    if scene.norm[last : last + 2] == ["book", "club"] or (single and set(scene.norm[last : last + 1]) & listed("described")):
        return None
    return _with_article(scene, index), tailed(scene, last)


def _with_article(scene: Scene, index: int) -> int:
    """ "London: The Hogarth Press": the article belongs to the name there."""
    norm = scene.norm
    article = index > 0 and norm[index - 1] == "the" and upper(scene, index - 1)
    return index - 1 if article and (index == 1 or norm[index - 2] in (":", ",", ".", ";", "\n", "by")) else index


def trade_house(scene: Scene, index: int) -> Span | None:
    """A house known in the trade; one of an everyday name only where an imprint stands."""
    last = _match(scene, index, _trade())
    if last is None or not upper(scene, index):
        return None
    name = " ".join(scene.norm[index:last])
    if scene.norm[last : last + 1] in (["book"], ["club"]):
        return None
    if (last - index == 1 or name in listed("everyday")) and not _imprint_near(scene, index, last):
        alone = name not in listed("everyday") and between_marks(scene, index, last)
        if not alone:
            return None
    return _with_article(scene, index), tailed(scene, last)


def _imprint_near(scene: Scene, first: int, last: int) -> bool:
    """Whether a year, a place or a label stands right beside a name."""
    norm = scene.norm
    before = [word for word in norm[max(0, first - 4) : first] if word not in (",", "(", "the")]
    after = [
        word
        for word in norm[last : last + 5]
        if word
        not in (",", "(", "[", ".", "c", "©", "books", "press", "hardcover", "hardback", "paperback", "first", "edition", "1st")
    ]
    undated = after[:2] == ["n", "d"] or after[:1] in (["nd"], ["undated"])
    dated = undated or any(year_of(word) for word in (*after[:1], *before[-1:]))
    placed = bool(set(before[-2:]) & listed("cities")) and norm[first - 1] in (":", ",")
    cited = norm[last : last + 1] == [","] and bool(set(norm[last + 1 : last + 2]) & listed("cities"))
    named = "publisher" in before or ("by" in before[-1:] and "published" in norm[max(0, first - 5) : first])
    return dated or placed or cited or named


def between_marks(scene: Scene, first: int, last: int) -> bool:
    """Whether words stand alone between marks."""
    marks = {".", ",", ";", ":", "\n", "(", ")", "—", "-", "|", "•", "[", "]"}
    return (first == 0 or scene.norm[first - 1] in marks) and (last == len(scene.norm) or scene.norm[last] in marks)
