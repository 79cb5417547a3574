/** The people of the room as the server names them now; each page that shows them asks again when signal returns. */
import { useEffect, useSignal } from "../../vendor/preact.js";
import { people } from "../../data/people.js";
import { use_ask } from "./ask.js";
import { online, room } from "./live.js";

/** `found` is null until the server answers; `again` asks once more; `problem`, `busy`, `ask` as in ask.js. */
export function use_people() {
  const found = useSignal(/** @type {import("../../data/people.js").Person[] | null} */ (null));
  const asking = use_ask();
  const again = async () => void (found.value = await people(room.value));
  useEffect(() => void asking.ask(again), [online.value, room.value]);
  return { found, again, ...asking };
}
