"""The command line: `limnary calc ...`; each command is one function that returns an exit code."""

import argparse
import json
import sys

from limnary.contracts import InvalidInput, UnknownCalculation, run


def calc(arguments: argparse.Namespace) -> int:
    """JSON in, JSON out: one calculation from standard input, or with --lines one a line."""
    if not arguments.lines:
        answer = _answer(arguments.name, sys.stdin.read())
        print(json.dumps(answer, ensure_ascii=False, indent=2))
        return 2 if "error" in answer else 0
    for line in sys.stdin:
        if not line.strip():
            continue
        print(json.dumps(_answer_line(line), ensure_ascii=False), flush=True)
    return 0


def _answer(name: str, text: str) -> dict:
    try:
        payload = json.loads(text)
    except ValueError as bad:
        return {"error": {"title": "This is not JSON", "detail": str(bad)}}
    return _run(name, payload)


def _answer_line(line: str) -> dict:
    try:
        request = json.loads(line)
        name, payload = request["name"], request["input"]
    except (ValueError, KeyError, TypeError):
        return {"error": {"title": 'A line must be JSON: {"name": ..., "input": {...}}'}}
    return _run(name, payload)


def _run(name: object, payload: object) -> dict:
    try:
        return run(name, payload)
    except (UnknownCalculation, TypeError):
        return {"error": {"title": f"There is no calculation named {name!r}"}}
    except InvalidInput as bad:
        return {"error": {"title": "The input breaks the contract", "errors": bad.errors}}


def parser() -> argparse.ArgumentParser:
    """The whole command line."""
    top = argparse.ArgumentParser(prog="limnary", description=__doc__)
    commands = top.add_subparsers(dest="command", required=True)
    one = commands.add_parser("calc", help="one calculation, or many with --lines")
    one.add_argument("name", nargs="?", help="the calculation's name")
    one.add_argument("--lines", action="store_true", help='one {"name","input"} a line')
    one.set_defaults(does=calc)
    return top


def main(argv: list[str] | None = None) -> int:
    """Run one command; the exit code is the command's own."""
    arguments = parser().parse_args(argv)
    if arguments.command == "calc" and not arguments.lines and not arguments.name:
        parser().error("calc needs a name, or --lines")
    return arguments.does(arguments)


if __name__ == "__main__":
    sys.exit(main())
