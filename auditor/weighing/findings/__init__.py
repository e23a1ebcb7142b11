"""What is worth telling of a listing. Each file is one kind of question and yields findings; a new one is named here.

Nothing here accuses: a finding says what the text says and what the point set says, with its source.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from auditor.values import Claim, Finding
from auditor.weighing.case import Case
from auditor.weighing.findings.asking import asking_price
from auditor.weighing.findings.condition import grade_conflicts
from auditor.weighing.findings.conflicts import conflicts
from auditor.weighing.findings.identity import identity
from auditor.weighing.findings.missing import missing_evidence, said_of_which
from auditor.weighing.findings.wording import loose_wording

OF_A_SET: tuple[Callable[[Case], Iterator[Finding]], ...] = (conflicts, identity, missing_evidence, said_of_which, asking_price)
OF_ANY_BOOK: tuple[Callable[[Sequence[Claim]], Iterator[Finding]], ...] = (grade_conflicts, loose_wording)
