"""schema.org products in a page's JSON-LD blocks."""

from __future__ import annotations

import html
import json
import re
from collections.abc import Iterator, Mapping
from typing import Any, Literal

from selectolax.lexbor import LexborHTMLParser

from auditor.intake.plaintext import plain
from auditor.intake.product import TYPES, Product, type_name
from auditor.intake.rows import plain as scalar

Rank = Literal["main", "own", "listed"]
# The ways down from a block to the things that a page is about; everything else (related things, reviews) is passed by.
_WAYS: dict[str, Rank | None] = {
    "@graph": None,
    "mainEntity": "main",
    "mainEntityOfPage": None,
    "itemListElement": "listed",
    "item": None,
    "offers": None,
    "hasOfferCatalog": "listed",
    "makesOffer": "listed",
}
_DEEPEST = 12
_OFFERS = 100  # of one product that are looked at


def products(tree: LexborHTMLParser) -> tuple[list[Product], list[str]]:
    """The products of all readable blocks, and a note on each block that is no JSON."""
    blocks: list[Any] = []
    said: list[str] = []
    scripts = [node for node in tree.css("script") if "ld+json" in (node.attributes.get("type") or "").lower()]
    for number, node in enumerate(scripts, 1):
        text = (
            re.sub(r"^\s*(?:<!--|//\s*<!\[CDATA\[|<!\[CDATA\[)|(?:-->|//\s*+\]\]>|\]\]>)\s*+;?\s*+$", "", node.text())
            .strip()
            .rstrip(";")
        )
        try:
            # Line breaks inside strings and marks escaped for HTML are common slips.
            blocks.append(json.loads(html.unescape(text) if text.startswith(("{&quot;", "[{&quot;")) else text, strict=False))
        except json.JSONDecodeError as error:
            fault = f"{error.msg.lower()}, line {error.lineno} of it"
            said.append(f"product data block {number} is no valid JSON ({fault}) and is passed over")
        except (ValueError, RecursionError):
            said.append(f"product data block {number} can't be read and is passed over")
    named = {
        node["@id"]: node for block in blocks for node in _nodes(block) if isinstance(node.get("@id"), str) and len(node) > 1
    }
    seen: dict[tuple[int, Rank], object] = {}
    return [product for block in blocks for product in _walk(block, "own", named, 0, seen)], said


def _nodes(value: object, depth: int = 0) -> Iterator[dict[str, Any]]:
    if depth <= _DEEPEST:
        if isinstance(value, dict):
            yield value
        for part in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
            yield from _nodes(part, depth + 1)


def _walk(
    value: object, rank: Rank, named: Mapping[str, Any], depth: int, seen: dict[tuple[int, Rank], object]
) -> Iterator[Product]:
    """``seen`` holds the nodes walked already, by rank: nodes that name one another would else be walked without end."""
    if depth > _DEEPEST:
        return
    if isinstance(value, list):
        for part in value:
            yield from _walk(part, rank, named, depth + 1, seen)
    elif isinstance(value, dict):
        node = _resolved(value, named)
        if (id(node), rank) in seen:
            return
        seen[id(node), rank] = node
        if TYPES & {type_name(name) for name in _all(node.get("@type")) if isinstance(name, str)}:
            yield _product(node, rank, named)
        elif "itemOffered" in node:
            offer = {name: part for name, part in node.items() if name != "itemOffered"}
            offered = [_resolved(part, named) for part in _all(node["itemOffered"]) if isinstance(part, dict)]
            yield from _walk([{"offers": offer, **part} for part in offered], rank, named, depth + 1, seen)
        else:
            for way, ranked in _WAYS.items():
                if way in node:
                    yield from _walk(node[way], "listed" if rank == "listed" else ranked or rank, named, depth + 1, seen)


def _resolved(node: dict[str, Any], named: Mapping[str, Any]) -> dict[str, Any]:
    """``{"@id": "#offer"}`` alone points to a node elsewhere on the page."""
    return named.get(node["@id"], node) if set(node) == {"@id"} and isinstance(node["@id"], str) else node


def _all(value: object) -> list[Any]:
    return value if isinstance(value, list) else [] if value is None else [value]


def _product(node: dict[str, Any], rank: Rank, named: Mapping[str, Any]) -> Product:
    offers = [_resolved(offer, named) for offer in _all(node.get("offers")) if isinstance(offer, dict)]
    offers = [part for offer in offers for part in (_all(offer.get("offers")) or [offer]) if isinstance(part, dict)][:_OFFERS]
    price, currency = next((priced for offer in offers if (priced := _price(offer))[0]), (None, None))
    seller = next(
        (name for offer in [*offers, node] for role in ("seller", "offeredBy") if (name := _name(offer.get(role), named))), None
    )
    described = [words for part in _all(node.get("description")) if (words := scalar(_literal(part)))]
    return Product(
        rank=rank,
        via="JSON-LD",
        name=plain(" ".join((_name(node.get("name"), named) or _name(node.get("headline"), named) or "").split())) or None,
        text=plain("\n\n".join(described)) or None,
        price=price,
        currency=currency,
        seller=seller,
        url=next((url for part in [node, *offers] if (url := scalar(_literal(part.get("url"))))), None),
        id=next(
            (name for part in [node, *offers] for key in ("sku", "productID") if (name := scalar(_literal(part.get(key))))), None
        ),
    )


def _price(offer: dict[str, Any]) -> tuple[str | None, str | None]:
    low, high = offer.get("lowPrice"), offer.get("highPrice")
    parts = [offer, *(part for part in _all(offer.get("priceSpecification")) if isinstance(part, dict))]
    prices = [part.get("price") for part in parts] + [low if high in (None, low) else None]
    currency = next((code for part in parts if (code := scalar(_literal(part.get("priceCurrency"))))), None)
    return next((words for price in prices if (words := scalar(_literal(price)))), None), currency


def _literal(value: object) -> object:
    """The first of several, and what a JSON-LD value object holds."""
    value = value[0] if isinstance(value, list) and value else value
    return value.get("@value", value) if isinstance(value, dict) else value


def _name(value: object, named: Mapping[str, Any]) -> str | None:
    value = _literal(value)
    return scalar(_resolved(value, named) if isinstance(value, dict) else value)
