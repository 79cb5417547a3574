"""Hands for the bench: type an input into the form of its contract, read the answer off the screen."""

import re

from limnary.calc.rounding import display
from phones import tap
from playwright.sync_api import Page, TimeoutError, expect

# Figures of an older answer are hidden. Those within a closed fold are not: a tap shows them.
SHOWN = """(texts) => {
  const figures = [...document.querySelectorAll(".answer .figure")];
  const shown = figures.map((one) => getComputedStyle(one).visibility === "visible" && one.firstChild.textContent);
  return JSON.stringify(shown) === JSON.stringify(texts);
}"""


def type_input(page: Page, spec: dict, value: dict, comma: bool = True) -> None:
    """Type every field of one input, field by field, as a keeper would; decimals with a comma unless told.

    A number that the form needs comes last: before it there is no answer, so a slow one is worked out once.
    """
    expect(page.locator("form.contract")).to_be_visible()
    for rule in spec.get("rules", []):
        if rule["rule"] != "together":
            _choose_side(page, rule, value)
    for field in sorted(spec["inputs"], key=_turn):
        if field["name"] in value:
            _type_field(page, field, field["name"], value[field["name"]], comma)


def _turn(field: dict) -> int:
    """When a field is typed: choices first, for other fields depend on them."""
    if field["type"] in ("choice", "boolean"):
        return 0
    return 2 if field["type"] in ("number", "integer") and field.get("required") else 1


def _choose_side(page: Page, rule: dict, value: dict) -> None:
    side = next((name for name in rule["fields"] if name in value), "")
    option = page.locator(f'input[name="f-{"-or-".join(rule["fields"])}"][value="{side}"]')
    if option.count():
        option.locator("xpath=..").tap()


def _type_field(page: Page, field: dict, key: str, value: object, comma: bool) -> None:
    place = page.locator(f"#f-{key.replace('.', '-')}")
    if field["type"] in ("number", "integer"):
        _unfold(page, place)
        place.fill(typed(value, comma))
    elif field["type"] == "text" and "table" in field:
        _unfold(page, place)
        _pick(page, place, value)
    elif field["type"] == "text":
        _unfold(page, place)
        place.fill(value)
    elif field["type"] in ("choice", "boolean"):
        _tick(page, key, str(value).lower() if isinstance(value, bool) else value)
    elif field["type"] == "object":
        for inner in field["fields"]:
            if inner["name"] in value:
                _type_field(page, inner, f"{key}.{inner['name']}", value[inner["name"]], comma)
    else:
        for index, entry in enumerate(value):
            if not place.locator("> .entry-row").nth(index).count():
                tap(place.locator("> button.add"))
                expect(place.locator("> .entry-row")).to_have_count(index + 1)
            _type_field(page, field["item"], f"{key}.{index}", entry, comma)


def typed(value: float, comma: bool) -> str:
    """A number as a keeper types it; a comma before exactly three digits could be a thousand, so that stays a point."""
    text = re.sub(r"\.0$", "", repr(value))
    return text.replace(".", ",") if comma and not re.fullmatch(r"[1-9]\d{0,2}\.\d{3}", text) else text


def _tick(page: Page, key: str, value: str) -> None:
    name = f"f-{key.replace('.', '-')}"
    option = page.locator(f'input[name="{name}"][value="{value}"]')
    select = page.locator(f"select#{name}")
    _unfold(page, option.or_(select))
    if option.count():
        option.locator("xpath=..").click()
    else:
        select.select_option(value)


def _pick(page: Page, button, key: str) -> None:
    tap(button)
    drawer = button.locator("xpath=following-sibling::*[contains(@class, 'drawer')]")
    drawer.get_by_role("searchbox").fill(key)
    row = drawer.get_by_role("listitem").filter(has_text=re.compile(re.escape(key), re.IGNORECASE)).first
    tap(row.get_by_role("button"))
    expect(drawer).to_have_count(0)


def _unfold(page: Page, place) -> None:
    """Fields that few need lie behind a tap, and are not there before it."""
    folds = page.locator("form.contract details:not([open]) > summary")
    while not place.count() and folds.count():
        folds.first.click()


def expected_texts(spec: dict, answer: dict) -> list[str]:
    """Each figure of an answer as the screen must print it in metric units and English."""
    outputs = [output for output in spec["outputs"] if not output.get("working")]
    return [text for output in outputs for text in _texts(output, answer.get(output["name"]))]


def _texts(output: dict, value: object) -> list[str]:
    if value is None:
        return []
    if isinstance(value, bool):
        return ["yes" if value else "no"]
    if isinstance(value, int | float):
        if "decimals" not in output:
            return [f"{value:.6g}"]
        whole, _, rest = display(value, output["decimals"]).lstrip("-").partition(".")
        minus = "−" if display(value, output["decimals"]).startswith("-") else ""
        return [f"{minus}{int(whole):,}{'.' + rest if rest else ''}"]
    if isinstance(value, list):
        return [text for entry in value for text in _texts(output.get("item", {}), entry)]
    if isinstance(value, dict):
        return [text for field in output.get("fields", []) for text in _texts(field, value.get(field["name"]))]
    labels = {choice["value"]: choice["label"] for choice in output.get("choices", [])}
    return [labels.get(value, value)]


def shows_figures(page: Page, texts: list[str]) -> None:
    """Wait until these are the figures of the answer."""
    try:
        page.wait_for_function(SHOWN, arg=texts)
    except TimeoutError:
        raise AssertionError(f"the page shows {figures_shown(page)}, not {texts}") from None


def figures_shown(page: Page) -> list[str]:
    """The figures of the answer, in order, without their units, once there is one."""
    page.locator(".answer .figure").first.wait_for()
    return page.locator(".answer .figure").evaluate_all("all => all.map((one) => one.firstChild.textContent)")
