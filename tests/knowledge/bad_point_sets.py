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
    "no value": (GOOD + "note = \n", 26, "nothing stands behind the =: write a value"),
    "an open string": (_with('"The Salt Road"', '"The Salt Road'), 2, "a quotation mark is missing"),
    "a key twice": (_with('author = "Nora Wynd"', 'title = "Again"'), 3, "stands twice: keep one of them"),
    "cut off": (GOOD + "[[points", 26, "a bracket is opened and not closed"),
    "curly quotation marks": (_with('"The Salt Road"', "“The Salt Road”"), 2, "curly quotation marks: write straight ones"),
    "text without quotation marks": (_with('"Nora Wynd"', "Nora Wynd"), 3, "text stands between quotation marks"),
    "a colon": (_with("author =", "author:"), 3, "write = between key and value, not a colon"),
    "a key of two words": (_with("author =", "the author ="), 3, "a key is one word: join its parts with _"),
    "a comma in a number": (_with("high = 30", "high = 1,300"), 22, "a number has no comma"),
    "a sign of currency": (_with("high = 30", "high = $30"), 22, "a number has no sign of a currency"),
    "yes for true": (_with("high = 30", "high = 30\nsigned = yes"), 23, "write true or false"),
    "a number that begins with 0": (_with("printings = 4", "printings = 04"), 8, "a number begins with no 0"),
    "a remark by two strokes": (_with("[work]", "// The Salt Road\n[work]"), 1, "a remark begins with #"),
    "quotation marks in text": (_with('"The Salt Road"', '"The "Salt" Road"'), 2, "something stands behind the value: write"),
    "a backslash": (_with('"The Salt Road"', '"The Salt\\Road"'), 2, "a backslash in text is written twice"),
    "a list that never ends": (_with('["trade:1"]', '["trade:1"'), 17, "a bracket is opened and not closed"),
    "a line of talk": (_with("[work]", "Points of the novel\n[work]"), 1, "expected key = value, a table"),
    "a blank from a web page": (_with("author =", "\u00a0author ="), 3, "a blank that is no plain one"),
    "nothing at all": ("", None, "expected [work] with title and author, found nothing"),
    "isbn as a number": (_with("printings = 4", "isbn = 9780306406157"), 8, "expected text in quotation marks, such as isbn ="),
    "other titles as one": (
        _with('author = "Nora Wynd"', 'author = "Nora Wynd"\nalso_titled = "Salt"'),
        4,
        "expected a list in brackets",
    ),
    "edition id of two words": (_with('id = "trade"', 'id = "first trade"'), 5, "expected letters, figures and hyphens alone"),
    "edition without words": (_with('name = "First edition"', 'name = ""'), 6, "the name is empty: expected words for people"),
    "kind nearly right": (_with('kind = "trade"', 'kind = "bookclub"'), 7, "perhaps book club is meant"),
    "a run of nothing": (_with("printings = 4", 'print_runs = { "1" = 0 }'), 8, "a run of 0 copies: expected 1 or more"),
    "no work": (EDITION, None, "expected [work] with title and author, found nothing"),
    "work without author": (_with('author = "Nora Wynd"\n', ""), 1, "[work]: the key 'author' is missing"),
    "work as a list": (_with("[work]", "[[work]]"), 1, "expected [work]"),
    "title as a number": (_with('"The Salt Road"', "1984"), 2, "title is 1984: expected text in quotation marks"),
    "slip in a key of work": (
        _with("author", "auther"),
        3,
        "expected one of title, author, also_titled; perhaps author is meant",
    ),
    "no editions": (WORK, None, "no [[editions]]: expected at least one"),
    "editions in one pair of brackets": (_with("[[editions]]", "[editions]"), 4, "expected [[editions]] for each row"),
    "edition without id": (_with('id = "trade"\n', ""), 4, "edition number 1: the key 'id' is missing"),
    "edition of no kind": (_with('kind = "trade"', 'kind = "hardback"'), 7, "kind is 'hardback': expected 'trade', 'book club'"),
    "year in words": (
        _with("printings = 4", 'year = "nineteen"'),
        8,
        "year is 'nineteen': expected a whole number without quotation marks, such as year = 1974",
    ),
    "no printings at all": (
        _with("printings = 4", "printings = 0"),
        8,
        "printings is 0: expected 1 or more; leave the key out where it isn't known",
    ),
    "edition id twice": (_with(POINT, EDITION + POINT), 10, "edition 'trade' stands twice"),
    "run of no printing": (_with("printings = 4", 'print_runs = { "first" = 500 }'), 8, "print run of 'first'"),
    "run in words": (
        _with("printings = 4", 'print_runs = { "1" = "many" }'),
        8,
        "expected a whole number without quotation marks",
    ),
}

