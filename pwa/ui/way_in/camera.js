/** The camera's picture, looked at until a code is read. */
import { html, useEffect, useRef } from "../../vendor/preact.js";
import { t } from "../../i18n/words.js";
import { code_reader, draw } from "./read_code.js";

/** A code that fills a third of the picture is read at this size (px); a slow phone takes about 100 ms for it. */
const SIDE = 800;
const PAUSE_MS = 150;

/** Whether this page may ask for the camera: browsers allow it over HTTPS only. */
export const has_camera = () => Boolean(navigator.mediaDevices?.getUserMedia);

/** @param {{on_text: (text: string) => void, on_fail: () => void}} props `on_fail`: there is no camera to be had */
export function Camera({ on_text, on_fail }) {
  const video = useRef(/** @type {HTMLVideoElement | null} */ (null));
  useEffect(() => {
    let ended = false;
    /** @type {MediaStream | undefined} */ let stream;
    const end = () => {
      ended = true;
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
    const look = async () => {
      const asked = navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
      stream = await asked;
      const read = await code_reader();
      const shown = video.current;
      if (ended || !shown) return end();
      shown.srcObject = stream;
      await shown.play();
      const canvas = document.createElement("canvas");
      while (!ended) {
        if (shown.videoWidth) {
          draw(canvas, shown, shown.videoWidth, shown.videoHeight, SIDE);
          const text = await read(canvas);
          if (text && !ended) return on_text(text);
        }
        await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
      }
    };
    look().catch((failed) => {
      if (ended) return;
      console.warn("No camera:", failed);
      on_fail();
    });
    return end;
  }, []);
  return html`<video class="camera" ref=${video} muted playsinline aria-label=${t("join.camera")}></video>`;
}
