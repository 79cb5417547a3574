/** The phone's calendar file: one JSON line in, {room, tasks, tanks, dones, now}, the file out as one JSON text. */
import { createInterface } from "node:readline";
import { calendar_file } from "../../pwa/advice/tasks/calendar.js";
import { occurrences, until_of } from "../../pwa/advice/tasks/recurrence.js";

for await (const line of createInterface({ input: process.stdin })) {
  const { room, tanks, ...what } = JSON.parse(line);
  process.stdout.write(
    `${JSON.stringify(
      calendar_file({ ...what, room_name: room, tanks: new Map(Object.entries(tanks)) }, occurrences, until_of),
    )}\n`,
  );
}
