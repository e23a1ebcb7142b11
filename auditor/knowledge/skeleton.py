"""A new point set to fill in, and the JSON Schema of the format, made from the models that read it."""

from __future__ import annotations

import json
from string import Template

from auditor.knowledge import lexicon
from auditor.knowledge.points import PointSet


def skeleton(title: str, author: str = "") -> str:
    """The text of a point set with a comment at each key. Until its blanks are filled ``points check`` tells what they lack."""
    words = (lexicon.root() / "skeleton.toml").read_text(encoding="utf-8")
    return Template(words).substitute(title=_quoted(title), author=_quoted(author))


def schema() -> str:
    """JSON Schema (draft 2020-12) of a point-set file, indented."""
    made = PointSet.model_json_schema()
    del made["properties"]["stem"]  # the file's own name
    made["required"].remove("stem")
    return json.dumps({"$schema": "https://json-schema.org/draft/2020-12/schema", **made}, indent=2, ensure_ascii=False)


def _quoted(words: str) -> str:
    """The words as a TOML basic string, whose escapes are those of JSON."""
    return json.dumps(words, ensure_ascii=False)
