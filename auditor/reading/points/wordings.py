"""Readings told by their own words: all of a wording's words, or enough of them near the point's place."""

from __future__ import annotations

from collections.abc import KeysView

from auditor.reading.points.model import Said, Told, Way
from auditor.reading.points.sight import NEAR, QUOTES, Found, Sight
from auditor.reading.points.table import lexis

_BEYOND_DOUBT = 2.5  # what weighs so much is told of the copy even where the clause tells of other things
_ENOUGH, _ENOUGH_ALONE = 0.5, 0.6  # the part of a way's telling words that will do; more where no other reading vies


def by_words(sight: Sight) -> list[Found]:
    """Each reading whose words stand in the clause, by the best of its ways."""
    found: list[Found] = []
    keys = sight.at.keys()
    for said in sight.told.said:
        ways = [_by_way(sight, said, way) for way in said.ways if way.open_to(keys)]
        if told := [one for one in ways if one is not None]:
            found.append(max(told, key=lambda one: (one.weight, one.full)))
    return found


def _by_way(sight: Sight, said: Said, way: Way) -> Found | None:
    """The way's words in the clause, those not denied first; denied ones state the lack, or the reading denied."""
    parted: tuple[dict[str, list[int]], dict[str, list[int]]] = ({}, {})
    for need, stands in sight.at.items():  # in the clause's order: of places equally near the first is told
        for place in stands if need in way.needs else ():
            denied = sight.denied(place)
            parted[denied].setdefault(need, []).append(place)
            if need[0] == "#":  # "does not state" denies what is stated, not the stating
                parted[not denied].setdefault(need, []).append(place)
            elif way.lack and not denied and need in sight.told.place:  # "the title page has no date"
                parted[True].setdefault(need, []).append(place)
    for denied in (False, True):
        have = parted[denied]
        if not have or have.keys() == {"#state"} or (denied and have.keys() <= sight.told.place):
            continue
        if found := _judge(sight, said, way, have, denied):
            return found
    return None


def _judge(sight: Sight, said: Said, way: Way, have: dict[str, list[int]], denied: bool) -> Found | None:
    told, keys = sight.told, have.keys()
    bare = "plain@home" in way.needs
    by_itself = any(need.startswith("plain@") or need == "#nolater" or (bare and need.endswith("@home")) for need in keys)
    if way.lack and denied is by_itself:
        return None
    places = _tight(have)
    weight = sum(told.weights[need] for need in keys)
    full = len(have) == len(way.needs)
    if max(places) - min(places) > 4 + 3 * len(have) or _suppressed(sight, places):
        return None
    if way.statement:
        enough = (full or "#nolater" in keys) and _one_statement(sight, have)
    else:
        enough = (full or _covers(told, said, way, keys)) and (
            _strong_enough(sight, weight, places, full)
            or (denied and full and (way.lack or told.lack is not None) and sight.governed(places))
        )
    if not enough or (denied and not way.lack and told.of_kind("statement") and "#state" not in keys):
        return None
    if not _vouched(sight, said, have, places) or (
        weight < _BEYOND_DOUBT and (sight.of_a_story(places) or sight.of_another_page(places))
    ):
        return None
    if denied and not said.lack and not way.lack and told.lack is not None and _states_the_lack(sight, keys, places):
        return Found(told.lack, places, weight, full, True) if sight.governed(places) else None
    if denied and ((way.lack and not sight.governed(places)) or (not way.lack and not sight.layered(places))):
        return None
    own = frozenset(place for need in said.own & keys for place in have[need]) & places
    return Found(said, places, weight, full, way.lack or "#nolater" in keys, own, frozenset(keys))


def _states_the_lack(sight: Sight, keys: KeysView[str], places: frozenset[int]) -> bool:
    """ "No purple on the top" states that it is plain, "not purple on top" only denies the colour."""
    if not any(need.endswith("@home") for need in keys) or not sight.layered(places):
        return True
    norm, first = sight.scene.norm, min(places)
    return not lexis()["negated"].isdisjoint(norm[max(sight.clause.first, first - 4) : first])


