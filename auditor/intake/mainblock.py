"""The main block of a page without product data: the words that remain once the page's own furniture is taken away."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache

from selectolax.lexbor import LexborHTMLParser, LexborNode

from auditor.intake.plaintext import hidden, is_deep, of_node
from auditor.knowledge.lexicon import table

_SILENT = ("script", "style", "noscript", "template", "iframe", "svg")
_FURNITURE = ("nav", "header", "footer", "aside", "form", "dialog", "button", "select")
_WRAPPERS = ("div", "form", "section", "table", "tbody", "tr", "td", "center")
_ROLES = {"navigation", "banner", "complementary", "contentinfo", "dialog", "alertdialog", "search"}
_TEASERS = 20  # a page with more shortened descriptions is a list, and has none of them in full
_SHARE = 0.7  # a block holds the page if it holds this share of the words; common practice in text extraction


def main_block(html: str) -> str | None:
    """The main text of a page, None where none of it speaks of a book for sale (rows of lexicon/pages.toml)."""
    tree = LexborHTMLParser(html)
    if tree.body is not None and is_deep(tree):
        text = of_node(tree.body)
        return text if _speaks_of_a_book(text) else None
    body = stripped(tree).body
    if body is None:
        return None
    node = next(
        (
            found[0]
            for mark in ("[itemprop=description]", "#description", "main", "[role=main]", "article")
            if len(found := body.css(mark)) == 1
        ),
        body,
    )
    text = of_node(_heaviest(node))
    return text if _speaks_of_a_book(text) else None


def fuller(html: str, beginnings: Sequence[str]) -> list[str | None]:
    """For each description the whole of it, where product data give only its beginning and an ellipsis and the page has it in
    full."""
    starts = [_start(beginning) for beginning in beginnings]
    if not any(starts) or len(starts) > _TEASERS:
        return [None] * len(starts)
    tree = LexborHTMLParser(html)
    nodes = [] if is_deep(tree) else stripped(tree).css("p, div, section, article, td, span, dd")
    longest = max(map(len, starts))
    blocks = [(node, _squeezed(node.text())[:longest]) for node in nodes]
    holding = [[node for node, words in blocks if start and words.startswith(start)] for start in starts]
    return [max((of_node(node) for node in found[-2:]), key=len, default=None) for found in holding]


def _start(beginning: str) -> str:
    """The words before an ellipsis, squeezed; none where there is no ellipsis, or too few words to know the whole by."""
    words = beginning.rstrip()
    cut = words.removesuffix("…").removesuffix("...")
    return _squeezed(cut) if cut != words and len(" ".join(cut.split())) >= 30 else ""


def _squeezed(text: str) -> str:
    """The text without blanks, which product data and the page put differently."""
    return "".join(text.split())


def stripped(tree: LexborHTMLParser) -> LexborHTMLParser:
    """The page without its furniture, which is taken out of it."""
    tree.strip_tags(list(_SILENT), recursive=True)
    if tree.body is None:
        return tree
    whole = len(tree.body.text())
    furniture: list[LexborNode] = []
    left = [tree.body]
    while left:  # no element is both taken away and looked into
        for node in left.pop().iter():
            # A wrapper round the whole page may carry any class ("with-sidebar") and may be a form.
            wraps = node.tag in _WRAPPERS and len(node.text()) > 0.5 * whole and not hidden(node)
            (furniture if not wraps and is_furniture(node) else left).append(node)
    for node in furniture:
        node.decompose()
    return tree


def is_furniture(node: LexborNode) -> bool:
    """Whether an element is navigation, a banner, a teaser, or not shown, by its tag, role, class and id."""
    if node.tag in ("main", "article"):
        return False
    if node.tag in _FURNITURE or node.attributes.get("role") in _ROLES or hidden(node):
        return True
    names = f"{node.attributes.get('class') or ''} {node.attributes.get('id') or ''}"
    parts = re.findall(r"[a-z]+", re.sub(r"(?<=[a-z])(?=[A-Z])", " ", names).lower())
    return not _noise().isdisjoint(parts)


def _heaviest(node: LexborNode) -> LexborNode:
    """Goes down as long as one child holds nearly all of the words that aren't links."""
    while True:
        whole = _weight(node)
        child = next((part for part in node.iter() if whole and _weight(part) >= _SHARE * whole), None)
        if child is None or child.tag in ("p", "ul", "ol", "table", "pre", "span", "b", "strong", "em", "font"):
            return node
        node = child


def _weight(node: LexborNode) -> int:
    return len(node.text()) - 2 * sum(len(link.text()) for link in node.css("a"))


def _speaks_of_a_book(text: str) -> bool:
    listing = table("pages")["listing"]
    known: set[str] = set(re.findall(r"[a-z]+", text.lower())) & set(listing["words"])
    return len(known) >= int(listing["least"])


@cache
def _noise() -> frozenset[str]:
    return frozenset(word for row in table("pages")["noise"] for word in row["words"])
