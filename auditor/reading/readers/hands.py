"""Whose hand it is: an author's signature or inscription, an owner's name, a giver's inscription, a label, a machine."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

from auditor.reading.scene import Draft, Scene, roles

_FAR = 14  # words from a signature to what it is on
_NEAR = 8  # words before a signature that tell what it is on
_BY = {"by", "from"}


def read_signature(scene: Scene, draft: Draft) -> Iterator[Draft]:
    """The draft of a plain ``signed`` row, with the kind of signature that the words around it make it; an owner's is a name."""
    rest, words = _rest(scene, draft), roles()
    if _on_offer(scene, draft):
        yield replace(draft, stance="elsewhere")
        return
    printed = next((i for i in rest if scene.norm[i] in words["machine_hands"]), None)
    penned = scene.norm[draft.last - 1] in ("signature", "autograph") and printed is None
    if _by(scene, draft.last) == "owner" or (penned and _owners(scene, draft)):
        yield replace(draft, feature="owner_mark", value="name", part=None)
        return
    if draft.first and scene.norm[draft.first - 1] in words["machine_hands"]:
        yield replace(draft, value="printed")
    elif printed is not None and "signature" in scene.norm[draft.first : draft.last] and not _negated(scene, printed):
        yield replace(draft, value="printed", first=printed, last=printed + 1)
    elif any(_on_label(scene, i, rest) for i in rest) or _label_before(scene, draft):
        yield replace(draft, value="bookplate")
    elif _tipped_in(scene, draft, rest):
        yield replace(draft, value="tipped_in")
    else:
        yield draft


def _on_offer(scene: Scene, draft: Draft) -> bool:
    """ "Signed copy available, please ask": another copy of the shop's."""
    behind = scene.norm[draft.last - 1 : draft.last + 5]
    rest = [
        word
        for word in behind[1:]
        if word not in ("copy", "copies", "one", "ones", "also", "is", "are", "too", "first", "edition")
    ]
    copies = {"copy", "copies", "one", "ones", "edition"} & set(behind)
    return bool(copies) and (
        rest[:1] == ["available"] or rest[:2] in (["in", "stock"], ["on", "request"], ["for", "sale"], ["can", "be"])
    )


def owner_or_author(scene: Scene, draft: Draft) -> Draft:
    """ "Inscribed": by a name or the author it is the author's, by a friend or on an endpaper a giver's."""
    by = _by(scene, draft.last)
    following = scene.norm[draft.last : draft.last + 1]
    clause = scene.clause(draft.first)
    behind = set(scene.norm[draft.last : min(clause.last, draft.last + 5)])
    denied = any(cue.row.kind == "denial" and cue.last == draft.first for cue in scene.cues_between(clause.first, draft.first))
    if denied:
        by = "owner" if _among_owner_marks(scene, draft) else "author"
    elif by is None:
        plain = not following or following[0] in (".", ",", ";", "\n", "copy", "first", "not", "and")
        signed = any(other.row.feature == "signed" for other in scene.between(draft.last, min(clause.last, draft.last + _NEAR)))
        by = "author" if plain or signed or behind & {"title", "half"} else "owner"
    return replace(draft, feature="signed", value="inscribed", part="book") if by == "author" else draft


def _among_owner_marks(scene: Scene, draft: Draft) -> bool:
    """ "Not inscribed, not stamped", "not inscribed as a prize": what is denied is a giver's hand, where no signature is told."""
    clause = scene.clause(draft.first)
    behind = scene.between(draft.last, clause.last)
    marked = any(other.row.feature == "owner_mark" or other.row.value == "marking" for other in behind)
    as_gift = bool({"prize", "gift", "present"} & set(scene.norm[draft.last : draft.last + 4]))
    return as_gift or (marked and not any(other.row.feature == "signed" for other in scene.between(clause.first, clause.last)))


