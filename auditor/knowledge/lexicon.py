"""Where the lexicon is: the folder of TOML data that travels inside the wheel and stands at the checkout's top level."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path
from typing import Any

_chosen: Path | None = None


def use(folder: Path) -> None:
    """Takes the lexicon from another folder. Raises RuntimeError where one was read already: what it gave is remembered."""
    global _chosen
    if root.cache_info().currsize and root() != folder:
        raise RuntimeError(f"the lexicon was read from {root()} already and can't be exchanged for {folder}")
    _chosen = folder


@cache
def root() -> Path:
    """The lexicon's folder: inside the installed package, or beside it in a checkout. Raises FileNotFoundError if neither."""
    if _chosen is not None:
        return _chosen
    package = Path(__file__).resolve().parent.parent
    for folder in (package / "lexicon", package.parent / "lexicon"):
        if folder.is_dir():
            return folder
    raise FileNotFoundError(f"no lexicon folder beside {package} or inside it: the installation is incomplete")


def table(name: str) -> dict[str, Any]:
    """One lexicon file as plain data: ``table("grades")`` reads lexicon/grades.toml. Raises TOMLDecodeError on bad TOML."""
    return tomllib.loads((root() / f"{name}.toml").read_text(encoding="utf-8"))
