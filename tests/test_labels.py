"""Labels of phone and server, read by a decoder that neither of them uses (zxing-cpp)."""

import json
import re
import subprocess
from pathlib import Path

import pytest
import zxingcpp
from limnary.cli import main
from limnary.labels import label_page, tank_address
from PIL import Image

LINES = Path(__file__).parent / "js" / "qr_lines.js"
PIXELS, QUIET = 4, 4
ADDRESSES = ("https://fish.example/tank/0190f3a2-7c1e-7abc-8def-0123456789ab", "http://localhost:8340/tank/tank-0001")
SQUARE = re.compile(r"M(\d+) (\d+)h1v1h-1z")
RUN = re.compile(r"M(\d+) ([\d.]+)h(\d+)|m(-?\d+) (-?\d+)h(\d+)")


def decoded(dark: set[tuple[int, int]], size: int) -> str:
    """The text that a camera reads from dark modules on white, with the quiet zone around them."""
    side = (size + 2 * QUIET) * PIXELS
    picture = Image.new("L", (side, side), 255)
    for column, row in dark:
        at = ((column + QUIET) * PIXELS, (row + QUIET) * PIXELS)
        picture.paste(0, (*at, at[0] + PIXELS, at[1] + PIXELS))
    (code,) = zxingcpp.read_barcodes(picture)
    return code.text


@pytest.mark.parametrize("address", ADDRESSES)
def test_a_camera_reads_the_phones_code(address):
    told = subprocess.run(
        ["node", str(LINES)], input=json.dumps(address) + "\n", capture_output=True, text=True, check=True
    )
    drawn = json.loads(told.stdout)
    dark = {(int(column), int(row)) for column, row in SQUARE.findall(drawn["path"])}
    assert decoded(dark, drawn["size"]) == address


def dark_of(svg: str) -> tuple[set[tuple[int, int]], int]:
    """The dark modules of segno's path, which draws each row as strokes of a unit's height."""
    size = int(re.search(r'viewBox="0 0 (\d+)', svg)[1])
    strokes = re.search(r'class="qrline"[^>]* d="([^"]+)"', svg)[1]
    dark, x, y = set(), 0, 0
    for to_x, to_y, width, by_x, by_y, next_width in RUN.findall(strokes):
        x, y = (int(to_x), int(float(to_y))) if width else (x + int(by_x), y + int(by_y))
        length = int(width or next_width)
        dark |= {(column, y) for column in range(x, x + length)}
        x += length
    return dark, size


def test_a_camera_reads_the_printed_page(fish_room, tmp_path, capsys):
    owner = fish_room.owner
    ops = [
        owner.tank(name="Second <b>", walk_order=2, water_l=54.25),
        owner.tank(name="First", walk_order=1),
        owner.tank(name="Away", resting=True),
    ]
    owner.results(*ops)
    out = tmp_path / "labels.html"
    assert (
        main(["labels", str(out), "--data", str(fish_room.store.files.folder), "--origin", "https://fish.example/"])
        == 0
    )
    assert "2 label(s)" in capsys.readouterr().out
    page = out.read_text("utf-8")
    assert re.findall(r"<b>(.*?)</b>([^<]+)", page) == [("First", "87.5 L"), ("Second &lt;b&gt;", "54.25 L")]
    read = [decoded(*dark_of(svg)) for svg in re.findall(r"<svg.*?</svg>", page, re.DOTALL)]
    assert read == [tank_address("https://fish.example", op["id"]) for op in (ops[1], ops[0])]


def test_another_ending_is_refused(fish_room, tmp_path, capsys):
    assert main(["labels", str(tmp_path / "labels.doc"), "--data", str(fish_room.store.files.folder)]) == 1
    assert ".html" in capsys.readouterr().err


def test_no_tank_is_an_empty_page():
    assert "<ul></ul>" in label_page("Room & board", [], "https://fish.example")
