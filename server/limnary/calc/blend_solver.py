"""Least-squares shares of a mixture: each share from 0 to its cap, all shares adding up to 1.

The solver tries every face of that polytope (each water absent, at its cap, or free), so the answer is exact.
Both languages take the same steps: only + - x / and comparisons, in the same order.
"""

from itertools import product

ABSENT, FREE, CAPPED = 0, 1, 2
SLACK = 1e-9


def best_shares(rows: list[list[float]], wanted: list[float], caps: list[float]) -> list[float] | None:
    """Shares with the least sum over k of (rows[k] . shares - wanted[k])^2; None if the caps sum to less than 1.

    rows: one list for each property, a value for each water; wanted: one value for each property;
    caps: the largest share of each water, 0 to 1. Of equally good answers it takes the one with the fewest
    waters, then the first.
    """
    best, best_miss, best_used = None, 0.0, 0
    for states in product((ABSENT, FREE, CAPPED), repeat=len(caps)):
        shares = _on_face(rows, wanted, caps, states)
        if shares is None:
            continue
        miss = 0.0
        for row, goal in zip(rows, wanted, strict=True):
            off = -goal
            for value, share in zip(row, shares, strict=True):
                off += value * share
            miss += off * off
        used = sum(share > 0 for share in shares)
        if best is None or miss < best_miss - SLACK or (miss <= best_miss + SLACK and used < best_used):
            best, best_miss, best_used = shares, miss, used
    return best


def _on_face(rows, wanted, caps, states) -> list[float] | None:
    """The best shares of one face, or None if they leave the polytope or are not unique."""
    free = [i for i, state in enumerate(states) if state == FREE]
    if not free or len(free) > len(rows) + 1:
        return None
    shares = [caps[i] if state == CAPPED else 0.0 for i, state in enumerate(states)]
    rest = 1.0
    for share in shares:
        rest -= share
    *others, last = free
    # The last free water takes the rest, which leaves an ordinary least-squares problem in the other free waters.
    slopes, goals = [], []
    for row, goal in zip(rows, wanted, strict=True):
        fixed = row[last] * rest
        for value, share in zip(row, shares, strict=True):
            fixed += value * share
        slopes.append([row[i] - row[last] for i in others])
        goals.append(goal - fixed)
    found = _least_squares(slopes, goals, len(others))
    if found is None:
        return None
    for i, share in zip(others, found, strict=True):
        shares[i] = share
        rest -= share
    shares[last] = rest
    for i in free:
        if shares[i] < -SLACK or shares[i] > caps[i] + SLACK:
            return None
        shares[i] = min(caps[i], max(0.0, shares[i]))
        if shares[i] < SLACK:
            shares[i] = 0.0
    return shares


def _least_squares(slopes: list[list[float]], goals: list[float], size: int) -> list[float] | None:
    """Solve the normal equations by elimination with pivots; None if the solution is not unique."""
    matrix = []
    for a in range(size):
        line = []
        for b in range(size):
            total = 0.0
            for slope in slopes:
                total += slope[a] * slope[b]
            line.append(total)
        total = 0.0
        for slope, goal in zip(slopes, goals, strict=True):
            total += slope[a] * goal
        matrix.append([*line, total])
    largest = max((matrix[a][a] for a in range(size)), default=0.0)
    for column in range(size):
        pivot = column
        for line in range(column + 1, size):
            if abs(matrix[line][column]) > abs(matrix[pivot][column]):
                pivot = line
        if abs(matrix[pivot][column]) <= SLACK * largest:
            return None
        matrix[column], matrix[pivot] = matrix[pivot], matrix[column]
        for line in range(column + 1, size):
            factor = matrix[line][column] / matrix[column][column]
            for k in range(column, size + 1):
                matrix[line][k] -= factor * matrix[column][k]
    found = [0.0] * size
    for line in range(size - 1, -1, -1):
        total = matrix[line][size]
        for k in range(line + 1, size):
            total -= matrix[line][k] * found[k]
        found[line] = total / matrix[line][line]
    return found
