"""The watchlist: listings kept over time, how their words and prices change, what was asked and what came of it.

``values`` says what is kept, ``store`` keeps it in one SQLite file, ``keeping`` takes in what was saved or pasted. The rest is
pure: ``identity`` (which listing is this?), ``compare`` (two readings), ``asked`` (the state of questions), ``history`` (all of
it in people's words), ``order`` (the list, sorted).
"""
