"""Reading grows with the length of a text and no faster, whatever it repeats: four times the text, some four times the work.

No clock is asserted on. The work is the processor's time for a text and for one four times as long, as a ratio: 4 where reading
is linear, 16 where each word looks at all the others. The least of several runs counts, as a busy machine only ever adds.
"""

import time

import pytest

from auditor.auditing import audit_on, open_shelf
from tests.commands import DEMO

_LINEAR, _BOUND = 4, 9
_ENOUGH = 0.01  # seconds of work from which on a ratio means something
_TITLE = "The Ore Dock by Ilse Varnum"

REPEATED = (
    "no ",
    "7",
    "1 3 5 7 9 ",
    "(",
    ",",
    "book ",
    "a hint of ",
    "\n",
    "first edition ",
    "no tears, ",
    "chip ",
    "foxing, chips, tears, ",
    "jacket ",
    "$24.95 ",
    "18s 6d ",
    '"',
    "“a” ",
    "VG/",
    "- ",
    "—",
    "10 9 8 7 6 5 4 3 2 1 ",
    "ten nine eight seven six five four three two one ",
    "1,",
    "1.",
    "1-",
    ". ",
    "&",
    "&#39;",
    "<",
    "<b ",
    "<b>x</b>",
    "a",
    "a'",
    "a\u00ad",
    "\u200b",
    "? ",
    "Is it a first? ",
    "Q: is it? A: no. ",
    "later printings have ",
    "unlike the ",
    "not ",
    "but ",
    "except for ",
    "this copy ",
    "not sure whether ",
    "I doubt that it is ",
    "The Ore Dock ",
    "by Ilse Varnum ",
    "published by Tamarack & Vane ",
    "978-0-306-40615-7 ",
    "1974 ",
    "MCM",
    "gutter code P6 ",
    "1 of 500 copies ",
    "very good ",
    "book fine jacket fine ",
    "signed by ",
    "editoin ",
    "blue cloth boards ",
    "unclipped ",
    "no jacket ",
    "A B C D ",
    "THE ",
    "first ",
)


def _work(shelf, text):
    began = time.process_time()
    audit_on(shelf, text, _TITLE)
    return time.process_time() - began


@pytest.mark.parametrize("repeated", REPEATED)
def test_four_times_the_text_is_some_four_times_the_work(repeated):
    shelf = open_shelf(DEMO / "points")
    size = 2_000
    while (small := _work(shelf, repeated * (size // len(repeated)))) < _ENOUGH and size < 100_000:
        size *= 4
    large = _work(shelf, repeated * (_LINEAR * size // len(repeated)))
    for _ in range(3):
        if large < _BOUND * small:
            break
        small = min(small, _work(shelf, repeated * (size // len(repeated))))
        large = min(large, _work(shelf, repeated * (_LINEAR * size // len(repeated))))
    assert large < _BOUND * max(small, _ENOUGH / 10)


def test_the_measure_sees_what_is_not_linear():
    """Each word looking at all others is past the bound: so a test that passes says something."""

    def work(size):
        began = time.process_time()
        sum(one == other for one in range(size) for other in range(size))
        return time.process_time() - began

    work(500)
    assert min(work(2_000) for _ in range(3)) >= _BOUND * min(work(500) for _ in range(3))
