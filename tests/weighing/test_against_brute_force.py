"""Candidates and standing against an enumeration of copies that knows nothing of masks."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from hypothesis import given, settings
from hypothesis import strategies as st

from auditor.knowledge.points import Copies, Point, PointSet, Reading
from auditor.values import Claim
from auditor.weighing import weigh

from .builders import make_set

EDITIONS = {"trade": 3, "uk": 2, "bce": 1}


class Copy(NamedTuple):
    """One imaginable copy."""

    edition: str
    printing: int


ALL = [Copy(edition, printing) for edition, last in EDITIONS.items() for printing in range(1, last + 1)]


@st.composite
def point_sets(draw: st.DrawFn) -> PointSet:
    """Small sets whose points cover some copies with up to three readings, overlapping or not, some of them disputed."""
    points = []
    for number in range(draw(st.integers(1, 5))):
        readings = {}
        for value in range(draw(st.integers(1, 3))):
            copies = draw(st.sets(st.sampled_from(ALL), max_size=4))
            readings[f"reading {value}"] = sorted(f"{copy.edition}:{copy.printing}" for copy in copies)
        point = {"id": f"p{number}", "part": draw(st.sampled_from(["book", "jacket"])), "readings": readings}
        if draw(st.integers(0, 4)) == 0:
            point["disputed"] = "another guide"
        points.append(point)
    kinds = {"trade": "trade", "uk": "trade", "bce": "book club"}
    return make_set([{"id": e, "kind": kinds[e], "printings": n} for e, n in EDITIONS.items()], points)


@st.composite
def claims_on(draw: st.DrawFn, work: PointSet) -> tuple[Claim, ...]:
    readings = [(point.part, f"{point.id}={reading.value}") for point in work.points for reading in point.readings]
    stances = st.sampled_from(["asserted", "asserted", "denied", "hedged", "elsewhere", "unchecked"])
    drawn = draw(st.lists(st.tuples(st.sampled_from(readings), stances), max_size=6, unique=True))
    claims = [Claim("point", value, part, stance, n, n + 1) for n, ((part, value), stance) in enumerate(drawn)]
    for feature, value, part in (
        ("edition", "1", "book"),
        ("printing", "1", "book"),
        ("printing", "2", "book"),
        ("book_club", "yes", "copy"),
    ):
        if draw(st.integers(0, 2)) == 0:
            claims.append(Claim(feature, value, part, draw(stances), 90, 91))
    return tuple(claims)


def has(copy: Copy, reading: Reading) -> bool:
    return any(
        c.edition == copy.edition and c.first <= copy.printing and (c.last is None or copy.printing <= c.last)
        for c in reading.copies
    )


def covered(copy: Copy, point: Point) -> bool:
    return any(has(copy, reading) for reading in point.readings)


def named(copy: Copy, part: str, work: PointSet) -> bool:
    return any(covered(copy, point) for point in work.points if point.part == part)


def allows(copy: Copy, claim: Claim, part: str, work: PointSet, strictly: bool) -> bool:
    """Whether a copy may be the one of which ``claim`` is true. ``strictly``: so that an accusation may lean on a no."""
    if claim.stance not in ("asserted", "denied"):
        return True
    if claim.feature == "book_club":
        return (copy.edition == "bce") == (claim.stance == "asserted")
    if claim.feature == "printing" and part == "book":
        later = claim.value != "1"
        if (claim.stance == "asserted") == later:
            return copy.edition == "bce" or copy.printing > 1
        return True
    if claim.feature == "edition" and part == "book" and claim.stance == "denied":
        return copy.edition == "bce" or copy.printing > 1
    if claim.feature == "point" and claim.part == part:
        point = work.point(claim.value.partition("=")[0])
        reading = next(r for r in point.readings if r.value == claim.value.partition("=")[2])
        if not reading.copies or (strictly and point.disputed):
            return True
        if claim.stance == "denied":
            return not has(copy, reading) or any(has(copy, other) for other in point.readings if other is not reading)
        return has(copy, reading) or (not covered(copy, point) and (strictly or named(copy, part, work)))
    return True


def left(claims: tuple[Claim, ...], part: str, work: PointSet, strictly: bool) -> set[Copy]:
    crossed = crossed_points(claims, work)
    return {
        copy
        for copy in ALL
        if all(allows(copy, claim, part, work, strictly) for claim in claims)
        and all(covered(copy, point) for point in crossed if point.part == part)
    }


def heard(claims: tuple[Claim, ...], part: str, work: PointSet) -> tuple[Claim, ...]:
    """The claims, or where those that count can't stand together all but what the seller calls the copy."""
    if left(claims, part, work, strictly=True):
        return claims
    return tuple(
        c for c in claims if c.feature != "book_club" and not (c.feature in ("edition", "printing") and c.stance == "asserted")
    )


