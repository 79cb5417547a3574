/** A kit, a dechlorinator's label or a source water: set down once by the keeper, from the record kind's own fields. */
import { html, useSignal } from "../vendor/preact.js";
import { InvalidInput, records } from "../contracts.js";
import { HARDNESS, hardness_printed } from "../advice/hardness.js";
import { SPECIES } from "../advice/level.js";
import { t } from "../i18n/words.js";
import { Authors } from "../ui/authors.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { forget, use_draft, use_opened } from "../ui/state/draft.js";
import { Fields, Wrong, payload_of, raw_of } from "../ui/contract/form.js";
import { UNITS, common_kit } from "../ui/kits.js";
import { get, get_of_kind, room } from "../ui/state/live.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id, record } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** Kinds set down here, and the tank's field that one of them fills. @type {Record<string, string | null>} */
const FILLS = {
  test_kit: null,
  label: "dechlorinator",
  source_water: "source_water",
  own_species: null,
  own_plant: null,
};
/** Kinds that records know by their name: it stays as it was set down. */
const BY_NAME = ["own_species", "own_plant"];
/** Fields of a kit that matter only beside others. @type {Record<string, Record<string, string[]>>} */
const WHEN = {
  basis: { parameter: Object.keys(SPECIES) },
  steps: { entry: ["steps"] },
  per_drop: { parameter: Object.keys(HARDNESS), entry: ["keypad"] },
};
/** What stands in a new one. @type {Record<string, Record<string, any>>} */
const FIRST = {
  test_kit: {},
  label: { use: "dechlorinator", unit: "ml", basis: "new_water" },
  source_water: {},
  own_species: { shape: "fusiform" },
  own_plant: {},
};

/** @param {{kind: string, id?: string, query: URLSearchParams}} props */
export function Setting({ kind, id, query }) {
  const held = id ? get_of_kind(kind, id) : null;
  const tank = query.get("tank") ? get("tank", query.get("tank") ?? "") : null;
  const parameter = query.get("parameter");
  const named = query.get("name");
  const name = `${kind}.${id ?? "new"}${parameter ? `.${parameter}` : ""}${named ? `.${named}` : ""}`;
  const all_specs = (records()[kind]?.fields ?? [])
    .filter((/** @type {any} */ field) => field.name !== "retired" || id)
    .filter((/** @type {any} */ field) => field.name !== "name" || !id || !BY_NAME.includes(kind))
    .map((/** @type {any} */ field) =>
      kind === "test_kit" && WHEN[field.name] ? { ...field, when: WHEN[field.name] } : field,
    );
  const opened = use_opened(name, held);
  const kept = use_draft(name, () =>
    held
      ? raw_of(all_specs, held)
      : { ...FIRST[kind], ...(parameter ? kit_like(parameter) : {}), ...(named ? { name: named } : {}) },
  );
  const specs = all_specs.map((/** @type {any} */ field) =>
    kind === "test_kit" && field.name === "unit" ? printed_unit(field, kept.value.parameter) : field,
  );
  const tried = useSignal(false);
  const refused = useSignal(/** @type {any[]} */ ([]));
  if (!(kind in FILLS) || (id && !held)) return html`<${Missing} up="/room" />`;

  const then = query.get("then") ?? "/room";
  const save = async () => {
    tried.value = true;
    const fields = payload_of(specs, kept.value);
    const emptied = id
      ? Object.fromEntries(
          specs
            .filter(
              (/** @type {any} */ one) => !one.required && !(one.name in fields) && held?.[one.name] !== undefined,
            )
            .map((/** @type {any} */ one) => [one.name, null]),
        )
      : {};
    const own = id ?? new_id();
    const changed = changed_fields(opened, { ...emptied, ...fields });
    /** @type {any[]} */ const writes = Object.keys(changed).length
      ? [{ type: "put", kind, id: own, fields: changed }]
      : [];
    const filled = FILLS[kind];
    if (tank && filled) writes.push({ type: "put", kind: "tank", id: tank.id, fields: { [filled]: own } });
    try {
      if (writes.length && !(await record(writes, t("saved.setting", { name: fields.name ?? held?.name })))) return;
      forget(name);
      go(then, { replace: true });
    } catch (no) {
      if (!(no instanceof InvalidInput)) throw no;
      refused.value = no.errors;
    }
  };
  const drop = async () => {
    if (
      !(await record([{ type: "del", kind, id: /** @type {string} */ (id) }], t("saved.removed", { what: held?.name })))
    )
      return;
    forget(name);
    go(then, { replace: true });
  };
  const known = specs.map((/** @type {any} */ one) => one.name);
  const strays = refused.value.filter((one) => !known.includes(one.field.split(".")[0]));

  return html`
    <${Page} title=${t(`setting.${kind}`)} up=${then} news=${html`<${Meanwhile} opened=${opened} held=${held}
      names=${known} />`}
      act=${html`<button class="main" type="button" disabled=${!room.value.may(kind)} onClick=${tap(() => void save())}>
        ${t("setting.save")}</button>`}>
      ${held && BY_NAME.includes(kind) && html`<h2>${held.name}</h2>`}
      <p class="soft">${t(room.value.may(kind) ? `setting.${kind}_why` : "looking_only.this")}</p>
      <${Fields} specs=${specs} raw=${kept.value}
        on_raw=${(/** @type {any} */ raw) => ((kept.value = kind === "test_kit" ? of_parameter(kept.value, raw) : raw), (refused.value = []))} errors=${refused.value} tried=${tried.value} />
      ${strays.map((one) => html`<${Wrong} error=${one} />`)}
      ${held && html`<${Authors} meta=${held.meta} />`}
      ${
        id &&
        room.value.may(kind) &&
        html`<p><button class="quiet" type="button" onClick=${tap(() => void drop())}>
        ${t("setting.remove")}</button></p>`
      }
    <//>`;
}

/**
 * A new kit for a parameter starts as such kits usually are; its steps are the keeper's to copy.
 * @param {string} parameter
 */
const kit_like = (parameter) => {
  const { entry, basis } = common_kit(parameter);
  return { parameter, entry, ...(basis ? { basis } : {}), ...(UNITS[parameter] ? { unit: UNITS[parameter] } : {}) };
};

/** Hardness is printed on one of a few scales: those are picked from. @param {any} field @param {string} parameter */
function printed_unit(field, parameter) {
  const printed = hardness_printed(parameter);
  return printed
    ? { ...field, type: "choice", default: printed[0], choices: printed.map((unit) => ({ value: unit, label: unit })) }
    : field;
}

/** A unit that stood for another parameter is not carried along to this one. @param {any} before @param {any} raw */
function of_parameter(before, raw) {
  const [was, is] = [before.parameter, raw.parameter];
  const stands = was === is || (raw.unit && raw.unit !== UNITS[was] && ![was, is].some(hardness_printed));
  return stands ? raw : { ...raw, unit: UNITS[is] };
}
