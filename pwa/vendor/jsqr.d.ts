/** What of jsQR the app uses. */
export default function jsQR(
  data: Uint8ClampedArray,
  width: number,
  height: number,
): { data: string } | null;
