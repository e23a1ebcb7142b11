"""Of the copies printed that fit a text, how many are first printings. Arithmetic on print runs, and no more than that."""

from __future__ import annotations

from auditor.values import Share
from auditor.weighing.case import Case
from auditor.weighing.practice import table


def share(case: Case) -> Share | None:
    """The share of the printing that is claimed, or of the first printing of the edition spoken of where no printing is.

    None where a print run of what is left open isn't known, or only some states of a printing are left (a run is that of a whole
    printing), or all that is left is that printing or none of it is.
    """
    cells, work = case.index.cells, case.index.work
    edition = case.claimed.edition or case.index.first.id
    of = cells.whole(case.claimed.mask if case.claimed.narrow else cells.printing(edition, 1))
    runs: dict[int, int] = {}
    for (name, printing), block in cells.printings.items():
        if block & case.book.cells:
            run = work.edition(name).print_runs.get(str(printing))
            if run is None or block & ~case.book.cells:
                return None
            runs[block] = run
    fitting, copies = sum(runs.values()), sum(run for block, run in runs.items() if block & of)
    if not 0 < copies < fitting:
        return None
    sum_of = " + ".join(f"{run:,} ({case.index.describe(block)})" for block, run in runs.items())
    text = (
        f"By the print runs {fitting:,} copies fit this text: {sum_of}. Of them {copies:,} are "
        f"{case.index.describe(of & case.book.cells)}: 1 in {fitting / copies:.3g}. {table('share')['caution']}"
    )
    return Share(cells.render(of & case.book.cells), copies, fitting, text)
