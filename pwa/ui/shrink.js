/** Makes a picture small enough to keep and to send. This also drops what a camera writes into it (place, device). */

/** The longer side, and the JPEG quality (assumptions: sharp on a phone, about 300 kB). */
const LONGEST_PX = 1600;
const QUALITY = 0.8;

/**
 * @param {Blob} file @returns {Promise<{picture: Blob, width: number, height: number}>}
 * @throws {RangeError} it is no picture that this phone can read
 */
export async function shrunk(file) {
  const whole = await createImageBitmap(file).catch((cause) => {
    throw new RangeError("no picture", { cause });
  });
  const scale = Math.min(1, LONGEST_PX / Math.max(whole.width, whole.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(whole.width * scale));
  canvas.height = Math.max(1, Math.round(whole.height * scale));
  canvas.getContext("2d")?.drawImage(whole, 0, 0, canvas.width, canvas.height);
  whole.close();
  const picture = await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
  if (!picture) throw new RangeError("no picture");
  return { picture, width: canvas.width, height: canvas.height };
}
