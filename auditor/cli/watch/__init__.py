"""``auditor watch``: listings kept over time."""

from auditor.cli.watch import acting, looking, taking  # noqa: F401  # each names its commands to the group
