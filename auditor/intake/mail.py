"""Saved pages in mail's form: .mhtml as browsers save it, .eml as mail programs do. The standard library's email package."""

from __future__ import annotations

import email
import re
from collections.abc import Iterator, Mapping
from email.message import EmailMessage
from email.policy import EmailPolicy
from typing import cast

from auditor.intake import page, textfile
from auditor.intake.file import File
from auditor.intake.item import Item

_LONGEST_HEAD = 4_000  # characters


class _Policy(EmailPolicy):
    """Heads are cut before they are parsed: parsing one takes its length squared."""

    def header_source_parse(self, sourcelines: list[str]) -> tuple[str, str]:
        name, value = super().header_source_parse(sourcelines)
        return name, value[:_LONGEST_HEAD]


def read(file: File, columns: Mapping[str, str]) -> Iterator[Item]:
    """Yields the listings of the page in it, or else its plain text as one. Raises ValueError where there is neither."""
    message = cast(EmailMessage, email.message_from_bytes(file.read(), policy=_Policy()))
    body = _body(message)
    if body is None or not message.keys():
        raise ValueError("holds neither a page nor text: expected a saved page (.mhtml) or a mail (.eml)")
    data = _data(body)
    if body.get_content_type() == "text/html":
        address = message.get("Snapshot-Content-Location") or body.get("Content-Location") or ""
        yield from page.of_bytes(data, file.name, file.stem, address=str(address).strip())
    else:
        yield from textfile.of_bytes(data, file.name, file.stem, title=_subject(message))


def _body(message: EmailMessage) -> EmailMessage | None:
    """The page that was saved (the first one: others are frames in it), else the plain text; nothing that is attached."""
    parts = [part for part in message.walk() if not part.is_multipart() and part.get_content_disposition() != "attachment"]
    for kind in ("text/html", "text/plain"):
        found = next((part for part in parts if part.get_content_type() == kind), None)
        if found is not None:
            return found
    return None


def _data(part: EmailMessage) -> bytes:
    """The part's words in UTF-8, where it names a charset that can read them; else its bytes, for intake to find out."""
    data = part.get_payload(decode=True)
    data = data if isinstance(data, bytes) else b""
    charset = part.get_content_charset()
    try:
        return data.decode(charset).encode() if charset else data
    except (LookupError, UnicodeError):
        return data


def _subject(message: EmailMessage) -> str | None:
    """Raises nothing: a broken head is no reason to lose the words below it."""
    try:
        return re.sub(r"\s+", " ", str(message.get("Subject") or "")).strip() or None
    except (ValueError, IndexError, TypeError, AttributeError):
        return None
