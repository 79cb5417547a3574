/** What pwa/data uses of @noble/hashes. */
export function sha256(bytes: Uint8Array): Uint8Array;
export function bytesToHex(bytes: Uint8Array): string;
