/**
 * Timers of a test's steps, several at once. Each is saved as the time it ends, so that neither lock nor reload stops
 * it.
 */
import { computed, effect, html, signal } from "../../vendor/preact.js";
import { minutes, t } from "../../i18n/words.js";
import { draft } from "./draft.js";
import { Icon } from "../icon.js";
import { tap } from "./tap.js";

/** @typedef {{id: string, what: string, ends_at: number, href: string, rung?: boolean}} Timer */

/** @type {import("../../vendor/preact.js").Signal<Timer[]>} */
export const timers = draft("timers", () => []);
const second = signal(Date.now());
const going = computed(() => timers.value.some((one) => !one.rung));
/** @type {AudioContext | null} */
let sound = null;
/** Whether a timer can be heard: after a reload, or a call, the browser wants a tap first. */
const heard = signal(false);
/** What the keeper lets the app say while it is not on the screen: "default" until the browser was asked. */
const told = signal(typeof Notification === "function" ? Notification.permission : "denied");

/** @param {{id: string, what: string, seconds: number, href: string}} timed */
export function start_timer({ id, what, seconds, href }) {
  wake_sound();
  timers.value = [
    ...timers.value.filter((one) => one.id !== id),
    { id, what, href, ends_at: Date.now() + seconds * 1000 },
  ];
}

/** Let the timers be heard. Call it in a tap: browsers allow sound in no other moment. */
function wake_sound() {
  if (!sound && typeof AudioContext === "function") {
    sound = new AudioContext();
    sound.onstatechange = () => (heard.value = sound?.state === "running");
  }
  void sound?.resume().catch(() => {});
}

/** Ask the browser whether the app may tell of a timer while another app is on the screen. */
async function ask_to_tell() {
  told.value = await Notification.requestPermission();
}

/** @param {string} id */
function stop_timer(id) {
  timers.value = timers.value.filter((one) => one.id !== id);
}

/** Seconds left, negative once it is over; null if there is no such timer. @param {string} id */
export function left(id) {
  const timer = timers.value.find((one) => one.id === id);
  return timer ? (timer.ends_at - second.value) / 1000 : null;
}

/** Every running timer, on every page. */
export const TimerStrip = () =>
  timers.value.length > 0 &&
  html`
  <div class="timers">
    ${timers.value.map((timer) => {
      const seconds = (timer.ends_at - second.value) / 1000;
      return seconds > 0
        ? html`<a key=${timer.id} href=${timer.href}><${Icon} name="clock" size=${20} />${timer.what} <b
          class="figures">${minutes(seconds)}</b></a>`
        : html`<button key=${timer.id} class="over" type="button" onClick=${tap(() => stop_timer(timer.id))}>
            <${Icon} name="clock" size=${20} />${t("timer.over", { what: timer.what })}</button>`;
    })}
    ${
      going.value &&
      !heard.value &&
      typeof AudioContext === "function" &&
      html`<button type="button" onClick=${tap(wake_sound)}>${t("timer.sound")}</button>`
    }
    ${
      going.value &&
      told.value === "default" &&
      html`<button type="button" onClick=${tap(() => void ask_to_tell())}>${t("timer.tell")}</button>`
    }
  </div>`;

/** Ring when a timer is over, and keep the screen awake while one runs. Called once. */
export function keep_timers() {
  /** @type {WakeLockSentinel | null} */ let lock = null;
  const wake = async () => {
    if (!going.value || document.visibilityState !== "visible") return;
    lock = await navigator.wakeLock?.request("screen").catch(() => null);
  };
  const tick = () => {
    second.value = Date.now();
    const over = timers.value.filter((one) => !one.rung && one.ends_at <= second.value);
    if (over.length) {
      ring();
      for (const one of over) void tell(one).catch(console.warn);
      timers.value = timers.value.map((one) => (over.includes(one) ? { ...one, rung: true } : one));
    }
  };
  /** @type {ReturnType<typeof setInterval> | undefined} */ let beat;
  effect(() => {
    clearInterval(beat);
    if (going.value) {
      beat = setInterval(tick, 500);
      void wake();
    } else {
      void lock?.release();
      lock = null;
    }
  });
  // A page that comes back from the cache of left pages, or from behind a lock, has slept.
  const shown = () => {
    tick();
    void wake();
    void sound?.resume().catch(() => {});
  };
  document.addEventListener("visibilitychange", shown);
  addEventListener("pageshow", shown);
  // Any tap will do for the sound of a timer that runs already.
  addEventListener("click", () => going.value && !heard.value && wake_sound());
  tick();
}

/** Tell of a timer that is over while another page or app is on the screen. @param {Timer} timer */
async function tell({ id, what, href }) {
  if (told.value !== "granted" || document.visibilityState === "visible") return;
  const worker = await navigator.serviceWorker?.getRegistration();
  await worker?.showNotification(t("timer.over", { what }), { tag: id, data: href });
}

function ring() {
  navigator.vibrate?.([300, 150, 300]);
  if (!sound) return;
  for (const at of [0, 0.35, 0.7]) {
    const tone = sound.createOscillator();
    const loud = sound.createGain();
    tone.frequency.value = 660;
    loud.gain.setValueAtTime(0.25, sound.currentTime + at);
    loud.gain.exponentialRampToValueAtTime(0.001, sound.currentTime + at + 0.3);
    tone.connect(loud).connect(sound.destination);
    tone.start(sound.currentTime + at);
    tone.stop(sound.currentTime + at + 0.3);
  }
}
