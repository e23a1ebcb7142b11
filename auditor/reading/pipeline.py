"""The reader as spaCy components: ``nlp.add_pipe("listing_claims")`` and ``doc._.claims`` holds the result.

``build()`` gives blank English with the trade's tokenizer and the claim reader. The component reads ``doc.text`` with its own
words, so it works behind any tokenizer. The product itself reads without a ``Doc`` (`auditor.reading.read`): nothing in the
reading needs one, and making one costs more than finding the words.
"""

# No `from __future__ import annotations` here: spaCy 3.8.4 reads a factory's annotations as they stand.
from collections.abc import Callable
from functools import cache

import spacy
from spacy.language import Language
from spacy.tokens import Doc
from spacy.util import registry
from spacy.vocab import Vocab

from auditor.reading.reader import finder, mender, read_text
from auditor.reading.words import words

if not Doc.has_extension("claims"):
    Doc.set_extension("claims", default=())
if not Doc.has_extension("work"):
    Doc.set_extension("work", default=None)


class ListingTokenizer:
    """spaCy tokenizer made of `auditor.reading.words`: ``VG+/NF`` is four words, ``don't`` one. Whitespace is kept."""

    def __init__(self, vocab: Vocab) -> None:
        self.vocab = vocab

    def __call__(self, text: str) -> Doc:
        split = words(text)
        pieces: list[str] = []
        spaces: list[bool] = []
        at = 0
        for start, end in zip(split.start, split.end, strict=True):
            gap = text[at:start]
            if gap == " " and pieces and not spaces[-1]:
                spaces[-1] = True
            elif gap:
                pieces.append(gap)
                spaces.append(False)
            pieces.append(text[start:end])
            spaces.append(False)
            at = end
        if text[at:]:
            pieces.append(text[at:])
            spaces.append(False)
        return Doc(self.vocab, words=pieces, spaces=spaces)


@registry.tokenizers("auditor.listing_tokenizer.v1")  # type: ignore[untyped-decorator]  # catalogue has no types
def create_tokenizer() -> Callable[[Language], ListingTokenizer]:
    """What spaCy's config calls: a function from the pipeline to its tokenizer."""
    return lambda nlp: ListingTokenizer(nlp.vocab)


class ClaimReader:
    """Sets ``doc._.claims`` (a tuple of Claims) and ``doc.spans["claims"]``; reads the points of ``doc._.work`` if set."""

    def __init__(self) -> None:
        self.finder = finder()
        self.mender = mender()

    def __call__(self, doc: Doc) -> Doc:
        doc._.claims = read_text(doc.text, self.finder, self.mender, doc._.work)
        spans = [doc.char_span(claim.start, claim.end, label=claim.feature, alignment_mode="expand") for claim in doc._.claims]
        doc.spans["claims"] = [span for span in spans if span is not None]
        return doc


@Language.factory("listing_claims", assigns=["doc._.claims", "doc.spans"])
def create_claim_reader(nlp: Language, name: str) -> ClaimReader:
    return ClaimReader()


@cache
def build() -> Language:
    """Blank English with the listing tokenizer and the claim reader."""
    nlp = spacy.blank("en", config={"nlp": {"tokenizer": {"@tokenizers": "auditor.listing_tokenizer.v1"}}})
    nlp.add_pipe("listing_claims")
    return nlp
