"""Runs the vectors and tests of the calculations against one edited Python file or one edited constant.

Each mutant is a fork of this process, which has loaded every library but no module of limnary.calc: the fork
loads the edited source in place of the file, and tries the cheapest check first.
"""

import ast
import contextlib
import doctest
import importlib
import importlib.abc
import importlib.util
import json
import math
import os
import re
import resource
import select
import signal
import sys
import time
import warnings
from dataclasses import dataclass
from pathlib import Path

import numpy  # noqa: F401 loaded once, before the forks
import pytest
from limnary.schema_files import read_folder

ROOT = Path(__file__).resolve().parents[2]
CALC = ROOT / "server/limnary/calc"
CONSTANTS = "shared_schema/tables/constants.json"
# Tests that are no killers: the vectors run here on their own, the twins would see any change of one language
# alone, and the virtual tank measures for minutes what the vectors pin.
LEFT_OUT = {"test_vectors", "test_twins", "test_contracts_complete", "test_virtual_tank", "test_run"}


@dataclass
class Stage:
    """A check with the seconds it takes on the code as it is."""

    name: str
    check: object
    seconds: float = 0.0


def imports_of(path: Path) -> set[str]:
    """The modules of limnary.calc that a file of it names in its imports."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.ImportFrom) and node.module == "limnary.calc":
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and (node.module or "").startswith("limnary.calc."):
            found.add(node.module.rsplit(".", 1)[1])
    return found


def users() -> dict[str, set[str]]:
    """For each module of limnary.calc, the modules that need it, itself among them."""
    names = {path.stem: imports_of(path) for path in CALC.glob("*.py")}
    needs = {}
    for name in names:
        reached, todo = set(), [name]
        while todo:
            here = todo.pop()
            if here not in reached:
                reached.add(here)
                todo += names.get(here, ())
        needs[name] = reached
    return {name: {other for other in names if name in needs[other]} for name in names}


class EditedModule(importlib.abc.MetaPathFinder, importlib.abc.Loader):
    """Imports one module from edited text instead of its file."""

    def __init__(self, name: str, path: Path, source: str):
        self.name, self.path, self.source = name, path, source

    def find_spec(self, fullname, path=None, target=None):
        if fullname != self.name:
            return None
        return importlib.util.spec_from_loader(fullname, self, origin=str(self.path))

    def exec_module(self, module):
        module.__file__ = str(self.path)
        exec(compile(self.source, str(self.path), "exec"), module.__dict__)


class Killers:
    """The checks of the calculations, their cost measured once."""

    def __init__(self):
        self.users = users()
        self.contracts = sorted(read_folder("calc"))
        self.vectors = read_folder("vectors")
        files = [*sorted((ROOT / "tests/outside").glob("test_*.py")), *sorted((ROOT / "tests").glob("test_*.py"))]
        self.tests = {path: path.read_text("utf-8") for path in files if path.stem not in LEFT_OUT}
        self.tests = {path: text for path, text in self.tests.items() if "limnary.c" in text}
        self.load_libraries()
        self.cost: dict[str, float] = {}

    def load_libraries(self) -> None:
        for text in self.tests.values():
            for node in ast.walk(ast.parse(text)):
                names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else []
                names += [node.module] if isinstance(node, ast.ImportFrom) and node.module else []
                for name in names:
                    if name.split(".")[0] not in ("limnary", "tests") and not (ROOT / f"tests/{name}.py").exists():
                        importlib.import_module(name)
        import marshmallow  # noqa: F401

    def reached_contracts(self, module: str | None, group: str | None) -> list[str]:
        """The calculations that a module (or a group of constants) reaches, the quick ones first."""
        reached = self.users[module] if module else self.using(group)
        return sorted((name for name in self.contracts if name in reached), key=self.cost.get)

    def test_files(self, module: str | None, group: str | None, names: list[str]) -> list[Path]:
        """The test files that name the module, the group or a calculation that it reaches, the quick ones first."""
        words = {*names, *([module] if module else []), *([group] if group else [])}
        pattern = re.compile(rf"\b({'|'.join(sorted(words))})\b")
        paths = [path for path, text in self.tests.items() if pattern.search(text)]
        return sorted(paths, key=lambda path: self.cost.get(str(path), 1.0))

    def using(self, group: str) -> set[str]:
        found = set()
        for path in CALC.glob("*.py"):
            if f'"{group}"' in path.read_text("utf-8"):
                found |= self.users[path.stem]
        return found

    # The checks; each answers None when all is well, else what failed.

    def run_vectors(self, name: str) -> str | None:
        from limnary.contracts import InvalidInput, contracts, run

        for case in [*contracts()[name]["examples"], *self.vectors[name]["cases"]]:
            try:
                got = run(name, case["input"])
            except InvalidInput as no:
                if no.errors != case.get("errors"):
                    return case["id"]
            else:
                if "errors" in case or not agrees(got, case["expected"], case["tolerance"]):
                    return case["id"]
                if any(holds(got, path) for path in case.get("absent", [])):
                    return case["id"]
        return None

    def run_doctests(self, modules: list[str]) -> str | None:
        for name in modules:
            module = importlib.import_module(f"limnary.calc.{name}")
            with open(os.devnull, "w") as nowhere:
                runner = doctest.DocTestRunner(verbose=False)
                for test in doctest.DocTestFinder().find(module, globs=dict(vars(module))):
                    runner.run(test, out=nowhere.write)
            if runner.failures:
                return f"doctest of {name}"
        return None

    def run_tests(self, path: Path) -> str | None:
        # pytest warns that plugins were loaded before it could rewrite their asserts: here that does not matter.
        quiet = ["-W", "ignore::pytest.PytestAssertRewriteWarning", "-p", "no:cacheprovider"]
        code = pytest.main(["-x", *quiet, str(path)])
        return None if code == 0 else str(path.relative_to(ROOT))

    # One fork a mutant

    def measure(self) -> None:
        """Runs the vectors once on the code as it is; stops when one of them fails."""

        def all_of_them():
            told = {}
            for name in self.contracts:
                started = time.process_time()
                if failed := self.run_vectors(name):
                    return {"failed": failed}
                told[name] = time.process_time() - started
            return told

        self.cost = passing(fork(all_of_them, 900), "the vectors")

    def measured(self, path: Path) -> float:
        """Seconds of a test file on the code as it is, run once; stops when it fails."""
        if str(path) not in self.cost:

            def work():
                failed = self.run_tests(path)
                return {"failed": failed} if failed else {"seconds": time.process_time()}

            self.cost[str(path)] = passing(fork(work, 900), path)["seconds"]
        return self.cost[str(path)]

    def killed_by(self, module: str | None, prepare, group: str | None = None, fast: bool = False) -> str | None:
        """What notices the change that `prepare` makes in the fork; None for a survivor."""
        names = self.reached_contracts(module, group)
        stages = [
            Stage(f"vectors of {name}", lambda name=name: self.run_vectors(name), self.cost[name]) for name in names
        ]
        modules = [module] if module else []
        modules += [name for name in names if self.cost[name] < 0.1 and name != module]
        stages.append(Stage("doctests", lambda: self.run_doctests(modules), 1.0))
        if killer := self.attempt(prepare, stages):
            return killer
        for path in () if fast else self.test_files(module, group, names):
            stage = Stage(str(path.relative_to(ROOT)), lambda path=path: self.run_tests(path), self.measured(path))
            if killer := self.attempt(prepare, [stage]):
                return killer
        return None

    def attempt(self, prepare, stages: list[Stage]) -> str | None:
        """What fails of the stages, in one fork."""

        def work():
            prepare()
            return {"by": next(filter(None, map(noticed, stages)), None)}

        told = fork(work, 5 + 6 * sum(stage.seconds for stage in stages))
        return "time limit" if told is None else told["by"]


def passing(told: dict | None, what) -> dict:
    """What a check of the code as it is answers; ends the run when it fails."""
    if told is None or "failed" in told:
        raise SystemExit(f"the code as it is already fails: {what}: {told}")
    return told


def noticed(stage: Stage) -> str | None:
    """What fails in a stage; an exception or a warning that no check expects is a failure too."""
    with warnings.catch_warnings():
        if not stage.name.startswith("tests/"):
            warnings.simplefilter("error")
        try:
            return stage.check()
        except Exception as broken:
            return f"{type(broken).__name__} in {stage.name}"


def edit_module(module: str, source: str) -> None:
    """From now on limnary.calc.`module` is `source`."""
    sys.meta_path.insert(0, EditedModule(f"limnary.calc.{module}", CALC / f"{module}.py", source))


def edit_constant(table: str, group: str, name: str, value: float) -> None:
    """From now on a constant of the shared tables has this value."""
    read_folder("tables")[table]["groups"][group]["values"][name]["value"] = value


def fork(work, seconds: float):
    """What `work()` answers in a fork of this process; None if it used up `seconds` of processor time or died.

    Processor time, so that a busy machine kills no mutant; the clock is only for one that sleeps for ever.
    """
    reader, writer = os.pipe()
    child = os.fork()
    if child == 0:
        os.setpgid(0, 0)
        os.close(reader)
        resource.setrlimit(resource.RLIMIT_CPU, (math.ceil(seconds), math.ceil(seconds) + 1))
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, 1)
        os.dup2(nowhere, 2)
        try:
            os.write(writer, json.dumps(work()).encode())
        finally:
            os._exit(0)
    os.close(writer)
    told, until = b"", time.monotonic() + 60 * seconds
    while select.select([reader], [], [], max(0.0, until - time.monotonic()))[0]:
        part = os.read(reader, 65536)
        if not part:
            break
        told += part
    os.close(reader)
    # The group: a test may have started a process of its own.
    for kill in (lambda: os.killpg(child, signal.SIGKILL), lambda: os.kill(child, signal.SIGKILL)):
        with contextlib.suppress(ProcessLookupError):
            kill()
    os.waitpid(child, 0)
    return json.loads(told) if told else None


def holds(got, path: str) -> bool:
    """As in tests/test_vectors.py: whether the answer has a value at a path such as plan.0.drops_s."""
    for step in path.split("."):
        if isinstance(got, dict) and step not in got:
            return False
        got = got[int(step)] if isinstance(got, list) else got[step]
    return True


def agrees(got, expected, tolerance) -> bool:
    """As in tests/test_vectors.py: expected is a subset of got; numbers within the tolerance, all else equal."""
    if isinstance(expected, int | float) and not isinstance(expected, bool):
        return abs(got - expected) <= tolerance.get("absolute", 0) + tolerance.get("relative", 0) * abs(expected)
    if isinstance(expected, dict):
        return all(agrees(got[key], value, tolerance) for key, value in expected.items())
    if isinstance(expected, list):
        return len(got) == len(expected) and all(map(lambda g, e: agrees(g, e, tolerance), got, expected))
    return got == expected
