"""Labels for the tanks, to print and stick on: a QR code of the tank's page, its name and its litres. Pure."""

import html
import io
from collections.abc import Iterable

import segno

STYLE = """
@page { margin: 10mm; }
body { margin: 0; font: 11pt/1.25 system-ui, sans-serif; color: #000; background: #fff; }
ul { display: grid; grid-template-columns: repeat(3, 1fr); gap: 4mm; margin: 0; padding: 0; list-style: none; }
li { break-inside: avoid; border: 0.3mm dashed #999; padding: 3mm; text-align: center; overflow-wrap: anywhere; }
svg { display: block; width: 38mm; height: 38mm; margin: 0 auto 2mm; }
b { display: block; font-size: 13pt; }
"""


def label_page(room: str, tanks: Iterable[dict], origin: str) -> str:
    """A complete HTML page with a label for each tank (record fields with `id`), in the order given."""
    items = "".join(_label(tank, origin) for tank in tanks)
    return (
        f'<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>{html.escape(room)}</title>'
        f"<style>{STYLE}</style></head><body><ul>{items}</ul></body></html>\n"
    )


def tank_address(origin: str, tank: str) -> str:
    """The address on a label: the tank's page.

    >>> tank_address("https://fish.example/", "tank-0001")
    'https://fish.example/tank/tank-0001'
    """
    return f"{origin.rstrip('/')}/tank/{tank}"


def _label(tank: dict, origin: str) -> str:
    out = io.BytesIO()
    segno.make(tank_address(origin, tank["id"]), error="m").save(
        out, kind="svg", xmldecl=False, omitsize=True, border=4, light="#fff"
    )
    name, litres = html.escape(tank["name"]), f"{tank['water_l']:.4g} L"
    return f"<li>{out.getvalue().decode('utf-8')}<b>{name}</b>{litres}</li>"
