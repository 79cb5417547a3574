/** The calculators. These screens are fetched together. */
export { Bench } from "../screens/bench.js";
export { BenchSheet } from "../screens/bench_sheet.js";
