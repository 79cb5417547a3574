"""`limnary licences`: what the app is made of besides its own code, each part with version and licence."""

import argparse
import re
import tomllib
from importlib.metadata import Distribution, PackageNotFoundError, distribution
from typing import NamedTuple

from limnary.config import CHECKOUT
from limnary.schema_files import pwa_dir

CLASSIFIER = "License :: "


class Part(NamedTuple):
    """One package or module of others; `licence` is "" where its makers name none."""

    name: str
    version: str
    licence: str


def licences(arguments: argparse.Namespace) -> int:
    """Print a table: first what the server runs on, then what phones get. 1 if a part names no licence."""
    parts = [*of_the_server(), *of_the_phone()]
    widths = [max(len(part[at]) for part in parts) for at in (0, 1)]
    for part in parts:
        print(f"{part.name:{widths[0]}}  {part.version:{widths[1]}}  {part.licence or 'NAMES NO LICENCE'}")
    return 0 if all(part.licence for part in parts) else 1


def of_the_server() -> list[Part]:
    """The installed Python packages that the server needs, and what those need in turn, by name."""
    found: dict[str, Part] = {}
    waiting = [_name(need) for need in _own_needs()]
    while waiting:
        package = _installed(waiting.pop())
        if package is None or _key(package.name) in found:
            continue
        found[_key(package.name)] = Part(package.name, package.version, licence_of(package))
        waiting += [_name(need) for need in package.requires or [] if not _is_extra(need)]
    return sorted(found.values(), key=lambda part: part.name.lower())


def _own_needs() -> list[str]:
    """What this app needs: as the checkout says, else as it was installed."""
    project = CHECKOUT / "pyproject.toml"
    if project.is_file():
        return tomllib.loads(project.read_text("utf-8"))["project"]["dependencies"]
    return [need for need in distribution("limnary").requires or [] if not _is_extra(need)]


def of_the_phone() -> list[Part]:
    """The modules of pwa/vendor/, as the table in its README.md lists them; one row may hold several."""
    table = (pwa_dir() / "vendor" / "README.md").read_text("utf-8")
    found = set()
    for what, licence in re.findall(r"^\| [\w.-]+\.\w+ \| ([^|]+) \| ([^|]+) \|", table, re.MULTILINE):
        named = [one.strip() for one in licence.split(",")]
        parts = re.findall(r"(@?[a-z][\w/.-]+) (\d[\w.]*)", what)
        found |= {Part(*part, its) for part, its in zip(parts, named, strict=True)}
    return sorted(found)


def licence_of(package: Distribution) -> str:
    """The licence of an installed package, as its metadata name it; "" if they do not."""
    about = package.metadata
    classes = [one.rsplit(" :: ", 1)[-1] for one in about.get_all("Classifier") or [] if one.startswith(CLASSIFIER)]
    # Some have the whole text in `License`, or only the file: the first line names it.
    text = about.get("License") or _first_file(package)
    return about.get("License-Expression") or ", ".join(classes) or text.strip().partition("\n")[0].strip()


def _first_file(package: Distribution) -> str:
    for name in package.metadata.get_all("License-File") or []:
        if text := package.read_text(f"licenses/{name}") or package.read_text(name):
            return text
    return ""


def _installed(name: str) -> Distribution | None:
    try:
        return distribution(name)
    except PackageNotFoundError:
        return None  # needed only on another system, such as colorama on Windows


def _name(need: str) -> str:
    return re.match(r"[\w.-]+", need)[0]


def _is_extra(need: str) -> bool:
    return "extra ==" in need.partition(";")[2]


def _key(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).lower()
