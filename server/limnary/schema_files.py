"""Finds and reads the files shared with the phone: in the checkout, else inside the installed wheel."""

import json
from functools import cache
from importlib.resources import files
from pathlib import Path

# An editable install may leave a stale copy in site-packages, so a checkout always wins.
_CHECKOUT = Path(__file__).resolve().parents[2]


def _data_dir(name: str) -> Path:
    if (_CHECKOUT / "pyproject.toml").is_file() and (_CHECKOUT / name).is_dir():
        return _CHECKOUT / name
    return Path(str(files("limnary") / "_data" / name))


def shared_schema_dir() -> Path:
    """The folder of contracts, record kinds, tables and vectors."""
    return _data_dir("shared_schema")


def pwa_dir() -> Path:
    """The folder of files that the browser runs."""
    return _data_dir("pwa")


@cache
def read_folder(name: str) -> dict[str, dict]:
    """Every JSON file of one shared_schema folder, by file name without its ending, sorted."""
    folder = shared_schema_dir() / name
    return {p.stem: json.loads(p.read_text("utf-8")) for p in sorted(folder.glob("*.json"))}


@cache
def messages() -> dict[str, str]:
    """The wording of refusals, one template per code, the same on server and phone."""
    return json.loads((shared_schema_dir() / "messages.json").read_text("utf-8"))


@cache
def formats() -> dict[str, dict[str, str]]:
    """The kinds of text that a field may name as its `format`, each with its pattern."""
    return json.loads((shared_schema_dir() / "formats.json").read_text("utf-8"))


def words(language: str) -> dict[str, str] | None:
    """The texts of shared_schema in one language, keyed by the English text; None for an unknown language."""
    return read_folder("words").get(language)


def shared_bundle() -> dict:
    """Everything that the phone needs of shared_schema, as /shared.json serves it."""
    return {
        "calc": read_folder("calc"),
        "tables": read_folder("tables"),
        "records": read_folder("records"),
        "messages": messages(),
        "formats": formats(),
    }
