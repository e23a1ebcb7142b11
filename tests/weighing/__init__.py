"""What weighing must get right: cells, evidence, verdicts, and what it must not say."""
