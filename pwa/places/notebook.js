/** A notebook brought along: with what reads tables, which no other page needs. */
export { Notebook } from "../screens/notebook.js";
