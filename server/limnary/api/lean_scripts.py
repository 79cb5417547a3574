"""Removes the comments from our own scripts before they are served; they are a quarter of the bytes."""

import re

_WHOLE = re.compile(r"^[ \t]*/\*(?:[^*]|\*(?!/))*\*/[ \t]*\n", re.MULTILINE)
_LINE = re.compile(r"^[ \t]*//.*\n", re.MULTILINE)
_TYPE = re.compile(r"/\*\* @(?:type|param|returns|template)\b[^*]*\*/ ?")


def without_comments(script: str) -> str:
    """The script without whole-line comments and without type annotations within a line.

    Any other comment within a line stays, because it could be part of a string. A test compares the syntax tree
    of every script before and after.

    >>> without_comments('/** Adds. */\\nexport const add = (/** @type {number} */ a) => a + 1;\\n// The end.\\n')
    'export const add = (a) => a + 1;\\n'
    """
    return _TYPE.sub("", _LINE.sub("", _WHOLE.sub("", script)))
