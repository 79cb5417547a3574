/** Feeds every tank of the round its usual meal by one tap: a record for each tank, one undo for all. */
import { html } from "../vendor/preact.js";
import { to_feed } from "../advice/journal/feeding.js";
import { t } from "../i18n/words.js";
import { grams_said } from "./words/figures.js";
import { advice_at_once } from "./state/forecast.js";
import { Icon } from "./icon.js";
import { now, room } from "./state/live.js";
import { new_id, record } from "./state/record.js";
import { tap } from "./state/tap.js";

/** @import { Tank } from "../types/views.js" */
/** @param {{tanks: Tank[], brief?: boolean}} props in walking order; `brief`: the button alone */
export function FeedAll({ tanks, brief = false }) {
  if (!room.value.may("feeding")) return null;
  const hungry = to_feed(
    tanks.flatMap((tank) => {
      const known = advice_at_once(tank);
      return known ? [{ tank, advice: known.advice, feedings: known.facts.feedings }] : [];
    }),
    now.value,
  );
  if (hungry.length < 2) return null;
  const grams = grams_said(hungry.reduce((sum, { meal }) => sum + meal.feed_g, 0));
  const writes = () =>
    hungry.map(({ tank, meal: { from: _from, ...fields } }) => ({
      type: /** @type {const} */ ("put"),
      kind: "feeding",
      id: new_id(),
      fields: { tank: tank.id, ...fields },
    }));
  const feed = () => void record(writes(), t("feed.saved_all", { count: hungry.length, grams }));
  const button = html`<button class=${brief ? "quiet" : "quiet tall"} type="button" onClick=${tap(feed)}><${Icon}
    name="feed" size=${20} />${t(brief ? "many.feed" : "feed.all", { count: hungry.length })}</button>`;
  if (brief) return button;
  return html`
    <p class="beside-margin">${button}
      <span class="soft small">
        ${hungry
          .map(({ tank, meal }) => t("feed.each", { tank: tank.name, amount: grams_said(meal.feed_g) }))
          .join("\u00a0· ")}</span></p>`;
}
