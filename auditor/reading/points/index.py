"""A work's points made ready for reading: what words state each reading, worked out once for each point set."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from auditor.knowledge.english import right_words
from auditor.knowledge.points import Point, PointSet, Reading
from auditor.reading.points.aliases import aliases_of
from auditor.reading.points.astray import NOTHING, Difference, difference
from auditor.reading.points.features import features, statements
from auditor.reading.points.lexis import NO, Token, colours, kind, tokens
from auditor.reading.points.model import Index, Role, Said, Told, Way
from auditor.reading.points.sums import spoken
from auditor.reading.points.table import lexis
from auditor.reading.words import words

_FEW = 20_000
_BLIND = (("blindstamp",), ("indent",), ("dent", "rearboard"), ("stamp", "rearboard"))
_SLIPS = {"wrong", "mistake", "corrected"}


_INDEXES: dict[int, tuple[PointSet, Index]] = {}


def index_of(work: PointSet) -> Index:
    """The index of a work, kept for the next listing."""
    held = _INDEXES.get(id(work))
    if held is not None and held[0] is work:
        return held[1]
    if len(_INDEXES) >= _FEW:
        _INDEXES.clear()
    index = _build(work)
    _INDEXES[id(work)] = (work, index)
    return index


def _build(work: PointSet) -> Index:
    told = tuple(_told(point, work) for point in work.points)
    touched: dict[str, set[int]] = {}
    for number, one in enumerate(told):
        keys = set(_keys(one))
        keys |= {alias for alias, needs in one.aliases.items() if not keys.isdisjoint(needs)}
        for key in keys | {page.removeprefix("page") for page in one.pages if any(said.role for said in one.said)}:
            touched.setdefault(key, set()).add(number)
    misprints = [number for number, one in enumerate(told) if any(said.role == "wrong" for said in one.said)]
    kinds: dict[str, list[int]] = {}
    for number, one in enumerate(told):
        kinds.setdefault(one.point.feature, []).append(number)
    alone = {numbers[0] for numbers in (misprints, *kinds.values()) if len(numbers) == 1}
    slips = {
        word
        for one in told
        if one.is_slip
        for reading in one.point.readings
        for text in (reading.value, *reading.said_as)
        for word in words(text).norm
        if _is_sure(word)
    }
    ready = {key: frozenset(numbers) for key, numbers in touched.items()}
    return Index(told, ready, frozenset(slips), frozenset(told[number] for number in alone), _only(told))


def _only(told: Sequence[Told]) -> dict[Told, frozenset[str]]:
    """For each point the words of its readings that no other point of the work uses and that its title doesn't."""
    words = [
        {need.split("@")[0] for said in one.said for way in said.ways for need in way.needs} | one.aliases.keys() for one in told
    ]
    own = [{need.split("@")[0] for said in one.said for need in said.own} for one in told]
    others = [set().union(*(row for at, row in enumerate(words) if at != number)) for number in range(len(told))]
    places = [set().union(*(other.place for other in told if other is not one)) for one in told]
    return {
        one: frozenset(own[number] - others[number] - places[number] - one.known - lexis()["generic"] - {"dropped", "replaced"})
        for number, one in enumerate(told)
    }


def _keys(told: Told) -> Iterable[str]:
    """Stems without which a clause says nothing of the point: the telling words of its ways, or all where none tells."""
    for said in told.said:
        for way in said.ways:
            telling = {need.split("@")[0] for need in way.needs if need[0] != "#"} - lexis()["generic"]
            if "#nolater" in way.needs:
                yield from (*NO, "alone", "#nothing")
            elif not telling:
                yield from (need.split("@")[0] for need in way.needs - {"1th", "edition", "printing"} if need[0] != "#")
                yield from ("says", "copyright", "#so", "list") if "#state" in way.needs else ()
            yield from telling
            if "plain@home" in way.needs:
                yield from NO
    if any(said.role for said in told.said):
        yield from _SLIPS
    if told.point.feature == "price":
        yield from (form[0] for reading in told.point.readings for form in spoken(reading.value))
    yield from (told.change.lost | told.change.gained) - {"word", "letter"}
    yield from (f"{letter}'s" for letter in told.change.doubled)


