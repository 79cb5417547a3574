"""Every small mistake that could be made in one Python file, one at a time, as edited source text.

The same operators as javascript_mutants.js; README.md describes them.
"""

import ast
import re
from dataclasses import dataclass

_BOUNDARY = {ast.Lt: "<=", ast.LtE: "<", ast.Gt: ">=", ast.GtE: ">"}
_OPPOSITE = {
    ast.Lt: ">=",
    ast.LtE: ">",
    ast.Gt: "<=",
    ast.GtE: "<",
    ast.Eq: "!=",
    ast.NotEq: "==",
    ast.Is: "is not",
    ast.IsNot: "is",
    ast.In: "not in",
    ast.NotIn: "in",
}
_COMPARED = re.compile(r"<=|>=|==|!=|<|>|\bis\s+not\b|\bnot\s+in\b|\bis\b|\bin\b")
_ARITHMETIC = {
    ast.Add: ("+", "-"),
    ast.Sub: ("-", "+"),
    ast.Mult: ("*", "/"),
    ast.Div: ("/", "*"),
    ast.FloorDiv: ("//", "/"),
    ast.Mod: ("%", "*"),
    ast.Pow: ("**", "*"),
}
_CLAMPS = {"min", "max", "minimum", "maximum"}
_CALLS = {"min": "max", "max": "min", "minimum": "maximum", "maximum": "minimum", "any": "all", "all": "any"}
_CALLS |= {"ceil": "floor", "floor": "ceil"}
# Below this a constant is a tolerance for rounding: 5 % of it means nothing, so it is set to 0.
_TOLERANCE = 1e-6
_TOLERANCES = {"HAIR", "SLACK", "TOLERANCE"}


@dataclass(frozen=True)
class Mutant:
    """One edit: the line it starts on (from 1), what kind, the text before and after, the whole edited source."""

    line: int
    operator: str
    before: str
    after: str
    source: str


def mutants(source: str) -> list[Mutant]:
    """All mutants of `source` that compile, in the order of the file."""
    found = _Finder(source)
    found.visit(ast.parse(source))
    made, seen = [], {source}
    for start, end, operator, text in sorted(found.edits):
        edited = found.replaced(start, end, text)
        if edited in seen or not _compiles(edited):
            continue
        seen.add(edited)
        made.append(Mutant(found.line_of(start), operator, *found.shown(start, end, text), edited))
    return made


def scaled(value: float) -> list[float]:
    """What a constant is changed to: 5 % up and down, 1 for 0, 0 for a tolerance, the next for a small whole number."""
    if value == 0:
        return [1]
    if abs(value) <= _TOLERANCE:
        return [0]
    if isinstance(value, int):
        return [value + 1] if abs(value) < 20 else [round(value * 1.05), round(value * 0.95)]
    return [float(f"{value * 1.05:.12g}"), float(f"{value * 0.95:.12g}")]


def _compiles(source: str) -> bool:
    try:
        compile(source, "mutant", "exec")
    except (SyntaxError, SyntaxWarning):
        return False
    return True


