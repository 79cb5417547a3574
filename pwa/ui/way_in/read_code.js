/** Reads QR codes: by the browser where it can, else by a decoder that is fetched when it is first needed. */

/** @typedef {(canvas: HTMLCanvasElement) => Promise<string | null>} Reader what a code says, null without one */
/** @typedef {{detect(source: HTMLCanvasElement): Promise<{rawValue: string}[]>}} Detector */
/** @typedef {{new (how: {formats: string[]}): Detector, getSupportedFormats(): Promise<string[]>}} Detectors */

const FORMAT = "qr_code";
/** A photo is looked at in these sizes (px, its longer side): small codes need the first, blurred ones the second. */
const SIDES = [1600, 700];

/** @returns {Promise<Reader>} rejects if the decoder cannot be fetched */
export async function code_reader() {
  const own = await own_detector();
  if (own) return async (canvas) => (await own.detect(canvas))[0]?.rawValue ?? null;
  const { default: decode } = await import("../../vendor/jsqr.js");
  return async (canvas) => {
    const { data, width, height } = pen_of(canvas).getImageData(0, 0, canvas.width, canvas.height);
    return decode(data, width, height)?.data ?? null;
  };
}

/** The browser's own detector, null where it has none for QR codes. @returns {Promise<Detector | null>} */
async function own_detector() {
  const { BarcodeDetector: Own } = /** @type {{BarcodeDetector?: Detectors}} */ (globalThis);
  const formats = (await Own?.getSupportedFormats().catch(() => [])) ?? [];
  return Own && formats.includes(FORMAT) ? new Own({ formats: [FORMAT] }) : null;
}

/**
 * What the code in a photo says, null if none is found.
 * @param {Blob} photo @returns {Promise<string | null>}
 */
export async function code_in_photo(photo) {
  const [read, picture] = await Promise.all([code_reader(), createImageBitmap(photo)]);
  const canvas = document.createElement("canvas");
  for (const side of SIDES) {
    draw(canvas, picture, picture.width, picture.height, side);
    const said = await read(canvas);
    if (said) return said;
  }
  return null;
}

/**
 * Draw a picture with its longer side at most `side` px.
 * @param {HTMLCanvasElement} canvas @param {CanvasImageSource} picture @param {number} width @param {number} height
 * @param {number} side
 */
export function draw(canvas, picture, width, height, side) {
  const scale = Math.min(1, side / Math.max(width, height));
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  pen_of(canvas).drawImage(picture, 0, 0, canvas.width, canvas.height);
}

/** @param {HTMLCanvasElement} canvas */
const pen_of = (canvas) =>
  /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d", { willReadFrequently: true }));
