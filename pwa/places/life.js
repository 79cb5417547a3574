/** Animals and plants. These screens are fetched together. */
export { PlantingEntry } from "../screens/planting_entry.js";
export { Plants } from "../screens/plants.js";
export { SharedTool } from "../screens/shared_tool.js";
export { Stock } from "../screens/stock.js";
export { StockEntry } from "../screens/stock_entry.js";
export { Trace } from "../screens/trace.js";
