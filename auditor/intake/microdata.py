"""schema.org products in a page's attributes: microdata (itemscope, itemprop), RDFa (typeof, property) and og: meta tags."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal, NamedTuple

from selectolax.lexbor import LexborHTMLParser, LexborNode

from auditor.intake.mainblock import is_furniture
from auditor.intake.plaintext import of_node
from auditor.intake.product import ASIDE, TYPES, Product, type_name


class _Dialect(NamedTuple):
    """The attribute names of one way to write schema.org into HTML."""

    via: str
    scope: str
    type: str
    property: str


_DIALECTS = (_Dialect("microdata", "itemscope", "itemtype", "itemprop"), _Dialect("RDFa", "typeof", "typeof", "property"))
_LISTS = frozenset({"itemlist", "offercatalog", "collectionpage", "searchresultspage"})


def products(tree: LexborHTMLParser) -> list[Product]:
    """The products of both dialects; one that stands in a list, or is named as related to another, is ``listed``."""
    return [product for dialect in _DIALECTS for product in _of(tree, dialect)]


def open_graph(tree: LexborHTMLParser) -> Product | None:
    """What the og: and product: meta tags say, None where there is neither title nor description."""
    told = {
        (node.attributes.get("property") or node.attributes.get("name") or "").lower(): " ".join(
            (node.attributes.get("content") or "").split()
        )
        for node in reversed(tree.css("meta[content]"))
    }
    name, text = told.get("og:title"), told.get("og:description")
    if not name and not text:
        return None
    price = told.get("product:price:amount") or told.get("og:price:amount")
    currency = told.get("product:price:currency") or told.get("og:price:currency")
    rank: Literal["main", "own"] = (
        "main" if "product" in told.get("og:type", "") or "book" in told.get("og:type", "") or price else "own"
    )
    return Product(
        rank=rank,
        via="og: meta tags",
        name=name or None,
        text=text or None,
        price=price,
        currency=currency,
        seller=told.get("og:site_name"),
        url=told.get("og:url"),
    )


def _of(tree: LexborHTMLParser, dialect: _Dialect) -> Iterator[Product]:
    for scope in tree.css(f"[{dialect.scope}]"):
        if not _types(scope, dialect) & TYPES:
            continue
        above = list(_scopes_above(scope, dialect))
        # A product inside a product is the same thing said twice, or something related: the outer one speaks.
        if any(_types(node, dialect) & TYPES for node in above) or _properties(scope, dialect) & ASIDE:
            continue
        listed = any(_types(node, dialect) & _LISTS for node in above) or _in_furniture(scope)
        main = "mainentity" in _properties(scope, dialect)
        yield _product(scope, dialect, "listed" if listed else "main" if main else "own")


def _types(node: LexborNode, dialect: _Dialect) -> set[str]:
    return {type_name(name) for name in (node.attributes.get(dialect.type) or "").split()}


def _properties(node: LexborNode, dialect: _Dialect) -> set[str]:
    return {type_name(name) for name in (node.attributes.get(dialect.property) or "").split()}


def _scopes_above(node: LexborNode, dialect: _Dialect) -> Iterator[LexborNode]:
    parent = node.parent
    while parent is not None:
        if dialect.scope in parent.attributes:
            yield parent
        parent = parent.parent


def _in_furniture(node: LexborNode) -> bool:
    above: LexborNode | None = node
    while above is not None and above.tag not in ("body", "html"):
        if is_furniture(above):
            return True
        above = above.parent
    return False


def _product(scope: LexborNode, dialect: _Dialect, rank: Literal["main", "own", "listed"]) -> Product:
    own: dict[str, LexborNode] = {}
    offer: dict[str, LexborNode] = {}
    for node in scope.css(f"[{dialect.property}]"):
        holder = next(_scopes_above(node, dialect), None)
        if holder is None or node.mem_id == scope.mem_id:
            continue
        inside = own if holder.mem_id == scope.mem_id else offer if _properties(holder, dialect) & {"offers", "seller"} else None
        for name in _properties(node, dialect) if inside is not None else ():
            if "seller" in _properties(holder, dialect):
                name = f"seller {name}"
            inside.setdefault(name, node) if inside is not None else None
    described = [of_node(node) or node.attributes.get("content") for node in [own.get("description")] if node is not None]

    def said(*names: str) -> str | None:
        return next((value for name in names for part in (own, offer) if name in part and (value := _value(part[name]))), None)

    return Product(
        rank=rank,
        via=dialect.via,
        name=said("name"),
        text=(described[0] or None) if described else None,
        price=said("price", "lowprice") if not (said("highprice") and said("highprice") != said("lowprice")) else said("price"),
        currency=said("pricecurrency"),
        seller=said("seller name", "seller"),
        url=said("url"),
        id=said("sku", "productid"),
    )


def _value(node: LexborNode) -> str | None:
    told = node.attributes
    value = told.get("content") or (told.get("href") or told.get("src") if node.tag in ("a", "link", "img") else None)
    return " ".join((value or of_node(node)).split()) or None
