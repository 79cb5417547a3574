/** The calculations: one module a contract, named like it, pure. The twin of each is server/limnary/calc/NAME.py. */
import { free_ammonia } from "./free_ammonia.js";

/** @type {Record<string, (input: any) => Record<string, any>>} */
export const calculations = {
  free_ammonia,
};
