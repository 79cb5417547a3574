/** The calculations that the first page runs itself; all of them: index.js. */
import { animal_mass } from "./animal_mass.js";
import { compatibility } from "./compatibility.js";
import { dechlorinator_dose } from "./dechlorinator_dose.js";
import { dilution } from "./dilution.js";
import { feed_ration } from "./feed_ration.js";
import { free_ammonia } from "./free_ammonia.js";
import { nitrogen_load } from "./nitrogen_load.js";
import { nitrogen_units } from "./nitrogen_units.js";
import { oxygen_night } from "./oxygen_night.js";
import { stocking_limit } from "./stocking_limit.js";
import { substrate } from "./substrate.js";
import { volume } from "./volume.js";
import { water_blend } from "./water_blend.js";
import { water_limits } from "./water_limits.js";

export const first_calculations = {
  animal_mass,
  compatibility,
  dechlorinator_dose,
  dilution,
  feed_ration,
  free_ammonia,
  nitrogen_load,
  nitrogen_units,
  oxygen_night,
  stocking_limit,
  substrate,
  volume,
  water_blend,
  water_limits,
};
