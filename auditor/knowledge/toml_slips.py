"""What is wrong in a file that is no TOML, for people who write point sets and know no TOML: the slip, and how to mend it."""

from __future__ import annotations

import re
from typing import Final

# Pattern of the line that the parser stopped at, and what it says; the first that fits is told.
_SLIPS: Final = (
    (r"[“”„‘’]", 'curly quotation marks: write straight ones, as in title = "The Ore Dock"'),
    (r"\N{NO-BREAK SPACE}|[\u200b-\u200d\ufeff]", "a blank that is no plain one (copied from a page?): type the line again"),
    (r"^\s*//|^\s*;|^\s*--", "a remark begins with #, and not like this line"),
    (r"^\s*[\w-]+\s*:", 'write = between key and value, not a colon: title = "The Ore Dock"'),
    (r"^\s*[\w-]+(?:\s+[\w-]+)+\s*=", "a key is one word: join its parts with _, as in also_titled"),
    (r"^\s*[\w-]+\s*=\s*(?:#.*)?$", 'nothing stands behind the =: write a value, "text" or a number, or take the line out'),
    (r"=\s*(?:True|False|yes|no|Yes|No)\s*$", "write true or false, in small letters and without quotation marks"),
    (
        r"=\s*[$£€]?\d{1,3}(?:,\d{3})+",
        "a number has no comma and no sign of a currency: low = 1200, and currency in its own line",
    ),
    (r"=\s*[$£€]", "a number has no sign of a currency: low = 60, and currency in its own line"),
    (r"=\s*0\d", "a number begins with no 0; a date stands in quotation marks"),
    (r'=\s*"[^"]*\\', "a backslash in text is written twice"),
    (r'=\s*"[^"]*"\s*[^\s#,\]}]', 'something stands behind the value: write " inside text as \\", and one value a line'),
    (r"=\s*\[[^\]]*$|\[\[[^\]]*\]?\s*$|^\s*\[[^\]]*$", "a bracket is opened and not closed: add ], or ]] for a row"),
    (r"^\s*[\w-]+\s*=\s*[A-Za-z]", 'text stands between quotation marks: name = "First edition"'),
    (r'^[^#"]*(?:"[^"]*"[^#"]*)*"[^"]*$', "a quotation mark is missing: text stands between two of them"),
    (r"^[^=\[#]+$", "expected key = value, a table such as [[points]], or a remark behind #"),
)


def explained(text: str, error: str) -> tuple[int, str]:
    """The line (from 1) at which ``text`` stops being TOML, and what to do there, by ``tomllib``'s own message ``error``."""
    lines = text.split("\n")
    place = re.search(r"at line (\d+)", error)
    number = min(int(place[1]), len(lines)) if place else len(lines)
    if re.search("overwrite|twice|declare", error):
        return number, "a key or table stands twice: keep one of them"
    if not place or "Unclosed" in error:  # the file's end came too soon
        number = _opened(lines) or max((at for at, line in enumerate(lines, 1) if line.strip()), default=1)
    slip = next((mend for pattern, mend in _SLIPS if re.search(pattern, lines[number - 1])), None)
    return number, slip or f"it can't be read here ({error}): compare the line with those around it"


def _opened(lines: list[str]) -> int | None:
    """The line of a list that another key or table follows before it is closed."""
    for number, line in enumerate(lines, 1):
        if re.search(r"=\s*\[[^\]]*$", line):
            for following in lines[number:]:
                if re.match(r"\s*[\w-]+\s*=|\s*\[", following):
                    return number
                if "]" in following:
                    break
    return None
