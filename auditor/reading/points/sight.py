"""One clause as a point sees it, and what it finds there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from auditor.reading.points.features import shades, statements
from auditor.reading.points.lexis import Token, stem
from auditor.reading.points.model import Said, Told
from auditor.reading.points.table import lexis
from auditor.reading.scene import Clause, Scene, roles
from auditor.reading.stance import Layers

NEAR = 9  # words between a reading's word and the place it is looked for at
QUOTES = ('"', "'")


@dataclass(frozen=True, slots=True)
class Found:
    """A reading stated by the words at ``places``; ``negative`` where the denial is part of the reading."""

    said: Said
    places: frozenset[int]
    weight: float
    full: bool
    negative: bool = False
    own: frozenset[int] = frozenset()  # the places of words that no other reading has
    keys: frozenset[str] = frozenset()

    @property
    def spread(self) -> int:
        return max(self.places) - min(self.places)


@dataclass(frozen=True, slots=True)
class Sight:
    """One clause as a point sees it."""

    scene: Scene
    laid: Layers
    clause: Clause
    line: Sequence[Token]
    told: Told
    alone: bool
    at: dict[str, list[int]]
    only: frozenset[str] = frozenset()  # the point's words that no other point has
    soft: frozenset[int] = frozenset()  # where a word only stands for one of the point's own

    def denied(self, place: int) -> bool:
        """Denied by the words before, or by the verb behind ("the advertisements have gone")."""
        if self.laid.denial[place] is not None or self.in_denied_list(place) or self.left_out(place) or self.unsaid(place):
            return True
        norm, opens = self.scene.norm, place + 1
        while opens < self.clause.last and (norm[opens] == "of" or stem(norm[opens]) in self.told.weights):
            opens += 1  # the rest of its noun
        ahead = opens
        while ahead < self.clause.last and ahead - opens <= 3 and (norm[ahead] in lexis()["verbs"] or norm[ahead] in QUOTES):
            ahead += 1
        if ahead == opens or ahead == self.clause.last:
            return False
        return norm[ahead] in lexis()["gone"] or (
            norm[ahead] in lexis()["seen"] and any(stem(word) == "no" for word in norm[opens:ahead])
        )

    def governed(self, places: frozenset[int]) -> bool:
        """Whether a denial is of these very words and not of a fault near them ("no wear to the top edge")."""
        for place in sorted(places):
            cue = self.laid.denial[place]
            if cue is None:
                if self.denied(place):
                    return True
                continue
            if cue.first > place:
                return True
            between = self.scene.between(cue.last, place)
            if not any(
                phrase.row.kind == "term" and phrase.row.feature in ("defect", "repair", "owner_mark") for phrase in between
            ):
                return place - cue.last <= 4 or self.anchors(places, place)
            return False
        return False

    def left_out(self, place: int) -> bool:
        """ "Omits the epigraph", "bare of thanks", "she thanks nobody", "left poor Maud out"."""
        norm, table = self.scene.norm, lexis()
        if norm[place] in table["lacking"]:
            return False
        behind = norm[place + 1] if place + 1 < self.clause.last else ""
        first = max(self.clause.first, place - NEAR + 3)
        before = norm[first:place]
        if behind in table["none_behind"] or (behind in table["left_out"] and not table["left"].isdisjoint(before)):
            return True
        for word in reversed(before):
            if word in table["lacking"]:
                return True
            if not word[0].isalnum() and word not in ("-", '"', "'"):
                return False
        return False

    def unsaid(self, place: int) -> bool:
        """ "No dedication", which a row of the lexicon may read in another sense; "the drummer isn't at his post"."""
        norm, table = self.scene.norm, lexis()
        if place > self.clause.first and norm[place - 1] in table["negated"] - {"any"}:
            return True
        opens = place + 1
        while (
            opens < self.clause.last
            and opens - place <= 5
            and (norm[opens] in table["of_the_noun"] or stem(norm[opens]) in self.told.weights)
        ):
            opens += 1
        if norm[opens : opens + 1] and norm[opens] in table["not_there"]:
            behind = norm[opens + 1 : self.clause.last]
            while behind and behind[0] in table["adverbs"]:
                behind = behind[1:]
            faulty = any(phrase.row.kind == "term" for phrase in self.scene.between(opens + 1, opens + 6))
            return not faulty and (not behind or not behind[0][0].isalnum() or behind[0] in table["seen"] | table["whereabouts"])
        return False

    def in_denied_list(self, place: int) -> bool:
        """ "No medal, quote or price": the list runs over commas up to its "or", though its items are no claims elsewhere."""
        norm, first = self.scene.norm, max(self.clause.first, place - NEAR)
        opening = next((at for at in range(place - 1, first - 1, -1) if norm[at] in ("no", "without", "neither", "lacks")), None)
        if opening is None or not {"or", "nor"} & set(norm[opening : min(place + 4, self.clause.last)]):
            return False
        between = norm[opening + 1 : place]
        enders = roles()["list_enders"] | {"but", "and", "except", "though", "only", ".", "(", ")"}
        return "," in between and enders.isdisjoint(between) and between[-1] not in ("a", "the", "an")

    def present(self, places: frozenset[int]) -> bool:
        """ "Epigraph present", "medal and all", "with the foil": the words round it say that the thing is there."""
        norm, table, first = self.scene.norm, lexis(), min(places)
        if not table["having"].isdisjoint(norm[max(self.clause.first, first - 3) : first]):
            return True
        last = next((at for at, _ in self.line if at > max(places)), self.clause.last)
        ahead = [word for word in norm[last : min(last + 3, self.clause.last)] if word not in table["copulas"]]
        return ahead[:1] != [] and (ahead[0] in table["presence"] or " ".join(ahead[:2]) in table["presence"])

    def layered(self, places: frozenset[int]) -> bool:
        """Whether a cue's own reach denies one of these words, so that its claim will be denied."""
        return any(self.laid.denial[place] is not None for place in places)

    def at_its_place(self) -> bool:
        """Whether the point's own place is named."""
        return any(one in self.told.place for _, one in self.line)

    def shown(self, places: frozenset[int]) -> bool:
        """Words that only this point has, put forward as what tells copies apart: "mine has the pipe", "the one with kites"."""
        here = {one.split("@")[0] for at, one in self.line if at in places and at not in self.soft}
        if here.isdisjoint(self.only):
            return False
        norm, first, last = self.scene.norm, min(places), max(places)
        around = norm[max(self.clause.first, first - 6) : min(last + 5, self.clause.last)]
        return not lexis()["telling_apart"].isdisjoint(around)

    def of_a_story(self, places: frozenset[int]) -> bool:
        """Whether the clause tells of the plot or of other goods, and the point's place isn't named in it."""
        norm, table = self.scene.norm, lexis()
        said = {word for word in norm[self.clause.first : self.clause.last] if stem(word) not in self.told.weights}
        if self.told.of_kind("statement") and "#state" in self.at:
            return False
        if table["story"].isdisjoint(said) and table["goods"].isdisjoint(said):
            return False
        named = {one for at, one in self.line if at not in places}
        return named.isdisjoint(self.told.place - lexis()["everyday"] | self.told.pages)

    def of_another_page(self, places: frozenset[int]) -> bool:
        """Whether the clause names a page, and not the one of this point."""
        if not self.told.pages:
            return False
        segment = self.scene.segment_of
        pages = {one for at, one in self.line if one.startswith("page") and one != "page" and segment[at] == segment[min(places)]}
        return bool(pages) and pages.isdisjoint(self.told.pages)

    def anchors(self, apart_from: frozenset[int], near: int) -> bool:
        """Whether the point's place or feature is named near a word, by another word."""
        return any(
            place not in apart_from and abs(place - near) <= NEAR
            for anchor in self.told.anchors
            for place in self.at.get(anchor, ())
        )