class _Finder(ast.NodeVisitor):
    def __init__(self, source: str):
        self.source = source
        self.raw = source.encode()
        self.starts = [0]
        for line in self.raw.splitlines(keepends=True):
            self.starts.append(self.starts[-1] + len(line))
        self.edits: list[tuple[int, int, str, str]] = []
        self.assigned: list[set] = [set()]

    # Places in the text

    def at(self, node: ast.AST) -> tuple[int, int]:
        first = self.starts[node.lineno - 1] + node.col_offset
        return first, self.starts[node.end_lineno - 1] + node.end_col_offset

    def text(self, start: int, end: int) -> str:
        return self.raw[start:end].decode()

    def of(self, node: ast.AST) -> str:
        return self.text(*self.at(node))

    def replaced(self, start: int, end: int, text: str) -> str:
        return (self.raw[:start] + text.encode() + self.raw[end:]).decode()

    def line_of(self, offset: int) -> int:
        return self.raw[:offset].count(b"\n") + 1

    def shown(self, start: int, end: int, text: str) -> tuple[str, str]:
        """The lines of an edit before and after it, without indentation and line ends."""
        first = self.raw.rfind(b"\n", 0, start) + 1
        last = self.raw.find(b"\n", end)
        last = len(self.raw) if last < 0 else last
        before = self.text(first, last)
        after = self.text(first, start) + text + self.text(end, last)
        return " ".join(before.split()), " ".join(after.split())

    def edit(self, node: ast.AST, operator: str, text: str) -> None:
        self.edits.append((*self.at(node), operator, text))

    def between(self, left: ast.AST, right: ast.AST, pattern: str | re.Pattern, operator: str, text: str) -> None:
        start, end = self.at(left)[1], self.at(right)[0]
        hit = re.search(pattern, self.text(start, end))
        if hit:
            self.edits.append((start + hit.start(), start + hit.end(), operator, text))

    # Conditions

    def condition(self, test: ast.expr, values: tuple = ("True", "False")) -> None:
        for value in values:
            self.edit(test, "condition", value)

    def visit_If(self, node: ast.If) -> None:
        self.condition(node.test)
        self.generic_visit(node)

    def visit_IfExp(self, node: ast.IfExp) -> None:
        self.edit(node, "condition", f"({self.of(node.body)})")
        self.edit(node, "condition", f"({self.of(node.orelse)})")
        self.generic_visit(node)

    def visit_While(self, node: ast.While) -> None:
        self.condition(node.test, ("False",))
        self.generic_visit(node)

    def visit_comprehension(self, node: ast.comprehension) -> None:
        for test in node.ifs:
            self.condition(test)
        self.generic_visit(node)

    def visit_Compare(self, node: ast.Compare) -> None:
        sides = [node.left, *node.comparators]
        for left, right, op in zip(sides, sides[1:], node.ops, strict=False):
            if type(op) in _BOUNDARY and not self.tolerant(left) and not self.tolerant(right):
                self.between(left, right, _COMPARED, "boundary", _BOUNDARY[type(op)])
            self.between(left, right, _COMPARED, "negation", _OPPOSITE[type(op)])
        self.generic_visit(node)

    def tolerant(self, side: ast.expr) -> bool:
        """A bound that is, or is widened by, a tolerance for rounding: no figure lies exactly there."""
        if isinstance(side, ast.Name):
            return side.id in _TOLERANCES
        if not isinstance(side, ast.BinOp) or not isinstance(side.op, ast.Add | ast.Sub):
            return False
        if isinstance(side.right, ast.Constant):
            return 0 < side.right.value <= _TOLERANCE
        return getattr(side.right, "id", "") in _TOLERANCES

    def visit_BoolOp(self, node: ast.BoolOp) -> None:
        here, there = ("and", "or") if isinstance(node.op, ast.And) else ("or", "and")
        for left, right in zip(node.values, node.values[1:], strict=False):
            self.between(left, right, rf"\b{here}\b", "boolean", there)
        self.generic_visit(node)

    # Arithmetic, constants, clamps

    def visit_UnaryOp(self, node: ast.UnaryOp) -> None:
        if isinstance(node.op, ast.Not):
            self.edit(node, "boolean", f"({self.of(node.operand)})")
        elif isinstance(node.op, ast.USub):
            self.edit(node, "arithmetic", f"({self.of(node.operand)})")
        self.generic_visit(node)

    def visit_BinOp(self, node: ast.BinOp) -> None:
        if type(node.op) in _ARITHMETIC:
            here, there = _ARITHMETIC[type(node.op)]
            self.between(node.left, node.right, re.escape(here), "arithmetic", there)
        self.generic_visit(node)

    def visit_AugAssign(self, node: ast.AugAssign) -> None:
        self.edit(node, "statement", "pass")
        if type(node.op) in _ARITHMETIC:
            here, there = _ARITHMETIC[type(node.op)]
            self.between(node.target, node.value, re.escape(here), "arithmetic", there)
        self.generic_visit(node)

    def visit_Constant(self, node: ast.Constant) -> None:
        if isinstance(node.value, bool):
            self.edit(node, "constant", str(not node.value))
        elif isinstance(node.value, int | float):
            for value in scaled(node.value):
                self.edit(node, "constant", repr(value))

    def visit_keyword(self, node: ast.keyword) -> None:
        # zip(..., strict=True) guards against a mistake in the code itself.
        if node.arg != "strict":
            self.generic_visit(node)

    def visit_Call(self, node: ast.Call) -> None:
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        plain = not any(isinstance(arg, ast.Starred) for arg in node.args)
        if name in _CLAMPS and len(node.args) > 1 and plain:
            for dropped in node.args:
                left = [self.of(arg) for arg in node.args if arg is not dropped]
                kept = f"({left[0]})" if len(left) == 1 else f"{self.of(node.func)}({', '.join(left)})"
                self.edit(node, "clamp", kept)
        elif name in _CALLS:
            _, end = self.at(node.func)
            self.edits.append((end - len(name), end, "clamp", _CALLS[name]))
        elif name == "abs" and len(node.args) == 1:
            self.edit(node, "clamp", f"({self.of(node.args[0])})")
        self.generic_visit(node)

    # Statements

    def visit_Expr(self, node: ast.Expr) -> None:
        if isinstance(node.value, ast.Constant):
            return
        if not isinstance(node.value, ast.Yield | ast.YieldFrom):
            self.edit(node, "statement", "pass")
        self.generic_visit(node)

    def visit_Raise(self, node: ast.Raise) -> None:
        self.edit(node, "statement", "pass")

    def visit_Continue(self, node: ast.Continue) -> None:
        self.edit(node, "statement", "pass")

    def visit_Break(self, node: ast.Break) -> None:
        self.edit(node, "statement", "pass")

    def visit_Assign(self, node: ast.Assign) -> None:
        names = [inner for target in node.targets for inner in ast.walk(target)]
        stored = {inner.id for inner in names if isinstance(inner, ast.Name) and isinstance(inner.ctx, ast.Store)}
        # Only a name that already has a value can lose its second one without a NameError.
        if stored <= self.assigned[-1] and len(self.assigned) > 1:
            self.edit(node, "statement", "pass")
        self.generic_visit(node)
        self.assigned[-1] |= stored

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        arguments = node.args
        named = [*arguments.posonlyargs, *arguments.args, *arguments.kwonlyargs]
        self.assigned.append({argument.arg for argument in named})
        for statement in node.body:
            self.visit(statement)
        self.assigned.pop()

    # Annotations, decorators and the defaults of arguments (the contract fills those in) stay as they are.

    def visit_AnnAssign(self, node: ast.AnnAssign) -> None:
        if node.value:
            self.visit(node.value)

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        for statement in node.body:
            self.visit(statement)

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        """Positions inside an f-string are not exact before Python 3.12."""
