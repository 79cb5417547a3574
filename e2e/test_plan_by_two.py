"""Two keepers plan different steps of one tank without signal; both phones then show both steps."""

import pytest
from foretold import write
from limnary.contracts import run
from playwright.sync_api import expect
from room_hands import invite, join, share
from setup_hands import MEASURES, PLAN

pytestmark = pytest.mark.browser

SIZE = run("volume", MEASURES)
TANK = {"name": "Long plan", "measures": MEASURES, "water_l": SIZE["water_l"], "gross_l": SIZE["gross_l"]}
LAYERS = [
    {"role": "nutrient", "material": "garden_soil", "front_cm": 1.5, "back_cm": 2.5},
    {"role": "cap", "material": "sand", "front_cm": 3, "back_cm": 4},
]
BED_L = run("substrate", {"length_cm": 90, "width_cm": 40, "layers": LAYERS})["litres"]
BOTH = run("volume", {**MEASURES, "substrate_l": BED_L, "hardscape_kg": 2, "hardscape_density_kg_l": 2.6})
RECORD = """async (id) => (await app()).live.room.value.get("tank", id)"""


@pytest.mark.parametrize(
    "written",
    [
        {"setup_glass": {"state": "done"}, "setup_place": {"state": "skipped"}},
        pytest.param({"setup": {"steps": {"place": "skipped"}}}, id="by an older app"),
    ],
)
def test_steps_of_two_keepers_both_stand(served_room, new_phone, written):
    aino, ben = new_phone(), new_phone()
    join(aino, served_room.link, "Aino", "Aino's phone")
    join(ben, invite(aino), "Ben", "Ben's phone")
    write(aino, [("tank", PLAN, {**TANK, **written})])
    for thumb in (aino, ben):
        share(thumb)
        thumb.turn_to(f"/tank/{PLAN}")
        thumb.stored()
        thumb.page.context.set_offline(True)

    aino.tap("link", "3. Substrate")
    aino.title("Substrate")
    aino.tap("button", "L, next")
    ben.tap("link", "4. Stone and wood")
    ben.title("Stone and wood")
    for _ in range(4):
        ben.page.get_by_role("button", name="More: Stone").tap()
    ben.tap("button", "Next", exact=True)
    ben.title("Warmth, light, filter")

    for thumb in (aino, ben):
        thumb.page.context.set_offline(False)
        share(thumb)
    for thumb in (aino, ben):
        share(thumb)
        thumb.turn_to(f"/tank/{PLAN}")
        for step, state in (("2. Where it stands", "skipped"), ("3. Substrate", "done"), ("4. Stone and wood", "done")):
            expect(thumb.page.get_by_role("link", name=f"{step} {state}")).to_be_visible()
        thumb.sees(f"{BOTH['water_l']:.1f}")
        record = thumb.page.evaluate(RECORD, PLAN)
        assert record["setup_hardscape"] == {"state": "done", "said": {"stone_kg": 2}}
        assert record["setup_substrate"]["said"]["cap_back_cm"] == 4
        assert record.get("setup") == written.get("setup"), "the older form is read, never written"
    ben.tap("link", "What to buy")
    ben.sees("Stone, 2\u00a0kg")
    ben.sees("Garden soil")
