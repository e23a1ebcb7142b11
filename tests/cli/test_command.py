"""What all commands share: help, wrong use, terminals and pipes; and ``auditor points``."""

import os
import re
import subprocess
import sys

import pytest

from tests.commands import DEMO, ROOT, WORDS, auditor, errors, one_line, out


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["scan", "x.csv", "--out", "x.pdf"], ".jsonl or .csv"),
        (["scan", "x.csv", "--out", "no/such/folder/x.csv"], "folder does not exist"),
        (["scan", "x.csv", "--column", "text"], "FIELD=COLUMN"),
        (["scan", "x.csv", "--column", "words=Body"], "one of id, title, text"),
        (["scan", "x.csv", "--fail-on", "lying"], "married jacket"),
        (["scan", "x.csv", "--points", "no/such/folder"], "no such folder"),
        (["scan"], "Missing argument"),
        (["check", "--asking", "cheap"], "45.00 USD"),
        (["points", "check", "no/such/folder"], "no such folder"),
        (["watch", "recheck", "--on", "2025-13-01"], "'2025-13-01' is no day; expected one such as 2025-09-02"),
        (["points", "show", "Gatsby"], "near it are: The Great Gatsby"),
        (["points", "show", "Nowhere at all"], "auditor points list tells them"),
        (["frobnicate"], "No such command"),
    ],
)
def test_wrong_use_is_told_with_what_was_expected(arguments, told):
    done = auditor(*arguments)
    assert done.returncode == 2
    assert told in one_line(errors(done))
    assert not out(done)


def test_nothing_on_standard_input_is_told_by_name():
    done = auditor("check")
    assert done.returncode == 3
    assert errors(done).startswith("standard input")


def test_points_list_names_every_book_by_its_author():
    done = auditor("points", "list", "--points", DEMO / "points")
    lines = out(done).splitlines()
    assert done.returncode == 0
    assert "Ilse Varnum: The Ore Dock (ore-dock)" in lines
    names = [line.partition(":")[0].split()[-1].casefold() for line in lines]
    assert names == sorted(names)


def test_points_check_tells_file_line_and_what_was_expected(tmp_path):
    done = auditor("points", "check", DEMO / "points")
    assert done.returncode == 0
    assert f"{len(list((DEMO / 'points').glob('*.toml')))} point sets read, 0 mistakes" in out(done)
    good = (DEMO / "points" / "ore-dock.toml").read_text(encoding="utf-8")
    line = next(number for number, words in enumerate(good.splitlines(), 1) if 'copies = ["trade:2"]' in words)
    (tmp_path / "ore-dock.toml").write_text(good.replace('copies = ["trade:2"]', 'copies = ["trade two"]'), encoding="utf-8")
    (tmp_path / "other.toml").write_text("[work\n", encoding="utf-8")
    done = auditor("points", "check", tmp_path)
    assert done.returncode == 3
    assert f"ore-dock.toml:{line}:" in out(done)
    assert "expected edition:1" in out(done)
    assert "other.toml:1:" in out(done)


@pytest.mark.parametrize("command", [[], ["check"], ["scan"], ["points"], ["points", "check"]])
def test_help_shows_an_example(command):
    done = auditor(*command, "--help")
    assert done.returncode == 0
    assert "Usage: auditor" in out(done)
    if command in (["check"], ["scan"], ["points", "check"]):
        assert f"Example: auditor {' '.join(command)}" in out(done)


def test_a_terminal_without_unicode_gets_plain_signs():
    done = auditor(
        "check", "--title", "The Ore Dock", "--points", DEMO / "points", words=WORDS + " Café £5.", PYTHONIOENCODING="ascii"
    )
    assert done.returncode == 0, errors(done)
    assert done.stdout.decode("ascii")
    assert "###" in out(done)


def test_a_closed_pipe_ends_quietly(tmp_path):
    (tmp_path / "many.csv").write_text(
        "id,text\n" + "".join(f"{number},First edition.\n" for number in range(300)), encoding="utf-8"
    )
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    command = [sys.executable, "-m", "auditor", "scan", str(tmp_path / "many.csv")]
    run = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=environment)
    run.stdout.close()
    told = run.stderr.read().decode()
    run.wait(timeout=60)
    assert "Traceback" not in told
    assert "rror" not in told


@pytest.mark.skipif(sys.platform == "win32", reason="pseudo-terminals are POSIX's")
def test_colours_on_a_terminal_and_none_under_no_color(tmp_path):
    import pty

    (tmp_path / "shop.csv").write_text("id,text\n1,First edition. No remainder mark.\n", encoding="utf-8")
    (tmp_path / "words.txt").write_text("First edition. No remainder mark.", encoding="utf-8")

    def on_terminal(*arguments, **more):
        ours, theirs = pty.openpty()
        environment = {**os.environ, "PYTHONPATH": str(ROOT), "TERM": "xterm-256color", **more}
        run = subprocess.Popen([sys.executable, "-m", "auditor", *arguments], stdout=theirs, stderr=theirs, env=environment)
        os.close(theirs)
        told = b""
        try:
            while piece := os.read(ours, 4096):
                told += piece
        except OSError:  # Linux tells the end of a pseudo-terminal so
            pass
        os.close(ours)
        assert run.wait(timeout=60) == 0
        return told.decode()

    colour = re.compile(r"\x1b\[(?:\d+;)*3[0-7](?:;\d+)*m")
    assert colour.search(on_terminal("check", str(tmp_path / "words.txt")))
    assert not colour.search(on_terminal("check", str(tmp_path / "words.txt"), NO_COLOR="1"))
    assert "listings read" in on_terminal("scan", str(tmp_path / "shop.csv"))


def test_help_loads_no_heavy_room():
    code = "import sys, auditor.cli; print({'spacy', 'pandas', 'pydantic'} & sys.modules.keys())"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, cwd=DEMO.parent, check=True)
    assert done.stdout.strip() == "set()"
