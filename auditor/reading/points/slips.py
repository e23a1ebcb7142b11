"""Talk of a slip or its cure: "typo on page 87", "page 87 corrected", "the misprint", "no error on p. 87"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from auditor.reading.points.astray import fates
from auditor.reading.points.sight import NEAR, Found, Sight
from auditor.reading.points.table import lexis


def by_slips(sight: Sight) -> Iterator[Found]:
    """ "Typo on page 87", "page 87 corrected", "the misprint", "no error on p. 87"."""
    wrong = next((said for said in sight.told.said if said.role == "wrong"), None)
    right = next((said for said in sight.told.said if said.role == "right"), None)
    if wrong is None or right is None:
        return
    norm, cures = sight.scene.norm, [place for place in sight.at.get("corrected", ()) if not sight.denied(place)]
    for one in ("wrong", "mistake"):
        for place in sight.at.get(one, ()):
            cured = [
                p for p in cures if 0 < abs(p - place) <= 6 and not {",", ";", "("} & set(norm[min(place, p) : max(place, p)])
            ]
            if cured or not spoken_of(sight, place, by_itself=one == "wrong"):
                continue
            if not sight.denied(place):
                yield Found(wrong, frozenset({place}), 1, True)
            elif sight.governed(frozenset({place})):
                yield Found(right, frozenset({place}), 1, True, True)
    slips = sight.at.get("wrong", []) + sight.at.get("mistake", [])
    for place in cures:
        if spoken_of(sight, place, by_itself=bool(slips)):
            yield Found(wrong if _by_hand(sight, place) else right, frozenset({place}), 1, True)


def _by_hand(sight: Sight, place: int) -> bool:
    """ "Corrected in ink", "hand-corrected": somebody's pen mended this copy, so what is printed in it is the slip."""
    norm, pens = sight.scene.norm, lexis()["cured_by"]
    before = norm[max(sight.clause.first, place - 2) : place]
    behind = norm[place + 1 : min(place + 5, sight.clause.last)]
    manner = next((at for at, word in enumerate(behind) if word in ("by", "in", "with")), None)
    return before[-1:] == ["hand"] or before == ["hand", "-"] or (manner is not None and not pens.isdisjoint(behind[manner:]))


def spoken_of(sight: Sight, place: int, *, by_itself: bool) -> bool:
    """Whether talk of a slip is of this point: its page, its own words, or its place is named, or the work has one slip alone."""
    told = sight.told
    near = {one for at, one in sight.line if abs(at - place) <= NEAR and at != place}
    if told.pages:
        if told.pages & near or {page.removeprefix("page") for page in told.pages} & near:
            return True
        if any(one.startswith("page") and one != "page" for one in near):
            return False
    needs = {need for said in told.said for way in said.ways for need in way.needs} - lexis()["generic"]
    own = [
        abs(at - place)
        for at, one in sight.line
        if at != place and (one in needs or (one in told.slip_words and abs(at - place) <= 5))
    ]
    page = [abs(at - place) for at, one in sight.line if one.startswith("page") and one != "page"]
    if own and min(own) <= NEAR:
        return not page or min(own) < min(page) or bool(told.pages)
    return by_itself and sight.alone and told.of_kind("misprint")


def by_letters(sight: Sight, told_by_words: Sequence[Found]) -> Iterator[Found]:
    """ "The surname has a single r", "the e is missing", where no words of a reading say it."""
    by_role = {said.role: said for said in sight.told.said}
    if not sight.told.change:
        return
    for place, is_right, denied in fates(sight.scene.norm, sight.clause.first, sight.clause.last, sight.told.change):
        if _named_anywhere(sight, place) and not any(place in one.places for one in told_by_words):
            yield Found(by_role["right" if is_right else "wrong"], frozenset({place}), 2, True, not denied)


def _named_anywhere(sight: Sight, place: int) -> bool:
    """Whether the clause names what the letter at ``place`` is astray in: its page, or where that isn't told its name."""
    told, said = sight.told, {one for at, one in sight.line if at != place}
    if any(one.startswith("page") and one != "page" for one in said) or not (told.slip_words - lexis()["generic"]):
        return not told.pages.isdisjoint(said)
    return not (told.slip_words | told.pages | told.place | {"spelled", "spelling", "spelt"}).isdisjoint(said)


def unopposed(sight: Sight, found: list[Found], roles: list[Found]) -> list[Found]:
    """Without the word that is only named as the one misspelt ("Tolliver is misspelt") or as the one corrected."""
    if not roles:
        return found
    marks = [(min(role.places), role.said) for role in roles]
    segment = sight.scene.segment_of
    return [
        one
        for one in found
        if not any(said is not one.said and segment[place] == segment[min(one.places)] for place, said in marks)
    ]
