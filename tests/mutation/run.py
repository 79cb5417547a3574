"""`tests/mutation/run`: changes the code in one small place at a time and counts what the checks notice."""

import argparse
import json
import os
import random
import time
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
GROUPS = ("calc-py", "constants", "calc-js", "advice-js")
# The rules of the advice that decide what a keeper is asked to do.
RULES = {"today", "foretold", "level", "limits", "litres", "next_stop", "readiness", "questions", "belief_input"} | {
    "findings",
    "advised",
    "ways",
    "chloride",
    "how_many",
    "stock_tank",
}
EQUIVALENT = Path(__file__).parent / "equivalent.json"


def main() -> None:
    args = arguments()
    work = python_work(args) if args.group in ("calc-py", "constants") else javascript_work(args)
    known = {(e["file"], e["line"], e["change"]) for e in json.loads(EQUIVALENT.read_text("utf-8"))["equivalent"]}
    found, met = [], []
    started = time.monotonic()
    for mutant, judge in work:
        if key(mutant) in known:
            met.append(key(mutant))
            continue
        if args.list:
            print(json.dumps(mutant, ensure_ascii=False))
            continue
        mutant["by"] = judge()
        found.append(mutant)
        if args.report:
            with open(args.report, "a", encoding="utf-8") as report:
                report.write(json.dumps(mutant, ensure_ascii=False) + "\n")
        if args.verbose or mutant["by"] is None:
            print(said(mutant), flush=True)
    figures(found, len(met), time.monotonic() - started)
    if not (args.sample or args.again):
        files = {mutant["file"] for mutant in found} | {file for file, *_ in met}
        for file, line, change in sorted(one for one in known - set(met) if one[0] in files):
            print(f"listed as equivalent, but there is no such line now: {file}\n  - {line}\n  + {change}")


def arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="tests/mutation/run", description=__doc__)
    parser.add_argument("group", choices=GROUPS)
    parser.add_argument("--file", action="append", default=[], metavar="NAME", help="only this file; may be repeated")
    parser.add_argument("--sample", type=int, metavar="N", help="at most N mutants of each file, drawn by --seed")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--again", metavar="REPORT", help="only the survivors of an earlier --report")
    parser.add_argument("--report", metavar="REPORT", help="add every mutant and what noticed it, a line of JSON each")
    parser.add_argument("--fast", action="store_true", help="vectors and doctests only: more survive")
    parser.add_argument("--list", action="store_true", help="print the mutants, run nothing")
    parser.add_argument("--verbose", action="store_true", help="print each mutant, not only the survivors")
    return parser.parse_args()


def key(mutant: dict) -> tuple[str, str, str]:
    return mutant["file"], mutant["before"], mutant["after"]


def chosen(args: argparse.Namespace, made: list[dict]) -> list[dict]:
    """The mutants of one file that this run tries."""
    if args.again:
        earlier = map(json.loads, Path(args.again).read_text("utf-8").splitlines())
        left = {key(mutant) for mutant in earlier if mutant["by"] is None}
        return [mutant for mutant in made if key(mutant) in left]
    if args.sample and len(made) > args.sample:
        kept = set(random.Random(f"{args.seed} {made[0]['file']}").sample(range(len(made)), args.sample))
        return [mutant for index, mutant in enumerate(made) if index in kept]
    return made


def python_work(args: argparse.Namespace):
    """(mutant, judge) of the server's calculations, or of the constants that both languages share."""
    from python_killers import CALC, CONSTANTS, Killers, edit_constant, edit_module
    from python_mutants import mutants, scaled

    killers = Killers()
    if not args.list:
        killers.measure()
    if args.group == "constants":
        groups = json.loads((ROOT / CONSTANTS).read_text("utf-8"))["groups"]
        for group, entry in groups.items():
            made = [
                {
                    "file": CONSTANTS,
                    "line": 0,
                    "operator": "constant",
                    "before": f"{group}.{name} = {part['value']}",
                    "after": f"{group}.{name} = {value}",
                    "name": name,
                    "value": value,
                }
                for name, part in entry["values"].items()
                for value in scaled(float(part["value"]) if part["value"] else 0)
            ]
            if args.file and group not in args.file:
                continue
            for mutant in chosen(args, made):
                name, value = mutant.pop("name"), mutant.pop("value")
                yield (
                    mutant,
                    lambda group=group, name=name, value=value: killers.killed_by(
                        None, lambda: edit_constant("constants", group, name, value), group, fast=args.fast
                    ),
                )
        return
    for path in sorted(CALC.glob("*.py")):
        if path.stem == "__init__" or (args.file and path.stem not in args.file):
            continue
        texts = {}
        made = []
        for found in mutants(path.read_text("utf-8")):
            mutant = {
                "file": str(path.relative_to(ROOT)),
                "line": found.line,
                "operator": found.operator,
                "before": found.before,
                "after": found.after,
            }
            texts[len(made)] = found.source
            mutant["index"] = len(made)
            made.append(mutant)
        for mutant in chosen(args, made):
            source = texts[mutant.pop("index")]
            yield (
                mutant,
                lambda path=path, source=source: killers.killed_by(
                    path.stem, lambda: edit_module(path.stem, source), fast=args.fast
                ),
            )


def javascript_work(args: argparse.Namespace):
    """(mutant, judge) of the phone's calculations, or of the rules that advise."""
    from javascript_killers import JavaScriptKillers

    killers = JavaScriptKillers()
    if args.group == "calc-js":
        files = [path for path in sorted((ROOT / "pwa/calc").glob("*.js")) if path.stem != "index"]
    else:
        files = [path for path in sorted((ROOT / "pwa/advice").rglob("*.js")) if path.stem in RULES]
    for path in files:
        if args.file and path.stem not in args.file:
            continue
        file = str(path.relative_to(ROOT))
        made = [{"file": file, **mutant} for mutant in killers.mutants(file)]
        for mutant in chosen(args, made):
            source = mutant.pop("source")
            yield mutant, lambda file=file, source=source: killers.killed_by(file, source, fast=args.fast)
    killers.close()


def said(mutant: dict) -> str:
    end = f"by {mutant['by']}" if mutant["by"] else "SURVIVES"
    return (
        f"{mutant['file']}:{mutant['line']} [{mutant['operator']}] {end}\n  - {mutant['before']}\n  + {mutant['after']}"
    )


def figures(found: list[dict], left_out: int, seconds: float) -> None:
    for column in ("operator", "file"):
        all_of, killed = Counter(m[column] for m in found), Counter(m[column] for m in found if m["by"])
        for name in sorted(all_of):
            print(f"{killed[name]:5} of {all_of[name]:5}  {name}")
        print()
    killed = sum(bool(m["by"]) for m in found)
    share = f" ({100 * killed / len(found):.1f} %)" if found else ""
    late = sum(m["by"] == "time limit" for m in found)
    print(f"killed {killed} of {len(found)}{share}, {late} of them by the time limit; {seconds:.0f} s")
    print(f"left out as equivalent: {left_out}")


if __name__ == "__main__":
    os.chdir(ROOT)
    main()
