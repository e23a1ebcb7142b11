"""How a scan may end before its end; the messages are for people."""


class CannotStart(Exception):
    """What is asked for can't be done as it is: the message says why and what to do."""


class ScanFailed(Exception):
    """Something outside put an end to it. What was done by then is kept."""
