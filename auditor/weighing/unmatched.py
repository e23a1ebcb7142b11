"""A listing whose work has no point set: the general practice of the trade still speaks, about fewer things.

Words alone never support a claim here: the standing is ``unclaimed``, ``unproven``, or ``contradicted`` where the number line
rules out the printing claimed.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from auditor.knowledge.bookclub import gutter_years, tells
from auditor.knowledge.houses import LineReading, lowest, practice, printing_by_line
from auditor.values import Claim, Finding, Scores, Standing, Verdict
from auditor.weighing.case import spans
from auditor.weighing.claimed import identity_claims
from auditor.weighing.findings import OF_ANY_BOOK
from auditor.weighing.findings.telling import quote
from auditor.weighing.practice import say


def weigh_unmatched(claims: Sequence[Claim]) -> tuple[Standing, tuple[Finding, ...], Scores]:
    """Standing, findings and scores by general practice alone."""
    said = identity_claims(claims)
    clashes = list(_line_against_printing(claims, said))
    untold = list(_line_not_told(claims, said))
    others = [*_club_tells(claims, said), *_openly_other(claims, said), *_reprint_house(claims, said)]
    findings = [*clashes, *_first_edition_later(claims, said), *others, *_gutter_later(claims, said), *untold]
    standing: Standing = "unclaimed" if not said else "contradicted" if clashes else "unproven"
    scores = Scores(missing=100 if untold else 0, contradiction=75 if clashes else 0, overclaim=100 if clashes else 0)
    return standing, (*findings, *(finding for find in OF_ANY_BOOK for finding in find(claims))), scores


def _asserted(claims: Sequence[Claim], feature: str, *values: str) -> list[Claim]:
    return [c for c in claims if c.feature == feature and c.stance == "asserted" and (not values or c.value in values)]


def _reading(claims: Sequence[Claim]) -> tuple[Claim, LineReading] | None:
    """The number line told, read by the practice of the publisher named; None where none is told or it doesn't decide."""
    lines = [claim for claim in _asserted(claims, "number_line") if claim.value != "none"]
    if len({lowest(claim.value) for claim in lines}) != 1:  # several lines: a lot of several books
        return None
    publisher = next((claim.value for claim in _asserted(claims, "publisher")), None)
    year = next((int(claim.value) for claim in _asserted(claims, "year") if claim.value.isdigit()), None)
    stated = True if _asserted(claims, "edition", "1") else None
    reading = printing_by_line(lines[0].value, publisher=publisher, year=year, stated_first=stated)
    return None if reading.printing is None else (lines[0], reading)


def _line_against_printing(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    told = _reading(claims)
    printings = [claim for claim in said if claim.feature == "printing"]
    if not told or not printings:
        return
    line, reading = told
    fits = [c for c in printings if c.value == str(reading.printing) or (c.value == "later" and reading.printing != 1)]
    if len(fits) < len(printings):
        against = [claim for claim in printings if claim not in fits]
        text = (
            f"The text says {quote(against)}; {say(line)} gives printing {reading.printing}: {reading.reason} ({reading.source})."
        )
        if against[0].stance == "asserted":
            yield Finding("contradiction", "grave", text, spans((*against, line)))
        else:  # put forward with a doubt, or doubted: nobody claims it
            yield Finding("overclaim", "note", text, spans((*against, line)))


def _first_edition_later(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    """ "First edition" alone, beside a line of a later printing."""
    told = _reading(claims)
    firsts = [
        claim for claim in said if claim.feature == "edition" and claim.value.startswith("1") and claim.stance == "asserted"
    ]
    printings = [claim for claim in said if claim.feature == "printing"]
    if told and firsts and not printings and told[1].printing != 1:
        line, reading = told
        text = (
            f"The text says {quote(firsts)}, a term that collectors keep for the first printing; {say(line)} gives printing "
            f"{reading.printing}: {reading.reason} ({reading.source})."
        )
        yield Finding("overclaim", "weighty", text, spans((*firsts, line)))


def _club_tells(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    """A blind stamp beside a claimed first edition, no club named."""
    stamps = _asserted(claims, "blind_stamp")
    if stamps and said and not _asserted(claims, "book_club"):
        tell = tells()["blind_stamp"]
        text = (
            f"The text says {quote(said)} and tells a blind stamp, mostly a book club's mark. {tell.exceptions} ({tell.source})."
        )
        yield Finding("other edition", "weighty", text, spans((*said, *stamps)))


def _openly_other(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    """A club edition, reprint or facsimile named openly: a note, as it isn't the trade first."""
    named = [*_asserted(claims, "book_club"), *_asserted(claims, "edition", "reprint", "facsimile")]
    if named:
        beside = f" beside {quote(said)}; the trade keeps that for the publisher's own edition" if said else ""
        yield Finding("other edition", "note", f"The text itself says {quote(named)}{beside}.", spans((*named, *said)))


def _reprint_house(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    """ "First edition" of a house that mainly reprinted: a note, as such houses had books of their own too."""
    firsts = [claim for claim in said if claim.stance == "asserted" and claim.value.startswith("1")]
    for publisher in _asserted(claims, "publisher") if firsts else ():
        rows = [house for house in practice(publisher.value) if house.method == "reprint_house" and house.backed]
        if rows:
            text = (
                f"The text says {quote(firsts)} and names {rows[0].publisher}, mainly a reprint house ({rows[0].source}). "
                "The first publisher's name and date would settle it."
            )
            yield Finding("other edition", "note", text, spans((*firsts, publisher)))
            return


def _gutter_later(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    """A gutter code of a year well behind the one told of a first printing: the code dates the making of the copy. A note, as a
    year told may be that of copyright and a letter stands for two years.
    """
    firsts = [claim for claim in said if claim.feature == "printing" and claim.value == "1" and claim.stance == "asserted"]
    years = [claim for claim in _asserted(claims, "year") if claim.value.isdigit()]
    for code in _asserted(claims, "gutter_code") if firsts and years else ():
        made = gutter_years(code.value)
        if made and min(made) > max(int(year.value) for year in years) + 1:
            text = (
                f"The text says {quote(firsts)} of {years[0].value}; {say(code)} is of {' or '.join(map(str, made))} "
                f"({tells()['gutter_code'].source})."
            )
            yield Finding("other edition", "note", text, spans((*firsts, *years, code)))


def _line_not_told(claims: Sequence[Claim], said: Sequence[Claim]) -> Iterator[Finding]:
    """A first printing claimed with neither a number line nor what the copyright page lists."""
    firsts = [claim for claim in said if claim.feature == "printing" and claim.value == "1"]
    told = [c for c in claims if c.stance in ("asserted", "denied") and c.feature == "number_line"]
    told += [c for c in claims if c.key == ("printing", "later", "book", "denied")]
    if firsts and not told:
        text = f"The text says {quote(firsts)} and tells neither the number line nor the printings that the copyright page lists."
        yield Finding("missing evidence", "weighty" if firsts[0].stance == "asserted" else "note", text, spans(firsts))


def unweighed(claims: Sequence[Claim], title_claims: Sequence[Claim], stem: str | None, doubtful: bool) -> Verdict:
    """The verdict on what can't be weighed: a proof has none, nor has a lot of several works."""
    return Verdict(stem, tuple(claims), "unclaimed", title_claims=tuple(title_claims), doubtful_work=doubtful)
