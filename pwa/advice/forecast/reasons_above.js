/** The reasons that the outlook's page says above its charts; each chart says its own chance. */

/** @import { Advised } from "../../types/advice.js" */

const ABOVE = ["doubt", "kh_gone", "prior", "few", "rule_working", "rule_failed"];

/** @param {Pick<Advised, "findings" | "reasons">} advice */
export function reasons_above({ findings: [lead], reasons }) {
  // Where hardness leads, the sentence has said it.
  const said = lead?.code === "kh_ends" ? "kh_gone" : "";
  return reasons.filter(({ code }) => ABOVE.includes(code) && code !== said);
}
