"""Six weeks of entries: each tank's simulated water, fed, changed and read as its keepers would."""

import hashlib
import math
import random
from dataclasses import dataclass

from limnary.contracts import run
from limnary.demo.picture import drawn
from limnary.demo.scenario import (
    AWAY,
    AWAY_DAYS,
    BARREL,
    DAYS,
    DECHLORINATOR,
    HAPPENED,
    KEEPER,
    KITS,
    OWNER,
    PLAN,
    PLAN_GLASS,
    PLANT_FOOD,
    TANKS,
    TAP,
    TASKS,
    ZONE,
    Tank,
)
from limnary.demo.water import Water
from limnary.ids import utc
from limnary.protocol.stamps import stamp_of
from limnary.recurrence import local_of, ms_of_local, occurrences, zone_of

HOUR_MS = 3_600_000
DAY_MS = 24 * HOUR_MS
KIT_NOISE = 0.08
SPECIES = {"total_ammonia": "nh4", "nitrite": "no2", "nitrate": "no3"}


@dataclass(frozen=True)
class Entry:
    """One record as one keeper wrote it."""

    at_ms: int
    by: str
    kind: str
    id: str
    fields: dict
    picture: bytes | None = None

    def op(self, op: str, device: str) -> dict:
        """The entry as the protocol's op."""
        body = {"kind": self.kind, "id": self.id, "type": "put", "fields": self.fields, "schema": 1}
        return {"op": op, **body, "stamp": stamp_of(self.at_ms, 0, device)}


def diary(now_ms: int) -> list[Entry]:
    """All entries up to `now_ms`, oldest first; the same `now_ms` gives the same entries."""
    book = _Book(now_ms)
    book.things()
    for tank in TANKS:
        _Keeping(book, tank).whole()
    book.plan()
    book.chores()
    book.away()
    book.happened()
    return sorted((entry for entry in book.entries if entry.at_ms <= now_ms), key=lambda entry: entry.at_ms)


