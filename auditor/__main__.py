"""``python -m auditor`` is the ``auditor`` command."""

from auditor.cli import main

main()
