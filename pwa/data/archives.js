/** A room into a file and out of one. fish_room.js asks for this where it is first used. */
export { export_needs_you, export_room, export_unshared } from "./export_room.js";
export { import_room } from "./import_room.js";
export { tables_zip } from "./tables_csv.js";
export { readings_csv } from "./readings_csv.js";
