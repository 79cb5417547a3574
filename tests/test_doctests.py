"""The examples in docstrings give what they say.

pytest's own collection of them imports every module in every worker, which costs more than all examples.
"""

import doctest
import importlib
from pathlib import Path

import pytest

SERVER = Path(__file__).parents[1] / "server"
MODULES = sorted(
    ".".join(path.relative_to(SERVER).with_suffix("").parts)
    for path in (SERVER / "limnary").rglob("*.py")
    if ">>> " in path.read_text("utf-8")
)


@pytest.mark.parametrize("module", MODULES)
def test_examples_in_docstrings_hold(module):
    done = doctest.testmod(importlib.import_module(module))
    assert done.attempted > 0
    assert done.failed == 0


def test_every_calculation_has_an_example():
    assert len([module for module in MODULES if module.startswith("limnary.calc.")]) > 40
