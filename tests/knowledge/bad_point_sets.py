"""Bad point-set files, each with the line and the words that its mistake must hold. Titles and houses are invented."""

from __future__ import annotations

WORK = '[work]\ntitle = "The Salt Road"\nauthor = "Nora Wynd"\n'
EDITION = '[[editions]]\nid = "trade"\nname = "First edition"\nkind = "trade"\nprintings = 4\n'
POINT = (
    '[[points]]\nid = "price"\npart = "jacket"\nplace = "front flap"\nfeature = "price"\nsource = "invented"\n'
    '[[points.readings]]\nvalue = "$9.95"\ncopies = ["trade:1"]\n'
)
VALUE = (
    '[[values]]\nedition = "trade"\nprinting = "1"\nlow = 20\nhigh = 30\ncurrency = "USD"\n'
    'as_of = "1998-04"\nsource = "invented"\n'
)
GOOD = WORK + EDITION + POINT + VALUE  # lines: work 1-3, edition 4-8, point 9-14, reading 15-17, value 18-25


def _with(old: str, new: str) -> str:
    assert old in GOOD, old
    return GOOD.replace(old, new, 1)


# name: (text, line, words of the message)
REFUSED: dict[str, tuple[str, int | None, str]] = {
    "not TOML": (GOOD + "note = \n", 26, "not TOML"),
    "an open string": (_with('"The Salt Road"', '"The Salt Road'), 2, "not TOML"),
    "a key twice": (_with('author = "Nora Wynd"', 'title = "Again"'), 3, "not TOML"),
    "cut off": (GOOD + "[[points", 26, "not TOML"),
    "no work": (EDITION, None, "expected [work] with title and author, found nothing"),
    "work without author": (_with('author = "Nora Wynd"\n', ""), 1, "[work]: the key 'author' is missing"),
    "work as a list": (_with("[work]", "[[work]]"), 1, "expected [work]"),
    "title as a number": (_with('"The Salt Road"', "1984"), 2, "title is 1984: it should be a valid string"),
    "slip in a key of work": (_with("author", "auther"), 3, "unknown key 'auther': expected one of title, author, also_titled"),
    "no editions": (WORK, None, "no [[editions]]: expected at least one"),
    "editions in one pair of brackets": (_with("[[editions]]", "[editions]"), 4, "expected [[editions]] for each row"),
    "edition without id": (_with('id = "trade"\n', ""), 4, "edition number 1: the key 'id' is missing"),
    "edition of no kind": (_with('kind = "trade"', 'kind = "hardback"'), 7, "kind is 'hardback': expected 'trade', 'book club'"),
    "year in words": (_with("printings = 4", 'year = "nineteen"'), 8, "year is 'nineteen': it should be a valid integer"),
    "no printings at all": (
        _with("printings = 4", "printings = 0"),
        8,
        "printings is 0: it should be greater than or equal to 1",
    ),
    "edition id twice": (_with(POINT, EDITION + POINT), 10, "edition 'trade' stands twice"),
    "run of no printing": (_with("printings = 4", 'print_runs = { "first" = 500 }'), 8, "print run of 'first'"),
    "run in words": (_with("printings = 4", 'print_runs = { "1" = "many" }'), 8, "should be a valid integer"),
}

