/** What of fflate the app uses: raw deflate, into `out` as far as it reaches. */
export function inflateSync(bytes: Uint8Array, how: { out: Uint8Array<ArrayBuffer> }): Uint8Array<ArrayBuffer>;
