"""Which readings of a point one clause states, and how it stands to them where the clause's own words decide that."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.points.sight import Found, Sight, asked
from auditor.reading.points.slips import by_letters, by_slips, spoken_of, unopposed
from auditor.reading.points.table import lexis
from auditor.reading.points.wordings import by_words
from auditor.reading.scene import Draft
from auditor.values import Stance


def stated(sight: Sight) -> list[Found]:
    """The readings of the point that the clause states, each by a word of its own there and not by its label's alone."""
    roles = list(by_slips(sight))
    words = unopposed(sight, by_words(sight), roles)
    found = _settled([*roles, *words, *by_letters(sight, [*roles, *words])])
    return [one for one in found if max(one.own & one.places or one.places) >= sight.clause.first]


def _settled(found: list[Found]) -> list[Found]:
    """Of readings that rest on the same words the one that explains more of them, or stands closer; none where that is open."""
    kept = []
    lacking = {need for one in found if one.negative and one.keys for way in one.said.ways for need in way.needs}
    for one in found:
        if not one.negative and one.keys and one.keys <= lacking:
            continue
        rivals = [other for other in found if other.said is not one.said and other.places & one.places]
        if all(_beats(one, other) for other in rivals):
            kept.append(one)
        elif len(rivals) == 1 and _beats(rivals[0], one) and (rest := one.places - rivals[0].places) and one.own & rest:
            kept.append(replace(one, places=rest))
    return kept


def _beats(one: Found, other: Found) -> bool:
    if one.places != other.places and one.negative == other.negative:
        if other.places < one.places:
            return True
        if one.places < other.places:
            return False
    return (one.negative, one.full, one.weight, -one.spread) > (other.negative, other.full, other.weight, -other.spread)


def drafts_of(sight: Sight, found: list[Found]) -> Iterator[Draft]:
    """Drafts of what was found, or of a point that the clause says was not looked at."""
    if _open(sight, found):
        yield _draft(sight, found[0], "unchecked")
        return
    for one in found:
        if asked(sight.scene, min(one.places)):
            yield _draft(sight, one, "unchecked")
            continue
        others = _of_others(sight, one)
        if others or not _is_history(sight, one, found):
            yield _draft(sight, one, "elsewhere" if others else None)
    if not any(sight.laid.unchecked[min(one.places)] for one in found):
        yield from _unchecked(sight)


def _draft(sight: Sight, found: Found, stance: Stance | None = None) -> Draft:
    told = sight.told
    value = f"{told.point.id}={found.said.reading.value}"
    places = found.own & found.places or found.places
    places = frozenset(place for place in places if place >= sight.clause.first) or places
    first, last = min(places), max(places) + 1
    return Draft("point", value, first, last, f"point {told.point.id}", told.point.part, stance, negative=found.negative)


def _open(sight: Sight, found: list[Found]) -> bool:
    """ "Whether the lettering counts as gilt or black": two readings asked of are none told."""
    if len({one.said.reading.value for one in found}) < 2:
        return False
    first, last = min(min(one.places) for one in found), max(max(one.places) for one in found)
    norm = sight.scene.norm
    return "or" in norm[first:last] and any(word in ("whether", "if", "either") for word in norm[sight.clause.first : first])


def _is_history(sight: Sight, one: Found, found: list[Found]) -> bool:
    """ "'cerlew' p. 112 (corrected during the run)": the cure of the slip that this copy has, said apart from its place."""
    if one.said.role != "right" or one.keys or not any(other.said.role == "wrong" for other in found):
        return False
    segment = sight.scene.segment_of
    here = {word for at, word in sight.line if segment[at] == segment[min(one.places)]}
    needs = {need for said in sight.told.said for way in said.ways for need in way.needs}
    return here.isdisjoint(needs | sight.told.pages)


def _of_others(sight: Sight, found: Found) -> bool:
    """ "Corrected in the second", "changed to 'shed' from the fourth printing", "from the third on the lettering is black"."""
    if not any(one in lexis()["since"] for _, one in sight.line):
        return False
    segment = sight.scene.segment_of
    first, last = min(found.places), max(found.places)
    stems = [(at, one) for at, one in sight.line if segment[at] == segment[first] or first <= at <= last]
    norm = sight.scene.norm
    changed = any(norm[at] in lexis()["changes"] or one == "corrected" for at, one in stems) and found.said.role != "wrong"
    for number, (at, one) in enumerate(stems[:-1]):
        rest = [word for _, word in stems[number + 1 : number + 4] if word != "the"]
        if one in lexis()["since"] and rest and (rest[0] == "later" or (rest[0].endswith("th") and rest[0][0] in "23456789")):
            closed = len(rest) == 1 or rest[1] in (
                "printing",
                "edition",
                "state",
                "issue",
                "on",
                "onward",
                "reprint",
                ")",
                ".",
                '"',
            )
            if closed and ((at > last and changed) or (one == "from" and (at < first or changed))):
                return True
    return False


def _unchecked(sight: Sight) -> Iterator[Draft]:
    """ "Did not think to examine page 87": a point named as not looked at."""
    told = sight.told
    if not any(sight.laid.unchecked[sight.clause.first : sight.clause.last]):
        return
    subjects = (told.anchors - lexis()["generic"]) | told.pages | frozenset(lexis()["subjects"].get(told.point.feature, ()))
    for place, one in sight.line:
        if (
            one == "says"
            and "#state" in told.kinds
            and {"printing", "edition"} & {word for at, word in sight.line if abs(at - place) <= 4}
        ):
            subjects |= {"says"}
        if one in subjects and sight.laid.unchecked[place] is not None:
            if one in ("wrong", "corrected") and not spoken_of(sight, place, by_itself=True):
                continue
            yield _draft(sight, Found(told.said[0], frozenset({place}), 0, False))
            return
