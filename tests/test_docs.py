"""The READMEs and DEVELOPERS.md match the repository: their paths, links, commands, calls, settings, dependencies."""

import json
import re
import subprocess
import tomllib
from pathlib import Path

import pytest
from limnary.app import create_app
from limnary.cli import parser
from limnary.config import Config

ROOT = Path(__file__).parents[1]
PAGES = sorted(
    path
    for path in (*ROOT.rglob("README.md"), ROOT / "DEVELOPERS.md")
    if not {"node_modules", ".venv", ".pytest_cache"} & set(path.parts)
)
TEXTS = {path: path.read_text("utf-8") for path in PAGES}
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "pyproject.toml", "server", "pwa", "shared_schema", "tests", "e2e"}
FILE = re.compile(r"[\w@./-]+\.(?:css|d\.ts|html|js|json|jsonl|csv|md|png|py|sqlite|toml|txt|zip)")
# Files that the documents name and that no checkout holds.
NOT_HERE = {
    ".venv": "made by server/run and tests/run",
    "server/data": "the data folder of a checkout",
    "e2e/shots": "written by python -m e2e.shots",
    "people.sqlite": "in the data folder",
    "backups": "in the data folder",
    "lan": "in the data folder of a server that was started with --lan",
    "backups.json": "in the data folder",
    "rooms/ab/ROOM.sqlite": "in the data folder",
    "room.jsonl": "in a room's archive",
    "readings.csv": "in a room's archive",
    "photos/SHA256.jpg": "in a room's archive",
    **dict.fromkeys(("columns.csv", "reading.csv", "water_change.csv", "dose.csv"), "in a room's tables"),
    **dict.fromkeys(("feeding.csv", "stock_change.csv"), "in a room's tables"),
    "backup.json": "in a backup",
    "FILE.html": "an argument",
}
# These words stand for any name, as in shared_schema/calc/NAME.json.
PLACEHOLDER = re.compile(r"(?<![A-Za-z])(?:KIND|LANGUAGE|NAME|PART|SOURCE|xx)(?![A-Za-z])")


def named_paths(text: str) -> set[str]:
    """The paths in backticks, in commands and in links of a page."""
    found = {link.partition("#")[0] for link in re.findall(r"\]\(([^)\s]+)\)", text)}
    code = re.findall(r"`([^`\n]+)`", text) + re.findall(r"^ {4}(.+)$", text, re.MULTILINE)
    for word in (word for span in code for word in re.split(r"[\s|,;]+", span)):
        if re.fullmatch(r"[\w@.-]+(/[\w@.-]+)*/", word) or FILE.fullmatch(word):
            found.add(word.rstrip("/"))
        elif re.fullmatch(rf"(?:{'|'.join(sorted(TOP_LEVEL))})/[\w./-]+", word):
            found.add(word)
    return {path for path in found if path and "://" not in path and not path.startswith("/")}


def exists(page: Path, path: str) -> bool:
    """Whether `path` is there, seen from the page's folder or from one above it."""
    if any(path == name or path.startswith(f"{name}/") for name in NOT_HERE):
        return True
    folders = [folder for folder in page.parents if folder.is_relative_to(ROOT)]
    pattern = PLACEHOLDER.sub("*", path)
    return any((folder / path).exists() for folder in folders) or (
        pattern != path and any(list(folder.glob(pattern)) for folder in folders)
    )


@pytest.mark.parametrize("page", PAGES, ids=lambda path: path.relative_to(ROOT).as_posix())
def test_every_path_that_a_page_names_exists(page):
    missing = sorted(path for path in named_paths(TEXTS[page]) if not exists(page, path))
    assert not missing, f"{page.relative_to(ROOT)} names {missing}"


def test_each_part_has_its_page():
    parts = ("", "server", "server/limnary/store", "shared_schema", "pwa", "pwa/data", "pwa/advice", "tests")
    for part in parts:
        assert ROOT / part / "README.md" in PAGES, part
        if part:
            assert f"]({part}/README.md)" in TEXTS[ROOT / "DEVELOPERS.md"], part


def test_every_command_is_described():
    commands = next(action.choices for action in parser()._actions if action.choices)
    rows = set(re.findall(r"^\| `limnary ([\w-]+)", TEXTS[ROOT / "server/README.md"], re.MULTILINE))
    assert rows == set(commands)


def test_every_call_of_the_api_is_described(tmp_path):
    names = {"room": "R", "keeper": "K", "invitation": "I", "phone": "D", "sha256": "SHA256", "name": "NAME"}
    calls = set()
    for rule in create_app(Config(data_dir=tmp_path)).url_map.iter_rules():
        if rule.rule.startswith("/api/") or rule.rule == "/healthz":
            path = re.sub(r"<(\w+)>", lambda hit: names[hit[1]], rule.rule)
            calls |= {f"{method} {path}" for method in rule.methods - {"HEAD", "OPTIONS"}}
    text = TEXTS[ROOT / "server/limnary/store/README.md"]
    assert set(re.findall(r"^\| `([A-Z]+ /[^`]+)` \|", text, re.MULTILINE)) == calls


def test_every_setting_is_described():
    sources = [*ROOT.glob("server/limnary/**/*.py"), ROOT / "server/run", ROOT / "tests/run", *ROOT.glob("e2e/*.py")]
    used = {name for path in sources for name in re.findall(r"\bLIMNARY_[A-Z_]+\b", path.read_text("utf-8"))}
    told = {name for text in TEXTS.values() for name in re.findall(r"^\|.*?`(LIMNARY_[A-Z_]+)`", text, re.MULTILINE)}
    told |= {name for text in TEXTS.values() for name in re.findall(r", `(LIMNARY_[A-Z_]+)` \|", text)}
    assert used == told


def test_the_guide_fits_on_a_few_screens():
    assert (ROOT / "DEVELOPERS.md").stat().st_size <= 7000


def test_the_top_level_holds_what_the_design_names():
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True)
    if listed.returncode:
        pytest.skip("not a git checkout")
    there = {path.split("/")[0] for path in listed.stdout.splitlines()}
    assert {name for name in there if not name.startswith(".")} == TOP_LEVEL


def test_every_dependency_has_its_reason():
    table = TEXTS[ROOT / "DEVELOPERS.md"].split("## What we lean on")[1]
    reasons = {
        name.strip(): why.strip()
        for names, why in re.findall(r"^\| ([^|]+) \| ([^|]+) \|$", table, re.MULTILINE)
        for name in names.split(",")
    }
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
    extras = project["project"]["optional-dependencies"].values()
    python = [
        *project["build-system"]["requires"],
        *project["project"]["dependencies"],
        *(d for e in extras for d in e),
    ]
    node = json.loads((ROOT / "tests/package.json").read_text("utf-8"))
    vendored = re.search(r'^versions="([^"]+)"', (ROOT / "pwa/vendor/refresh").read_text("utf-8"), re.MULTILINE)[1]
    used = {re.match(r"[\w.-]+", one)[0] for one in python}
    used |= {name for key, group in node.items() if key.lower().endswith("dependencies") for name in group}
    used |= {one.rsplit("@", 1)[0] for one in vendored.split()}
    assert set(reasons) - {"dependency", "---"} == used
    assert all(reasons.values())
