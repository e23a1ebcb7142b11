"""The command that the others hang on."""

from __future__ import annotations

import typer

app = typer.Typer(add_completion=False, no_args_is_help=True, pretty_exceptions_enable=False, rich_markup_mode=None)


@app.callback()
def auditor() -> None:
    """Read what a bookseller's listing claims, and weigh it against the known points of the book."""
