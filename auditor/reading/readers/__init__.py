"""One reader a kind of claim that is more than a fixed phrase: each takes a Scene and yields Drafts."""
