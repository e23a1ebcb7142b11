"""Speed, reported and never asserted: ``python -m tests.bench.speed``."""
