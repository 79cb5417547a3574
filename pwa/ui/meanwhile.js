/** On the form of a record, above its button: what another keeper changed in it since the form was opened. */
import { html } from "../vendor/preact.js";
import { find_field, kind_of } from "../contracts.js";
import { listed, t } from "../i18n/words.js";
import { label_of, value_said } from "../advice/sharing/field_said.js";
import { who_said } from "./authors.js";
import { changed_meanwhile } from "./state/changed_fields.js";
import { field_words } from "./words/field_words.js";

/** So many are said with what they say now: the button stays in reach. */
const SAID = 2;

/**
 * @param {{opened: any, held: any, names: string[], said?: Record<string, (held: any) => string>}} props
 * `opened` see use_opened, `held` the record now, `names` of the fields that the form shows, `said` words for those
 * that have their own
 */
export function Meanwhile({ opened, held, names, said = {} }) {
  // What this phone itself wrote last, and has not shared yet, is no news to its keeper.
  const changed = opened && held?.meta.state === "shared" ? changed_meanwhile(opened, held, names) : [];
  const spec = (/** @type {string} */ name) => find_field(kind_of(held.kind).fields, name);
  const label = (/** @type {string} */ name) => label_of(spec(name), name);
  const line = (/** @type {string} */ name) => {
    const field = label(name);
    const value = held[name] ?? null;
    if (value === null || value === "") return t("meanwhile.empty", { field });
    const field_spec = spec(name);
    if (field_spec?.type === "object" && field_spec.open) return t("meanwhile.other", { field });
    return t("meanwhile.now", {
      field,
      value: (said[name]?.(held) ?? value_said(field_spec, value, field_words)).replace(/\.$/, ""),
    });
  };
  return html`<div role="status">${
    changed.length > 0 &&
    html`
    <div class="news small" tabindex="0">
      <p><b>${t("meanwhile.by", { who: who_said(held.meta.changed_by) })}</b>${" "}
        ${changed.slice(0, SAID).map(line).join(" ")}
        ${changed.length > SAID && ` ${t("meanwhile.more", { fields: listed(changed.slice(SAID).map(label)) })}`}</p>
      <p class="soft">${t("meanwhile.saving")}</p>
    </div>`
  }</div>`;
}
