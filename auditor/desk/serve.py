"""Runs the desk on the loopback address until it is stopped."""

from __future__ import annotations

import signal
import socket
import tempfile
import webbrowser
from contextlib import suppress
from pathlib import Path

import uvicorn

from auditor.desk.app import create
from auditor.knowledge.shelf import Shelf


def serve(shelf: Shelf, watchlist: Path, port: int = 0, *, browse: bool = True) -> None:
    """Serves until Ctrl-C or a termination signal; port 0 is any free one. Raises OSError when the port is taken."""
    with socket.create_server(("127.0.0.1", port)) as door, tempfile.TemporaryDirectory(prefix="auditor-desk-") as folder:
        number = door.getsockname()[1]
        address = f"http://127.0.0.1:{number}/"
        print(f"The desk is at {address} for this computer alone. Ctrl-C closes it.", flush=True)
        app = create(shelf, number, Path(folder), watchlist)
        config = uvicorn.Config(app, log_level="warning", access_log=False, lifespan="off", server_header=False, ws="none")
        # Ended from outside, it clears up as by Ctrl-C; a browser that hangs up must not end it (main() lets pipes do so).
        signal.signal(signal.SIGTERM, signal.default_int_handler)
        if hasattr(signal, "SIGPIPE"):
            signal.signal(signal.SIGPIPE, signal.SIG_IGN)
        if browse:
            webbrowser.open(address)  # the door listens already: the page waits for the first answer
        with suppress(KeyboardInterrupt):
            uvicorn.Server(config).run(sockets=[door])
