/** A kit, a dechlorinator's label or a source water: recorded once by the keeper, by the fields of its record kind. */
import { html } from "../vendor/preact.js";
import { records } from "../contracts.js";
import { HARDNESS, hardness_printed } from "../advice/hardness.js";
import { SPECIES } from "../advice/level.js";
import { t } from "../i18n/words.js";
import { Authors } from "../ui/authors.js";
import { changed_fields } from "../ui/state/changed_fields.js";
import { Fields, payload_of, raw_of } from "../ui/contract/form.js";
import { UNITS, common_kit } from "../ui/kits.js";
import { get, get_of_kind, room } from "../ui/state/live.js";
import { Meanwhile } from "../ui/meanwhile.js";
import { Missing } from "../ui/missing.js";
import { Page } from "../ui/page.js";
import { new_id } from "../ui/state/record.js";
import { Refused, use_record_form } from "../ui/state/record_form.js";
import { tap } from "../ui/state/tap.js";

/** @typedef {import("../ui/contract/form.js").Raw} Raw */
/** @typedef {import("../types/contract.js").Field} Field */

/** Kinds recorded here, and the tank's field that names one of them. @type {Record<string, string | null>} */
const FILLS = {
  test_kit: null,
  label: "dechlorinator",
  source_water: "source_water",
  own_species: null,
  own_plant: null,
};
/** Kinds that other records refer to by name: the name never changes. */
const BY_NAME = ["own_species", "own_plant"];
/** Fields of a kit that matter only beside others. @type {Record<string, Record<string, string[]>>} */
const WHEN = {
  basis: { parameter: Object.keys(SPECIES) },
  steps: { entry: ["steps"] },
  per_drop: { parameter: Object.keys(HARDNESS), entry: ["keypad"] },
};
/** What stands in a new one. @type {Record<string, Raw>} */
const FIRST = {
  test_kit: {},
  label: { use: "dechlorinator", unit: "ml", basis: "new_water" },
  source_water: {},
  own_species: { shape: "fusiform" },
  own_plant: {},
};

/** @param {{kind: string, id?: string, query: URLSearchParams}} props */
export function Setting({ kind, id, query }) {
  const held = get_of_kind(kind, id);
  const parameter = query.get("parameter");
  const named = query.get("name");
  const name = [kind, id ?? "new", parameter, named].filter(Boolean).join(".");
  const all_specs = specs_of(kind, id);
  const form = use_record_form({
    name,
    held,
    first: () => (held ? raw_of(all_specs, held) : new_raw(kind, parameter, named)),
  });
  const raw = form.draft.value;
  const specs = all_specs.map((field) =>
    kind === "test_kit" && field.name === "unit" ? printed_unit(field, raw.parameter) : field,
  );
  if (!(kind in FILLS) || (id && !held)) return html`<${Missing} up="/room" />`;

  const to = query.get("then") ?? "/room";
  const save = () =>
    form.save(() => {
      const fields = payload_of(specs, raw);
      const own = id ?? new_id();
      const changed = changed_fields(form.opened, { ...emptied(specs, fields, held), ...fields });
      /** @type {import("../ui/state/record.js").Write[]} */
      const writes = Object.keys(changed).length ? [{ type: "put", kind, id: own, fields: changed }] : [];
      const tank = get("tank", query.get("tank") ?? undefined);
      const filled = FILLS[kind];
      if (tank && filled) writes.push({ type: "put", kind: "tank", id: tank.id, fields: { [filled]: own } });
      return { writes, said: t("saved.setting", { name: fields.name ?? held?.name }), to };
    });
  const drop = () =>
    form.save(() => ({
      writes: [{ type: "del", kind, id: /** @type {string} */ (id) }],
      said: t("saved.removed", { what: held?.name ?? "" }),
      to,
    }));
  const type = (/** @type {Raw} */ typed) => form.set(kind === "test_kit" ? of_parameter(raw, typed) : typed);
  const known = specs.map((field) => field.name);
  const may = room.value.may(kind);

  return html`
    <${Page} title=${t(`setting.${kind}`)} up=${to} news=${html`<${Meanwhile} opened=${form.opened} held=${held}
      names=${known} />`}
      act=${html`<button class="main" type="button" disabled=${!may} onClick=${tap(() => void save())}>
        ${t("setting.save")}</button>`}>
      ${held && BY_NAME.includes(kind) && html`<h2>${held.name}</h2>`}
      <p class="soft">${t(may ? `setting.${kind}_why` : "looking_only.this")}</p>
      <${Fields} specs=${specs} raw=${raw} on_raw=${type} errors=${form.errors.value} tried=${form.tried.value} />
      <${Refused} form=${form} kind=${kind} beside=${known} />
      ${held && html`<${Authors} meta=${held.meta} />`}
      ${
        id &&
        may &&
        html`<p><button class="quiet" type="button" onClick=${tap(() => void drop())}>
        ${t("setting.remove")}</button></p>`
      }
    <//>`;
}

/**
 * The fields that the form shows.
 * @param {string} kind
 * @param {string | undefined} id of the record, undefined for a new one
 */
const specs_of = (kind, id) =>
  (records()[kind]?.fields ?? [])
    .filter((field) => field.name !== "retired" || id)
    .filter((field) => field.name !== "name" || !id || !BY_NAME.includes(kind))
    .map((field) => (kind === "test_kit" && WHEN[field.name] ? { ...field, when: WHEN[field.name] } : field));

/**
 * What stands in a new one.
 * @param {string} kind
 * @param {string | null} parameter that a new kit is for
 * @param {string | null} named
 * @returns {Raw}
 */
const new_raw = (kind, parameter, named) => ({
  ...FIRST[kind],
  ...(parameter ? kit_like(parameter) : {}),
  ...(named ? { name: named } : {}),
});

/**
 * The fields that the form clears: the record has them, the form leaves them empty.
 * @param {Field[]} specs
 * @param {Record<string, unknown>} fields
 * @param {Record<string, unknown> | null} held
 */
const emptied = (specs, fields, held) =>
  Object.fromEntries(
    specs
      .filter(({ name, required }) => held && !required && !(name in fields) && held[name] !== undefined)
      .map(({ name }) => [name, null]),
  );

/**
 * A new kit for a parameter starts as such kits usually are; the keeper copies the steps from the kit itself.
 * @param {string} parameter
 */
const kit_like = (parameter) => {
  const { entry, basis } = common_kit(parameter);
  return { parameter, entry, ...(basis ? { basis } : {}), ...(UNITS[parameter] ? { unit: UNITS[parameter] } : {}) };
};

/**
 * Kits print hardness on one of a few scales: the keeper picks one.
 * @param {Field} field
 * @param {string} parameter
 * @returns {Field}
 */
function printed_unit(field, parameter) {
  const printed = hardness_printed(parameter);
  return printed
    ? { ...field, type: "choice", default: printed[0], choices: printed.map((unit) => ({ value: unit, label: unit })) }
    : field;
}

/** The kit's unit does not follow it to another parameter. @param {Raw} before @param {Raw} raw */
function of_parameter(before, raw) {
  const [was, is] = [before.parameter, raw.parameter];
  const stands = was === is || (raw.unit && raw.unit !== UNITS[was] && ![was, is].some(hardness_printed));
  return stands ? raw : { ...raw, unit: UNITS[is] };
}
