/** The calculations: one pure module for each contract, with its name. Its twin is server/limnary/calc/NAME.py. */
import { acclimation } from "./acclimation.js";
import { alkalinity_use } from "./alkalinity_use.js";
import { ammonia_limits } from "./ammonia_limits.js";
import { animal_mass } from "./animal_mass.js";
import { bath_dose } from "./bath_dose.js";
import { carbon_dioxide } from "./carbon_dioxide.js";
import { change_plan } from "./change_plan.js";
import { closed_water } from "./closed_water.js";
import { compatibility } from "./compatibility.js";
import { dechlorinator_dose } from "./dechlorinator_dose.js";
import { dilution } from "./dilution.js";
import { evaporation } from "./evaporation.js";
import { feed_ration } from "./feed_ration.js";
import { filled_weight } from "./filled_weight.js";
import { free_ammonia } from "./free_ammonia.js";
import { hardness_units } from "./hardness_units.js";
import { heater_power } from "./heater_power.js";
import { ionic_strength } from "./ionic_strength.js";
import { light_dose } from "./light_dose.js";
import { nitrite_risk } from "./nitrite_risk.js";
import { nitrogen_load } from "./nitrogen_load.js";
import { nitrogen_units } from "./nitrogen_units.js";
import { nutrient_routine } from "./nutrient_routine.js";
import { outlook } from "./outlook.js";
import { oxygen_night } from "./oxygen_night.js";
import { oxygen_saturation } from "./oxygen_saturation.js";
import { salt_dose } from "./salt_dose.js";
import { starter_dose } from "./starter_dose.js";
import { steady_routine } from "./steady_routine.js";
import { stock_headroom } from "./stock_headroom.js";
import { stocking_limit } from "./stocking_limit.js";
import { substrate } from "./substrate.js";
import { toxicant_limits } from "./toxicant_limits.js";
import { volume } from "./volume.js";
import { water_after_change } from "./water_after_change.js";
import { water_blend } from "./water_blend.js";
import { water_limits } from "./water_limits.js";

/** @import {CalculationName, Input, Outputs} from "../types/contract.js" */

/** @type {{[K in CalculationName]: (input: Input<K>) => Outputs<K>}} */
export const calculations = {
  acclimation,
  alkalinity_use,
  ammonia_limits,
  animal_mass,
  bath_dose,
  carbon_dioxide,
  change_plan,
  closed_water,
  compatibility,
  dechlorinator_dose,
  dilution,
  evaporation,
  feed_ration,
  filled_weight,
  free_ammonia,
  hardness_units,
  heater_power,
  ionic_strength,
  light_dose,
  nitrite_risk,
  nitrogen_load,
  nitrogen_units,
  nutrient_routine,
  outlook,
  oxygen_night,
  oxygen_saturation,
  salt_dose,
  starter_dose,
  steady_routine,
  stock_headroom,
  stocking_limit,
  substrate,
  toxicant_limits,
  volume,
  water_after_change,
  water_blend,
  water_limits,
};
