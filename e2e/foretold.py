"""What the forecast stories share: waiting for it, and the very question that the phone asked about a tank."""

import math

from playwright.sync_api import expect

ASK = """async (name) => {
  const { open_room, facts: { facts_of }, today: { today }, questions: { ask_of } } = await app();
  const { room } = await open_room();
  const tank = room.all("tank").find((one) => one.name === name);
  const facts = facts_of(room, tank, Date.now());
  const { questions } = ask_of(facts, today(facts));
  room.close();
  return questions.find((one) => one.label === "plan").input;
}"""
WRITE = """async (records) => {
  const { live: { room } } = await app();
  await room.value.write(records.map(([kind, id, fields]) => ({ type: "put", kind, id, fields })));
}"""


def forecast_is_there(thumb):
    """The sentence is the forecast's, says so, and no newer one is being worked out."""
    expect(thumb.page.locator("[aria-busy=true]")).to_have_count(0)
    expect(thumb.page.get_by_text("This is a forecast")).to_be_visible()


def plan_input(thumb, tank):
    """The input of change_plan as this phone asks it now."""
    return thumb.page.evaluate(ASK, tank)


def write(thumb, records):
    """Put records on this phone as if they had been tapped in: (kind, id, fields)."""
    thumb.page.evaluate(WRITE, records)


def bucket(litres, water_l):
    """Litres rounded up to what a bucket can do, but never past half of the tank, as the sentence says them."""
    step = 0.5 if water_l < 30 else 1 if water_l < 300 else 5
    rounded = math.ceil(litres / step - 1e-9) * step
    return rounded if rounded <= water_l / 2 else math.floor(water_l / 2 / step + 1e-9) * step


def plain(place):
    """What stands there, with plain spaces: a figure holds on to its unit by one that does not break."""
    return place.inner_text().replace("\u00a0", " ")
