"""The calculations: pure functions, one module per contract with the contract's name; the twin is pwa/calc/NAME.js."""

from collections.abc import Callable
from importlib import import_module


def calculation(name: str) -> Callable[..., dict]:
    """The function `name` of the module `name`; keyword arguments in, a dict of outputs out."""
    return getattr(import_module(f"{__name__}.{name}"), name)
