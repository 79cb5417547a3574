/** Which source water and which dechlorinator a tank uses: pick one, add one, or edit one and come back. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Icon } from "./icon.js";
import { all, room } from "./state/live.js";
import { record } from "./state/record.js";

/** @import { Tank } from "../types/views.js" */
/** @param {{tank: Tank, here: string}} props `here`: the path to come back to */
export const WaterPick = ({ tank, here }) => html`
  <${SourcePick} tank=${tank} here=${here} />
  <${Pick} tank=${tank} here=${here} field="dechlorinator" kind="label"
    records=${all("label").filter((label) => label.use === "dechlorinator")} />`;

/** @param {{tank: Tank, here: string}} props */
export const SourcePick = ({ tank, here }) =>
  html`<${Pick} tank=${tank} here=${here} field="source_water" kind="source_water" records=${all("source_water")} />`;

/** @typedef {{id: string, name: string}} Named */
/**
 * @param {{tank: Tank, here: string, field: "source_water" | "dechlorinator", kind: string, records: Named[]}}
 * props
 */
function Pick({ tank, here, field, kind, records }) {
  const choose = (/** @type {Named} */ one) =>
    record(
      [{ type: "put", kind: "tank", id: tank.id, fields: { [field]: one.id } }],
      t("saved.uses", { tank: tank.name, name: one.name }),
    );
  return html`
    <section class="section">
      <fieldset><legend><h2>${t(`water.${field}`)}</h2></legend>
        <ul class="lines">${records.map(
          (one) => html`
          <li class="line" key=${one.id}>
            <label class="check grow"><input type="radio" name=${field} checked=${tank[field] === one.id}
              disabled=${!room.value.may("tank")} onChange=${() => void choose(one)} />${one.name}</label>
            <a class="quiet" href=${`/room/${kind}/${one.id}?then=${here}`}
              aria-label=${t("edit_named", { what: one.name })}>${t("edit")}</a>
          </li>`,
        )}</ul>
      </fieldset>
      <p><a class="quiet" href=${`/room/${kind}/new?tank=${tank.id}&then=${here}`}><${Icon} name="plus" size=${20} />
        ${t(`water.new_${kind}`)}</a></p>
    </section>`;
}