def crossed_points(claims: tuple[Claim, ...], work: PointSet) -> list[Point]:
    """Undisputed points of which readings are asserted that no printing shares: no copy shows two readings at one place."""
    crossed = []
    for point in work.points:
        told = [f"{point.id}={r.value}" for r in point.readings]
        asserted = [c.value for c in claims if c.feature == "point" and c.stance == "asserted" and c.value in told]
        shown = [r for r in point.readings if r.copies and f"{point.id}={r.value}" in asserted]
        if shown and not point.disputed and not any(all(has(copy, reading) for reading in shown) for copy in ALL):
            crossed.append(point)
    return crossed


def spread(texts: tuple[str, ...]) -> Iterator[Copy]:
    for text in texts:
        copies = Copies.parse(text)
        yield from (Copy(copies.edition, n) for n in range(copies.first, (copies.last or EDITIONS[copies.edition]) + 1))


def claimed_by(claims: tuple[Claim, ...], work: PointSet) -> set[Copy] | None:
    words = [c for c in claims if c.feature in ("edition", "printing")]
    words = [c for c in words if c.stance == "asserted"] or [c for c in words if c.stance == "hedged"]
    values = {(c.feature, c.value) for c in words}
    edition = "trade"
    if ("edition", "1") not in values and any(f == "printing" for f, _ in values):  # then it is of the edition that is shown
        readings = [(p, r) for p in work.points for r in p.readings if p.part == "book" and not p.disputed and r.copies]
        told = {c.value for c in claims if c.feature == "point" and c.stance == "asserted"}
        shown = {copy for copy in ALL if all(has(copy, r) for p, r in readings if f"{p.id}={r.value}" in told)}
        if {copy.edition for copy in shown} == {"uk"} and any(Copy("uk", int(v)) in shown for f, v in values if f == "printing"):
            edition = "uk"
    if ("printing", "1") in values:
        return {Copy(edition, 1)}
    if ("printing", "2") in values:
        return {Copy(edition, 2)}
    return {copy for copy in ALL if copy.edition == "trade"} if values else None


@settings(max_examples=400, deadline=None)
@given(data=st.data())
def test_candidates_and_standing_are_those_of_the_copies_enumerated(data):
    work = data.draw(point_sets())
    claims = data.draw(claims_on(work))
    verdict = weigh(claims, work)
    for part, got in (("book", verdict.book), ("jacket", verdict.jacket)):
        told = heard(claims, part, work)
        expected = left(told, part, work, strictly=False) or left(told, part, work, strictly=True)
        assert got is not None
        assert set(spread(got)) == expected, part
    of_book, of_jacket = heard(claims, "book", work), heard(claims, "jacket", work)
    strict, loose = left(of_book, "book", work, strictly=True), left(of_book, "book", work, strictly=False)
    said = claimed_by(claims, work)
    if said is None:
        assert verdict.standing == "unclaimed"
    elif not strict & said:
        assert verdict.standing == "contradicted"
    else:
        assert verdict.standing == ("supported" if (loose or strict) <= said else "unproven")
    told = {finding.kind for finding in verdict.findings}
    assert ("contradiction" in told) <= (
        not strict or not left(of_jacket, "jacket", work, strictly=True) or verdict.standing == "contradicted"
    )
    if not strict:
        assert told & {"contradiction", "made-up copy"}
    jacket = left(of_jacket, "jacket", work, strictly=True)
    follows = verdict.standing == "contradicted" and bool(said and jacket & said)  # told as a contradiction, if at all
    agree = of_book == of_jacket == claims  # where words gave way nobody is accused of a pair
    apart = bool(strict and jacket and not strict & jacket and agree)
    assert ("married jacket" in told) <= apart
    assert ("married jacket" in told) or not apart or follows


@settings(max_examples=200, deadline=None)
@given(data=st.data())
def test_a_contradiction_names_statements_that_indeed_exclude_every_copy(data):
    work = data.draw(point_sets())
    claims = data.draw(claims_on(work))
    for finding in weigh(claims, work).findings:
        if finding.kind == "contradiction" and finding.text.startswith("These statements"):
            named_claims = tuple(c for c in claims if (c.start, c.end) in finding.spans)
            part = "book" if "of one book" in finding.text else "jacket"
            assert not left(named_claims, part, work, strictly=True)
            for dropped in {c.start for c in named_claims if c.start < 90}:
                rest = tuple(c for c in named_claims if c.start != dropped)
                assert left(rest, part, work, strictly=True), "a statement named that isn't needed"
