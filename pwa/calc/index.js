/** The calculations: one module a contract, named like it, pure. The twin of each is server/limnary/calc/NAME.py. */
import { free_ammonia } from "./free_ammonia.js";
import { light_dose } from "./light_dose.js";
import { nitrogen_load } from "./nitrogen_load.js";
import { starter_dose } from "./starter_dose.js";

/** @type {Record<string, (input: any) => Record<string, any>>} */
export const calculations = {
  free_ammonia,
  light_dose,
  nitrogen_load,
  starter_dose,
};
