/**
 * What to buy for a tank: ticked off in the shop, sent as text or printed; with the weight of the filled tank and the
 * day of the first test.
 */
import { html, useSignal } from "../vendor/preact.js";
import { as_planned, planned, set_up_here } from "../advice/setup/setting_up.js";
import { to_buy, weight_of } from "../advice/setup/shopping.js";
import { t } from "../i18n/words.js";
import { use_draft } from "../ui/state/draft.js";
import { mark_all } from "../ui/state/field_text.js";
import { litres_said } from "../ui/words/figures.js";
import { all, get } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { print_or_keep } from "../ui/state/print_or_keep.js";
import { Page } from "../ui/page.js";
import { say } from "../ui/state/record.js";
import { thing_said, whole_kg } from "../ui/words/shopping_words.js";
import { tap } from "../ui/state/tap.js";

/** @param {{id: string}} props */
export function Buy({ id }) {
  const record = get("tank", id);
  const bought = use_draft(`buy.${id}`, () => /** @type {string[]} */ ([]));
  const by_hand = useSignal("");
  if (!record || !set_up_here(record)) return html`<${Missing} up="/tanks" />`;
  const tank = as_planned(record);
  const things = to_buy(tank, {
    kits: all("test_kit"),
    source: get("source_water", tank.source_water),
    label: get("label", tank.dechlorinator),
  });
  const weight = weight_of(tank);
  const facts = [
    t("buy.water", { litres: litres_said(tank.water_l) }),
    ...(weight === null ? [] : [t("buy.weight", { kg: whole_kg(weight) })]),
    t(planned(tank) ? "buy.first_test" : "buy.tests"),
  ];
  const text = () =>
    [t("buy.for", { tank: tank.name }), ...things.map((thing) => `– ${thing_said(thing)}`), "", ...facts].join("\n");
  const send = async () => {
    try {
      if (navigator.share) return await navigator.share({ title: t("buy.for", { tank: tank.name }), text: text() });
      await navigator.clipboard.writeText(text());
      say(t("bench.copied"));
    } catch (error) {
      // The keeper closed the share sheet, or there is no clipboard without a secure connection: show the text to copy.
      if (/** @type {Error} */ (error).name !== "AbortError") by_hand.value = text();
    }
  };
  const toggle = (/** @type {string} */ key) =>
    (bought.value = bought.value.includes(key)
      ? bought.value.filter((other) => other !== key)
      : [...bought.value, key]);
  return html`
    <${Page} title=${t("buy.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${html`<button class="quiet tall screen-only" type="button"
        onClick=${tap(() => void print_or_keep("limnary-shopping"))}>${t("buy.print")}
        </button><button class="main screen-only" type="button" onClick=${tap(() => void send())}>${t("buy.send")}
        </button>`}>
      <ul class="lines buy">${things.map(
        (thing) => html`
        <li class="line" key=${thing.key}><label class="check grow"><input type="checkbox"
          checked=${bought.value.includes(thing.key)} onChange=${() => toggle(thing.key)} /><span>
            ${thing_said(thing)}</span>
          </label></li>`,
      )}</ul>
      ${
        by_hand.value &&
        html`<textarea class="to-copy" readonly rows="8" aria-label=${t("bench.copy_by_hand")}
        onFocus=${mark_all}>${by_hand.value}</textarea>`
      }
      <section class="section"><h2>${t("buy.know")}</h2><ul class="why">
        ${facts.map((fact) => html`<li key=${fact}>${fact}</li>`)}</ul>
        <p class="caution small">${t("buy.floor")}</p><p class="soft small">${t("buy.ticks")}</p></section>
    <//>`;
}
