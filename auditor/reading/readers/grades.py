"""Grades of the trade's scale, alone and in pairs: "VG+/NF", "fine in like jacket", "near fine to fine"."""

from __future__ import annotations

from collections.abc import Iterator

from auditor.reading.othercopies import is_lot
from auditor.reading.readers.grade_words import Grade, lettered_item, places, written_grades
from auditor.reading.readers.tales import in_tale, tale_words
from auditor.reading.scene import Draft, Scene
from auditor.values import Part, Stance

_FORMER = 25  # words before "the former" in which the two are named


def read_grades(scene: Scene) -> Iterator[Draft]:
    """Drafts of ``grade``; in a pair the first is the book's and the second the jacket's."""
    grades = [grade for grade in written_grades(scene) if not _masked(scene, grade)]
    skip = -1
    for number, grade in enumerate(grades):
        if grade.first < skip:
            continue
        following = grades[number + 1] if number + 1 < len(grades) else None
        pair = _pair(scene, grade, following)
        if pair is None:
            if grade.sure or _in_grade_place(scene, grade):
                for part in ("book", "jacket") if _of_both(scene, grade) else (_part(scene, grade, following),):
                    yield Draft("grade", grade.value, grade.first, grade.last, "grade", part=part, stance=_stance(scene, grade))
            continue
        stance = _stance(scene, grade)
        yield Draft("grade", grade.value, grade.first, grade.last, "grade pair", part="book", stance=stance)
        if isinstance(pair, Grade):
            yield Draft("grade", pair.value, pair.first, pair.last, "grade pair", part="jacket", stance=stance)
            skip = pair.last
        elif pair:
            yield Draft("grade", grade.value, pair, pair + 1, "like jacket", part="jacket", stance=stance)


def _stance(scene: Scene, grade: Grade) -> Stance | None:
    """A grade given by the seller is asserted, however it is put: "we'd call it very good", "I should grade it fine". Doubts
    about other things ("haven't read it") leave it alone."""
    clause = scene.clause(grade.first)
    before = scene.norm[clause.first : grade.first]
    given = bool(set(before[-6:]) & places("giving"))
    cues = {cue.row.kind for cue in scene.cues_between(clause.first, grade.first)}
    if cues & {"denial", "elsewhere"} or clause.end == "?":
        return None
    return "asserted" if given or "hedge" not in cues else None


def _masked(scene: Scene, grade: Grade) -> bool:
    """Whether a longer phrase in another sense holds the grade ("a good read"); it must begin with it or before it. Quoted talk
    ("a fine, dry spring") and what the seller declines to call it ("I wouldn't call it fine") are no grades either."""
    if not grade.sure and (_quoted(scene, grade) or _declined(scene, grade)):
        return True
    if in_tale(scene, grade.first) or set(scene.norm[grade.last : grade.last + 1]) & tale_words("never_graded"):
        return True
    near = scene.between(grade.first - 4, grade.first + 1)
    whole = any(phrase.row.kind == "mask" and phrase.first <= grade.first < phrase.last for phrase in near)
    inside = any(phrase.row.kind == "mask" and phrase.first < grade.last for phrase in scene.between(grade.first + 1, grade.last))
    return whole or (inside and not grade.sure)


def _quoted(scene: Scene, grade: Grade) -> bool:
    """Whether an everyday word stands behind "a" inside quotation marks that hold more than the grade."""
    clause = scene.clause(grade.first)
    line, rest = scene.norm[clause.first : grade.first], scene.norm[grade.last : clause.last]
    within = any(line.count(mark) % 2 == 1 and mark in rest for mark in ('"', "'"))
    return scene.norm[grade.first - 1 : grade.first] == ["a"] and (within or line.count('"') % 2 == 1)


