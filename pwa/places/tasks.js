/** Tasks, calendar, absences and labels. These screens are fetched together. */
export { Away } from "../screens/away.js";
export { AwayForm } from "../screens/away_form.js";
export { CalendarPage } from "../screens/calendar.js";
export { Labels } from "../screens/labels.js";
export { Task } from "../screens/task.js";
export { TaskForm } from "../screens/task_form.js";
export { Tasks } from "../screens/tasks.js";
