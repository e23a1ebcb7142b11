"""Talk of other copies that no fixed phrase catches: "the London edition has it in colour", "not put right until the third".

Found by form, with the word lists of lexicon/words.toml: an article, a noun of edition or a bare ordinal, and either a verb
behind it (what follows is said of that edition) or a preposition before it (said as far as the next comma).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cache
from typing import Any

from auditor.knowledge import lexicon
from auditor.reading.phrases import Phrase
from auditor.reading.rows import Row
from auditor.reading.scene import Clause, Scene, roles
from auditor.reading.starts import Start

_SUBJECT = Row(
    id="other edition as subject", kind="elsewhere", phrases=("the London edition has",), reason="said of that edition"
)
_COMPARED = Row(
    id="other edition compared", kind="elsewhere", phrases=("until the third",), reason="named for comparison", reach="segment"
)
_WIDEST = 4  # words between the article and the noun: "the true first American edition"
_SPOKEN_OF = 25  # words within which an edition must be spoken of for "the earlier" to be one
_JACKET = {"jacket", "jackets", "dj", "dw", "dustjacket", "dustwrapper", "wrapper", "dust", "binding"}


@cache
def edition_words() -> dict[str, Any]:
    """lexicon/editions.toml: lists as frozensets, tables as dicts."""
    return {name: frozenset(value) if isinstance(value, list) else value for name, value in lexicon.table("editions").items()}


def jacket_before(scene: Scene, first: int) -> bool:
    """Whether it is a jacket's printing: "the jacket, alas, is from a later printing", "a jacket of the third impression"."""
    norm, words = scene.norm, edition_words()
    at = first - 1
    clause = scene.clause(first).first
    says = at - (norm[at] in ('"', ":", "'"))
    if says > clause and norm[says] in words["jacket_says"]:
        return norm[says - 1] in words["jackets"]
    if at < clause or norm[at] not in ("a", "an", "the", "its", "some"):
        return False
    at -= 1
    if at < clause or norm[at] not in words["jacket_links"]:
        return False
    while at >= clause and norm[at] in words["between_jacket_and_link"] | words["jacket_links"]:
        at -= 1
    return at >= clause and norm[at] in words["jackets"]


_START = Start(lambda word: word in ("the", "a", "an") or word in roles()["plural_nouns"] or word in roles()["each"])
_OF_A_RUN = (["of"], ["to"], ["only"], ["/"])  # "one of 250 copies": a limitation
_OF_LOT = Start(lambda word: word in roles()["numbers"] or word.isdecimal() or word == "lot")


def other_editions(scene: Scene) -> list[Phrase]:
    """Cues for every such noun phrase, over the words from its article to its noun."""
    if scene.once(is_lot):
        return []
    plurals = roles()["plural_nouns"]
    found: list[Phrase | None] = []
    for index in scene.starting(_START):
        clause = scene.clause(index)
        if index == clause.last:
            continue
        if scene.norm[index] in plurals:
            found.append(_plural(scene, clause, index))
        else:
            found.append(_stands_alone(scene, clause, index) or _cue(scene, clause, index))
    return [cue for cue in found if cue is not None]


def _plural(scene: Scene, clause: Clause, noun: int) -> Phrase | None:
    """ "The orange ones", "early copies", "book club versions": what is said of several is said of other copies."""
    words, norm = roles(), scene.norm
    first = noun
    while first > clause.first and (norm[first - 1] in words["before_plural"] or norm[first - 1] in words["colours"]):
        first -= 1
    before = norm[first - 1] if first > clause.first else ""
    if before == "of" and norm[max(0, first - 2) : first - 1] != [] and norm[first - 2] in words["listing_nouns"]:
        return None
    if before in words["own_plural"] or norm[first] in words["own_plural"] or before.isdecimal():
        return None
    article = before in ("the", "those", "them")
    if first == noun and not (norm[noun] == "copies" and norm[noun + 1 : noun + 2] and norm[noun + 1] in ("of", "from")):
        return None
    behind = norm[noun + 1] if noun + 1 < clause.last else ""
    spoken_of = (
        behind in words["edition_verbs"]
        or behind in words["behind_plural"]
        or (behind in (",", "(") and first - article == clause.first and _verb_behind_aside(scene, clause, noun + 1))
    )
    return Phrase(_SUBJECT if spoken_of else _COMPARED, first - article, noun + 1)


def _stands_alone(scene: Scene, clause: Clause, article: int) -> Phrase | None:
    """ "The earlier in green, the other in brown": a bare word for another edition."""
    words, norm = roles(), scene.norm
    if norm[article] != "the" or article + 2 >= clause.last or norm[article + 1] not in words["stand_alone"]:
        return None
    behind = norm[article + 2]
    editions = any(word in words["edition_nouns"] for word in norm[max(0, article - _SPOKEN_OF) : article])
    if editions and (behind in ("in", "with") or behind in words["edition_verbs"]):
        return Phrase(_COMPARED, article, article + 2)
    return None


def is_lot(scene: Scene) -> bool:
    """Whether several books are offered: then "the second" is one of them and no printing."""
    return names_several(scene.norm, scene.starting(_OF_LOT))


