/** Who made a record, who changed it last, and when. */
import { html } from "../vendor/preact.js";
import { t, when } from "../i18n/words.js";
import { now, room } from "./state/live.js";

/** A keeper's name; "this phone" for a record made before joining a room. @param {string | null} keeper */
export const who_said = (keeper) => room.value.name_of(keeper) ?? t("authors.this_phone");

/**
 * @param {{meta: {made_by: string | null, made_at: string, changed_by: string | null, changed_at: string, brought_by?:
 * string, brought_at?: string}}} props
 */
export const Authors = ({ meta: { made_by, made_at, changed_by, changed_at, brought_by, brought_at } }) => html`
  <p class="soft small">${made_at && t("authors.made", { who: who_said(made_by), when: when(made_at, now.value) })}
    ${
      changed_at &&
      changed_at !== made_at &&
      html` ${t("authors.changed", { who: who_said(changed_by), when: when(changed_at, now.value) })}`
    }
    ${
      brought_by &&
      brought_at &&
      html` ${t("authors.brought", { who: who_said(brought_by), when: when(brought_at, now.value) })}`
    }</p>`;
