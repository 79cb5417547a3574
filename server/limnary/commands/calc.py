"""`limnary calc`: one calculation from standard input, or with --lines one per line."""

import argparse
import json
import sys

from limnary.contracts import InvalidInput, UnknownCalculation, run


def calc(arguments: argparse.Namespace) -> int:
    """JSON in, JSON out."""
    if not arguments.lines:
        answer = _answer(arguments.name, sys.stdin.read())
        print(json.dumps(answer, ensure_ascii=False, indent=2))
        return 2 if "error" in answer else 0
    for line in sys.stdin:
        if not line.strip():
            continue
        print(json.dumps(_answer_line(line), ensure_ascii=False), flush=True)
    return 0


def answer(name: object, payload: object) -> dict:
    """The calculation's answer, or {"error": ...} in the words of the contract."""
    try:
        return run(name, payload)
    except (UnknownCalculation, TypeError):
        return {"error": {"title": f"There is no calculation named {name!r}"}}
    except InvalidInput as bad:
        return {"error": {"title": "The input breaks the contract", "errors": bad.errors}}


def _answer(name: str, text: str) -> dict:
    try:
        payload = json.loads(text)
    except (ValueError, RecursionError) as bad:
        return {"error": {"title": "This is not JSON", "detail": str(bad)}}
    return answer(name, payload)


def _answer_line(line: str) -> dict:
    try:
        request = json.loads(line)
        name, payload = request["name"], request["input"]
    except (ValueError, KeyError, TypeError, RecursionError):
        return {"error": {"title": 'A line must be JSON: {"name": ..., "input": {...}}'}}
    return answer(name, payload)