def asked(scene: Scene, place: int) -> bool:
    """ "Whether the boards are green I couldn't say": what "whether" opens is never told."""
    norm, opens = scene.norm, scene.clause(place).first
    for at in range(place - 1, max(opens, place - NEAR) - 1, -1):
        if norm[at] == "whether":
            return True
        if norm[at] in (",", ";", "(", ")", "but"):
            return False
    return False


def heard(line: Sequence[Token], laid: Layers) -> dict[str, list[int]]:
    """Where each stem and statement of a clause stands."""
    at: dict[str, list[int]] = {}
    for place, one in line:
        at.setdefault(one, []).append(place)
    for place, one in statements(line):
        if one != "#nolater" or not any(laid.unchecked[place : place + 4]):
            at.setdefault(one, []).append(place)
    return at


def bare_colours(scene: Scene, clause: Clause, at: dict[str, list[int]], only: frozenset[str]) -> dict[str, list[int]]:
    """The same with colours without a noun as the point's, where no other point has them: "ours is blue", "the grey one"."""
    table, norm = lexis(), scene.norm
    merged = at
    for colour in only & {one.removesuffix("@None") for one in at if one.endswith("@None")}:
        for place in at[f"{colour}@None"]:
            before = [word for word in norm[max(clause.first, place - 3) : place] if word not in table["shade_words"]]
            behind = norm[place + 1] if place + 1 < clause.last else ""
            opened = before[-1:] and (
                before[-1] in table["copula_before"] or (norm[place - 1] in ("in", "the") and before[-1] in table["issued_in"])
            )
            ends = not behind or not behind[0].isalnum() or behind in table["behind_colour"]
            if (opened and ends) or (behind in table["ones"] and before[-1:] and before[-1] in table["articles"]):
                merged = {**merged, f"{colour}@home": [*merged.get(f"{colour}@home", ()), place]}
    return merged


def coloured(at: dict[str, list[int]], line: Sequence[Token], homes: frozenset[str]) -> dict[str, list[int]]:
    """The same with the colours as points of these ``homes`` see them."""
    merged = at.copy()
    for place, one in shades(line, homes):
        merged[one] = [*merged.get(one, ()), place]
    return merged
