"""Where a table or key stands in a TOML text, so that a mistake can be told with its line.

``tomllib`` gives values without places. This reads only headers and keys at the start of a line, which is how point sets are
written; what stands inside an inline table is placed at the line of the key that holds it.
"""

from __future__ import annotations

import re

Path = tuple[str | int, ...]

_HEADER = re.compile(r"\s*(\[\[?)\s*([\w.\-]+)\s*\]\]?\s*(?:#.*)?$")
_KEY = re.compile(r"\s*([\w\-]+|\"[^\"]*\")\s*=")


class Places:
    """The lines of a TOML text by path: ``Places(text).line(("points", 2, "readings", 0, "value"))``."""

    def __init__(self, text: str) -> None:
        self._lines: dict[Path, int] = {}
        counts: dict[Path, int] = {}
        table: Path = ()
        inside_long_string = False
        for number, line in enumerate(text.splitlines(), start=1):
            opens = inside_long_string
            if (line.count('"""') + line.count("'''")) % 2:
                inside_long_string = not inside_long_string
            if opens:
                continue
            if header := _HEADER.match(line):
                table = self._enter(header[2].split("."), header[1] == "[[", counts, number)
                self._lines.setdefault(table, number)
            elif key := _KEY.match(line):
                self._lines.setdefault((*table, key[1].strip('"')), number)

    def line(self, path: Path) -> int | None:
        """The line of ``path``, or of the nearest table or key around it; None where nothing around it is known."""
        while path:
            if path in self._lines:
                return self._lines[path]
            path = path[:-1]
        return None

    def _enter(self, names: list[str], is_row: bool, counts: dict[Path, int], number: int) -> Path:
        path: Path = ()
        for place, name in enumerate(names):
            path = (*path, name)
            if is_row and place == len(names) - 1:
                counts[path] = counts.get(path, -1) + 1
                self._lines.setdefault(path, number)
                path = (*path, counts[path])
            elif path in counts:
                path = (*path, counts[path])
        return path
