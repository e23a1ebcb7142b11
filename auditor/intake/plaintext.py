"""HTML as a reader sees it: plain text with line breaks."""

from __future__ import annotations

import html
import re
from collections.abc import Iterator

from selectolax.lexbor import LexborHTMLParser, LexborNode

from auditor.intake import markup

_SILENT = {"script", "style", "template", "noscript", "head", "iframe", "svg", "button", "select", "object"}
_BLOCK = {
    *("address", "article", "aside", "blockquote", "body", "center", "dd", "details", "div", "dl", "dt", "fieldset", "figure"),
    *("figcaption", "footer", "form", "h1", "h2", "h3", "h4", "h5", "h6", "header", "hr", "li", "main", "nav", "ol", "section"),
    *("summary", "table", "tbody", "thead", "tr", "ul"),
}
DEEPEST = 256  # elements; browsers stop at 512. Looking through a page costs its length times its depth
_SPACED = {"p", "pre", "textarea"}
_EDGE, _GAP = "\v", "\f"  # where a block begins or ends; where a paragraph does
_NAMES = "p|br|div|span|b|i|u|em|strong|small|font|center|a|ul|ol|li|h[1-6]|table|tr|td|th|hr|sup|sub|pre"
_TAG = re.compile(rf"</?(?:{_NAMES})(?:\s+[\w-]+\s*=[^<>]*)?\s*/?>", re.I)


def is_deep(tree: LexborHTMLParser) -> bool:
    """Whether a page nests deeper than any that a browser shows as it stands."""
    return tree.css_first(" > ".join("*" * DEEPEST)) is not None


def plain(text: str) -> str:
    """A description that may hold HTML, or HTML escaped once more, as plain text. Text without either comes back as it is."""
    for _ in range(2):
        if _TAG.search(text):
            if markup.fault(text):
                break
            body = LexborHTMLParser(text).body
            return of_node(body) if body else ""
        if not re.search(r"&(?:#\d+|#x[\da-f]+|[a-z]+\d*);", text, re.I):
            break
        text = html.unescape(text)
    return text.replace("\r\n", "\n").replace("\N{NO-BREAK SPACE}", " ").strip()


def of_node(node: LexborNode) -> str:
    """The words of an element: blocks on their own lines, paragraphs parted by a blank one, table cells by a space."""
    return re.sub(f"[ \n{_EDGE}{_GAP}]+", lambda run: _space(run[0]), "".join(_pieces(node))).strip()


def _space(run: str) -> str:
    return "\n\n" if _GAP in run or run.count("\n") > 1 else "\n" if _EDGE in run or "\n" in run else " "


def hidden(node: LexborNode) -> bool:
    """Whether the page says itself that an element isn't shown."""
    told = node.attributes
    style = (told.get("style") or "").replace(" ", "").lower()
    return "hidden" in told or told.get("aria-hidden") == "true" or "display:none" in style or "visibility:hidden" in style


def _pieces(node: LexborNode) -> Iterator[str]:
    """Depth first with a stack of our own: saved pages nest deeper than Python recurses."""
    stack: list[LexborNode | str] = [node]
    while stack:
        item = stack.pop()
        if isinstance(item, str):
            yield item
        elif item.tag == "-text":
            yield re.sub(r"[\s\N{NO-BREAK SPACE}]+", " ", item.text_content or "")
        elif item.tag == "br":
            yield "\n"
        elif item.tag and item.tag not in _SILENT and not item.tag.startswith("-") and (item is node or not hidden(item)):
            edge = _GAP if item.tag in _SPACED else _EDGE if item.tag in _BLOCK else " " if item.tag in ("td", "th") else ""
            stack.append(edge)
            stack.extend(reversed(list(item.iter(include_text=True))))
            stack.append(edge)
