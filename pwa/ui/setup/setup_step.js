/** The frame of one step of setting a tank up: its place among the steps, skip and next at the thumb, and its draft. */
import { html, useSignal } from "../../vendor/preact.js";
import { STEPS, after, field_of, figures_of, said_at, step_of, volume_input } from "../../advice/setup/setting_up.js";
import { contracts, records, run } from "../../contracts.js";
import { t } from "../../i18n/words.js";
import { forget, use_draft } from "../state/draft.js";
import { Icon } from "../icon.js";
import { Page } from "../page.js";
import { record } from "../state/record.js";
import { trouble_said } from "../words/trouble_said.js";
import { go } from "../state/router.js";
import { tap } from "../state/tap.js";

/** @import { Said, Step } from "../../types/setup.js" */
/** @import { VolumeInput } from "../../types/calculations.js" */
/** @import { Tank } from "../../types/views.js" */
/** @import { Write } from "../state/record.js" */
/** @typedef {Record<string, any>} Raw what a form holds; `any`, because each step has its own fields */
/**
 * @template T
 * @typedef {T & Raw} Typed
 */

/** The measures of a tank that is set up here: its first step records them. @param {Tank} tank */
export const measures_of = (tank) => /** @type {VolumeInput} */ (/** @type {unknown} */ (tank.measures));

const IN_THE_GLASS = ["substrate", "hardscape"];

/**
 * What a step says: the record, overlaid by what was typed on this phone and is not recorded yet.
 * @template {Step} S
 * @param {Tank} tank
 * @param {S} step
 */
export function use_step(tank, step) {
  const name = `setup.${tank.id}.${step}`;
  const kept = use_draft(name, () => /** @type {Raw | null} */ (null));
  const problem = useSignal("");
  const raw = /** @type {Typed<Said[S]>} */ ({ ...said_at(tank, step), ...kept.value });
  const said = figures_of(raw);
  const set = (/** @type {Raw} */ more) => (kept.value = { ...kept.value, ...more });

  /**
   * @param {"done" | "skipped"} state @param {Raw} [fields] of the tank, beside the plan
   * @param {{more?: Write[], words?: string, then?: string}} [how] `more`: writes of the same moment
   */
  const save = async (state, fields = {}, { more = [], words, then } = {}) => {
    const before = step_of(tank, step).said;
    const plan = { [field_of(step)]: { state, ...(state === "done" ? { said } : before ? { said: before } : {}) } };
    try {
      // What does not fit the glass is refused at the step where it is typed.
      if (state === "done" && IN_THE_GLASS.includes(step)) run("volume", volume_input({ ...tank, ...plan }));
      const writes = [
        { type: /** @type {const} */ ("put"), kind: "tank", id: tank.id, fields: { ...plan, ...fields } },
        ...more,
      ];
      if (
        !(await record(
          writes,
          words ?? t(state === "done" ? "setup.saved" : "setup.skipped", { step: t(`setup.step.${step}`) }),
        ))
      )
        return;
      forget(name);
      go(then ?? next_path(tank.id, step));
    } catch (error) {
      problem.value = trouble_said(error, [...contracts().volume.inputs, ...records().tank.fields]);
    }
  };
  return { raw, said, set, save, problem: problem.value };
}

/** @param {string} id @param {Step} step */
export const next_path = (id, step) => (after(step) ? `/tank/${id}/setup/${after(step)}` : `/tank/${id}`);

/**
 * @param {{step: Step, up: string, name?: string, problem?: string, skip?: (() => void) | null, act: unknown,
 * children?: unknown}} props `act`: the primary action's button
 */
export const SetupStep = ({ step, up, name, problem, skip, act, children }) => html`
  <${Page} title=${t(`setup.step.${step}`)} up=${up}
    aside=${html`<span class="soft figures">${t("test.place", { at: STEPS.indexOf(step) + 1, of: STEPS.length })}
    </span>`}
    act=${html`${
      skip &&
      html`<button class="quiet tall" type="button" onClick=${tap(skip)}>${t("setup.skip")}
      </button>`
    }${act}`}>
    ${name && html`<p class="soft">${name}</p>`}
    ${problem && html`<p class="wrong" role="alert"><${Icon} name="needs" /><span>${problem}</span></p>`}
    ${children}
  <//>`;

/** @param {{onClick: () => void, disabled?: boolean, children?: unknown}} props */
export const Next = ({ onClick, disabled = false, children }) =>
  html`<button class="main" type="button" disabled=${disabled} onClick=${tap(onClick)}>${children ?? t("setup.next")}
    </button>`;
