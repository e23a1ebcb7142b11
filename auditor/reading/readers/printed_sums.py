"""Sums that are printed on a jacket, told apart from those asked, paid, posted, scored or spent in a plot."""

from __future__ import annotations

from auditor.reading.readers.amounts import Amount, table
from auditor.reading.scene import Scene

_NEAR = 5


def of_jacket(scene: Scene, amount: Amount) -> bool:
    """Whether an amount is printed on the jacket.

    Most sums in a listing are, asking prices having a field of their own: a sum with a currency counts unless words of asking or
    postage stand near it, a bare or doubtful one ("12.95", "7/6") only beside words of jacket, flap or price, or where it stands
    alone between stops. Nobody asks shillings today.
    """
    lists, norm = table("words"), scene.norm
    clause = scene.clause(amount.first)
    low, high = scene.segment(amount.first)
    before, after = (
        norm[max(clause.first, amount.first - _NEAR) : amount.first],
        norm[amount.last : min(clause.last, amount.last + _NEAR)],
    )
    near = set(before) | set(after)
    if norm[amount.last - 1] in lists["hundredths"] and not set(norm) & (lists["jacket"] | {"flap", "flaps"}):
        return False  # "25 cents": a paperback's
    segment = set(norm[low : amount.first]) | set(norm[amount.last : high])
    old = _before_decimals(scene, amount)
    on_flap = bool(near & {"flap", "flaps", "net"}) or bool((set(before[-3:]) | set(after[:3])) & lists["jacket"])
    if near & lists["weighed"] and set(norm[amount.first : amount.last]) & lists["spoken"]:
        return False
    if _repriced(scene, amount, before) and not on_flap:
        return False
    if _posted(scene, amount) or set(before) & lists["added"] or _trade_sum(scene, amount):
        return False
    if _corrected(scene, amount) or (not on_flap and (_in_plot(scene, amount) or (not old and _asked(scene, amount)))):
        return False
    if set(after[:1]) & lists["compared"] and "printed" not in before[-2:]:
        return False
    if not on_flap and not old and near & lists["asked"]:
        return False
    if (not old and set(before[-3:]) & {"asking", "paid", "worth", "bid"}) or (
        not on_flap and "cover" in after[:1] and "dust" not in near
    ):
        return False
    if set(before[-3:]) & {"cost", "costs"} and after[:1] and before[-1:] in (["me"], ["us"], ["you"]):
        return False
    if amount.sure:
        return on_flap or bool(segment & (lists["printed"] | lists["jacket"])) or old or not _alone_at_end(scene, amount)
    if _is_score(scene, amount):
        return False
    if _alone_between_stops(scene, amount):
        return old or not _alone_at_end(scene, amount)
    named = lists["printed"] | lists["jacket"]
    beside = set(before[-3:]) | set(after[:3]) | _joined(before[-4:]) | _joined(after[:4])
    return bool(beside & named) or ((" " not in amount.value or old) and bool(segment & named))


def _own_words(scene: Scene, amount: Amount) -> set[str]:
    """The words of a sum's own segment, and those that strokes and "&" join: "p&p"."""
    low, high = scene.segment(amount.first)
    words = [*scene.norm[low : amount.first], *scene.norm[amount.last : high]]
    return {*words, *_joined(words)}


def _named(own: set[str]) -> bool:
    """Whether a jacket, a flap or a printed price is spoken of."""
    return bool(own & (table("words")["jacket"] | table("words")["printed"] | {"flap", "flaps"}))


def _posted(scene: Scene, amount: Amount) -> bool:
    """Postage: named right before or behind the sum, or somewhere in its clause if nothing calls it the jacket's."""
    sent, clause = table("words")["sent"], scene.clause(amount.first)
    before = scene.norm[max(clause.first, amount.first - _NEAR) : amount.first]
    behind = scene.norm[amount.last : min(clause.last, amount.last + _NEAR)]
    behind = behind[: behind.index(",")] if "," in behind else behind
    if {*before, *behind, *_joined(before), *_joined(behind)} & sent:
        return True
    inside = scene.norm[clause.first : clause.last]
    return not _named(_own_words(scene, amount)) and bool({*inside, *_joined(inside)} & sent)


