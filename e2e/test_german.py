"""A German phone speaks German, commas too; an English phone shows in English what its tiles recorded."""

import json
import re

import pytest
from foretold import plain, write
from playwright.sync_api import expect

pytestmark = pytest.mark.browser


def test_a_day_in_german(served_room, new_phone):
    thumb = new_phone(locale="de-DE")
    link = served_room.link
    thumb.open(link[link.index("/join") :])
    thumb.type("Dein Name", "Aino")
    thumb.type("Ein Name für dieses Handy", "Ainos Handy")
    thumb.tap("button", "Beitreten")
    thumb.title("Runde")
    expect(thumb.page.locator("html")).to_have_attribute("lang", "de-DE")

    thumb.turn_to("/tanks/new")
    thumb.pick("rechteckig")
    for label, figure in (("Länge", "80"), ("Breite", "35"), ("Höhe", "40"), ("So hoch steht das Wasser", "36,5")):
        thumb.type(label, figure)
    expect(thumb.page.get_by_label("Wasser darin").first).to_have_text("102,2 L")
    thumb.type("Name", "Schilfbecken")
    thumb.tap("button", "Becken speichern")
    thumb.title("Schilfbecken")
    tank = thumb.page.url.rsplit("/", 1)[-1]
    tap_water = {"name": "Leitung", "disinfectant": "chlorine"}
    label = {"name": "Klar", "use": "dechlorinator", "amount": 2.5, "unit": "ml", "per_l": 10, "basis": "new_water"}
    write(thumb, [["source_water", "water-leitung", tap_water], ["label", "label-klar", label]])
    write(thumb, [["tank", tank, {"source_water": "water-leitung", "dechlorinator": "label-klar"}]])

    thumb.turn_to(f"/tank/{tank}")
    thumb.tap("link", "Testen")
    thumb.tap("button", "0,5", exact=True)
    thumb.sees("2 von 5")
    thumb.tap("button", "0,5", exact=True)
    thumb.tap("button", "Weglassen")
    thumb.sees("4 von 5")
    thumb.key_in("7,8")
    thumb.tap("button", "3 Messwerte speichern")
    thumb.sees("3 Messwerte auf diesem Handy gespeichert")
    expect(thumb.page.get_by_text("Die Vorhersage wird gerade gerechnet")).to_have_count(0)
    said = plain(thumb.page.locator(".sentence").first)
    hit = re.fullmatch(r"Wechsle (?:jetzt|heute|bis .+ Uhr) (\d+) L, mit ([\d,]+) ml Klar\.", said)
    assert hit, said
    litres, dose = hit.groups()
    assert float(dose.replace(",", ".")) == pytest.approx(int(litres) / 4)

    thumb.tap("link", "Wechseln")
    thumb.tap("button", f"{litres} L, andere Zahl eingeben")
    thumb.key_in("20,5")
    thumb.tap("button", "20,5 L und 5,13 ml eintragen")
    thumb.sees("20,5 L und 5,13 ml auf diesem Handy gespeichert")
    thumb.turn_to(f"/tank/{tank}/note")
    thumb.tap("button", "Pflanzen perlen")
    thumb.page.get_by_role("textbox").fill("Drei Stück")
    thumb.tap("button", "Notiz speichern")
    thumb.title("Schilfbecken")
    thumb.turn_to(f"/tank/{tank}/stock/new?change=death&species=Danio%20rerio")
    thumb.tap("button", "Alter", exact=True)
    thumb.tap("button", "1 × Zebrabärbling: gestorben")
    thumb.sees("1 × Zebrabärbling gestorben, auf diesem Handy gespeichert")
    thumb.turn_to("/room")
    thumb.tap("button", "Jetzt teilen")
    thumb.sees("Alles auf diesem Handy ist geteilt.")
    held = {row["kind"]: json.loads(row["fields"]) for row in served_room.rows("SELECT kind, fields FROM records")}
    assert held["tank"]["water_l"] == pytest.approx(80 * 35 * 36.5 / 1000)
    assert (held["water_change"]["litres"], held["dose"]["amount"]) == (20.5, pytest.approx(5.125))
    assert (held["note"]["text"], held["note"]["quick"]) == ("Pflanzen perlen\nDrei Stück", ["pearling"])
    assert (held["stock_change"]["cause"], held["stock_change"]["cause_code"]) == ("Alter", "age")
    thumb.turn_to("/room/display")
    thumb.pick("English")
    expect(thumb.page.locator("html")).to_have_attribute("lang", "en")
    thumb.turn_to(f"/tank/{tank}/history")
    thumb.sees("Plants pearling")
    thumb.sees("Drei Stück")
    thumb.sees("1 × zebra danio, died: old age")
