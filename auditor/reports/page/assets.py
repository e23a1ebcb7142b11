"""The page's own style and script, and the policy that lets a browser run these and nothing else."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Sequence
from functools import cache
from pathlib import Path

import jinja2

from auditor.reports.words import CAUTION

HOME = Path(__file__).parent
STATIC = HOME / "static"

STYLES = ("base.css", "listing.css", "report.css")
# In this order: each uses only what stands before it. The desk serves the first ones as files.
VIEW = ("dom.js", "words.js", "ruler.js", "copying.js", "listing.js")
REPORT = (*VIEW, "filters.js", "table.js", "report.js")
GUIDE_STYLES = ("base.css", "listing.css", "guide.css")
GUIDE = ("dom.js", "ruler.js", "guide.js")


@cache
def joined(names: Sequence[str]) -> str:
    """The files, one behind the other."""
    return "\n".join((STATIC / name).read_text(encoding="utf-8").strip() for name in names)


def digest(text: str) -> str:
    """The source expression that names this very text in a Content-Security-Policy."""
    return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"


@cache
def policy(scripts: Sequence[str], styles: Sequence[str]) -> str:
    """Nothing is loaded and nothing runs but these scripts and styles; markup can't be made from text at all."""
    return (
        f"default-src 'none'; script-src {digest(joined(scripts))}; style-src {digest(joined(styles))}; "
        "base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types 'none'"
    )


def frame(scripts: Sequence[str], styles: Sequence[str]) -> dict[str, str]:
    """What every page of one file holds: its policy, style and script, and the caution."""
    return {"policy": policy(scripts, styles), "style": joined(styles), "script": joined(scripts), "caution": CAUTION}


def templates(*folders: Path) -> jinja2.Environment:
    """Templates of these folders, then the report's; each escapes what it is given."""
    return jinja2.Environment(
        loader=jinja2.FileSystemLoader([*folders, HOME / "templates"]),
        autoescape=True,
        undefined=jinja2.StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
