"""Descriptions that also stand in other listings: such words may have been written for another copy.

``print_of`` takes a description's fingerprints, ``find`` compares those of any number of listings. Nothing here reads files or
knows what a scan is.
"""

from auditor.samewords.finding import Others, find
from auditor.samewords.prints import Print, print_of

__all__ = ["Others", "Print", "find", "print_of"]
