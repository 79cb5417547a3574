/**
 * What the forms of animals and plants share: the other tank, choices, the note, errors, and the records they write.
 */
import { html } from "../vendor/preact.js";
import { walk } from "../advice/facts.js";
import { life_removal, life_writes } from "../advice/life/life_writes.js";
import { other_half } from "../advice/life/stock.js";
import { find_field, kind_of } from "../contracts.js";
import { t } from "../i18n/words.js";
import { Fields, Wrong } from "./contract/form.js";
import { Icon } from "./icon.js";
import { all, get, live_room, room } from "./state/live.js";
import { new_id, record } from "./state/record.js";
import { tap } from "./state/tap.js";

/** @import { FieldError } from "../contracts.js" */
/** @import { Raw } from "../bench/record_fields.js" */

/**
 * The other tanks as tiles.
 * @param {{tank: string, except?: string, value: string, label: string, on_pick: (id: string) => void}} props
 */
export const TankTiles = ({ tank, except, value, label, on_pick }) => {
  const others = [...walk(live_room), ...walk(live_room, { resting: true })].filter(
    ({ id }) => id !== tank && id !== except,
  );
  return html`
    <section class="section"><h2>${label}</h2>
      ${others.length === 0 && html`<p class="soft">${t("life.no_other_tank")}</p>`}
      <div class="tiles two" role="group" aria-label=${label}>
        ${others.map(
          (one) => html`<button type="button" key=${one.id} aria-pressed=${value === one.id}
        onClick=${tap(() => on_pick(one.id))}><b>${one.name}</b></button>`,
        )}</div>
    </section>`;
};

/**
 * Moves an entry that was recorded in the wrong tank, behind one tap.
 * @param {{was: string, tank: string, except?: string, on_pick: (id: string) => void}} props `tank`: "" while it stays
 */
export const WrongTank = ({ was, tank, except, on_pick }) => html`
  <details class="more section" open=${tank !== ""}>
    <summary>${t("life.in_tank", { tank: tank_name(tank || was) })}</summary>
    <${TankTiles} tank=${was} except=${except} value=${tank} label=${t("life.belongs_to")}
      on_pick=${(/** @type {string} */ picked) => on_pick(picked === tank ? "" : picked)} />
  </details>`;

/**
 * A choice as tiles under its name.
 * @param {{label: string, choices: {value: string, label: string}[], value: string, on_pick: (value: string) => void}}
 * props
 */
export const ChoiceTiles = ({ label, choices, value, on_pick }) => html`
  <section class="section choice"><h2>${label}</h2>
    <div class="tiles" role="group" aria-label=${label}>
      ${choices.map(
        (one) => html`<button type="button" key=${one.value} aria-pressed=${value === one.value}
      onClick=${tap(() => on_pick(one.value))}>${one.label}</button>`,
      )}</div>
  </section>`;

/**
 * A note, behind one tap.
 * @param {{kind: string, raw: Raw, on_raw: (raw: Raw) => void, errors: FieldError[]}} props
 */
export const NoteToo = ({ kind, raw, on_raw, errors }) => html`
  <details class="more section" open=${Boolean(raw.note)}>
    <summary>${t("life.note")}</summary>
    <${Fields} specs=${[find_field(kind_of(kind).fields, "note")]} raw=${raw} on_raw=${on_raw} errors=${errors} />
  </details>`;

/** Errors, each with the label of its field. @param {{kind: string, errors: FieldError[]}} props */
export const Errors = ({ kind, errors }) =>
  errors.map(
    (one) => html`<${Wrong} key=${one.field} spec=${find_field(kind_of(kind).fields, one.field)} error=${one} />`,
  );

/** @param {{text: string}} props */
export const Failed = ({ text }) => text && html`<p class="wrong" role="alert"><${Icon} name="needs" />${text}</p>`;

/** @typedef {import("../advice/life/stock.js").Move} Move */
/**
 * The writes of one entry; a correction also replaces the other half of a move.
 * @param {"stock_change" | "planting"} kind
 * @param {Record<string, unknown>} fields
 * @param {Move | null} corrects the record that it corrects
 */
export function entry_writes(kind, fields, corrects) {
  const half = corrects ? other_half(corrects, all(kind)) : null;
  const earlier = half?.supersedes ? room.value.earlier(kind, half.id) : [];
  return life_writes(kind, fields, new_id, corrects, half, earlier);
}

/** Take an entry out, with the other half of its move. @param {Move} one */
export function remove_life(one) {
  return record(life_removal(room.value, one), t("saved.removed", { what: t(`kind.${one.kind}`) }));
}

/** @param {string | undefined} id */
export const tank_name = (id) => get("tank", id)?.name ?? t("life.a_tank");
