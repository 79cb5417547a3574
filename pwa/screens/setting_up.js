/** Setting up a tank from the empty glass, one step a page: each can be skipped, left and opened again. */
import { html } from "../vendor/preact.js";
import { STEPS, as_planned, planned, set_up_here } from "../advice/setup/setting_up.js";
import { get, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { HardscapeStep, SubstrateStep } from "../ui/setup/setup_bed.js";
import { FillStep } from "../ui/setup/setup_fill.js";
import { FirstFishStep } from "../ui/setup/setup_first_fish.js";
import { GlassStep, PlaceStep } from "../ui/setup/setup_glass.js";
import { SetupOverview } from "../ui/setup/setup_lines.js";
import { PlantsStep, WarmthStep } from "../ui/setup/setup_plants.js";
import { StockStep } from "../ui/setup/setup_stock.js";

/** @type {Record<string, (props: {tank: import("../types/views.js").Tank}) => unknown>} */
const PAGES = {
  glass: GlassStep,
  place: PlaceStep,
  substrate: SubstrateStep,
  hardscape: HardscapeStep,
  warmth: WarmthStep,
  plants: PlantsStep,
  stock: StockStep,
  fill: FillStep,
  first_fish: FirstFishStep,
};
/** The steps that stay open once there is water in the tank. */
const WITH_WATER = ["stock", "first_fish"];

/** @param {{id?: string, step?: string}} props without an id: a new tank */
export function SettingUp({ id, step }) {
  if (!id) return room.value.may("tank") ? html`<${GlassStep} tank=${null} />` : html`<${Missing} up="/tanks" />`;
  const record = get("tank", id);
  if (!record || !set_up_here(record)) return html`<${Missing} up="/tanks" />`;
  const tank = as_planned(record);
  const allowed = step === "first_fish" ? room.value.may("stock_change") : room.value.may("tank");
  if (!step || !STEPS.some((one) => one === step) || !allowed || !(planned(tank) || WITH_WATER.includes(step)))
    return html`<${SetupOverview} tank=${tank} />`;
  const Step = PAGES[step];
  return html`<${Step} tank=${tank} />`;
}
