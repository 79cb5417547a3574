"""A notebook kept elsewhere, read as records: the twin of `pwa/advice/notebook.js` and `pwa/data/notebook_file.js`.

Nothing is guessed where two readings are possible, and a row with an error makes no record. The id of a record follows
from its kind and fields, so the same row of the same notebook is the same record on the server and on every phone.
"""

import csv
import hashlib
import io
import json
import re
import unicodedata
from dataclasses import dataclass, field
from datetime import UTC, datetime, tzinfo

from limnary.errors import BadRequest
from limnary.ids import utc
from limnary.protocol.records import Refused, check_fields, kinds
from limnary.schema_files import read_folder
from limnary.store.archive import unquoted

HEADINGS = [
    ("date", r"^(date|datum|at|when|day|tag|jour|wann|quand)\b"),
    ("time", r"^(time|uhrzeit|zeit|heure|hour)\b"),
    ("tank", r"^(tank|aquarium|becken|bac|pool)s?\b"),
    ("total_ammonia", r"ammoni|\bnh[34]\b|\btan\b"),
    ("nitrite", r"nitrit|\bno2\b"),
    ("nitrate", r"nitrat|\bno3\b"),
    ("ph", r"^ph\b"),
    ("temperature", r"temp|^°?[cf]$"),
    ("kh", r"^kh\b|\bdkh\b|carbonat|karbonat|alkalinit"),
    ("gh", r"^gh\b|\bdgh\b|general hardness|gesamth|durete"),
    ("phosphate", r"phosph|\bpo4\b"),
    ("conductivity", r"conduct|leitf|\bec\b|µs"),
    ("oxygen", r"oxygen|sauerstoff|oxygene|\bo2\b"),
    ("chlorine", r"^chlor"),
    ("percent", r"(change|wechsel).*%|%.*(change|wechsel)"),
    ("litres", r"change|wechsel|liters? out|litres?|gallons?|\bgal\b"),
    ("feed_g", r"\bfed\b|feed|futterung|(food|futter|nourri).*\b(g|gram\w*)\b"),
    ("food", r"food|futter|nourri|aliment"),
    ("note", r"note|comment|bemerk|notiz|remarq"),
]
WITH_BASIS = ("total_ammonia", "nitrite", "nitrate")
UNITS = {
    **{"temperature": "°C", "kh": "°dKH", "gh": "°dGH", "phosphate": "mg/L", "conductivity": "µS/cm"},
    "oxygen": "mg/L",
}
# For these parameters "<0.25" is a reading below the kit's lowest step; for pH and temperature it is an error.
FROM_ZERO = (*WITH_BASIS, "phosphate", "oxygen", "chlorine")
# What tells the tables that this app writes from a notebook, and the kinds that are taken in again.
OWN = ("at", "tank", "tank_id", "by", "id")
OWN_KINDS = ("reading", "water_change", "feeding")
OTHERS = {"ignore", "date", "time", "tank", "note", "litres", "percent", "feed_g", "food"}
MOST_ROWS = 20_000
WRONG = {
    "date": "there is no such date or time",
    "future": "this lies in the future",
    "number": "this is not a figure",
    "range": "this is out of range",
    "tank": "this tank is not chosen",
    "nothing": "there is nothing in this row to record",
}
NUMBERS_OF_DATE = re.compile(r"(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})(?:[T ,]+(.*))?", re.ASCII)
CLOCK = re.compile(r"(\d{1,2})[:.h](\d{2})(?::\d{2})?\s*([ap])?\.?m?\.?", re.ASCII | re.IGNORECASE)
SPACES = re.compile("[ \u00a0\u202f']")
UNIT_AFTER = re.compile(r"\s*(mg/l|ppm|°?\s?[cf]|°?d[kg]?h|l|gal|g|%|µs/cm)$", re.IGNORECASE)


@dataclass
class Choices:
    """What the keeper chose once; None where it is still open."""

    columns: list[str]
    dates: str | None
    decimals: str | None
    basis: dict[str, str]
    volume: str = "L"
    warmth: str = "°C"
    # The id of each tank named in the file; "" for one that is left out.
    tanks: dict[str, str] = field(default_factory=dict)
    one_tank: str = ""


@dataclass(frozen=True)
class Made:
    """A record, and its row as a spreadsheet counts: the header is row 1."""

    kind: str
    fields: dict
    row: int
    # Where the table says it; else it follows from the fields.
    own_id: str = ""

    @property
    def id(self) -> str:
        return self.own_id or id_by_content(self.kind, self.fields)