def _by(scene: Scene, index: int) -> str | None:
    """Who the words behind a signature name: "owner", "author", or None where they name nobody.

    A single name is the author's only where the listing names it elsewhere too ("Inscribed by Pell"); a name in full is.
    """
    norm = scene.norm
    if norm[index : index + 1] in (["to"], ["for"]):
        index = _giver(scene, index)  # "inscribed to Jean by the author"
    if norm[index : index + 1] and norm[index] == "of" and norm[index + 1 : index + 2] == ['"']:
        return "owner"
    if norm[index : index + 1] == ['"'] and norm[index - 1] in ("signature", "autograph"):
        name = next((at for at in range(index + 1, min(len(norm), index + _NEAR)) if norm[at + 1 : at + 2] == ['"']), None)
        return "owner" if name is not None and scene.once(_times)[norm[name]] == 1 else None
    if index + 1 >= len(norm) or norm[index] not in _BY:
        return None
    words = roles()
    said = [word for word in norm[index + 1 : index + 5] if word not in ("the", "a", "an", "its", "his", "her", "my", "our", '"')]
    if (
        not said
        or said[0] in words["owners"]
        or (len(said) > 1 and said[0] in words["owner_adjectives"] and said[1] in words["owners"])
    ):
        return "owner"
    if said[0] in words["authors"]:
        return "author"
    full = len(said) > 1 and _name(scene, index + 1) and _name(scene, index + 2)
    return (
        "author"
        if full or scene.once(_times)[said[0]] > 1 or (norm[index] == "by" and not _dated_gift(scene, index))
        else "owner"
    )


def _giver(scene: Scene, index: int) -> int:
    """The "by" behind the name of whom a copy was inscribed to, else the word itself."""
    last = min(scene.segment(index)[1], index + _NEAR)
    return next((at for at in range(index + 2, last) if scene.norm[at] in _BY), index)


def _times(scene: Scene) -> Counter[str]:
    """How often each word stands in the text."""
    return Counter(scene.norm)


def _name(scene: Scene, index: int) -> bool:
    start = scene.words.start[index] if index < len(scene.norm) else -1
    return start >= 0 and scene.words.text[start].isupper()


def _dated_gift(scene: Scene, index: int) -> bool:
    clause = scene.clause(index)
    return bool({"christmas", "xmas", "birthday", "love"} & set(scene.norm[index : clause.last]))


def _owners(scene: Scene, draft: Draft) -> bool:
    """A signature with an owner's mark on it: "of" a quoted name, or penned on an endpaper."""
    norm = scene.norm
    if norm[draft.last : draft.last + 1] == ["of"]:
        return _by(scene, draft.last) == "owner"
    behind = norm[draft.last : min(draft.last + 5, scene.segment(draft.first)[1])]
    return "author's" not in norm[max(0, draft.first - 2) : draft.last] and bool(roles()["end_places"] & set(behind))


def _rest(scene: Scene, draft: Draft) -> range:
    return range(draft.last, min(scene.clause(draft.first).last, draft.last + _FAR))


def _negated(scene: Scene, index: int) -> bool:
    return bool({"not", "no", "than", "isn't", "never"} & set(scene.norm[max(0, index - 5) : index]))


def _on_label(scene: Scene, index: int, rest: range) -> bool:
    """ "Signed by the author on a bookplate": a label tied to the signature by "on", "to" or "with"."""
    if scene.norm[index] not in ("bookplate", "book-plate", "label", "plate", "bookplates"):
        return False
    before = scene.norm[max(rest.start, index - 5) : index]
    return bool({"on", "to", "via"} & set(before)) and not {"with", "and", ","} & set(before)


def _tipped_in(scene: Scene, draft: Draft, rest: range) -> bool:
    if any(scene.norm[i] == "tipped" and scene.norm[i + 1 : i + 2] in (["in"], ["-"]) and not _negated(scene, i) for i in rest):
        return True
    before = range(max(scene.clause(draft.first).first, draft.first - _NEAR), draft.first)
    return _on_slip(scene, before) or _on_slip(scene, rest)


def _on_slip(scene: Scene, near: range) -> bool:
    """ "Signed on a slip since glued to the title", "a slip tipped inside bears the author's autograph"."""
    slip = next((i for i in near if scene.norm[i] in roles()["slips"] and _opened(scene, i)), None)
    return slip is not None and any(scene.norm[i] in roles()["fastened"] for i in range(slip + 1, min(slip + 7, near.stop)))


def _opened(scene: Scene, index: int) -> bool:
    """ "A slip", "an extra leaf", "Card with the author's autograph": what begins a thing put in."""
    return index == scene.clause(index).first or scene.norm[index - 1] in roles()["slip_openers"]


def _label_before(scene: Scene, draft: Draft) -> bool:
    """ "Bookplate, signed by the author", "bookplate laid in and signed"."""
    before = [
        w
        for w in scene.norm[max(scene.clause(draft.first).first, draft.first - 6) : draft.first]
        if w not in roles()["label_links"]
    ]
    return before[-1:] in (["bookplate"], ["bookplates"], ["plate"], ["label"])
