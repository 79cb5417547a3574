/** The Room place, and the way into a room. These screens are fetched together. */
export { Copy } from "../screens/copy.js";
export { Display } from "../screens/display.js";
export { Install } from "../screens/install.js";
export { Invite } from "../screens/invite.js";
export { Join } from "../screens/join.js";
export { NeedsYou } from "../screens/needs_you.js";
export { People, people } from "../screens/people.js";
export { Person } from "../screens/person.js";
export { Room } from "../screens/room.js";
export { Rooms } from "../screens/rooms.js";
export { Setting } from "../screens/setting.js";
