/** Words and units: the language and the measures that this phone shows, each by one tap, at once. */
import { html } from "../vendor/preact.js";
import { systems } from "../figures/units.js";
import { LANGUAGES, t } from "../i18n/words.js";
import { litres_said, temperature_said } from "../ui/words/figures.js";
import { wanted_language } from "../ui/state/language.js";
import { measures } from "../ui/state/measures.js";
import { Page } from "../ui/page.js";

/** What the sample shows: figures with a decimal. */
const SAMPLE = { litres: 22.5, temperature_c: 24.5 };

export function Display() {
  const languages = [
    { value: "phone", label: t("display.as_phone") },
    ...Object.entries(LANGUAGES).map(([value, label]) => ({ value, label, lang: value })),
  ];
  const units = systems().map(({ key }) => ({ value: key, label: t(`display.${key}`) }));
  return html`
    <${Page} title=${t("display.title")} place="room" up="/room">
      <${Choice} name="language" label=${t("display.language")} choices=${languages} wanted=${wanted_language} />
      <${Choice} name="units" label=${t("display.units")} choices=${units} wanted=${measures} />
      <section class="section">
        <h2>${t("display.sample")}</h2>
        <p class="sentence">
          ${t("display.sample_said", {
            litres: litres_said(SAMPLE.litres),
            temperature: temperature_said(SAMPLE.temperature_c),
          })}</p>
        <p class="soft">${t("display.kept")}</p>
        <p class="soft">${t("display.kept_units")}</p>
      </section>
    <//>`;
}

/**
 * @param {{name: string, label: string, choices: {value: string, label: string, lang?: string}[],
 * wanted: import("../vendor/preact.js").Signal<string>}} props
 */
const Choice = ({ name, label, choices, wanted }) => html`
  <fieldset class="field">
    <legend class="label">${label}</legend>
    <div class="chips">
      ${choices.map(
        ({ value, label, lang }) => html`
        <label key=${value} lang=${lang}><input class="unseen" type="radio" name=${name} value=${value}
          checked=${value === wanted.value} onChange=${() => (wanted.value = value)} />${label}</label>`,
      )}
    </div>
  </fieldset>`;