def _declined(scene: Scene, grade: Grade) -> bool:
    """ "Would not call it fine", "not one of us would call it good", "some would call it fine", "I don't have a good copy"."""
    before = scene.norm[scene.clause(grade.first).first : grade.first]
    named = bool({"call", "as"} & set(before[-2:-1])) or bool({"call"} & set(before[-3:]))
    if named and set(before[-6:]) & places("others_grade"):
        return True
    held = before[-1:] == ["a"] and bool(set(before[-3:-1]) & places("having"))
    return (named or held) and any(word in places("never") or word.endswith("n't") for word in before)


def _pair(scene: Scene, grade: Grade, other: Grade | None) -> Grade | int | None:
    """The jacket's half of a double grade: another grade, the word "like" that repeats the first one, 0 where there is none."""
    norm, index = scene.norm, grade.last
    if other is not None and norm[index : other.first] in (["/"], ["//"], ["/", "/"], [".", "/"], ["over"]):
        return other
    if norm[index : index + 1] == ["/"] and norm[index + 1 : index + 2] and norm[index + 1] in places("no_jacket"):
        return 0
    joined = False
    for at in range(index, min(index + 9, len(norm))):
        word = norm[at]
        if other is not None and at == other.first:
            within = norm[at - 1] in ("in", "a", "an") and "in" in norm[index:at]
            return other if joined and (within or _jacket_follows(norm, other.last)) else None
        if word in ("in", "w", "with", "and"):
            joined = True
        elif joined and word in places("likes") and (_jacket_follows(norm, at + 1) or _stands_alone(norm, at)):
            return at
        elif word in places("jackets") and (like := _likened(norm, at + 1)) is not None:
            return like
        elif word not in places("between") and word not in ("/", ","):
            return None
    return None


def _stands_alone(norm: list[str], at: int) -> bool:
    """ "Near fine in same": the word alone is the jacket."""
    return norm[at] in ("same", "like") and norm[at - 1] == "in" and norm[at + 1 : at + 2] in ([], ["."], [","], [";"], [")"])


def _likened(norm: list[str], index: int) -> int | None:
    """ "Jacket the same", "the jacket likewise": the word that gives the jacket the book's grade."""
    while norm[index : index + 1] and norm[index] in ("is", "the", "much", "in", "also", ":", ",", "condition", "about", "of"):
        index += 1
    return (
        index
        if norm[index : index + 1] and norm[index] in ("same", "likewise", "ditto", "similar", "similarly", "identical")
        else None
    )


def _jacket_follows(norm: list[str], index: int) -> bool:
    last = min(index + 7, len(norm))
    while index < last and norm[index] in places("before_jacket") and "".join(norm[index : index + 3]) not in places("jackets"):
        index += 1
    return index < len(norm) and (norm[index] in places("jackets") or "".join(norm[index : index + 3]) in places("jackets"))


def _in_grade_place(scene: Scene, grade: Grade) -> bool:
    """Whether fine, good, fair or poor stands where a grade stands and isn't an everyday word."""
    norm, clause = scene.norm, scene.clause(grade.first)
    before = norm[grade.first - 1] if grade.first else "."
    following = norm[grade.last] if grade.last < len(norm) else "."
    opens = grade.first == clause.first or before in places("openers") or lettered_item(norm, grade.first)
    opens = opens or (before == "all" and scene.once(is_lot))
    closes = following in places("closers") or grade.last >= clause.last or _one_of_copies(scene, grade)
    if before == "a" and following in ("and", "for", "to", "."):
        return False
    if following in ("for", "with") and _fit_for(scene, grade):
        return False
    return opens and closes and not _of_something_else(scene, grade)


def _one_of_copies(scene: Scene, grade: Grade) -> bool:
    """ "Not a fine copy but a good one"."""
    before = scene.norm[scene.clause(grade.first).first : grade.first]
    copies = {"copy", "copies", "example", "examples", "hardback", "hardcover", "paperback"}
    return scene.norm[grade.last] == "one" and before[-1:] == ["a"] and bool(copies & set(before))


