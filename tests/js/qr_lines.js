/** The phone's QR codes: a text a line in, {size, path} out. */
import { createInterface } from "node:readline";
import { qr_path } from "../../pwa/ui/qr_path.js";

for await (const line of createInterface({ input: process.stdin }))
  process.stdout.write(`${JSON.stringify(qr_path(JSON.parse(line)))}\n`);
