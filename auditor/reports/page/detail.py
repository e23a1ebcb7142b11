"""One listing as the data that its place on a page is drawn from: plain lists and dicts, nothing that is markup."""

from __future__ import annotations

from typing import Any
from urllib.parse import urlsplit

from auditor.knowledge.points import Point, PointSet
from auditor.reports.flat import worst_first
from auditor.reports.page.bars import ruler_data
from auditor.reports.page.cutting import cut
from auditor.reports.page.island import island
from auditor.reports.told import claim_words
from auditor.reports.words import in_words, meaning, message
from auditor.values import Listing, Verdict

_TITLE = 110


def page_row(listing: Listing, verdict: Verdict, work: PointSet | None) -> tuple[list[Any], str, str | None]:
    """A row of the page's table, the JSON that it opens to, and the stem of its point set."""
    return _row(listing, verdict, work), str(island(detail(listing, verdict, work))), work.stem if work else None


def detail(listing: Listing, verdict: Verdict, work: PointSet | None) -> dict[str, Any]:
    """Everything that an opened listing shows; ``work`` is the point set that the verdict names."""
    findings = worst_first(verdict)
    return {
        "id": listing.id,
        "title": cut(listing.title, verdict.title_claims) if listing.title else None,
        "text": cut(listing.text, verdict.claims, findings),
        "asking": listing.asking,
        "seller": listing.seller,
        "link": link(listing.url),
        "url": listing.url,
        "source": listing.source,
        "work": f"{work.work.title}, {work.work.author}" if work else None,
        "set": work.stem if work else None,
        "doubtful": verdict.doubtful_work,
        "standing": verdict.standing,
        "meaning": meaning(verdict),
        "claimed": in_words(verdict.claimed, work) if verdict.claimed else None,
        "book": None if verdict.book is None else in_words(verdict.book, work),
        "jacket": None if verdict.jacket is None else in_words(verdict.jacket, work),
        "ruler": ruler_data(verdict, work),
        "findings": [[each.severity, each.kind, each.text, each.points] for each in findings],
        "message": message(listing, verdict),
        "scores": list(verdict.scores.to_dict().values()),
        "claims": [
            [" ".join(text[claim.start : claim.end].split()), claim_words(claim, work), claim.part, claim.stance]
            for text, claims in ((listing.text, verdict.claims), (listing.title or "", verdict.title_claims))
            for claim in claims
        ],
    }


def _row(listing: Listing, verdict: Verdict, work: PointSet | None) -> list[Any]:
    """In the order that filters.js names."""
    words = " ".join((listing.title or listing.text[: 2 * _TITLE]).split())
    findings = worst_first(verdict)
    amount, _, currency = (listing.asking or "").partition(" ")
    return [
        listing.id,
        words if len(words) <= _TITLE else f"{words[: _TITLE - 1]}…",
        work.work.title if work else "",
        verdict.standing,
        findings[0].severity if findings else "",
        findings[0].kind if findings else "",
        _amount(amount),
        currency,
        listing.seller or "",
        list(dict.fromkeys(finding.kind for finding in findings)),
    ]


def _amount(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None


def link(url: str | None) -> str | None:
    """The address if it is a plain web address with a host, else None: nothing else becomes a link."""
    try:
        parts = urlsplit(url or "")
    except ValueError:
        return None
    return url if parts.scheme in ("http", "https") and parts.hostname else None


def points_data(work: PointSet) -> dict[str, Any]:
    """The set's points by id, as findings tell them: where to look, what may stand there, who says so."""
    return {point.id: _point(point, work) for point in work.points}


def _point(point: Point, work: PointSet) -> dict[str, Any]:
    return {
        "part": point.part,
        "place": point.place,
        "readings": [
            [reading.value, in_words([str(copies) for copies in reading.copies], work) or "no printing named"]
            for reading in point.readings
        ],
        "source": point.source,
        "note": point.note,
        "disputed": point.disputed,
    }
