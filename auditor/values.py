"""The plain values that the rooms hand to one another: a listing, a claim, a verdict.

Everything here is frozen and knows nothing of files, spaCy or screens. ``to_dict`` methods give the JSON of the contract.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Literal

Part = Literal["book", "jacket", "copy"]
Stance = Literal["asserted", "denied", "hedged", "unchecked", "elsewhere"]
Standing = Literal["supported", "unproven", "contradicted", "unclaimed"]
Severity = Literal["grave", "weighty", "note"]
Degree = Literal["slight", "heavy"]
FindingKind = Literal[
    "missing evidence",
    "contradiction",
    "overclaim",
    "married jacket",
    "other edition",
    "made-up copy",
    "grade conflict",
    "asking price",
    "loose wording",
]


@dataclass(frozen=True, slots=True)
class Listing:
    """One listing as it came in. ``text`` is untouched: every offset elsewhere counts its characters.

    ``asking`` is an amount and an ISO currency (``"45.00 USD"``), an amount alone, or None. ``source`` tells where it was
    read: file and row, or file.
    """

    id: str
    text: str
    title: str | None = None
    asking: str | None = None
    seller: str | None = None
    url: str | None = None
    source: str | None = None

    def to_dict(self) -> dict[str, Any]:
        return {name: getattr(self, name) for name in ("title", "text", "asking", "seller", "url", "source")}


@dataclass(frozen=True, slots=True)
class Reject:
    """Something that could not be read: where it stands, and why, in words for a person."""

    source: str
    place: str
    reason: str


@dataclass(frozen=True, slots=True)
class Trace:
    """Why a claim was read: the lexicon row that made it and what settled its stance and part."""

    row: str
    cue: str | None = None
    cue_row: str | None = None
    cue_span: tuple[int, int] | None = None
    scope: tuple[int, int] | None = None
    governor: str | None = None


@dataclass(frozen=True, slots=True)
class Claim:
    """What the text says of one feature; names and values are those of the contract. ``end`` is exclusive.

    ``degree`` tells of a defect how much of it there is said to be, None where the text doesn't say; it stands beside the
    contract's fields and is no part of what makes two claims the same. Nor is ``clear``: False where the sentence also talks of
    other copies or of what isn't so, and the claim may be of those; no contradiction rests on such a claim.
    """

    feature: str
    value: str
    part: Part
    stance: Stance
    start: int
    end: int
    trace: Trace = field(default=Trace(""), compare=False)
    degree: Degree | None = field(default=None, compare=False)
    clear: bool = field(default=True, compare=False)

    @property
    def key(self) -> tuple[str, str, str, str]:
        """What makes two claims the same: feature, value, part, stance."""
        return self.feature, self.value, self.part, self.stance

    def to_dict(self) -> dict[str, Any]:
        return {name: getattr(self, name) for name in ("feature", "value", "part", "stance", "start", "end")}


@dataclass(frozen=True, slots=True)
class Finding:
    """Something worth telling. ``spans`` are (start, end) offsets into the listing's text; ``points`` are point ids."""

    kind: FindingKind
    severity: Severity
    text: str
    spans: tuple[tuple[int, int], ...] = ()
    points: tuple[str, ...] = ()

    def to_dict(self) -> dict[str, Any]:
        return {
            "kind": self.kind,
            "severity": self.severity,
            "text": self.text,
            "spans": [list(span) for span in self.spans],
            "points": list(self.points),
        }


@dataclass(frozen=True, slots=True)
class Question:
    """One photograph (or answer) to ask for: ``place`` is where to look, ``points`` what it would show."""

    place: str
    text: str
    points: tuple[str, ...] = ()

    def to_dict(self) -> dict[str, Any]:
        return {"place": self.place, "text": self.text, "points": list(self.points)}


@dataclass(frozen=True, slots=True)
class Scores:
    """Three numbers from 0 (nothing) to 100; ``auditor.weighing.scores`` defines them."""

    missing: int = 0
    contradiction: int = 0
    overclaim: int = 0

    def to_dict(self) -> dict[str, int]:
        return {"missing": self.missing, "contradiction": self.contradiction, "overclaim": self.overclaim}


@dataclass(frozen=True, slots=True)
class Share:
    """Of ``fitting`` copies printed that fit the text, ``copies`` are ``of`` (printings, as ``edition:range`` strings).

    Arithmetic on print runs; ``text`` shows it in words with its caution. It says nothing of a seller.
    """

    of: tuple[str, ...]
    copies: int
    fitting: int
    text: str

    @property
    def one_in(self) -> float:
        """1 in how many: 10.0 where 500 of 5000 are."""
        return self.fitting / self.copies

    def to_dict(self) -> dict[str, Any]:
        return {
            "of": list(self.of),
            "copies": self.copies,
            "fitting": self.fitting,
            "one_in": round(self.one_in, 2),
            "text": self.text,
        }


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the words of one listing leave open.

    ``book`` and ``jacket`` are the printings left open as ``edition:range`` strings: empty when the claims contradict each
    other, None where there is nothing to weigh (no point set; for the jacket also none issued, lacking or facsimile).
    """

    work: str | None
    claims: tuple[Claim, ...]
    standing: Standing
    book: tuple[str, ...] | None = None
    jacket: tuple[str, ...] | None = None
    claimed: tuple[str, ...] = ()
    findings: tuple[Finding, ...] = ()
    scores: Scores = Scores()
    questions: tuple[Question, ...] = ()
    title_claims: tuple[Claim, ...] = ()
    doubtful_work: bool = False
    share: Share | None = None

    def to_dict(self) -> dict[str, Any]:
        """The verdict as plain lists and dicts, ready for ``json.dumps``."""
        return {
            "work": self.work,
            "claims": [claim.to_dict() for claim in self.claims],
            "title_claims": [claim.to_dict() for claim in self.title_claims],
            "candidates": {
                "book": None if self.book is None else list(self.book),
                "jacket": None if self.jacket is None else list(self.jacket),
            },
            "claimed": list(self.claimed),
            "standing": self.standing,
            "findings": [finding.to_dict() for finding in self.findings],
            "scores": self.scores.to_dict(),
            "share": self.share.to_dict() if self.share else None,
            "questions": [question.to_dict() for question in self.questions],
            "doubtful_work": self.doubtful_work,
        }
