/**
 * The trace as a small graph: a vertical line for each tank, time running down, an arrow for each thing shared. Screen
 * readers skip it: the table beside it says the same.
 */
import { html } from "../../vendor/preact.js";
import { when } from "../../i18n/words.js";
import { Icon } from "../icon.js";
import { tank_name } from "../life_entry.js";
import { now } from "../state/live.js";
import { ICON_OF, what_said } from "../words/trace_said.js";

/** Least width of a tank's lane. */
const LANE_PX = 84;
const HEAD = 7;

/**
 * @param {{tank: string, to: import("../../advice/life/trace.js").Met[], from:
 * import("../../advice/life/trace.js").Met[]}} props
 */
export function TraceGraph({ tank, to, from }) {
  const links = unique([...from, ...to].flatMap((one) => one.by)).sort((a, b) =>
    a.at < b.at ? -1 : a.at > b.at ? 1 : 0,
  );
  // Tanks that it can have come from stand to the left, tanks that it can have reached to the right.
  const left = from.map((one) => one.tank).reverse();
  const lanes = [...left, tank, ...to.map((one) => one.tank).filter((one) => !left.includes(one))];
  const exposed = new Map(to.map((one) => [one.tank, one.at]));
  const x = (/** @type {string} */ lane) => `${(100 * (lanes.indexOf(lane) + 0.5)) / lanes.length}%`;
  return html`
    <div class="trace-graph section" aria-hidden="true"><div style=${{ minWidth: `${LANE_PX * lanes.length}px` }}>
      <div class="trace-heads">${lanes.map(
        (lane) => html`<span key=${lane} class=${lane === tank ? "asked-for" : ""}>
        ${tank_name(lane)}</span>`,
      )}</div>
      ${links.map(
        (link) => html`<${Row} key=${link.id + link.from} link=${link} lanes=${lanes} x=${x} tank=${tank}
        exposed=${exposed} />`,
      )}
      <div class="trace-row end"><${Lanes} lanes=${lanes} x=${x} tank=${tank} exposed=${exposed} at="9999" /></div>
    </div></div>`;
}

/**
 * @param {{link: import("../../advice/life/trace.js").Shared, lanes: string[], x: (lane: string) => string, tank:
 * string, exposed: Map<string, string>}} props
 */
function Row({ link, lanes, x, tank, exposed }) {
  const right = lanes.indexOf(link.to) > lanes.indexOf(link.from);
  const middle = (lanes.indexOf(link.to) + lanes.indexOf(link.from) + 1) / 2 / lanes.length;
  const side = middle < 0.34 ? "start" : middle > 0.66 ? "end" : "center";
  return html`
    <div class="trace-row">
      <${Lanes} lanes=${lanes} x=${x} tank=${tank} exposed=${exposed} at=${link.at}>
        <line class="arrow" x1=${x(link.from)} y1="100%" x2=${x(link.to)} y2="100%" />
        <circle class="arrow" cx=${x(link.from)} cy="100%" r="4" />
        <svg class="head" x=${x(link.to)} y="100%" overflow="visible"><path
          d=${right ? `M0 0 -${2 * HEAD} -${HEAD}V${HEAD}Z` : `M0 0 ${2 * HEAD} -${HEAD}V${HEAD}Z`} /></svg>
      <//>
      <span class=${`trace-what ${side}`}><span><${Icon} name=${ICON_OF[link.way]} size=${16} />${what_said(link)}<br />
        <small>${when(link.at, now.value)}</small></span></span>
    </div>`;
}

/**
 * The tanks' lines through one row: thick for the tank in question, and for each tank that it has reached by then.
 * @param {{lanes: string[], x: (lane: string) => string, tank: string, exposed: Map<string, string>, at: string,
 * children?: unknown}} props
 */
const Lanes = ({ lanes, x, tank, exposed, at, children }) => html`
  <svg class="trace-lanes">
    ${lanes.map(
      (lane) => html`<line key=${lane}
      class=${lane === tank || (exposed.has(lane) && String(exposed.get(lane)) < at) ? "thick" : "thin"} x1=${x(lane)}
        y1="0"
      x2=${x(lane)} y2="100%" />`,
    )}
    ${children}
  </svg>`;

/** @param {import("../../advice/life/trace.js").Shared[]} links */
const unique = (links) => [...new Map(links.map((one) => [one.id + one.from, one])).values()];
