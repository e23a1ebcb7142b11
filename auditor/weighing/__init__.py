"""Weighing: what the claims of a listing leave open, what contradicts what, and what to ask."""

from auditor.weighing.weigh import weigh

__all__ = ["weigh"]