def _asked(scene: Scene, amount: Amount) -> bool:
    """Asked, offered or paid: "asking $40, paid $55, willing to hear $30", "£60 to £80 now", "thirty pounds say I"."""
    lists, norm, clause = table("words"), scene.norm, scene.clause(amount.first)
    if _named(_own_words(scene, amount)):
        return False
    before, behind = norm[max(clause.first, amount.first - 3) : amount.first], norm[amount.last : amount.last + 3]
    ranged = behind[:1] in (["to"], ["-"]) and behind[1:2] != [] and (behind[1] in ("£", "$", "€") or behind[1].isdecimal())
    return (
        ranged
        or bool(set(norm[clause.first : clause.last]) & lists["asked_anywhere"])
        or bool(set(before) & lists["offered"])
        or bool(set(behind[:2]) & lists["offered_behind"])
    )


def _repriced(scene: Scene, amount: Amount, before: list[str]) -> bool:
    """ "Now priced $24.95", "priced to sell at $8", "now $9, was $14": what is asked, then or today."""
    words, clause = table("words")["repriced"], scene.clause(amount.first)
    if "priced" in before[-4:] and words & set(before[-4:]):
        return True
    if before[-2:] in (["mine", "is"], ["ours", "is"]) and "price" not in before:
        return True
    return (
        before[-1:] == ["was"]
        and "price" not in before
        and bool({"now", "reduced"} & set(scene.norm[clause.first : clause.last]))
    )


def _corrected(scene: Scene, amount: Amount) -> bool:
    """ "The price of $19.95 in the old listing was a mistake"."""
    return bool(set(scene.norm[amount.last : min(scene.clause(amount.first).last, amount.last + 5)]) & table("words")["adverts"])


def _in_plot(scene: Scene, amount: Amount) -> bool:
    """ "Is left eighteen shillings in her uncle's will", "with ten bob in his pocket": money of a story."""
    own = _own_words(scene, amount)
    slang = set(scene.norm[amount.first : amount.last]) & table("words")["slang"]  # "got it for a fiver"
    return bool(slang or own & table("words")["spent"]) and not _named(own)


def _before_decimals(scene: Scene, amount: Amount) -> bool:
    """Whether a sum is told in shillings, pence or guineas."""
    inside = scene.norm[amount.first : amount.last]
    return (
        bool(set(inside) & {"s", "d", "sh", "shillings", "shilling", "bob", "guinea", "guineas", "crown"})
        or ("/" in inside and not amount.sure)
        or inside[-2:] == ["/", "-"]
    )


def _alone_between_stops(scene: Scene, amount: Amount) -> bool:
    """ "No press, no medal. 23.95. What the line says": a clause that is nothing but a bare price in figures."""
    clause = scene.clause(amount.first)
    told = "." in scene.norm[amount.first] or "/" in scene.norm[amount.first : amount.last]
    return told and amount.first == clause.first and amount.last + 1 >= clause.last and clause.first > 0


def _joined(pieces: list[str]) -> set[str]:
    """Words written with a stroke: "d/w"."""
    return {"".join(pieces[at : at + 3]) for at in range(len(pieces) - 2)}


def _trade_sum(scene: Scene, amount: Amount) -> bool:
    """ "35c" of a paperback, "my price £5", "the price is £20": sums without a flap."""
    before = scene.norm[max(0, amount.first - 4) : amount.first]
    return bool({"my", "our"} & set(before) and {"price", "prices"} & set(before))


def _is_score(scene: Scene, amount: Amount) -> bool:
    """ "Condition 9/10": no shillings and pence."""
    return scene.norm[amount.first + 1 : amount.last] == ["/", "10"] and "net" not in scene.norm[amount.last : amount.last + 2]


def _alone_at_end(scene: Scene, amount: Amount) -> bool:
    """A segment that is nothing but a sum, at the listing's end: what is asked."""
    low, high = scene.segment(amount.first)
    alone = all(not word[0].isalpha() for word in scene.norm[low : amount.first] + scene.norm[amount.last : high])
    clause = scene.norm[scene.clause(amount.first).first : amount.first]
    return alone and high >= len(scene.norm) - 1 and not set(clause) & (table("words")["jacket"] | table("words")["printed"])
