"""The product as a stranger has it: ``python -m tests.installed PYTHON...`` builds wheel and sdist and installs each by itself.

By hand, as it downloads what the wheel needs: for each interpreter a fresh environment far from the checkout, the commands of
the README run there on the demo, the lexicon found inside the package; then the sdist, whose wheel must hold the same files.
Needs ``pip install build``. Ends with 1 where anything differs.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
import zipfile
from pathlib import Path

ROOT = Path(__file__).parents[1]
WHERE = """import auditor, auditor.knowledge.lexicon as lexicon
print(auditor.__file__, lexicon.root(), len(list((lexicon.root() / "points").glob("*.toml"))))"""


def run(*command: object, cwd: Path, words: str = "") -> str:
    done = subprocess.run([*map(str, command)], cwd=cwd, input=words, capture_output=True, text=True, timeout=900)
    if done.returncode:
        raise SystemExit(
            f"{' '.join(map(str, command))}\nended with {done.returncode}:\n{done.stdout[-2000:]}\n{done.stderr[-2000:]}"
        )
    return done.stdout


def names(wheel: Path) -> set[str]:
    with zipfile.ZipFile(wheel) as packed:
        return {name for name in packed.namelist() if ".dist-info/" not in name}


def main(pythons: list[str]) -> None:
    with tempfile.TemporaryDirectory() as place:
        here = Path(place)
        run(sys.executable, "-m", "build", "--outdir", here / "dist", ROOT, cwd=here)
        [wheel], [sdist] = (here / "dist").glob("*.whl"), (here / "dist").glob("*.tar.gz")
        run(sys.executable, "-m", "pip", "wheel", "--no-deps", "-w", here / "again", sdist, cwd=here)
        [again] = (here / "again").glob("*.whl")
        assert names(wheel) == names(again), names(wheel) ^ names(again)
        print(f"{wheel.name}: {wheel.stat().st_size / 1e6:.1f} MB, {len(names(wheel))} files, the same from {sdist.name}")
        shutil.copytree(ROOT / "corpora_demo", here / "demo", ignore=shutil.ignore_patterns("gold"))
        for number, python in enumerate(pythons):
            home = here / f"env{number}"
            run(python, "-m", "venv", home, cwd=here)
            run(home / "bin" / "pip", "install", "-q", wheel, cwd=here)
            told = run(home / "bin" / "python", "-c", WHERE, cwd=here).split()
            assert all(part.startswith(str(home)) for part in told[:2]), told
            command = home / "bin" / "auditor"
            scan = run(
                command, "scan", "demo/listings.csv", "demo/pages", "--points", "demo/points", "--out", "result.html", cwd=here
            )
            check = run(command, "check", "--points", "demo/points", "--title", "The Ore Dock", cwd=here, words="First edition.")
            run(command, "draft", cwd=here, words="First edition.")
            run(command, "points", "check", "demo/points", cwd=here)
            assert "listings" in scan
            assert "Standing" in check
            assert (here / "result.html").stat().st_size > 100_000
            version = run(home / "bin" / "python", "-V", cwd=here).strip()
            print(f"{version}: installed, {told[2]} point sets inside, scan, check, draft and points check run")


if __name__ == "__main__":
    main(sys.argv[1:] or [sys.executable])