def _told(point: Point, work: PointSet) -> Told:
    place = _line(point.place)
    homes = frozenset(lexis()["homes"].get(point.feature, ())) | {
        found for _, one in place if (found := kind(one)) and found != "leaf"
    }
    homes = homes or frozenset(one for _, one in place if one.isalpha() and one not in lexis()["generic"] | lexis()["stop"])
    homes = homes or frozenset(one for _, one in place if kind(one) == "leaf")
    homes = homes or frozenset({"jacket" if point.part == "jacket" else "board"})
    pages = frozenset(one for _, one in place if re.fullmatch(r"page\d+", one))
    homes |= _shared_nouns(point) if point.feature not in lexis()["homes"] else set()
    wordings = [[_line(text) for text in (*_pieces(reading.value), *reading.said_as)] for reading in point.readings]
    roles = _roles(point, wordings)
    skip = lexis()["stop"] | pages | ({"page", "line", *(page.removeprefix("page") for page in pages)} if pages else set())
    values = {one for lines in wordings for _, one in features(lines[0], homes)} - lexis()["generic"]
    ways = [tuple(dict.fromkeys(_ways(lines, homes, skip, frozenset(values) if any(roles) else None))) for lines in wordings]
    lacks = [_is_lack(reading, row, bool(any(roles))) for reading, row in zip(point.readings, ways, strict=True)]
    if _is_blind_stamp(point, ways):
        ways = [(*row, *(Way.of(stamp, lack) for stamp in _BLIND)) for row, lack in zip(ways, lacks, strict=True)]
    ways = _with_subjects(ways, lacks)
    said = [
        Said(reading, ways[number], _own(ways, number), lacks[number], roles[number])
        for number, reading in enumerate(point.readings)
    ]
    anchors = frozenset(one for _, one in place if one not in lexis()["stop"] and one[0].isalnum()) - {"line", "list"}
    anchors |= frozenset(lexis()["anchors"].get(point.feature, ())) | pages | ({"jacket"} if point.part == "jacket" else set())
    anchors |= _place_words(place) & {"flap", "board"}
    known = {one for _, one in _line(f"{work.work.title} {work.work.author}")}
    sure = frozenset(w for s in said for w in s.own if _is_sure(w) and w not in known) if any(roles) else frozenset()
    return Told(
        point,
        tuple(said),
        anchors,
        homes,
        pages,
        sure,
        _kinds(point, ways),
        {need: _weight(need, sure, known) for row in ways for way in row for need in way.needs},
        any(roles),
        _slip_words(place, wordings),
        _place_words(place),
        frozenset(known),
        aliases_of({need for row in ways for way in row for need in way.needs}, homes),
        _change(said),
    )


def _change(said: Sequence[Said]) -> Difference:
    """What parts the slip from the right form, where the point has one of each."""
    by_role = {one.role: one.reading.value for one in said}
    return difference(by_role["wrong"], by_role["right"]) if len(said) == 2 and by_role.keys() == {"wrong", "right"} else NOTHING


def _own(ways: Sequence[Sequence[Way]], number: int) -> frozenset[str]:
    """The words that no other reading has in the same sense: what one says is there and another denies is both their own."""

    def needs(rows: Iterable[Sequence[Way]], lack: bool) -> frozenset[str]:
        return frozenset(need for row in rows for way in row if way.lack is lack for need in way.needs)

    others = [row for other, row in enumerate(ways) if other != number]
    return frozenset().union(*(needs([ways[number]], lack) - needs(others, lack) for lack in (False, True)))


def _shared_nouns(point: Point) -> set[str]:
    """What all values of a point name: "hat yellow", "hat green" are colours of the hat."""
    named = [{one for _, one in _line(reading.value) if one.isalpha()} for reading in point.readings]
    lacking = any(_line(reading.value)[0][1] in lexis()["lacks"] for reading in point.readings)
    shared = set.intersection(*named) if len(named) > 1 and not lacking else set()
    return {one for one in shared if one not in lexis()["generic"] | lexis()["stop"] | colours() | NO}


def _weight(need: str, sure: frozenset[str], known: set[str]) -> float:
    """How much a word tells: a form that nobody else writes most, a word that many points share least."""
    if need in sure:
        return 3.0
    if need == "#nolater":
        return 2.5
    if re.fullmatch(r"[\d.]+(inch|mm)", need):
        return 2.5
    if "@" in need:
        return 2.0 if need.endswith("@home") else 1.5
    if need in lexis()["strong"] and need not in known:
        return 1.5
    few = need[0] == "#" or need in lexis()["generic"] or need in known or (need.isdigit() and int(need) <= 12)
    return 0.5 if few else 1.0


def _place_words(place: list[Token]) -> frozenset[str]:
    """A place's words, the simple name of a flap or a board as well."""
    named = {one for _, one in place if one[0].isalnum()} - lexis()["stop"]
    return frozenset(named | {simple for simple in ("flap", "board") if any(one.endswith(simple) for one in named)})


def _slip_words(place: list[Token], wordings: Sequence[Sequence[list[Token]]]) -> frozenset[str]:
    hints = [line for lines in wordings for line in lines if any(one in _SLIPS for _, one in line)]
    told = {one for line in (place, *hints) for _, one in line if one[0].isalpha()}
    return frozenset(told - lexis()["stop"] - _SLIPS - {"page", "line", "spelled", "spelling", "spelt", "print"})


