/** The calculations: one module a contract, named like it, pure. The twin of each is server/limnary/calc/NAME.py. */
import { acclimation } from "./acclimation.js";
import { ammonia_limits } from "./ammonia_limits.js";
import { compatibility } from "./compatibility.js";
import { dechlorinator_dose } from "./dechlorinator_dose.js";
import { dilution } from "./dilution.js";
import { evaporation } from "./evaporation.js";
import { filled_weight } from "./filled_weight.js";
import { free_ammonia } from "./free_ammonia.js";
import { heater_power } from "./heater_power.js";
import { light_dose } from "./light_dose.js";
import { nitrogen_load } from "./nitrogen_load.js";
import { nitrogen_units } from "./nitrogen_units.js";
import { starter_dose } from "./starter_dose.js";
import { substrate } from "./substrate.js";
import { volume } from "./volume.js";

/** @type {Record<string, (input: any) => Record<string, any>>} */
export const calculations = {
  acclimation,
  ammonia_limits,
  compatibility,
  dechlorinator_dose,
  dilution,
  evaporation,
  filled_weight,
  free_ammonia,
  heater_power,
  light_dose,
  nitrogen_load,
  nitrogen_units,
  starter_dose,
  substrate,
  volume,
};
