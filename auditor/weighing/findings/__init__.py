"""What is worth telling of a listing. Each file is one kind of question; all read a Case and yield findings.

Nothing here accuses: a finding says what the text says and what the point set says, with its source.
"""
