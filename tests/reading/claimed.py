"""What the tests of values compare: value, part and stance of the claims of one feature."""

from auditor.reading import read

Said = set[tuple[str, str, str]]


def claimed(text: str, feature: str) -> Said:
    return {(claim.value, claim.part, claim.stance) for claim in read(text) if claim.feature == feature}


def said(part: str, *values: str, stance: str = "asserted") -> Said:
    return {(value, part, stance) for value in values}
