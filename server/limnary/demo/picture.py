"""A drawn tank for the invented fish room, as a PNG (ISO/IEC 15948); it is not a photo of anything."""

import math
import struct
import zlib

WATER_TOP, WATER_DEEP = (214, 232, 222), (74, 128, 112)
GRAVEL, LEAF_NEAR, LEAF_FAR = (96, 78, 58), (44, 104, 58), (92, 150, 96)


def drawn(width: int = 480, height: int = 360, stems: int = 26) -> bytes:
    """A hedge of ribbon leaves over gravel, `width` by `height` px; the same bytes each time.

    >>> drawn()[:8].hex()
    '89504e470d0a1a0a'
    """
    rows = b"".join(b"\x00" + b"".join(bytes(row) for row in line) for line in _lines(width, height, stems))
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + _part(b"IHDR", head) + _part(b"IDAT", zlib.compress(rows, 9)) + _part(b"IEND", b"")


def _part(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def _lines(width: int, height: int, stems: int) -> list[list[tuple[int, int, int]]]:
    floor = [round(height * (0.86 + 0.02 * math.sin(x / 37))) for x in range(width)]
    lines = [
        [GRAVEL if y >= floor[x] else _between(WATER_TOP, WATER_DEEP, y / height) for x in range(width)]
        for y in range(height)
    ]
    for stem in range(stems):
        foot = width * (0.04 + 0.92 * ((stem * 0.618) % 1))
        top = height * (0.08 + 0.3 * ((stem * 0.377) % 1))
        leaf = LEAF_FAR if stem < stems / 2 else LEAF_NEAR
        for y in range(int(top), floor[min(int(foot), width - 1)]):
            lean = 14 * math.sin(stem + (height - y) / 60) * (height - y) / height
            thick = 2.5 + 2.5 * (y - top) / height
            for x in range(max(0, int(foot + lean - thick)), min(width, int(foot + lean + thick))):
                lines[y][x] = leaf
    return lines


def _between(first: tuple, second: tuple, share: float) -> tuple[int, int, int]:
    return tuple(round(a + (b - a) * share) for a, b in zip(first, second, strict=True))
