"""The desk: a local page to draft a description, read a batch and look books up. It serves this computer and no other."""
