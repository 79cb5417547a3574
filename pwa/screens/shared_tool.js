/** A net, bucket or piece of equipment that was wet in two tanks: recorded by two taps, for the trace. */
import { html } from "../vendor/preact.js";
import { choice_label, record_field } from "../contracts.js";
import { t } from "../i18n/words.js";
import { ChoiceTiles, Errors, Failed, NoteToo, TankTiles, tank_name } from "../ui/life_entry.js";
import { get, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";

const first = () => ({
  tool: "net",
  other_tank: "",
  order: "both",
  at: /** @type {string | undefined} */ (undefined),
  raw: /** @type {import("../ui/contract/form.js").Raw} */ ({}),
});

/** @param {"tool" | "order"} field */
const choices = (field) => record_field("shared_tool", field).choices;

/** @param {{id: string}} props */
export function SharedTool({ id }) {
  const tank = get("tank", id);
  const form = use_record_form({ name: `tool.${id}`, first });
  if (!tank) return html`<${Missing} up="/" />`;
  const { tool, other_tank, order, at, raw } = form.draft.value;
  const set = form.set;
  const what = choice_label(record_field("shared_tool", "tool"), tool);
  const note = raw.note?.trim();
  const save = () =>
    form.save(() => {
      const fields = { tank: id, at, tool, other_tank, order, ...(note ? { note } : {}) };
      return {
        writes: [{ type: "put", kind: "shared_tool", id: new_id(), fields }],
        said: t("tool.saved", { what, tank: tank.name, other: tank_name(other_tank) }),
        to: `/trace?tank=${id}&days=30`,
      };
    });
  return html`
    <${Page} title=${t("tool.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        room.value.may("shared_tool") &&
        html`<button class="main" type="button"
        disabled=${!other_tank || no_moment(at)} onClick=${tap(() => void save())}>
        ${other_tank ? t("tool.do", { what, other: tank_name(other_tank) }) : t("life.not_yet")}</button>`
      }>
      <${Failed} text=${form.problem.value} />
      <p>${t("tool.why")}</p>
      <${TankTiles} tank=${id} value=${other_tank} label=${t("tool.which_tank")}
        on_pick=${(/** @type {string} */ picked) => set({ other_tank: picked })} />
      <${ChoiceTiles} label=${t("tool.what")} choices=${choices("tool")} value=${tool}
        on_pick=${(/** @type {string} */ value) => set({ tool: value })} />
      <${ChoiceTiles} label=${record_field("shared_tool", "order").label} choices=${choices("order")} value=${order}
        on_pick=${(/** @type {string} */ value) => set({ order: value })} />
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />
      <${NoteToo} kind="shared_tool" raw=${raw} on_raw=${(/** @type {typeof raw} */ next) => set({ raw: next })}
        errors=${form.errors.value} />
      <${Errors} kind="shared_tool" errors=${form.errors.value} />
      <p class="caution small">${t("trace.caution_tools")}</p>
    <//>`;
}
