"""What phones are sent: the same scripts without comments, and an opening within its budget."""

import json
import posixpath
import re
import shutil
import subprocess
from pathlib import Path

import pytest
from limnary.api.lean_scripts import without_comments
from limnary.app import create_app
from limnary.config import Config

ROOT = Path(__file__).parents[2]
BUDGET_BYTES = 150_000


def differing(scripts: dict[str, tuple[str, str]]) -> list[str]:
    lines = [json.dumps({"path": p, "before": before, "after": after}) for p, (before, after) in scripts.items()]
    # The parser is found from where the tests' Node tools are.
    command = ["node", str(ROOT / "tests/js/same_syntax.js")]
    told = subprocess.run(command, input="\n".join(lines), capture_output=True, text=True, check=True)
    return told.stdout.split()


@pytest.mark.skipif(shutil.which("node") is None, reason="node is not installed")
def test_every_script_means_the_same_without_its_comments():
    own = [path for path in (ROOT / "pwa").rglob("*.js") if not {"vendor", "node_modules"} & set(path.parts)]
    scripts = {path.relative_to(ROOT).as_posix(): path.read_text() for path in own}
    assert len(scripts) > 50
    assert differing({path: (text, without_comments(text)) for path, text in scripts.items()}) == []


def test_the_comparison_sees_a_lost_text():
    spoiled = "const text = `\n// not a comment\n`;\n"
    assert differing({"spoiled": (spoiled, without_comments(spoiled))}) == ["spoiled"]


STATIC_IMPORT = re.compile(r"""^\s*(?:import|export)\b[^;()]*?["'](\.[^"']+)["'];""", re.M)


def fetched_before(client, *firsts: str) -> set[str]:
    """The scripts that these need before they run: what they import at the top, and so on."""
    found, left = set(), list(firsts)
    while left:
        url = left.pop()
        if url in found:
            continue
        found.add(url)
        left += [posixpath.normpath(posixpath.join(posixpath.dirname(url), hit)) for hit in imported(client, url)]
    return found


def imported(client, url: str) -> list[str]:
    answer = client.get(url)
    assert answer.status_code == 200, url
    return STATIC_IMPORT.findall(answer.get_data(as_text=True))


def test_the_app_opens_within_its_budget(tmp_path):
    """150 kB packed file by file before the Round stands on the screen: page, styles, scripts.

    Apart from it stand the calculations (calc/, /shared.json), which grow with every contract, and what the worker
    stores meanwhile for the other screens.
    """
    client = create_app(Config(data_dir=tmp_path)).test_client()
    page = client.get("/").get_data(as_text=True)
    linked = re.findall(r'(?:href|src)="(/[^"]+)"', page)
    scripts = fetched_before(client, "/app.js", "/screens/round.js")
    assert {"/vendor/preact.js", "/ui/page.js", "/calc/index.js"} <= scripts
    assert "/styles/page.css" in linked
    shell = {"/", *linked, *scripts}
    sizes = {
        url: len(client.get(url, headers={"Accept-Encoding": "gzip"}).data)
        for url in shell
        if not url.startswith("/calc/")
    }
    assert sum(sizes.values()) <= BUDGET_BYTES, sorted(sizes.items(), key=lambda one: -one[1])[:12]
