"""How plain the English of the screens is: `python -m tests.plain_words [COMMIT ...]` prints a row a version.

Counted are whole sentences of at least three words, each text once. A part that the app fills in counts as a word, but
not as a common one. Common are the 3,000 commonest English words of wordfreq (Speer 2022), in the forms in which they
stand there. Then come the words of this version that are not among them, the most used first. It asserts nothing.
"""

import collections
import json
import re
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from wordfreq import top_n_list

ROOT = Path(__file__).parents[2]
COMMON = 3000
LEAST_WORDS = 3
WORD = re.compile(r"[A-Za-z]+(?:['’][a-z]+)?")
PART = re.compile(r"\{\w+\}")
END = re.compile(r"(?<=[.!?:])\s+")


def main(commits: list[str]) -> None:
    common = set(top_n_list("en", COMMON))
    print(f"{'version':10} {'sentences':>9} {'words each':>10} {'over 20':>8} {'common words':>13}")
    for commit in commits:
        with tempfile.TemporaryDirectory() as folder:
            packed = subprocess.run(["git", "archive", commit, "pwa"], cwd=ROOT, check=True, stdout=subprocess.PIPE)
            subprocess.run(["tar", "-x", "-C", folder], input=packed.stdout, check=True)
            row(commit, sentences(Path(folder) / "pwa/i18n"), common)
    here = sentences(ROOT / "pwa/i18n")
    row("here", here, common)
    rare = collections.Counter(word for one in here for word in words(one) if not is_common(word, common))
    print("the most used others:", ", ".join(f"{word} {count}" for word, count in rare.most_common(60)))


def sentences(folder: Path) -> list[str]:
    """Every sentence of the English texts in a folder, once."""
    script = Path(__file__).with_name("texts.js")
    told = subprocess.run(["node", script, folder], check=True, stdout=subprocess.PIPE)
    found = (one for _, text in json.loads(told.stdout) for one in END.split(text.replace("\u00a0", " ")))
    return sorted({one for one in found if length(one) >= LEAST_WORDS})


def row(version: str, all_of_it: list[str], common: set[str]) -> None:
    lengths = [length(one) for one in all_of_it]
    every = [word for one in all_of_it for word in words(one)]
    share = sum(is_common(word, common) for word in every) / len(every)
    over = sum(one > 20 for one in lengths) / len(lengths)
    print(f"{version:10} {len(lengths):9} {statistics.mean(lengths):10.1f} {over:8.1%} {share:13.1%}")


def words(sentence: str) -> list[str]:
    return [word.lower().replace("’", "'") for word in WORD.findall(PART.sub(" ", sentence))]


def length(sentence: str) -> int:
    return len(words(sentence)) + len(PART.findall(sentence))


def is_common(word: str, common: set[str]) -> bool:
    return word in common or word.removesuffix("'s") in common


if __name__ == "__main__":
    main(sys.argv[1:])
