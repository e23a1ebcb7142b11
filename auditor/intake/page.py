"""Saved web pages: the listing as the page's product data tell it, or else its main block of text."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import reduce
from urllib.parse import urljoin

from selectolax.lexbor import LexborHTMLParser

from auditor.intake import jsonld, mainblock, markup, microdata, money
from auditor.intake.encoding import decode_page
from auditor.intake.file import File
from auditor.intake.item import Item, Note
from auditor.intake.plaintext import DEEPEST, is_deep
from auditor.intake.product import Product
from auditor.values import Listing, Reject

_MOST = 500  # things of one page that are looked at: each is compared with the others


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields the page's listing, or several where it shows equals. Raises ValueError for binary data, OSError when unreadable."""
    yield from of_bytes(file.read(), file.name, file.stem)


def of_bytes(data: bytes, source: str, stem: str, address: str = "") -> Iterator[Item]:
    """The listings of a page given as bytes; ``stem`` names them where they bring no id, ``address`` is where the page was if
    it doesn't say so itself. Errors as for ``read``."""
    html, said = decode_page(data)
    if said:
        yield Note(source, said)
    if wrong := markup.fault(html):
        raise ValueError(wrong)
    tree = LexborHTMLParser(html)
    named, notes = jsonld.products(tree)
    yield from (Note(source, note) for note in notes)
    at = _address(tree, html, address)
    if is_deep(tree):
        yield Note(source, f"nested deeper than {DEEPEST} elements: only its words and product data blocks are read")
    else:
        named += microdata.products(tree)
    if len(named) > _MOST:
        yield Reject(source, f"things {_MOST + 1} to {len(named)}", f"beyond the {_MOST} things that are read of one page")
    found = _chosen(named[:_MOST], tree, at)
    graph = microdata.open_graph(tree)
    if len(found) == 1 and graph and (graph.rank == "main" or _same_words(graph.name, found[0].name)):
        found = [found[0].filled(replace(graph, text=None))]
    wordless = not any(product.text for product in found)
    if wordless and (len(found) < 2 or (graph and graph.rank == "main")):
        found = _from_words(html, tree, graph, found)
    if not found:
        yield Reject(source, "page", "no listing found: no schema.org product on it, and its main text speaks of no book")
        return
    wholes = mainblock.fuller(html, [product.text or "" for product in found])
    for number, (product, whole) in enumerate(zip(found, wholes, strict=True), 1):
        # One listing goes by the name of its file, several by their own numbers.
        name = stem if len(found) == 1 else product.id or f"{stem}-{number}"
        yield from _listing(product, whole, source, name, at)


def _listing(product: Product, whole: str | None, source: str, name: str, address: str | None) -> Iterator[Item]:
    price = product.price
    asking = money.asking(price, product.currency) if price else None
    if price and asking is None:
        yield Note(source, money.unclear(price))
    text = product.text or ""
    where = "main block of text" if product.via == "words" else f"{product.via}{', in full from the page' if whole else ''}"
    yield Note(
        source,
        f"{product.name or 'listing'}: text from {where}" if text else f"{product.name}: no description on the page, title only",
    )
    url = product.url or address
    yield Listing(
        id=name,
        text=whole or text,
        title=product.name,
        asking=asking,
        seller=product.seller,
        url=urljoin(address, url) if address and url else url,
        source=source,
    )


def _chosen(products: list[Product], tree: LexborHTMLParser, address: str | None) -> list[Product]:
    """The page's own products: the main one where there is one, all where they are equals; those in lists only by themselves."""
    for rank in ("main", "own", "listed"):
        ranked = [product for product in products if product.rank == rank]
        if not ranked:
            continue
        if rank != "listed" and len({product.via for product in ranked}) == len(ranked):
            # One in each dialect: the page's one thing, told again.
            pool = [reduce(Product.filled, ranked)]
        else:
            pool = _merged(ranked)
        if len(pool) > 1:
            heading = tree.css_first("h1")
            title = heading.text() if heading else None
            here = [
                product for product in pool if product.url and address and _path(urljoin(address, product.url)) == _path(address)
            ]
            if len(here) != 1 and rank != "listed":
                here = [product for product in pool if _same_words(product.name, title)]
            if len(here) != 1 and rank != "listed":
                here = [product for product in pool if product.text]
            pool = here if len(here) == 1 else pool
        if rank != "main" and len(pool) == 1:
            # One thing told in a second dialect, or again in a list, fills the gaps of the first.
            for other in products:
                pool = [pool[0].filled(other)] if other is not pool[0] and _same(pool[0], other) else pool
        return pool
    return []


def _merged(products: list[Product]) -> list[Product]:
    merged: list[Product] = []
    for product in products:
        twin = next((number for number, known in enumerate(merged) if _same(known, product)), None)
        if twin is None:
            merged.append(product)
        else:
            merged[twin] = merged[twin].filled(product)
    return merged


def _same(one: Product, other: Product) -> bool:
    """Whether two descriptions are of one thing. Copies of one book share a name: an address, a number or words part them."""
    for mark in ("id", "url"):
        if getattr(one, mark) and getattr(other, mark):
            return bool(getattr(one, mark) == getattr(other, mark))
    texts_agree = not one.text or not other.text or one.via != other.via or one.text == other.text
    return _same_words(one.name, other.name) and texts_agree


def _same_words(one: str | None, other: str | None) -> bool:
    return bool(one and other) and re.findall(r"\w+", (one or "").casefold()) == re.findall(r"\w+", (other or "").casefold())


def _from_words(html: str, tree: LexborHTMLParser, graph: Product | None, found: list[Product]) -> list[Product]:
    """The page's main block, or the text of its og: tags, for the one product found or for the page itself."""
    text = mainblock.main_block(html) or (graph.text if graph and graph.rank == "main" else None)
    if text is None and len(found) != 1:
        return []
    titles = (node.text() for mark in ("h1", "title") if (node := tree.css_first(mark)))
    name = (graph.name if graph else None) or next((" ".join(title.split()) for title in titles if title.strip()), None)
    known = found[0] if len(found) == 1 else graph or Product("own", "words")
    return [replace(known, via="words", name=known.name or name, text=text)]


def _address(tree: LexborHTMLParser, html: str, known: str) -> str | None:
    """Where the page was: its canonical link, og:url, the remark that browsers leave when saving, or what is ``known``."""
    canonical = tree.css_first("link[rel=canonical]")
    graph = tree.css_first('meta[property="og:url"]')
    remark = re.search(r"saved from url=\(\d+\)(\S+)", html[:4096])
    told = (
        canonical and canonical.attributes.get("href"),
        graph and graph.attributes.get("content"),
        remark and remark[1],
        known,
    )
    return next((address for address in told if address and address.startswith(("http://", "https://"))), None)


def _path(address: str) -> str:
    return address.partition("#")[0].rstrip("/").casefold()
