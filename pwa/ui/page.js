/** The frame of every page: heading, content, the note with its undo, the action at the thumb, the four places. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { sharing } from "./state/live.js";
import { close_note, just_done, undo } from "./state/record.js";
import { go } from "./state/router.js";
import { tap } from "./state/tap.js";
import { TimerStrip } from "./state/timers.js";

const PLACES = [
  ["/", "round"],
  ["/tanks", "tanks"],
  ["/bench", "bench"],
  ["/room", "room"],
];

/**
 * @param {{title: string, place?: string, up?: string, act?: unknown, children?: unknown, book?: boolean, aside?:
 * unknown,
 * news?: unknown}} props `up`: where back leads to from outside; `news`: what to know before the action
 */
export const Page = ({ title, place, up, act, children, book, aside, news }) => html`
  <div class="page">
    <header class="top">
      ${
        up &&
        html`<a class="back" href=${up} aria-label=${t("back")} onClick=${(/** @type {Event} */ e) => {
          e.preventDefault();
          go(up, { replace: true });
        }}><${Icon} name="back" /></a>`
      }
      <h1 tabindex="-1">${title}</h1>
      ${aside ?? (place && html`<${Sharing} />`)}
    </header>
    <${TimerStrip} />
    <main class=${book ? "book" : ""}>${children}</main>
    <footer class="foot">
      <${Note} />
      ${news}
      ${act && html`<div class="act">${act}</div>`}
      ${place && html`<${Places} here=${place} />`}
    </footer>
  </div>`;

/** @param {{here: string}} props */
const Places = ({ here }) => html`
  <nav class="places" aria-label=${t("places")}>
    ${PLACES.map(
      ([path, name]) => html`
      <a href=${path} aria-current=${name === here ? "page" : undefined}><${Icon} name=${name} />${t(`place.${name}`)}
        </a>`,
    )}
  </nav>`;

/** How far this phone is shared, by an icon and in words. */
const Sharing = () => {
  const { waiting, sending, needs_you, photos_waiting, photos_need_you, joined } = sharing();
  const left = waiting + sending + photos_waiting;
  const refused = needs_you.length + photos_need_you;
  const [icon, words] = refused
    ? ["needs", t("sharing.needs_you", { count: refused })]
    : !joined || left
      ? ["saved", joined ? t("sharing.waiting", { count: left }) : t("sharing.local")]
      : ["shared", t("sharing.all")];
  return html`<a class="sharing" href="/room"><${Icon} name=${icon} size=${20} />${words}</a>`;
};

const Note = () => {
  const done = just_done.value;
  return html`<div role="status">${
    done &&
    html`
    <div class="toast">
      <span>${done.said}</span>
      ${
        done.undo
          ? html`<button type="button" onClick=${tap(() => void undo())}>${t("undo")}</button>`
          : html`<button type="button" onClick=${tap(close_note)}>${t("close")}</button>`
      }
    </div>`
  }</div>`;
};
