"""An ordinal without a noun behind it: "a first", "ninth I think", "ours is the second", "Which printing? Fourth."."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.othercopies import edition_words, is_lot, jacket_before
from auditor.reading.readers.edition_context import is_year
from auditor.reading.readers.edition_kinds import drafted
from auditor.reading.scene import Draft, Scene, roles
from auditor.values import Part

_SPOKEN_OF = 25  # words before an ordinal within which the printing is spoken of


def bare_ordinal(scene: Scene, first: int, number: int, index: int) -> Iterator[Draft]:
    """Drafts for it; none where it counts something else."""
    answered = _answer(scene, first, index) or (_closing(scene, first, index) if number > 1 else None)
    if answered is not None:
        yield drafted(answered, str(number), first, index, row="ordinal answering")
        return
    if number > 1 and scene.once(is_lot):
        return
    norm, words = scene.norm, roles()
    before = norm[first - 1] if first else ""
    following = norm[index] if index < len(norm) else "."
    if number == 1 and before in words["likely"] and not following[0].isalnum():
        yield drafted("edition", "1", first, index, row="a first")  # "1923, probably first"
        return
    if number > 1 and before == "a" and norm[max(0, first - 2) : first - 1] and norm[first - 2] in words["before_fraction"]:
        return  # "stained to about a third"
    opens = before in ("a", "the", "trade", "american", "english", "british", "us", "uk", "genuine", "real") or is_year(before)
    closes = not following[0].isalpha() or following in words["behind_bare_ordinal"] or following in words["edition_verbs"]
    if (
        not opens
        or not closes
        or following == "-"
        or (following == "of" and not is_year(norm[index + 1] if index + 1 < len(norm) else ""))
    ):
        return
    if is_year(before) and following in words["edition_verbs"]:
        yield Draft(
            "edition", str(number), first, index, "bare ordinal", part="book", stance="elsewhere"
        )  # "the 1934 first is in blue"
        return
    if (
        before in ("genuine", "real")
        or (before == "a" and number == 1)
        or before in ("trade", "american", "english", "british", "us", "uk")
    ):
        country = edition_words()["qualifiers"].get(before)
        yield drafted("edition", f"1 {country}" if country not in (None, "trade") else "1", first, index, row="a first")
        return
    printing = number > 1 or any(
        word in ("impression", "impressions", "printing", "printings", "line", "times", "reprinted")
        for word in norm[max(0, first - 14) : first]
    )
    part: Part = "jacket" if jacket_before(scene, first) else "book"
    sure = norm[max(0, first - 2) : first - 1] and norm[first - 2] in words["own_copy_openers"]
    sure = sure or (norm[max(0, first - 2) : first - 1] == ["it"] and norm[first - 3] in edition_words()["making"])
    feature = _named_in_plural(scene, first) or ("edition" if not printing or is_year(before) else "printing")
    yield drafted(
        feature,
        str(number),
        first,
        index,
        None if feature in ("issue", "state") and part == "book" else part,
        row="bare ordinal, said of this copy" if sure or before == "a" or part == "jacket" else "bare ordinal",
    )


def _named_in_plural(scene: Scene, first: int) -> str | None:
    """ "Of the three known issues ours is the second"."""
    before = scene.norm[scene.clause(first).first : first]
    return "issue" if "issues" in before else "state" if "states" in before and "of" in before else None


def _answer(scene: Scene, first: int, last: int) -> str | None:
    """ "Which printing? The second.", "Question: which edition? Answer: first": what the question asked for."""
    norm, clause = scene.norm, scene.clause(first)
    number = scene.clause_of[first]
    behind = norm[last] if last < len(norm) else "."
    opens = all(word in edition_words()["before_answer"] for word in norm[clause.first : first])
    if not number or not opens or (behind[0].isalnum() and behind not in edition_words()["behind_answer"]):
        return None
    asked = scene.clauses[number - 1]
    if asked.end != "?" and number > 1 and norm[asked.first : asked.last] == ["a", "."]:
        asked = scene.clauses[number - 2]
    words = norm[asked.first : asked.last]
    if asked.end != "?" or not {"which", "what"} & set(words):
        return None
    nouns = [edition_words()["nouns"][word] for word in words if word in edition_words()["nouns"]]
    return nouns[-1] if nouns and nouns[-1] != "thus" else None


def _closing(scene: Scene, first: int, last: int) -> str | None:
    """ "Not from the first print, ninth I think", "numbers go 3 4 5 6 so third": the printing, told behind talk of it."""
    norm, clause, words = scene.norm, scene.clause(first), edition_words()
    behind = norm[last] if last < clause.last else "."
    before = norm[first - 1] if first > clause.first else ""
    if before not in words["before_closing"] or (behind[0].isalnum() and behind not in words["behind_closing"]):
        return None
    spoken = set(norm[max(clause.first, first - _SPOKEN_OF) : first - 1])
    return "printing" if spoken & words["printing_talk"] else None
