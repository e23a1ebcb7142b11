"""What a saved page says of one thing for sale, before it is a listing."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import Literal

TYPES = frozenset({"product", "book", "individualproduct", "productmodel", "someproducts", "productgroup"})
ASIDE = frozenset({"isrelatedto", "issimilarto", "isaccessoryorsparepartfor", "isconsumablefor", "isvariantof", "workexample"})


@dataclass(frozen=True, slots=True)
class Product:
    """``rank`` is how the page holds it: as its main thing, as one of its things, or in a list. ``price`` is as written."""

    rank: Literal["main", "own", "listed"]
    via: str
    name: str | None = None
    text: str | None = None
    price: str | None = None
    currency: str | None = None
    seller: str | None = None
    url: str | None = None
    id: str | None = None

    def filled(self, other: Product) -> Product:
        """This product, with what it leaves out taken from another description of it; the longer text wins."""
        gaps = {slot.name: getattr(self, slot.name) or getattr(other, slot.name) for slot in fields(self)}
        if self.price is None:
            gaps["currency"] = other.currency
        gaps["text"] = max(self.text or "", other.text or "", key=len) or None
        return replace(self, **gaps)


def type_name(name: str) -> str:
    """The last part of a schema.org type or property, lower case: ``https://schema.org/Book``, ``schema:Book`` -> ``book``."""
    return name.strip().replace(":", "/").replace("#", "/").rstrip("/").rpartition("/")[2].lower()