@dataclass(frozen=True)
class Wrong:
    """What is wrong in a row: a code of WRONG, and what is allowed where the contract says so."""

    row: int
    column: str
    text: str
    code: str
    allowed: str = ""


def plain(text: str) -> str:
    """The text without accents, soft hyphens and capitals."""
    kept = (one for one in unicodedata.normalize("NFD", text) if unicodedata.category(one) != "Mn" and one != "\u00ad")
    return "".join(kept).translate(str.maketrans("₀₁₂₃₄", "01234")).lower()


def text_of(data: bytes) -> str:
    """UTF-8 or UTF-16 by its mark, else as older spreadsheets write."""
    if data.startswith(b"\xff\xfe"):
        return data[2:].decode("utf-16-le", "replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("windows-1252", "replace")


def cells(text: str) -> tuple[list[str], list[list[str]]]:
    """Header and rows of comma, semicolon or tab-separated text, without empty rows.

    BadRequest: too many rows, or a cell that never ends.
    """
    first = text.lstrip().split("\n", 1)[0]
    mark = max(",;\t|", key=first.count)
    lines = csv.reader(io.StringIO(text, newline=""), delimiter=mark)
    try:
        table = [row for row in lines if any(map(str.strip, row))]
    except csv.Error:
        allowed = f"a cell holds at most {csv.field_size_limit()} characters; is a quotation mark left open?"
        raise BadRequest(f"Line {lines.line_num} cannot be read: {allowed}") from None
    if not table:
        return [], []
    if len(table) > MOST_ROWS + 1:
        raise BadRequest(f"At most {MOST_ROWS} rows at once, and there are {len(table) - 1}: split the file")
    return [one.strip() for one in table[0]], table[1:]


def recognised(header: list[str]) -> list[str]:
    """The column that each heading means, each but "ignore" once."""
    columns: list[str] = []
    for heading in header:
        words = plain(heading).strip()
        fits = (one for one, like in HEADINGS if one not in columns and re.search(like, words, re.ASCII))
        columns.append(next(fits, "ignore"))
    return columns


def units_said(header: list[str], columns: list[str]) -> dict:
    """What the headings say of basis and units."""

    def heading(column: str) -> str:
        return plain(header[columns.index(column)]) if column in columns else ""

    basis = {}
    for parameter in WITH_BASIS:
        if re.search(r"-n\b|\bn\)|as n\b|als n\b", heading(parameter)):
            basis[parameter] = "n"
        elif re.search(r"nh[34]|no[23]|ion", heading(parameter)):
            basis[parameter] = "ion"
    warm = re.search(r"°\s*f|\(f\)|fahrenheit|\bf$", heading("temperature"))
    return {"basis": basis, "volume": "US gal" if "gal" in heading("litres") else "L", "warmth": "°F" if warm else "°C"}


def date_order(dates: list[str]) -> str | None:
    """The order that the dates prove; None where both are possible."""
    found = [(hit, one) for one in dates if (hit := NUMBERS_OF_DATE.fullmatch(one.strip())) and len(hit[1]) < 3]
    if not found:
        return "ymd"
    day_first = any(int(hit[1]) > 12 or "." in one for hit, one in found)
    month_first = any(int(hit[2]) > 12 for hit, _ in found)
    return None if day_first == month_first else "dmy" if day_first else "mdy"


def decimal_sign(figures: list[str]) -> str | None:
    """The decimal sign that the figures prove; None where "1,234" could be either."""
    clean = [re.sub(r"[^\d.,]", "", one) for one in figures]

    def proves(sign: str, other: str) -> bool:
        alone = re.compile(rf"\d*[{sign}](\d{{1,2}}|\d{{4,}})|0[{sign}]\d+")
        return any(
            alone.fullmatch(one) or (other in one and sign in one and one.rindex(sign) > one.index(other))
            for one in clean
        )

    comma, point = proves(",", "."), proves(".", ",")
    if comma != point:
        return "comma" if comma else "point"
    return None if comma or any("," in one or "." in one for one in clean) else "point"


def is_figure(column: str) -> bool:
    """Whether a column holds figures."""
    return column not in OTHERS or column in ("litres", "percent", "feed_g")


def cells_of(rows: list[list[str]], columns: list[str], wanted) -> list[str]:
    """The filled cells of the columns that `wanted` accepts."""
    return [
        one.strip() for row in rows for one, column in zip(row, columns, strict=False) if wanted(column) and one.strip()
    ]


def moment_of(date: str, time: str, order: str, zone: tzinfo | None) -> str | None:
    """A moment in UTC; noon where no time is written; None if there is no such date or time."""
    if re.fullmatch(r"\d{4}-\d\d-\d\dT[\d:.]+Z", date):
        return utc(round(datetime.fromisoformat(date).timestamp() * 1000))
    found = NUMBERS_OF_DATE.fullmatch(date.strip())
    if not found:
        return None
    one, two, three = int(found[1]), int(found[2]), int(found[3])
    first = (one, two, three) if len(found[1]) == 4 else (three, one, two) if order == "mdy" else (three, two, one)
    year, month, day = first
    clock = CLOCK.fullmatch((time or found[4] or "12:00").strip())
    if not clock:
        return None
    hour, minute = int(clock[1]), int(clock[2])
    if clock[3]:
        hour = hour % 12 + (12 if clock[3].lower() == "p" else 0)
    try:
        at = datetime(year + 2000 if year < 100 else year, month, day, hour, minute, tzinfo=zone)
    except ValueError:
        return None
    return utc(round(at.astimezone(UTC).timestamp() * 1000))


def figure_of(text: str, decimals: str) -> float | None:
    """A figure; None if it is none. A unit after it is let go."""
    typed = SPACES.sub("", UNIT_AFTER.sub("", re.sub("[−–]", "-", text.strip())))
    group, sign = (r"\.", ",") if decimals == "comma" else (",", r"\.")
    if not re.fullmatch(rf"-?\d{{1,3}}({group}\d{{3}})*({sign}\d+)?|-?\d+({sign}\d+)?", typed, re.ASCII):
        return None
    return float(typed.replace("." if decimals == "comma" else ",", "").replace(",", "."))


def read_rows(
    rows: list[list[str]], choices: Choices, tanks: dict[str, float], now_ms: int, zone: tzinfo | None
) -> tuple[list[Made], list[Wrong]]:
    """The records of all rows, and what is wrong in the others; `tanks` are litres by id."""
    made, wrong = [], []
    for number, row in enumerate(rows, 2):
        values = {name: one.strip() for name, one in zip(choices.columns, row, strict=False)}
        records, errors = _read_row(values, number, choices, tanks, now_ms, zone)
        made += records
        wrong += errors
    return made, wrong


def _read_row(values, row, choices, tanks, now_ms, zone):
    errors = []

    def no(column: str, code: str, allowed: str = "") -> None:
        errors.append(Wrong(row, column, values.get(column, ""), code, allowed))

    named = "tank" in choices.columns
    tank = choices.tanks.get(values.get("tank", "")) if named else choices.one_tank
    if named and tank == "" and values.get("tank"):
        return [], []
    if tank not in tanks:
        no("tank", "tank")
    at = moment_of(values.get("date", ""), values.get("time", ""), choices.dates, zone)
    if at is None:
        no("date", "date")
    elif at > utc(now_ms):
        no("date", "future")
    if tank not in tanks or at is None:
        return [], errors
    entries = list(_entries(values, choices, tank, tanks[tank], at))
    records = []
    for column, value, kind, fields in entries:
        if value is None:
            no(column, "number")
            continue
        try:
            check_fields(kinds()[kind], fields, new=True)
            records.append(Made(kind, fields, row))
        except Refused as bad:
            no(column, "range", bad.errors[0]["allowed"])
    if not entries:
        no("ignore", "nothing")
    return [] if errors else records, errors


def _entries(values: dict, choices: Choices, tank: str, water_l: float, at: str):
    note = {"note": values["note"]} if values.get("note") else {}
    for column in choices.columns:
        if not is_figure(column) or not values.get(column):
            continue
        value = figure_of(values[column], choices.decimals)
        shared = {"tank": tank, "at": at}
        if column == "feed_g":
            food = {"food": values["food"]} if values.get("food") else {}
            yield column, value, "feeding", {**shared, "feed_g": clean(value), **food, **note}
        elif column in ("litres", "percent"):
            litres = 0.0 if value is None else _litres(value, column, water_l, choices.volume)
            if value == 0:
                continue
            amounts = {"litres": _rounded(litres), "fraction": _rounded(litres / water_l)}
            yield column, value, "water_change", {**shared, **amounts, **note}
        else:
            least = _below(values[column], choices.decimals) if column in FROM_ZERO else None
            value = value if least is None else 0
            steps = {} if least is None else {"steps": [0, clean(least)]}
            held = _celsius(value, choices.warmth) if column == "temperature" and value is not None else value
            basis = {"basis": choices.basis[column]} if column in choices.basis else {}
            unit = {"unit": UNITS[column]} if column in UNITS else {}
            fields = {**shared, "parameter": column, "value": clean(held), **steps, **basis, **unit, **note}
            yield column, value, "reading", fields


def _below(text: str, decimals: str) -> float | None:
    """The kit's lowest step in "<0.25": the reading lies below it. None if it is written otherwise."""
    figure = figure_of(text.strip()[1:], decimals) if text.strip().startswith("<") else None
    return figure if figure and figure > 0 else None


def own_kind(header: list[str]) -> str | None:
    """The kind of a table that this app wrote; None for a notebook."""
    if not all(name in header for name in OWN):
        return None
    required = {kind: [one["name"] for one in kinds()[kind]["fields"] if one.get("required")] for kind in OWN_KINDS}
    return next((kind for kind in OWN_KINDS if all(name in header for name in required[kind])), None)


def own_tanks_named(header: list[str], rows: list[list[str]], here: set[str]) -> list[str]:
    """The tanks named in a table of our own whose ids are not `here`."""
    named = (_by_name(header, row) for row in rows)
    return list(dict.fromkeys(one.get("tank", "") for one in named if one.get("tank_id") not in here))


def read_own(
    kind: str,
    header: list[str],
    rows: list[list[str]],
    ids: dict[str, str],
    tanks: set[str],
    now_ms: int,
    here: set[str],
) -> tuple[list[Made], list[Wrong]]:
    """The records of a table of our own, each with its id.

    `ids` are tanks by name, "" for one that is left out; `here` are the ids of all records that may be referred to.
    """
    made, wrong = [], []
    for number, row in enumerate(rows, 2):
        cell = _by_name(header, row)
        tank = cell["tank_id"] if cell.get("tank_id") in tanks else ids.get(cell.get("tank", ""))
        if tank == "":
            continue
        at = moment_of(cell.get("at", ""), "", "ymd", UTC)
        if tank not in tanks:
            wrong.append(Wrong(number, "tank", cell.get("tank", ""), "tank"))
        elif at is None or at > utc(now_ms):
            wrong.append(Wrong(number, "date", cell.get("at", ""), "future" if at else "date"))
        else:
            fields = {**_own_fields(kind, cell, here), "tank": tank, "at": at}
            try:
                check_fields(kinds()[kind], fields, new=True)
                made.append(Made(kind, fields, number, cell["id"]))
            except Refused as bad:
                error = bad.errors[0]
                wrong.append(Wrong(number, "ignore", cell.get(error["field"], ""), "range", error["allowed"]))
    return made, wrong


def _by_name(header: list[str], row: list[str]) -> dict[str, str]:
    return {name: unquoted(one.strip()) for name, one in zip(header, row, strict=False)}


def _own_fields(kind: str, cell: dict[str, str], here: set[str]) -> dict:
    """The fields of a record by their names; what refers to a record that is not here is left out."""
    fields = {}
    for spec in kinds()[kind]["fields"]:
        name, text = spec["name"], cell.get(spec["name"], "")
        if text and name != "supersedes" and ("refers_to" not in spec or text in here):
            fields[name] = _own_value(spec["type"], text)
    return fields


def _own_value(type: str, text: str) -> object:
    if type == "number":
        figure = figure_of(text, "point")
        return text if figure is None else clean(figure)
    try:
        return json.loads(text) if type == "list" else text
    except ValueError:
        return text


def _litres(value: float, column: str, water_l: float, volume: str) -> float:
    if column == "percent":
        return value / 100 * water_l
    units = read_folder("tables")["units"]["units"]
    return value * units[volume]["times"]


def _celsius(value: float, warmth: str) -> float:
    return _rounded((value - 32) * 5 / 9 if warmth == "°F" else value)


def _rounded(value: float) -> float:
    return clean(float(f"{value:.6g}"))


def clean(value: float | None) -> float | None:
    """Whole numbers as JSON writes them in a browser."""
    return int(value) if value is not None and value == int(value) else value


def id_by_content(kind: str, fields: dict) -> str:
    """The id of a record by its kind and fields."""
    said = [kind, *sorted(([name, value] for name, value in fields.items()), key=lambda one: one[0])]
    text = json.dumps(said, ensure_ascii=False, separators=(",", ":"))
    return f"nb-{hashlib.sha256(text.encode()).hexdigest()[:40]}"
