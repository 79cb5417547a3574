/** A net, bucket or piece of equipment that was wet in two tanks: two taps, so that the trace knows of it. */
import { html, useSignal } from "../vendor/preact.js";
import { InvalidInput, choice_label, record_field } from "../contracts.js";
import { t } from "../i18n/words.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { ChoiceTiles, Errors, Failed, NoteToo, TankTiles, tank_name } from "../ui/life_entry.js";
import { get, room } from "../ui/state/live.js";
import { Missing } from "../ui/missing.js";
import { Moment, no_moment } from "../ui/moment.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** @param {{id: string}} props */
export function SharedTool({ id }) {
  const tank = get("tank", id);
  const name = `tool.${id}`;
  const kept = use_draft(name, () => ({
    tool: "net",
    other_tank: "",
    order: "both",
    at: /** @type {string | undefined} */ (undefined),
    raw: /** @type {Record<string, any>} */ ({}),
  }));
  const errors = useSignal(/** @type {any[]} */ ([]));
  const problem = useSignal("");
  if (!tank) return html`<${Missing} up="/" />`;
  const { tool, other_tank, order, at, raw } = kept.value;
  const set = (/** @type {any} */ more) => ((errors.value = []), (kept.value = { ...kept.value, ...more }));
  const choices = (/** @type {"tool" | "order"} */ field) => record_field("shared_tool", field).choices;
  const what = choice_label(record_field("shared_tool", "tool"), tool);

  const save = async () => {
    const fields = { tank: id, at, tool, other_tank, order, ...(raw.note?.trim() ? { note: raw.note.trim() } : {}) };
    try {
      if (
        !(await record(
          [{ type: "put", kind: "shared_tool", id: new_id(), fields }],
          t("tool.saved", { what, tank: tank.name, other: tank_name(other_tank) }),
        ))
      )
        return;
      forget(name);
      go(`/trace?tank=${id}&days=30`, { replace: true });
    } catch (failed) {
      if (failed instanceof InvalidInput) errors.value = failed.errors;
      else problem.value = /** @type {Error} */ (failed).message;
    }
  };
  return html`
    <${Page} title=${t("tool.title")} up=${`/tank/${id}`} aside=${html`<span class="soft">${tank.name}</span>`}
      act=${
        room.value.may("shared_tool") &&
        html`<button class="main" type="button"
        disabled=${!other_tank || no_moment(at)} onClick=${tap(() => void save())}>
        ${other_tank ? t("tool.do", { what, other: tank_name(other_tank) }) : t("life.not_yet")}</button>`
      }>
      <${Failed} text=${problem.value} />
      <p>${t("tool.why")}</p>
      <${TankTiles} tank=${id} value=${other_tank} label=${t("tool.which_tank")}
        on_pick=${(/** @type {string} */ to) => set({ other_tank: to })} />
      <${ChoiceTiles} label=${t("tool.what")} choices=${choices("tool")} value=${tool}
        on_pick=${(/** @type {string} */ value) => set({ tool: value })} />
      <${ChoiceTiles} label=${record_field("shared_tool", "order").label} choices=${choices("order")} value=${order}
        on_pick=${(/** @type {string} */ value) => set({ order: value })} />
      <${Moment} at=${at} on_at=${(/** @type {string | undefined} */ moment) => set({ at: moment })} />
      <${NoteToo} kind="shared_tool" raw=${raw} on_raw=${(/** @type {any} */ next) => set({ raw: next })}
        errors=${errors.value} />
      <${Errors} kind="shared_tool" errors=${errors.value} />
      <p class="caution small">${t("trace.caution_tools")}</p>
    <//>`;
}