def _is_blind_stamp(point: Point, ways: Sequence[Sequence[Way]]) -> bool:
    needs = {need for row in ways for way in row for need in way.needs}
    return point.part == "book" and bool(needs & {"blindstamp", "indent"})


def _kinds(point: Point, ways: Sequence[Sequence[Way]]) -> frozenset[str]:
    needs = {need for row in ways for way in row for need in way.needs}
    found = {point.feature} | ({"#state"} & needs)
    if _is_blind_stamp(point, ways):
        found.add("blind stamp")
    if "gutter" in point.place:
        found.add("gutter")
    return frozenset(found)


def _pieces(value: str) -> list[str]:
    """A value and its first piece: "flat, not glazed" is told as "flat" as well."""
    first = re.split(r"[,;]", value)[0]
    if first == value or len(first.split()) > 4 or any(one == "#nolater" for _, one in statements(_line(value))):
        return [value]
    return [value, first]


def _line(text: str) -> list[Token]:
    norm = words(text).norm
    return tokens(norm, 0, len(norm))


def _is_sure(word: str) -> bool:
    return word.isalpha() and len(word) >= 4 and word not in right_words()


def _ways(
    lines: Iterable[list[Token]], homes: frozenset[str], skip: frozenset[str], values: frozenset[str] | None
) -> Iterable[Way]:
    """The ways of one reading; ``values`` are the words of all its point's values where the point is a slip."""
    for line in filter(None, lines):  # a hint without a word says nothing
        said = {one for _, one in features(line, homes) if one[0].isalnum() or one[0] == "#"}
        of_slips = values is not None and bool(said & _SLIPS)
        lack = "#nolater" not in said and (any(one in lexis()["lacks"] for _, one in line) or line[-1][1] == "dropped")
        lack = lack and (values is None or line[0][1] == "no" or line[-1][1] in ("no", "dropped"))
        dropped = set(skip) | NO | {"#so", "#nothing"} | (_SLIPS if values is not None else set())
        if "#nolater" in said:
            dropped |= {"later", "printing", "reprint", "date", "list", "says", "#state", "alone", "1"}
        if not said & {"printing", "edition", "reprint", "#later"}:
            dropped |= {"#state"}
        elif "#state" in said:
            dropped |= {"says", "copyright", "list"}
        if any(one.endswith("@home") for one in said):
            dropped |= {one for one in said if kind(one) in homes or kind(one) == "stain"}
        needs = frozenset(said - dropped)
        if line[0][1] in NO and needs <= {"says", "#state", "print"}:
            needs = frozenset({"plain@home"})  # "nothing printed" is said of its place
        if not any(one[0] == "#" for one in needs):
            needs = needs - lexis()["places"] or (frozenset() if of_slips else needs)
        if needs and not (of_slips and values is not None and not needs & values):
            yield Way.of(needs, lack)
            if "later" in needs and "#later" in needs:
                yield Way.of({"#later", "#state"}, lack)


def _is_lack(reading: Reading, ways: Sequence[Way], slip: bool) -> bool:
    opening = [one for _, one in _line(reading.value)]
    if slip:
        return opening[0] == "no" or opening[-1] in ("no", "dropped")
    return bool(ways) and bool(
        ways[0].lack or (opening and opening[0] in lexis()["lacks"]) or opening[-1:] == ["no"] or opening[-1:] == ["dropped"]
    )


def _with_subjects(ways: list[tuple[Way, ...]], lacks: list[bool]) -> list[tuple[Way, ...]]:
    """What the lack denies, the one reading that has it affirms: "no medal" lends "medal" to "silver medal printed"."""
    having = [number for number, row in enumerate(ways) if not lacks[number] and not any(way.lack for way in row)]
    subjects = {way.needs for row in ways for way in row if way.lack}
    if len(having) == 1 and subjects:
        fresh = tuple(Way.of(needs, False) for needs in subjects if not any(need.startswith(("plain@", "#")) for need in needs))
        ways = ways.copy()
        ways[having[0]] = ways[having[0]] + fresh
    return ways


def _roles(point: Point, wordings: Sequence[Sequence[list[Token]]]) -> list[Role]:
    """Which reading is the slip and which is right: told by the words of the hints; the earlier one of two slips first."""
    if any(one == "erratum" for lines in wordings for line in lines for _, one in line):
        return ["" for _ in wordings]  # its slip is of paper
    told: list[Role] = []
    for lines in wordings:
        said = {one for line in lines for _, one in line}
        told.append("right" if said & {"corrected", "upright"} else "wrong" if said & {"wrong", "mistake"} else "")
    if point.feature == "misprint" and len(told) == 2:
        if told[0] == "right" and told[1] != "right":
            return ["right", "wrong"]
        return ["wrong", "right"]
    return told if "wrong" in told and len(told) == 2 else ["" for _ in told]