def _fit_for(scene: Scene, grade: Grade) -> bool:
    """ "Fine for the beach", "fine with offers": what it is fit for, and no grade; a copy is good for its age."""
    behind = scene.norm[grade.last + 1 : grade.last + 5]
    if scene.norm[grade.last] == "with":
        return bool(set(behind[:2]) & tale_words("errands"))
    return not (set(behind) & tale_words("worn_for") or any(word[0].isdecimal() for word in behind))


def _of_something_else(scene: Scene, grade: Grade) -> bool:
    """ "The paper is good", "hinges are fine": a predicate of a noun that has no grade of its own."""
    clause = scene.clause(grade.first)
    before = [word for word in scene.norm[clause.first : grade.first] if word not in places("adverbs")]
    if before[-1:] == [] or before[-1] not in ("is", "are", "was", "were", "looks", "look"):
        return False
    return (
        before[-2:-1] != []
        and before[-2][0].isalpha()
        and not any(before[-2] in places(name) for name in ("subjects", "books", "jackets"))
    )


def _of_both(scene: Scene, grade: Grade) -> bool:
    """ "Very good both", "both fine", "book and jacket very good": one grade for book and jacket."""
    norm, clause = scene.norm, scene.clause(grade.first)
    before = norm[max(clause.first, grade.first - 7) : grade.first]
    if scene.once(is_lot) and not set(norm[clause.first : clause.last]) & places("jackets"):
        return False  # both books of the lot
    if norm[grade.last : grade.last + 1] == ["both"] or before[-1:] == ["both"] or before[-2:] == ["both", "are"]:
        return True
    linked = [word for word in before if word not in ("is", "are", "both", "in", "condition", "dust", ":", "all")]
    return (
        linked[-1:] != []
        and linked[-1] in places("jackets")
        and linked[-2:-1] in (["and"], ["&"], ["+"])
        and bool(set(linked[-3:-2]) & places("books"))
    )


def _part(scene: Scene, grade: Grade, following: Grade | None) -> Part:
    """The jacket if the grade names it, else the book. "Book good jacket good": the noun before it governs a grade there."""
    norm = scene.norm
    clause = scene.clause(grade.first)
    before = [] if lettered_item(norm, grade.first) else norm[max(clause.first, grade.first - 10) : grade.first]
    behind = norm[grade.last] if grade.last < len(norm) else ""
    if behind in ("book", "copy", "volume"):
        return "book"
    governed = bool(before) and before[-1] in places("books") and following is not None and following.first <= grade.last + 2
    if not governed and behind not in ("in", "with", "and", ",", "/") and _jacket_follows(norm, grade.last):
        return "jacket"
    if (told := _former_or_latter(scene, grade, before)) is not None:
        return told
    for at in range(len(before) - 1, -1, -1):
        if before[at] in places("jackets") or "".join(before[at : at + 3]) in places("jackets"):
            if set(before[max(0, at - 2) : at]) & places("without"):
                continue  # "no dj, VG"
            return "jacket"
        if before[at] in places("books"):
            return "book"
    return "jacket" if _labelled_jacket(scene, grade) else "book"


def _former_or_latter(scene: Scene, grade: Grade, before: list[str]) -> Part | None:
    """ "Book and jacket, the former near fine, the latter good": the first or the last of the two named before."""
    said = [at for at, word in enumerate(before) if word in ("former", "latter")]
    if not said:
        return None
    first = grade.first - len(before) + said[-1]
    named = [word for word in scene.norm[max(0, first - _FORMER) : first] if word in places("jackets") | places("books")]
    if len(named) < 2:
        return None
    return "jacket" if named[0 if before[said[-1]] == "former" else -1] in places("jackets") else "book"


def _labelled_jacket(scene: Scene, grade: Grade) -> bool:
    """ "Jacket: yes — near fine": the label stands before a dash."""
    number = scene.clause_of[grade.first]
    before = scene.clauses[number - 1] if number else None
    if before is None or grade.first != scene.clause(grade.first).first or before.end not in ("—", "-", "|", "•"):
        return False
    label = scene.norm[before.first : before.last]
    return ":" in label and _jacket_follows(label, 0) and before.end in ("—", "-")
