/** The list of tanks, and setting one up. These screens are fetched together. */
export { Buy } from "../screens/buy.js";
export { Grid } from "../screens/grid.js";
export { SettingUp } from "../screens/setting_up.js";
export { TankForm } from "../screens/tank_form.js";
export { Tanks } from "../screens/tanks.js";
