"""What phones are sent: the same scripts without comments, and a shell within its budget."""

import json
import shutil
import subprocess
from pathlib import Path

import pytest
from limnary.api.lean_scripts import without_comments
from limnary.app import create_app
from limnary.config import Config

ROOT = Path(__file__).parents[2]
BUDGET_BYTES = 190_000


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


def test_the_shell_stays_within_its_budget(tmp_path):
    """190 kB packed file by file, with charts and QR codes.

    Apart from it stand the calculations (calc/, /shared.json), which grow with every contract.
    """
    client = create_app(Config(data_dir=tmp_path)).test_client()
    worker = client.get("/sw.js").get_data(as_text=True)
    start = worker.index("precacheAndRoute(") + len("precacheAndRoute(")
    listed, _ = json.JSONDecoder().raw_decode(worker[start:])
    urls = [entry["url"] for entry in listed]
    shell = [url for url in urls if url != "/shared.json" and not url.startswith("/calc/")]
    assert "/index.html" in shell and "/app.js" in shell
    sizes = {url: len(client.get(url, headers={"Accept-Encoding": "gzip"}).data) for url in shell}
    assert sum(sizes.values()) <= BUDGET_BYTES, sorted(sizes.items(), key=lambda one: -one[1])[:12]
