"""The ``auditor`` command, one module a command. Heavy rooms are imported inside the commands, so that --help is quick."""

from __future__ import annotations

import signal
import sys

from auditor.cli import check, desk, draft, points, scan, watch  # noqa: F401  # each names itself to the app
from auditor.cli.app import app

__all__ = ["app", "main"]


def main() -> None:
    """The command's entry point."""
    if hasattr(signal, "SIGPIPE"):
        signal.signal(signal.SIGPIPE, signal.SIG_DFL)  # a reader that closes the pipe ends us quietly, like any filter
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal that lacks a letter gets a ? for it
    app(prog_name="auditor")
