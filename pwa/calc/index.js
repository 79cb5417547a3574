/**
 * The calculations: one pure module for each contract, with its name. Its twin is server/limnary/calc/NAME.py. Those of
 * first.js come with the first page, the others with the rest of the shared texts.
 */
import { first_calculations } from "./first.js";
import { acclimation } from "./acclimation.js";
import { alkalinity_use } from "./alkalinity_use.js";
import { ammonia_limits } from "./ammonia_limits.js";
import { bath_dose } from "./bath_dose.js";
import { carbon_dioxide } from "./carbon_dioxide.js";
import { change_plan } from "./change_plan.js";
import { closed_water } from "./closed_water.js";
import { evaporation } from "./evaporation.js";
import { filled_weight } from "./filled_weight.js";
import { hardness_units } from "./hardness_units.js";
import { heater_power } from "./heater_power.js";
import { ionic_strength } from "./ionic_strength.js";
import { light_dose } from "./light_dose.js";
import { nitrite_risk } from "./nitrite_risk.js";
import { nutrient_routine } from "./nutrient_routine.js";
import { outlook } from "./outlook.js";
import { oxygen_saturation } from "./oxygen_saturation.js";
import { salt_dose } from "./salt_dose.js";
import { starter_dose } from "./starter_dose.js";
import { steady_routine } from "./steady_routine.js";
import { stock_headroom } from "./stock_headroom.js";
import { toxicant_limits } from "./toxicant_limits.js";
import { water_after_change } from "./water_after_change.js";

/** @import {CalculationName, Input, Outputs} from "../types/contract.js" */

/** @type {{[K in CalculationName]: (input: Input<K>) => Outputs<K>}} */
export const calculations = {
  ...first_calculations,
  acclimation,
  alkalinity_use,
  ammonia_limits,
  bath_dose,
  carbon_dioxide,
  change_plan,
  closed_water,
  evaporation,
  filled_weight,
  hardness_units,
  heater_power,
  ionic_strength,
  light_dose,
  nitrite_risk,
  nutrient_routine,
  outlook,
  oxygen_saturation,
  salt_dose,
  starter_dose,
  steady_routine,
  stock_headroom,
  toxicant_limits,
  water_after_change,
};
