"""What a thumb does to write things down: notes with photos."""

import struct
import zlib


def picture(name: str = "roots.png", grey: int = 120, width: int = 64, height: int = 48) -> dict:
    """A small grey PNG (ISO/IEC 15948) as the phone's camera would hand it over."""
    rows = b"".join(b"\x00" + bytes([grey]) * width for _ in range(height))
    head = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    parts = [(b"IHDR", head), (b"IDAT", zlib.compress(rows)), (b"IEND", b"")]
    body = b"".join(
        struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data)) for kind, data in parts
    )
    return {"name": name, "mimeType": "image/png", "buffer": b"\x89PNG\r\n\x1a\n" + body}


def take(thumb, *pictures: dict) -> None:
    """Choose photos on the note's page, and wait until they are kept."""
    before = thumb.page.locator(".pictures li").count()
    thumb.page.get_by_label("From this phone").set_input_files(list(pictures))
    thumb.page.locator(".pictures li").nth(before + len(pictures) - 1).wait_for()


def write_note(thumb, *words: str, pictures: int = 1) -> None:
    """From a tank's page: a note of common words with photos."""
    thumb.tap("link", "Note")
    for one in words:
        thumb.tap("button", one)
    take(thumb, *(picture(f"{at}.png", grey=40 * at + 40) for at in range(pictures)))
    thumb.tap("button", "Save with")
    thumb.sees("note saved on this phone")
