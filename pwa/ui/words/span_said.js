/** A day on paper: weekday, day and month, in this phone's time zone. */
import { wall_of } from "../../advice/tasks/local_time.js";
import { date_said } from "../../i18n/words.js";
import { zone_here } from "../tasks_due.js";

/** "Sat 28 Nov" @param {number} at an instant */
export const day_said = (at) => date_said(wall_of(at, zone_here()));
