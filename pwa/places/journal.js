/** What a tank was: its history, trends, photos and waters. These screens are fetched together. */
export { Correct } from "../screens/correct.js";
export { History } from "../screens/history.js";
export { MonthPage } from "../screens/month.js";
export { Photo } from "../screens/photo.js";
export { Search } from "../screens/search.js";
export { Shared } from "../screens/shared.js";
export { Trends } from "../screens/trends.js";
export { Water } from "../screens/water.js";
export { RoomYear, YearPage } from "../screens/year.js";
