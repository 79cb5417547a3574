/** Above the button of a form: what another keeper changed in the record since the form was opened. */
import { html } from "../vendor/preact.js";
import { find_field, kind_of } from "../contracts.js";
import { listed, t } from "../i18n/words.js";
import { label_of, value_said } from "../advice/sharing/field_said.js";
import { who_said } from "./authors.js";
import { changed_meanwhile } from "./state/changed_fields.js";
import { field_words } from "./words/field_words.js";

/** @import { SomeRecord } from "./state/live.js" */

/** How many changes are spelled out; more would push the button out of reach. */
const SAID = 2;

/**
 * @param {{opened: object | null, held: SomeRecord | null, names: string[], said?: Record<string, (held: SomeRecord) =>
 * string>}} props
 * `opened` see use_opened, `held` the record now, `names` of the fields that the form shows, `said` words for those
 * that have their own
 */
export function Meanwhile({ opened, held, names, said = {} }) {
  // A change that this phone made and has not shared yet is no news to its keeper.
  const changed = opened && held?.meta.state === "shared" ? changed_meanwhile(opened, held, names) : [];
  return html`<div role="status">${
    held && changed.length > 0 && html`<${News} held=${held} changed=${changed} said=${said} />`
  }</div>`;
}

/** @param {{held: SomeRecord, changed: string[], said: Record<string, (held: SomeRecord) => string>}} props */
function News({ held, changed, said }) {
  const spec = (/** @type {string} */ name) => find_field(kind_of(held.kind).fields, name);
  const label = (/** @type {string} */ name) => label_of(spec(name), name);
  const line = (/** @type {string} */ name) => {
    const field = label(name);
    const value = held[name] ?? null;
    if (value === null || value === "") return t("meanwhile.empty", { field });
    const field_spec = spec(name);
    if (field_spec?.type === "object" && field_spec.open) return t("meanwhile.other", { field });
    const words = said[name]?.(held) ?? value_said(field_spec, value, field_words);
    return t("meanwhile.now", { field, value: words.replace(/\.$/, "") });
  };
  return html`
    <div class="news small" tabindex="0">
      <p><b>${t("meanwhile.by", { who: who_said(held.meta.changed_by) })}</b>${" "}
        ${changed.slice(0, SAID).map(line).join(" ")}
        ${changed.length > SAID && ` ${t("meanwhile.more", { fields: listed(changed.slice(SAID).map(label)) })}`}</p>
      <p class="soft">${t("meanwhile.saving")}</p>
    </div>`;
}
