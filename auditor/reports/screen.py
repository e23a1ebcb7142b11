"""The screen that the terminal reports are printed on, and words made safe for it."""

from __future__ import annotations

import os
import re
import sys
from typing import TextIO

from rich.console import Console
from rich.text import Text

# Control characters and the marks that reverse the direction of writing: a saved page must not steer a terminal.
_UNSAFE = re.compile("[\0-\b\v-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069]")


def safe(text: str) -> str:
    """The text with each character that a terminal would obey replaced by one that it shows, so that offsets stay."""
    return _UNSAFE.sub("\N{MIDDLE DOT}", text)


def indented(screen: Console, text: Text, by: int = 2) -> None:
    """Prints the text, wrapped, some columns in from the left, without blanks at the ends of its lines."""
    for line in text.wrap(screen, max(screen.width - by, 20), tab_size=4):
        line.rstrip()
        screen.print(Text(" " * by).append_text(line) if line.plain else "", no_wrap=True, crop=False, overflow="ignore")


def console(stream: TextIO | None = None, *, piped_width: int = 100) -> Console:
    """Colours on a terminal (NO_COLOR respected), plain words of a fixed width elsewhere (COLUMNS respected)."""
    stream = stream or sys.stdout
    width = None if stream.isatty() or os.environ.get("COLUMNS") else piped_width
    return Console(file=stream, width=width, highlight=False, markup=False, emoji=False, soft_wrap=False)
