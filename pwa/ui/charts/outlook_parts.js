/** The parts of the outlook below its charts: the key, when the tank is ready, the food it could process, cautions. */
import { html } from "../../vendor/preact.js";
import { cautions_of, contracts } from "../../contracts.js";
import { day, short, t } from "../../i18n/words.js";

/**
 * The key to the charts: each mark as it is drawn there, and what it means.
 * @param {{doubted: boolean}} props whether any reading is
 */
export const Key = ({ doubted }) => html`
  <ul class="chart-key" aria-hidden="true">
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor" stroke-width="2" />
      <circle cx="9" cy="12" r="5" fill="currentColor" /></svg>${t("key.reading")}</li>
    ${
      doubted &&
      html`<li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M9 2v20" stroke="currentColor"
      stroke-width="2" /><circle class="hollow" cx="9" cy="12" r="5" stroke="currentColor" stroke-width="2" /></svg>
      ${t("key.doubted")}</li>`
    }
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="fan" d="M0 8 30 1v22L0 16z" /><path class="middle"
      d="M0 12h30" /></svg>${t("key.fan")}</li>
    <li><svg width="30" height="24" viewBox="0 0 30 24"><path class="limit" d="M0 12h30" /></svg>${t("key.limit")}</li>
    <li><svg width="18" height="24" viewBox="0 0 18 24"><path d="M3 4h12l-2 9H5z" fill="currentColor" /><path
      d="M9 13v11" stroke="currentColor" stroke-dasharray="2 3" /></svg>${t("key.change")}</li>
    <li><svg width="8" height="24" viewBox="0 0 8 24"><path d="M4 0v24" stroke="currentColor" stroke-width="1.5" />
      </svg>${t("key.now")}</li>
    <li><svg width="10" height="24" viewBox="0 0 10 24"><path d="M5 14v8" stroke="currentColor" stroke-width="1.5" />
      </svg>${t("key.feeding")}</li>
  </ul>`;

/** @param {{ready: import("../../advice/forecast/readiness.js").Ready}} props */
export const Ready = ({ ready: { code, from, likely, to } }) => {
  const date = (/** @type {number | undefined} */ at) => (at === undefined ? "" : day(at));
  return html`
    <section class="section"><h2>${t("ready.title")}</h2>
      <p class="sentence">${t(`ready.${code}`, { from: date(from), likely: date(likely), to: date(to) })}</p>
      <p class="soft small">${t("ready.means")}</p>
    </section>`;
};

/**
 * How much food the tank could process, week by week; how many animals that may be, `HowMany` says.
 * @param {{weeks: import("../../advice/forecast/readiness.js").WeekHeadroom[], expected: number}} props
 */
export function Processes({ weeks, expected }) {
  const [first] = weeks;
  return html`
    <details class="more section"><summary>${t("carry.title")}</summary>
      <p>
        ${t("carry.now", {
          low: grams(first.feed_g_day.p10),
          high: grams(first.feed_g_day.p90),
          expected: grams(expected),
        })}</p>
      <table class="measured carry">
        <thead><tr><th scope="col">${t("carry.when")}</th><th scope="col" class="right">${t("carry.feed")}</th></tr>
          </thead>
        <tbody>${weeks.map(
          ({ days, feed_g_day }) => html`
          <tr key=${days}><th scope="row">${t(`carry.in_${days}`)}</th>
            <td>${grams(feed_g_day.p50)}<span class="also">
              ${t("outlook.between", { low: grams(feed_g_day.p10), high: grams(feed_g_day.p90) })}</span></td></tr>`,
        )}
        </tbody>
      </table>
      <p class="soft small">${contracts().stock_headroom.uncertainty}</p>
    </details>`;
}

export const Cautions = () => {
  const all = [...cautions_of("outlook"), ...cautions_of("stock_headroom")];
  return html`<div class="section">
    ${[...new Set(all)].map((text) => html`<p class="caution small" key=${text}>${text}</p>`)}</div>`;
};

const grams = (/** @type {number} */ value) => `${short(value, value < 1 ? 2 : 1)} g`;
