/** Which source water and which dechlorinator a tank uses. */
import { html } from "../vendor/preact.js";
import { t } from "../i18n/words.js";
import { Icon } from "../ui/icon.js";
import { all, get, room } from "../ui/live.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { record } from "../ui/record.js";

/** @param {{id: string}} props */
export function Water({ id }) {
  const tank = get("tank", id);
  if (!tank) return html`<${Missing} up="/tanks" />`;
  const labels = all("label").filter((label) => label.use === "dechlorinator");
  return html`
    <${Page} title=${t("water.short")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}>
      <${Pick} tank=${tank} field="source_water" kind="source_water" records=${all("source_water")} />
      <${Pick} tank=${tank} field="dechlorinator" kind="label" records=${labels} />
    <//>`;
}

/** @param {{tank: any, field: string, kind: string, records: any[]}} props */
function Pick({ tank, field, kind, records }) {
  const here = `/tank/${tank.id}/water`;
  const choose = (/** @type {any} */ one) => record([{ type: "put", kind: "tank", id: tank.id, fields: { [field]: one.id } }], t("saved.uses", { tank: tank.name, name: one.name }));
  return html`
    <section class="section">
      <fieldset><legend><h2>${t(`water.${field}`)}</h2></legend>
        <ul class="lines">${records.map((one) => html`
          <li class="line" key=${one.id}>
            <label class="check grow"><input type="radio" name=${field} checked=${tank[field] === one.id} disabled=${!room.value.may("tank")} onChange=${() => void choose(one)} />${one.name}</label>
            <a class="quiet" href=${`/room/${kind}/${one.id}?then=${here}`} aria-label=${t("edit_named", { what: one.name })}>${t("edit")}</a>
          </li>`)}</ul>
      </fieldset>
      <p><a class="quiet" href=${`/room/${kind}/new?tank=${tank.id}&then=${here}`}><${Icon} name="plus" size=${20} />${t(`water.new_${kind}`)}</a></p>
    </section>`;
}
