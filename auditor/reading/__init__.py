"""Reading: from a listing's text to its claims. `read` is the door; `pipeline` has the same as a spaCy component."""

from __future__ import annotations

from typing import TYPE_CHECKING

from auditor.reading.readers.figures import find_isbns

if TYPE_CHECKING:
    from auditor.knowledge.points import PointSet
    from auditor.values import Claim

__all__ = ["find_isbns", "offers_several", "read"]


def read(text: str, work: PointSet | None = None) -> tuple[Claim, ...]:
    """The claims of a text, in its order; with a ``work`` its points are read as well."""
    from auditor.reading import reader  # here, so that who only wants an ISBN loads no lexicon

    return reader.read(text, work)


def offers_several(text: str) -> bool:
    """Whether a text, or a title, offers a lot of several books."""
    from auditor.reading import reader

    return reader.offers_several(text)
