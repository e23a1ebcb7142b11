"""Publishers in everyday talk: "from the house of X", "X put it out in 1962", "under the X imprint", "for the X Book Club"."""

from __future__ import annotations

from auditor.reading.readers.house_forms import run_of_capitals
from auditor.reading.readers.known_houses import listed, tailed, upper
from auditor.reading.scene import Scene

_PAIR = 3  # words of a name that joins two: "Harrow & Pike"


def talked_of(scene: Scene, index: int) -> tuple[int, int] | None:
    """The name that begins at a word, by what the words before and behind it say of it."""
    norm = scene.norm
    word = norm[index]
    if not word[0].isalpha() or not upper(scene, index) or word in listed("no_house") or word in listed("persons"):
        return None
    before, behind_name = norm[max(0, index - 3) : index], index > 0 and norm[index - 1][0].isalpha() and upper(scene, index - 1)
    if behind_name and norm[index - 1] not in listed("no_house") and norm[index - 1] not in ("the", "for", "under"):
        return None
    end = run_of_capitals(scene, index)
    run, following = norm[index:end], norm[end : end + 3]
    if not run or set(run) & listed("months"):
        return None
    if norm[end : end + 2] == ["book", "club"] and before[-2:] == ["for", "the"]:
        return index, end + 2
    if run[-2:] == ["book", "club"] and before[-2:] == ["for", "the"]:
        return index, end
    housed = before[-2:] == ["house", "of"] and "the" in before
    listed_by = before[-1:] == ["the"] and following[:1] != [] and following[0] in listed("imprint_nouns")
    bought_out = _put_out(following) and (len(run) > 1 or following[0] != "put")
    pair = len(run) == _PAIR and run[1] in ("&", "and") and "&" in run
    described = not following or following[0] in listed("behind_pair") or (following[0] == "one" and before[-1:] == ["the"])
    one_of = pair and before[-1:] in (["a"], ["the"]) and described
    numbered = before[-1:] == ["a"] and following[:1] == ["paperback"] and following[1:2] in (["number"], ["no"])
    return (index, tailed(scene, end)) if housed or listed_by or bought_out or one_of or numbered else None


def at_other_time(scene: Scene, last: int) -> bool:
    """ "X brought it out in the States the year before": told of another edition."""
    following = scene.norm[last : scene.clause(last - 1).last]
    return _put_out(following[:3]) and bool(set(following) & listed("other_times"))


def _put_out(following: list[str]) -> bool:
    """ "X brought it out", "X published this", "X put it out in 1962"."""
    if following[:1] and following[0] in listed("publishes"):
        return following[1:2] in (["it"], ["this"], ["the"])
    return (
        following[:1] != []
        and following[0] in listed("put")
        and following[1:3] in (["it", "out"], ["this", "out"], ["out", "the"])
    )