# a row is left out, the file stands
LEFT_OUT: dict[str, tuple[str, int | None, str]] = {
    "unknown table": (GOOD + "[[point]]\nid = 1\n", 26, "unknown table 'point'"),
    "point without source": (
        _with('feature = "price"\nsource = "invented"', 'feature = "price"'),
        9,
        "the key 'source' is missing",
    ),
    "empty source": (
        _with('feature = "price"\nsource = "invented"', 'feature = "price"\nsource = " "'),
        14,
        "the source is empty",
    ),
    "part of no book": (_with('part = "jacket"', 'part = "cover"'), 11, "part is 'cover': expected 'book' or 'jacket'"),
    "feature unknown": (
        _with('feature = "price"', 'feature = "colour"'),
        13,
        "feature is 'colour': expected 'misprint', 'price'",
    ),
    "slip in a key of a point": (_with("place =", "plase ="), 12, "unknown key 'plase': expected one of id, part, place"),
    "slip in a key of a reading": (
        _with("copies =", "copys ="),
        17,
        "unknown key 'copys': expected one of value, copies, said_as",
    ),
    "point without readings": (
        _with('[[points.readings]]\nvalue = "$9.95"\ncopies = ["trade:1"]\n', ""),
        9,
        "the key 'readings' is missing",
    ),
    "empty readings": (
        _with('[[points.readings]]\nvalue = "$9.95"\ncopies = ["trade:1"]\n', "readings = []\n"),
        15,
        "no [[points.readings]]",
    ),
    "reading without value": (_with('value = "$9.95"\n', ""), 15, "the key 'value' is missing"),
    "copies no printing": (_with('"trade:1"', '"trade"'), 17, "'trade' is no printing: expected edition:1, edition:1-4"),
    "copies backwards": (_with('"trade:1"', '"trade:3-2"'), 17, "'trade:3-2' is an empty range"),
    "copies from nought": (_with('"trade:1"', '"trade:0"'), 17, "'trade:0' is an empty range: printings count from 1"),
    "copies of no edition": (_with('"trade:1"', '"club:1"'), 17, "edition 'club' is not declared: expected one of trade"),
    "copies beyond the last printing": (_with('"trade:1"', '"trade:5"'), 17, "trade:5 goes beyond the 4 printings of 'trade'"),
    "range beyond the last printing": (_with('"trade:1"', '"trade:2-6"'), 17, "trade:2-6 goes beyond the 4 printings"),
    "point id twice": (_with(VALUE, POINT + VALUE), 19, "point 'price': this id stands twice"),
    "hints as one string": (_with('copies = ["trade:1"]', 'copies = ["trade:1"]\nsaid_as = "9.95"'), 18, "said_as is '9.95'"),
    "wrong check digit": (_with("printings = 4", 'isbn = "0-306-40615-3"'), 8, "isbn '0-306-40615-3' fails its check digit"),
    "value of no edition": (_with('edition = "trade"', 'edition = "club"'), 19, "edition 'club' is not declared"),
    "value of no printing": (_with('printing = "1"', 'printing = "first"'), 20, "printing is 'first': expected 1, 1-4, 2- or 1a"),
    "low above high": (_with("low = 20", "low = 40"), 21, "low 40 is above high 30"),
    "neither low nor high": (_with("low = 20\nhigh = 30\n", ""), 19, "neither low nor high"),
    "no currency of the world": (_with('"USD"', '"dollars"'), 23, "currency 'dollars' is no ISO 4217 code"),
    "currency in small letters": (_with('"USD"', '"usd"'), 23, "currency 'usd' is no ISO 4217 code"),
    "date in words": (_with('"1998-04"', '"spring 1998"'), 24, "as_of is 'spring 1998': expected a year, a month or a day"),
    "value without source": (
        _with('as_of = "1998-04"\nsource = "invented"', 'as_of = "1998-04"'),
        18,
        "the key 'source' is missing",
    ),
    "price in words": (_with("low = 20", 'low = "twenty"'), 21, "low is 'twenty': it should be a valid number"),
}

# lawful, but worth a look
REMARKED: dict[str, tuple[str, int | None, str]] = {
    "readings that overlap": (
        _with(VALUE, '[[points.readings]]\nvalue = "$10.95"\ncopies = ["trade:1-2"]\n' + VALUE),
        9,
        "readings 1 and 2 share printings",
    ),
    "run beyond the last printing": (
        _with("printings = 4", 'printings = 4\nprint_runs = { "5" = 100 }'),
        9,
        "a run of printing 5",
    ),
    "odd year": (_with("printings = 4", "printings = 4\nyear = 192"), 9, "year 192"),
}