def _vouched(sight: Sight, said: Said, have: dict[str, list[int]], places: frozenset[int]) -> bool:
    """Whether words that only stand for the reading's own do so here: beside one of its own, or at the point's place."""
    own = {place: need for need in have.keys() & said.own or have.keys() for place in have[need] if place in places}
    if not own.keys() <= sight.soft or any(need.endswith("@home") for need in own.values()):
        return True
    if any(place in places and place not in sight.soft for need, stands in have.items() for place in stands):
        return True
    return any(one in sight.told.place and at not in places and abs(at - min(places)) <= NEAR for at, one in sight.line)


def _covers(told: Told, said: Said, way: Way, keys: KeysView[str]) -> bool:
    """Whether enough of a way's telling words stand here, one of them the reading's own."""
    if not said.own & keys or (told.of_kind("statement") and len(keys & way.telling) < 2):
        return False
    told_here = sum(told.weights[need] for need in keys & way.telling)
    return told_here >= sum(told.weights[need] for need in way.telling) * (_ENOUGH if len(told.said) > 1 else _ENOUGH_ALONE)


def _tight(have: dict[str, list[int]]) -> frozenset[int]:
    """The places nearest to one another, around the word that stands least often."""
    rarest = min(have.values(), key=len)
    spans = [[min(places, key=lambda p: abs(p - anchor)) for places in have.values()] for anchor in rarest]
    return frozenset(min(spans, key=lambda span: max(span) - min(span)))


def _strong_enough(sight: Sight, weight: float, places: frozenset[int], full: bool) -> bool:
    if sight.told.is_slip and weight < 3 and not sight.anchors(places, min(places)):
        return full and (weight >= 2.5 or _quoted(sight, places))
    if (full and weight >= 1.5) or weight >= 2.5 or (full and _counted(sight, places)):
        return True
    if full and weight >= 1 and sight.present(places):
        return True
    if sight.anchors(places, min(places)):
        return weight >= 1 or full
    return weight >= 1 and sight.shown(places)


def _counted(sight: Sight, places: frozenset[int]) -> bool:
    """ "Four pages of adverts": a number and what it counts are a reading by themselves."""
    return len(places) > 1 and any(one.isdecimal() for at, one in sight.line if at in places)


def _quoted(sight: Sight, places: frozenset[int]) -> bool:
    norm = sight.scene.norm
    return all(place and place + 1 < len(norm) and (norm[place - 1] in QUOTES or norm[place + 1] in QUOTES) for place in places)


def _one_statement(sight: Sight, have: dict[str, list[int]]) -> bool:
    """ "First edition, first state" states nothing: ordinal and noun stand together, and the verb or the page beside them."""
    ordinals = [place for need, places in have.items() if need.endswith("th") and need[0].isdecimal() for place in places]
    nouns = [place for need in ("printing", "edition", "publish") for place in have.get(need, ())]
    pairs = [(a, b) for a in ordinals for b in nouns if 0 < b - a <= 3 and "," not in sight.scene.norm[a:b]]
    if ordinals and nouns and not pairs:
        return False
    verbs = have.get("#state")
    if verbs is None or not nouns:
        return True
    segment = sight.scene.segment_of
    return any(segment[v] == segment[b] or abs(v - b) <= 4 for v in verbs for _, b in pairs or [(0, noun) for noun in nouns])


def _suppressed(sight: Sight, places: frozenset[int]) -> bool:
    """ "Klob for Kolb", "changed from Klob": the form that doesn't stand there."""
    if not sight.told.is_slip:
        return False
    norm, back = sight.scene.norm, min(places) - 1
    while back > sight.clause.first and norm[back] in (*QUOTES, "the", "of", "than"):
        back -= 1
    if norm[back] == "from":
        return True
    words = {need for said in sight.told.said for need in said.own}
    before = [one for at, one in sight.line if back - 4 <= at < back]
    return norm[back] in lexis()["instead"] and any(one in words for one in before)