# a row is left out, the file stands
LEFT_OUT: dict[str, tuple[str, int | None, str]] = {
    "unknown table": (GOOD + "[[point]]\nid = 1\n", 26, "unknown table 'point': expected [work], [[editions]]"),
    "readings at the top": (
        GOOD + '[[readings]]\nvalue = "x"\n',
        26,
        "readings stand below their point as [[points.readings]]",
    ),
    "one reading too short a name": (_with("[[points.readings]]", "[[points.reading]]"), 15, "perhaps readings is meant"),
    "a date for a price": (_with("low = 20", "low = 1998-04-01"), 21, "low is the date or time 1998-04-01: expected a number"),
    "a date without quotation marks": (_with('"1998-04"', "1998-04-01"), 24, "expected text in quotation marks, such as as_of ="),
    "a month that isn't": (_with('"1998-04"', '"1998-13"'), 24, "expected a year, a month or a day"),
    "a price below nothing": (_with("low = 20", "low = -20"), 21, "an amount isn't above 0"),
    "value of a printing beyond the last": (_with('printing = "1"', 'printing = "9"'), 20, "goes beyond the 4 printings"),
    "printing as a number": (_with('printing = "1"', "printing = 1"), 20, "printing is 1: expected text in quotation marks"),
    "copies as one text": (_with('["trade:1"]', '"trade:1"'), 17, "expected a list in brackets, such as copies ="),
    "copies with a dash": (_with('"trade:1"', '"trade:1–3"'), 17, "'trade:1–3' is no printing: expected edition:1, edition:1-4"),
    "copies with a blank": (_with('"trade:1"', '"trade: 1"'), 17, "'trade: 1' is no printing"),
    "state in a capital": (_with('"trade:1"', '"trade:1A"'), 17, "'trade:1A' is no printing: expected edition:1"),
    "edition nearly right": (_with('"trade:1"', '"trad:1"'), 17, "perhaps trade is meant; else add it as [[editions]]"),
    "value without a word": (_with('"$9.95"', '"-"'), 16, "value '-' has no word: expected what stands there"),
    "value twice": (
        _with(VALUE, '[[points.readings]]\nvalue = "$9.95"\ncopies = ["trade:2"]\n' + VALUE),
        19,
        "value '$9.95' stands twice: expected each once, with all its copies",
    ),
    "empty place": (_with('place = "front flap"', 'place = ""'), 12, "the place is empty: expected words"),
    "dispute without words": (
        _with('place = "front flap"', 'place = "x"\ndisputed = true'),
        13,
        "disputed is true: expected text",
    ),
    "numbers backwards": (_with('"$9.95"', '"$9.95"\nnumbers = "1000-251"'), 17, "run backwards: expected the lower one first"),
    "numbers as one": (_with('"$9.95"', '"$9.95"\nnumbers = "251"'), 17, "expected two numbers with a hyphen between them"),
    "jacket's key on a book": (
        _with('part = "jacket"', 'part = "book"\nknown_pairing = true'),
        12,
        "known_pairing is of jackets only",
    ),
    "books in a book": (
        _with('part = "jacket"', 'part = "book"').replace('["trade:1"]', '["trade:1"]\nworn_by = ["trade:2"]'),
        18,
        "worn_by is of jackets only",
    ),
    "account of no reading": (
        _with(VALUE, '[[points.accounts]]\nauthority = "A"\nsource = "x"\ncopies = { "$8.95" = ["trade:1"] }\n' + VALUE),
        9,
        "account of 'A' names no reading of this point",
    ),
    "isbn of nine figures": (_with("printings = 4", 'isbn = "030640615"'), 8, "has 9 figures, not 10 or 13"),
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
    "copies backwards": (_with('"trade:1"', '"trade:3-2"'), 17, "'trade:3-2' is an empty range: expected"),
    "copies from nought": (_with('"trade:1"', '"trade:0"'), 17, "'trade:0' is an empty range: expected printings from 1 on"),
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
    "price in words": (
        _with("low = 20", 'low = "twenty"'),
        21,
        "low is 'twenty': expected a number without quotation marks, such as low = 60",
    ),
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
    "a point that decides nothing": (
        _with('["trade:1"]', '["trade:1-4"]'),
        9,
        "it decides nothing, as every printing has its reading",
    ),
    "a printing that no reading covers": (
        _with(VALUE, '[[points.readings]]\nvalue = "$10.95"\ncopies = ["trade:3-4"]\n' + VALUE),
        9,
        "no reading covers trade:2, which stands between others: is it left out?",
    ),
    "odd year": (_with("printings = 4", "printings = 4\nyear = 192"), 9, "year 192"),
}
