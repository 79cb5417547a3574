/** A tank's page, and what is done at the tank every day. These screens are fetched together. */
export { Change } from "../screens/change.js";
export { Dose } from "../screens/dose.js";
export { DoseGroup } from "../screens/dose_group.js";
export { Feed } from "../screens/feed.js";
export { LongRunPage } from "../screens/long_run.js";
export { Note } from "../screens/note.js";
export { Outlook } from "../screens/outlook.js";
export { Tank } from "../screens/tank.js";
export { Test } from "../screens/test.js";
export { TestNext } from "../screens/test_next.js";