def names_several(norm: Sequence[str], places: Iterable[int]) -> bool:
    """Whether a count of books stands at one of the ``places``, or "lot of"."""
    counted = roles()["numbers"]
    return any(
        (
            (word in counted or (word.isdecimal() and len(word) <= 3))
            and word not in ("1", "one")
            and at < 12
            and set(norm[at + 1 : at + 3]) & roles()["lot_nouns"]
            and not (norm[at - 1 : at] in _OF_A_RUN and "copies" in norm[at + 1 : at + 3])
            and not set(norm[at + 1 : at + 3]) & {"other", "more", "only"}
        )
        or (
            word in counted
            and word != "one"
            and (at == 0 or norm[max(0, at - 2) : at] in (["set", "of"], ["lot", "of"], ["bundle", "of"]))
            and bool(set(norm[at + 1 : at + 7]) & roles()["lot_nouns_far"])
        )
        or (word == "lot" and norm[at + 1 : at + 2] in (["of"], ["("], [":"]))
        or (word == "2" and norm[at - 1 : at] == ["("] and norm[at + 1 : at + 2] == [")"])
        for at, word in ((at, norm[at]) for at in places)
    )


def _cue(scene: Scene, clause: Clause, article: int) -> Phrase | None:
    noun = _noun(scene, clause, article)
    if noun is None:
        return None
    words, norm = roles(), scene.norm
    inside = norm[article + 1 : noun + 1]
    if any(word in words["own_copy_words"] or word in words["edition_verbs"] for word in inside[:-1]):
        return None
    before = norm[article - 1] if article > clause.first else ""
    after = noun + 1
    while after < clause.last and norm[after] in _JACKET:
        after += 1
    if norm[after : after + 1] and norm[after] in words["own_readings"]:
        return None
    if norm[after : after + 1] and norm[after] in words["run_verbs"] and norm[after + 1 : after + 2] == ["to"]:
        return None  # "the first impression ran to 500 copies" is told of this copy's impression
    if norm[after : after + 2] == ["that", "year"]:
        after += 2
    behind = norm[after] if after < clause.last else ""
    named = any(
        word in words["ordinals"] or word == "later" or word in words["editions_named"] or word.isdecimal() for word in inside
    ) or _named(scene, article, noun)
    if not named:
        return None
    definite = norm[article] == "the" or norm[article] in words["each"]
    if norm[article] in words["each"] or (definite and before in words["object_openers"] and behind not in ("", ",", ".")):
        return Phrase(_SUBJECT, article, noun + 1)
    if before in words["edition_prepositions"] and definite and before not in words["own_copy_openers"]:
        if jacket_before(scene, article + 1):
            return None
        if before in ("in", "on", "with") and (after > noun + 1 or not _set_apart(scene, article - 1)):
            return None
        return Phrase(_COMPARED, article - 1, noun + 1)
    if before == "of" and norm[max(0, article - 2)] in words["share_of"] and behind in words["edition_verbs"]:
        return Phrase(_SUBJECT, article - 2, noun + 1)
    if before == "of" or (before in words["own_copy_openers"] and before != "as"):
        return None
    if (
        before == "as"
        and definite
        and norm[max(0, article - 2) : article - 1] in (["forward"], ["down"], ["described"], ["it"], ["offered"])
    ):
        return None
    if before == "as" and definite:
        return Phrase(_COMPARED, article - 1, noun + 1)
    if behind in words["edition_verbs"] and (definite or norm[article + 1] in ("true", "genuine", "real")):
        return Phrase(_SUBJECT, article, noun + 1)
    if behind in (",", "(") and article == clause.first and definite and _verb_behind_aside(scene, clause, after):
        return Phrase(_SUBJECT, article, noun + 1)
    return None


def _set_apart(scene: Scene, preposition: int) -> bool:
    """ "Corrected in the second", "(in the first impression it was ...)": a verb stands before it, or nothing does."""
    before = scene.norm[preposition - 1] if preposition else "."
    return not before[0].isalpha() or before.endswith("ed") or before in roles()["before_other_printing"]


def _noun(scene: Scene, clause: Clause, article: int) -> int | None:
    """The noun of edition that this article opens, or a bare ordinal standing for one."""
    words, norm = roles(), scene.norm
    for at in range(article + 1, min(article + 2 + _WIDEST, clause.last)):
        word = norm[at]
        following = norm[at + 1] if at + 1 < clause.last else ""
        if word in words["edition_nouns"]:
            if following in words["edition_nouns"]:
                continue
            return at
        if word in words["bare_editions"] and following in words["edition_verbs"]:
            return at
        if word in words["ordinal_nouns"] and word != "later" and following not in words["edition_nouns"]:
            bare = (
                not following
                or not following[0].isalpha()
                or following in words["edition_verbs"]
                or following in ("by", "and", "but", "of")
            )
            if bare and following != "-":
                return at
        if not word[0].isalnum() and word not in ("-", ".", "&", "'"):
            return None
    return None


def _named(scene: Scene, article: int, noun: int) -> bool:
    """Whether a name stands before the noun: "the Edinburgh edition"."""
    text, starts = scene.words.text, scene.words.start
    return any(text[starts[at]].isupper() for at in range(article + 1, noun)) and not text.isupper()


def _verb_behind_aside(scene: Scene, clause: Clause, opened: int) -> bool:
    """ "The second printing, in green boards, puts right ...", "the British edition (London, 1988) is": a verb behind the aside's
    second comma or its closing bracket, or inside "which"."""
    rest = scene.norm[opened + 1 : clause.last]
    if rest[:1] == ["which"]:
        return True
    closing = ")" if scene.norm[opened] == "(" else ","
    if closing not in rest:
        return False
    behind = rest[rest.index(closing) + 1 :]
    return bool(behind) and behind[0] in roles()["edition_verbs"]
