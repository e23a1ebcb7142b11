# ruff: noqa: E501 -- a case a line
"""Point sets of invented works, and the points of them that a text tells."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from auditor.knowledge.points import Point, PointSet, Reading, Work
from auditor.knowledge.shelf import Shelf
from auditor.reading import read

ROOT = Path(__file__).resolve().parents[2]


@cache
def shelf() -> dict[str, PointSet]:
    invented = {work.stem: work for work in (harrow_lane(), glass_orchard(), sour_cherry())}
    return {**Shelf.open((ROOT / "corpora_demo" / "points",)).sets, **invented}


def point(id: str, part: str, place: str, feature: str, *readings: tuple[str, ...]) -> Point:
    rows = tuple(Reading(value=value, said_as=tuple(hints)) for value, *hints in readings)
    return Point(id=id, part=part, place=place, feature=feature, source="invented", readings=rows)  # type: ignore[arg-type]


def harrow_lane() -> PointSet:
    """A British novel of the fifties with a club edition."""
    return PointSet(
        stem="harrow-lane",
        work=Work(title="The House in Harrow Lane", author="Edith Pennyfeather"),
        editions=(),
        points=(
            point(
                "statement", "book", "back of the title page", "statement",
                ("first published 1956, nothing after it", "no reprints listed"),
                ("second impression June 1956", "reprinted June 1956"),
                ("club notice", "issued by the Wayside Book Club"),
            ),
            point("p61", "book", "page 61, line 3", "misprint", ("cuboard", "cupboard misspelt on page 61"), ("cupboard", "page 61 corrected")),
            point("boards", "book", "boards", "binding colour", ("green cloth", "green cloth"), ("navy boards, gilt lettering", "navy boards")),
            point("topstain", "book", "top edge", "topstain", ("purple", "purple topstain"), ("plain", "no topstain")),
            point("ends", "book", "endpapers", "endpapers", ("map of the lane", "map endpapers"), ("plain", "plain endpapers")),
            point("adverts", "book", "end of the book", "advertisement", ("six pages of advertisements", "ads at the end"), ("no advertisements", "no ads")),
            point("stamp", "book", "rear board, foot by the spine", "other", ("none", "no blind stamp"), ("small circle", "blind stamp on rear board")),
            point("front", "jacket", "front panel", "blurb", ("no review", "no quote on the front"), ("Herald review", "Herald quote on the front")),
            point("medal", "jacket", "front panel", "other", ("no medal", "without the medal"), ("bronze medal printed", "bronze medal on the front")),
            point("price", "jacket", "front flap", "price", ("12s 6d net", "12/6"), ("15s net", "15/-"), ("no price", "unpriced")),
        ),
    )  # fmt: skip


def glass_orchard() -> PointSet:
    """An American novel of the eighties."""
    return PointSet(
        stem="glass-orchard",
        work=Work(title="The Glass Orchard", author="Ruth Ellery Vance"),
        editions=(),
        points=(
            point("statement", "book", "copyright page", "statement",
                  ("First Edition stated", "states First Edition"), ("later printing stated", "second printing stated")),
            point("line", "book", "copyright page", "number line",
                  ("lowest number 1", "10 9 8 7 6 5 4 3 2 1", "full number line"), ("lowest number 2", "10 9 8 7 6 5 4 3 2")),
            point("spine", "book", "spine", "lettering", ("silver", "silver lettering"), ("white", "white lettering")),
            point("plate", "book", "plate facing page 90", "misprint", ("upside down", "inverted plate"), ("right way up", "plate the right way up")),
            point("dedication", "book", "dedication leaf", "misprint", ("For Ellin", "dedicated to Ellin"), ("For Ellen", "dedicated to Ellen")),
            point("photo", "jacket", "rear panel", "blurb",
                  ("author photograph only", "author photo on the back"), ("Tribune quote", "Tribune review on the back")),
            point("gutter", "book", "gutter of page 301", "statement", ("M14", "code M14")),
        ),
    )  # fmt: skip


def sour_cherry() -> PointSet:
    """A picture book whose points are measures, slips of paper and things of many names."""
    return PointSet(
        stem="sour-cherry",
        work=Work(title="The Sour Cherry Tree", author="Olive Tamblyn"),
        editions=(),
        points=(
            point("flap", "jacket", "rear flap", "advertisement", ("The Quince Year advertised", "ad for The Quince Year"), ("blank", "nothing on the rear flap")),
            point("slip", "book", "before page 33", "other", ("erratum slip", "errata slip"), ("no slip", "without the slip")),
            point("bulk", "book", "thickness", "dimensions", ("32 mm thick", "thick paper"), ("25 mm thick", "thin paper")),
            point("size", "book", "boards", "dimensions", ("nine and a quarter inches tall", "9 1/4 inches"), ("eight and a half inches tall", "smaller format")),
            point("hat", "book", "page 14, picture", "other", ("hat yellow", "yellow hat"), ("hat green", "green hat")),
            point("title", "book", "front board", "other", ("title in raised foil", "foil title"), ("title printed flat", "no foil")),
            point("row", "book", "copyright page", "number line", ("1 at the right of the row", "row has the 1"), ("2 is the lowest", "starts with 2"), ("3 or more is the lowest", "no 1 or 2")),
        ),
    )  # fmt: skip


def points(stem: str, text: str) -> set[tuple[str, str]]:
    return {(claim.value, claim.stance) for claim in read(text, shelf()[stem]) if claim.feature == "point"}