class _Book:
    """Collects entries. Day 0 is six weeks before today, at midnight UTC."""

    def __init__(self, now_ms: int):
        self.now_ms = now_ms
        self.start_ms = now_ms // DAY_MS * DAY_MS - DAYS * DAY_MS
        self.dice = random.Random(8)
        self.entries: list[Entry] = []

    def at(self, day: float, hour: float) -> int:
        return self.start_ms + round(day * DAY_MS + hour * HOUR_MS) + self.dice.randrange(1, 240_000)

    def write(
        self, at_ms: int, by: str, kind: str, fields: dict, record: str | None = None, picture: bytes | None = None
    ) -> str:
        record = record or f"demo-{kind.replace('_', '-')}-{len(self.entries):04d}"
        self.entries.append(Entry(at_ms, by, kind, record, fields, picture))
        return record

    def things(self) -> None:
        """Waters, bottles and kits, entered before the first tank."""
        first = self.at(0, 1)
        self.waters = {
            name: self.write(first, OWNER, "source_water", one) for name, one in (("tap", TAP), ("barrel", BARREL))
        }
        self.bottle = self.write(first, OWNER, "label", DECHLORINATOR)
        self.plant_food = self.write(first, OWNER, "label", PLANT_FOOD)
        self.kits = {parameter: self.write(first, OWNER, "test_kit", kit) for parameter, kit in KITS.items()}

    def plan(self) -> None:
        """One more tank, which is still being set up."""
        size = run("volume", PLAN_GLASS)
        water = {"source_water": self.waters["tap"], "dechlorinator": self.bottle}
        fields = {**PLAN, **water, "measures": PLAN_GLASS, "water_l": size["water_l"], "gross_l": size["gross_l"]}
        self.write(self.at(DAYS - 3, 19), OWNER, "tank", fields, "demo-tank-plan")

    def chores(self) -> None:
        """Repeating tasks, done on their days except for the last few."""
        where = zone_of(ZONE)
        for rule, tank, title, hour, left in TASKS:
            first = local_of(self.start_ms + DAY_MS, where).replace(hour=hour, minute=0, second=0)
            starts_at = utc(ms_of_local(first, where))
            fields = {"title": title, "starts_at": starts_at, "rule": rule, "zone": ZONE}
            about = {"tank": f"demo-tank-{tank}"} if tank else {}
            task = self.write(self.at(0, 2), OWNER, "task", {**fields, **about})
            begun = next((max(one.first_day, 0) for one in TANKS if one.key == tank), 0)
            due = occurrences(rule, starts_at, ZONE, self.start_ms + begun * DAY_MS, self.now_ms)
            for due_ms in due[: len(due) - left]:
                at = min(due_ms + self.dice.randrange(600_000, 3_600_000), self.now_ms)
                self.write(at, KEEPER, "task_done", {"task": task, "at": utc(at), "due_at": utc(due_ms)})

    def away(self) -> None:
        """The sheet for whoever looks after the tanks next week, written an hour ago."""
        first, last = (self.now_ms // DAY_MS * DAY_MS + day * DAY_MS + 12 * HOUR_MS for day in AWAY_DAYS)
        tanks = [f"demo-tank-{tank.key}" for tank in TANKS]
        fields = {"from_at": utc(first), "to_at": utc(last), "tanks": tanks, **AWAY}
        self.write(self.now_ms - HOUR_MS, OWNER, "away_sheet", fields)

    def happened(self) -> None:
        """Things moved between tanks, and a death; a move is two records with the same time."""
        for day, kind, tank, other, what in HAPPENED:
            at = self.at(day, 12)
            here, there = f"demo-tank-{tank}", f"demo-tank-{other}"
            fields = {"at": utc(at), **what}
            if other is None:
                self.write(at, OWNER, kind, {**fields, "tank": here})
            elif kind == "shared_tool":
                self.write(at, OWNER, kind, {**fields, "tank": here, "other_tank": there})
            else:
                self.write(at, OWNER, kind, {**fields, "tank": here, "other_tank": there, "change": "move_out"})
                self.write(at, OWNER, kind, {**fields, "tank": there, "other_tank": here, "change": "move_in"})


class _Keeping:
    """One tank's six weeks."""

    def __init__(self, book: _Book, tank: Tank):
        self.book, self.tank, self.id = book, tank, f"demo-tank-{tank.key}"
        self.size = run("volume", tank.measures)
        self.water = Water(tank, self.size["water_l"])
        self.nitrite_seen = 0.0

    def whole(self) -> None:
        begun = max(self.tank.first_day, 0)
        self._set_up(begun)
        for day in range(begun, DAYS + 1):
            for hour in range(24):
                self._hour(day, hour)
                self.water.hour()

    def _set_up(self, day: int) -> None:
        tank, about = self.tank, {"tank": self.id}
        fields = {
            **tank.record,
            "measures": tank.measures,
            "water_l": self.size["water_l"],
            "gross_l": self.size["gross_l"],
            "started_at": utc(self.book.start_ms + tank.first_day * DAY_MS + 10 * HOUR_MS),
            "temperature_c": tank.temperature_c,
            "ph": tank.ph,
            "kh_dkh": 6,
            "gh_dgh": 9,
            "feed_g_day": tank.feed_g,
            "protein_fraction": tank.protein_fraction,
            "source_water": self.book.waters["tap"],
            "dechlorinator": self.book.bottle,
        }
        self.book.write(self.book.at(day, 1.5), OWNER, "tank", fields, self.id)
        for kind, listed in (("stock_change", tank.stock), ("planting", tank.plants)):
            for on, what in listed:
                at = self.book.at(on, 11)
                self.book.write(at, OWNER, kind, {**about, "at": utc(at), **what})
        for on, text in tank.notes:
            at = self.book.at(on, 20)
            self.book.write(at, KEEPER, "note", {**about, "at": utc(at), "text": text})
        for on, text in tank.drawn:
            self._note_with_picture(self.book.at(on, 19), text)

    def _note_with_picture(self, at: int, text: str) -> None:
        picture = drawn()
        shared = {"tank": self.id, "at": utc(at), "entry": f"demo-entry-{self.tank.key}-{at}"}
        self.book.write(at, KEEPER, "note", {**shared, "text": text})
        held = {"sha256": hashlib.sha256(picture).hexdigest(), "media_type": "image/png", "bytes": len(picture)}
        self.book.write(at, KEEPER, "photo", {**shared, **held, "width": 480, "height": 360}, picture=picture)

    def _hour(self, day: int, hour: int) -> None:
        by = OWNER if day % 3 else KEEPER
        stocked = day >= self.tank.stock[0][0]
        if hour == 5 and day in self.tank.test_days:
            self._test(self.book.at(day, hour), by)
        if hour == 17 and self._changes(day):
            self._change(self.book.at(day, hour), by)
        if hour == 18 and stocked:
            self.water.feed(self.tank.feed_g)
            at = self.book.at(day, hour)
            fed = {"feed_g": self.tank.feed_g, "protein_fraction": self.tank.protein_fraction, "food": "flakes"}
            self.book.write(at, by, "feeding", {"tank": self.id, "at": utc(at), **fed})
        if hour == 19 and day % 7 == 5:
            self._fertilise(self.book.at(day, hour), by)

    def _changes(self, day: int) -> bool:
        if self.tank.change_at_nitrite is None:
            return day in self.tank.change_days
        return self.nitrite_seen >= self.tank.change_at_nitrite

    def _test(self, at: int, by: str) -> None:
        shared = {"tank": self.id, "at": utc(at), "test": f"demo-test-{self.tank.key}-{at}"}
        known = {"total_ammonia": self.water.ammonia, "nitrite": self.water.nitrite, "nitrate": self.water.nitrate}
        for parameter, mg_n_l in known.items():
            kit = KITS[parameter]
            value = read_steps(kit["steps"], self._as_ion(parameter, mg_n_l), self.book.dice)
            how = {name: kit[name] for name in ("basis", "unit", "steps")}
            reading = {**shared, "parameter": parameter, "value": value, "kit": self.book.kits[parameter], **how}
            self.book.write(at, by, "reading", reading)
            if parameter == "nitrite":
                self.nitrite_seen = run("nitrogen_units", {"value": value, "species": "no2", "basis": "ion"})[
                    "as_n_mg_l"
                ]
        for parameter, value, spread in (("ph", self.tank.ph, 0.06), ("temperature", self.tank.temperature_c, 0.3)):
            shown = round(value + self.book.dice.gauss(0, spread), 1)
            kit = {"kit": self.book.kits[parameter], **({"unit": "°C"} if parameter == "temperature" else {})}
            self.book.write(at, by, "reading", {**shared, "parameter": parameter, "value": shown, **kit})

    def _as_ion(self, parameter: str, mg_n_l: float) -> float:
        return run("nitrogen_units", {"value": mg_n_l, "species": SPECIES[parameter], "basis": "n"})["as_ion_mg_l"]

    def _change(self, at: int, by: str) -> None:
        litres = math.floor(self.tank.change_fraction * self.size["water_l"])
        fraction = litres / self.size["water_l"]
        dose = run(
            "dechlorinator_dose",
            {
                "change_l": litres,
                "tank_l": self.size["water_l"],
                "basis": DECHLORINATOR["basis"],
                "label_ml": DECHLORINATOR["amount"],
                "label_per_l": DECHLORINATOR["per_l"],
                "disinfectant": TAP["disinfectant"],
                "disinfectant_mg_l": TAP["disinfectant_mg_l"],
            },
        )
        self.water.change(fraction, TAP, dose["freed_ammonia_mg_n_l"])
        self.nitrite_seen = 0.0
        when = {"tank": self.id, "at": utc(at)}
        fields = {
            **when,
            "litres": litres,
            "fraction": fraction,
            "source_water": self.book.waters["tap"],
            "temperature_c": 22,
        }
        change = self.book.write(at, by, "water_change", fields)
        dosed = {
            "what": DECHLORINATOR["name"],
            "label": self.book.bottle,
            "amount": dose["label_dose_ml"],
            "unit": "ml",
        }
        self.book.write(at, by, "dose", {**when, **dosed, "for_litres": litres, "water_change": change})

    def _fertilise(self, at: int, by: str) -> None:
        amount = round(self.size["water_l"] * PLANT_FOOD["amount"] / PLANT_FOOD["per_l"], 1)
        dosed = {"what": PLANT_FOOD["name"], "label": self.book.plant_food, "amount": amount, "unit": "ml"}
        self.book.write(at, by, "dose", {"tank": self.id, "at": utc(at), **dosed, "for_litres": self.size["water_l"]})


def read_steps(steps: list[float], true_mg_l: float, dice: random.Random) -> float:
    """The step whose colour looks nearest, on a logarithmic scale where the steps are about evenly spaced.

    >>> read_steps([0, 0.25, 0.5, 1], 0.47, random.Random(1))
    0.5
    """
    seen = math.log(true_mg_l * math.exp(dice.gauss(0, KIT_NOISE)) + _eye(steps))
    return min(steps, key=lambda step: abs(math.log(step + _eye(steps)) - seen))


def _eye(steps: list[float]) -> float:
    """Offset of that scale: half the first step, below which the eye sees nothing."""
    return steps[1] / 2
