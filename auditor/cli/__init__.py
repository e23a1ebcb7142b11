"""The ``auditor`` command, one module a command. Heavy rooms are imported inside the commands, so that --help is quick."""

from __future__ import annotations

import os
import sys

from auditor.cli import check, desk, draft, points, scan, watch  # noqa: F401  # each names itself to the app
from auditor.cli.app import app
from auditor.cli.common import STOPPED

__all__ = ["app", "main"]


def main() -> None:
    """The command's entry point."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal that lacks a letter gets a ? for it
    try:
        try:
            app(prog_name="auditor")
        finally:
            sys.stdout.flush()
    except OSError as error:
        if error.filename is not None:
            raise
        # Standard output took no more. A reader that closed the pipe has seen enough: we end quietly, like any filter.
        if not isinstance(error, BrokenPipeError):
            print(f"standard output: {error.strerror}", file=sys.stderr)
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(STOPPED)
