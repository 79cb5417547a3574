"""Seeded random numbers, the same in both languages: Threefry-2x32-20 and Box-Muller.

A counter-based generator has no hidden state: draw i of a seed is a function of (seed, i) alone, so a
stored belief keeps only the position that it has reached.
"""

from functools import lru_cache

import numpy as np

_ROTATIONS = ((13, 15, 26, 6), (17, 29, 16, 24))
_PARITY = 0x1BD11BDA


def threefry(key: tuple[int, int], low: np.ndarray, high: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The two 32-bit words of Threefry-2x32, 20 rounds, of each counter.

    `key`: two whole numbers below 2**32; `low`, `high`: uint32 arrays of one shape.
    Source: Salmon, Moraes, Dror, Shaw 2011, Parallel random numbers: as easy as 1, 2, 3 (SC11).

    >>> [hex(int(word[0])) for word in threefry((0, 0), np.zeros(1, np.uint32), np.zeros(1, np.uint32))]
    ['0x6b200159', '0x99ba4efe']
    """
    keys = (key[0], key[1], _PARITY ^ key[0] ^ key[1])
    x0 = low + np.uint32(keys[0])
    x1 = high + np.uint32(keys[1])
    for group in range(5):
        for rotation in _ROTATIONS[group % 2]:
            x0 += x1
            x1 = (x1 << np.uint32(rotation)) | (x1 >> np.uint32(32 - rotation))
            x1 ^= x0
        x0 += np.uint32(keys[(group + 1) % 3])
        x1 += np.uint32((keys[(group + 2) % 3] + group + 1) & 0xFFFFFFFF)
    return x0, x1


def _open_unit(words: np.ndarray) -> np.ndarray:
    """32-bit words as numbers in (0, 1)."""
    return (words + 0.5) / 4294967296.0


@lru_cache(maxsize=32)
def normals(seed: int, position: int, count: int) -> np.ndarray:
    """`count` (even) standard normal draws, shape (count,), read-only, from the counters at `position`.

    r cos(a), r sin(a) with r = sqrt(-2 ln u1), a = 2 pi u2 (Box and Muller 1958).
    The next free position is position + count / 2; positions stay below 2**32.
    """
    low = np.arange(position, position + count // 2, dtype=np.uint32)
    word_1, word_2 = threefry((seed, 0), low, np.zeros_like(low))
    radius = np.sqrt(-2.0 * np.log(_open_unit(word_1)))
    angle = 2.0 * np.pi * _open_unit(word_2)
    out = np.empty(count)
    out[0::2] = radius * np.cos(angle)
    out[1::2] = radius * np.sin(angle)
    out.flags.writeable = False  # cached: changes tried on one belief share these numbers
    return out


def uniform(seed: int, position: int) -> float:
    """One draw in (0, 1) from the counter at `position`; the next free position is position + 1."""
    low = np.array([position], dtype=np.uint32)
    word, _ = threefry((seed, 0), low, np.zeros_like(low))
    return float(_open_unit(word)[0])
