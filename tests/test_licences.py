"""Each package and module of others has a licence, and it is one that lets everybody use and pass on the app."""

import json
import re
import tomllib
from importlib.metadata import distribution
from pathlib import Path

import pytest
from limnary import cli
from limnary.commands import licences
from limnary.commands.licences import Part, licence_of, of_the_phone, of_the_server

ROOT = Path(__file__).parents[1]
FREE = re.compile(
    r"MIT|BSD|ISC|Apache|PSF|Python Software Foundation|MPL|Mozilla|HPND|0BSD|CC0|LGPL|Zlib|Unlicense|Public Domain"
)
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]


def names(needs: list[str]) -> set[str]:
    return {re.match(r"[\w.-]+", one)[0].lower().replace("_", "-") for one in needs}


def test_all_that_the_server_needs_is_listed():
    listed = {part.name.lower().replace("_", "-") for part in of_the_server()}
    assert names(PROJECT["dependencies"]) <= listed
    assert {"werkzeug", "jinja2", "cffi"} <= listed, "what they need in turn is listed too"
    assert "pytest" not in listed


def test_all_that_phones_get_is_listed():
    refresh = (ROOT / "pwa/vendor/refresh").read_text("utf-8")
    versions = dict(one.rsplit("@", 1) for one in re.search(r'^versions="([^"]+)"', refresh, re.MULTILINE)[1].split())
    listed = {part.name: part.version for part in of_the_phone()}
    assert listed == {**{name: its for name, its in versions.items() if name != "esbuild"}, "tslib": listed["tslib"]}


@pytest.mark.parametrize("part", [*of_the_server(), *of_the_phone()], ids=lambda part: part.name)
def test_each_part_is_free_to_use(part):
    assert FREE.search(part.licence), part


@pytest.mark.parametrize("name", sorted(names(PROJECT["optional-dependencies"]["test"])))
def test_each_tool_of_the_tests_names_its_licence(name):
    assert licence_of(distribution(name))


def test_each_tool_of_the_phones_tests_names_its_licence():
    for name in json.loads((ROOT / "tests/package.json").read_text("utf-8"))["devDependencies"]:
        assert json.loads((ROOT / "tests/node_modules" / name / "package.json").read_text("utf-8"))["license"]


def test_the_command_fails_where_a_licence_is_missing(monkeypatch, capsys):
    assert cli.main(["licences"]) == 0
    assert re.search(r"^flask +\d[\d.]* +BSD", capsys.readouterr().out, re.MULTILINE | re.IGNORECASE)
    monkeypatch.setattr(licences, "of_the_phone", lambda: [Part("bare", "1", "")])
    assert cli.main(["licences"]) == 1
    assert "NAMES NO LICENCE" in capsys.readouterr().out
