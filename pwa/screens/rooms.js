/** The rooms on this phone: which one is open, how far each is shared; a new name, a new room. */
import { html, useEffect, useSignal } from "../vendor/preact.js";
import { LOCAL, forget_room, make_room, room_list, who } from "../data/fish_room.js";
import { rename } from "../data/people.js";
import { t } from "../i18n/words.js";
import { Problem, offer_undo, use_ask } from "../ui/state/ask.js";
import { forget, use_draft } from "../ui/state/draft.js";
import { with_text } from "../ui/state/field_text.js";
import { Icon } from "../ui/icon.js";
import { room, sharing } from "../ui/state/live.js";
import { Page } from "../ui/page.js";
import { say } from "../ui/state/record.js";
import { go } from "../ui/state/router.js";
import { tap } from "../ui/state/tap.js";

/** @typedef {import("../ui/state/live.js").FishRoom} FishRoom */
/** @typedef {Awaited<ReturnType<typeof room_list>>[number]} RoomHere */

/** @param {{enter: (id?: string) => Promise<void>}} props `enter` opens a room, the one used last if none is named */
export function Rooms({ enter }) {
  const found = useSignal(/** @type {RoomHere[]} */ ([]));
  const signed_in = useSignal(false);
  const look = async () => {
    found.value = await room_list();
    signed_in.value = (await who()).signed_in;
  };
  const { waiting, needs_you } = sharing();
  useEffect(() => void look(), [room.value, waiting, needs_you.length, room.value.about()?.name]);
  const about = room.value.about();
  const open = async (/** @type {string} */ id) => {
    await enter(id);
    go("/room", { replace: true });
  };
  return html`
    <${Page} title=${t("rooms.title")} place="room" up="/room" aside=${html`<span></span>`}>
      <ul class="lines">${found.value.map((one) => {
        const said = html`<span class="grow"><b>${one.name ?? t("rooms.local")}</b><br /><span class="soft small">
          ${room_said(one).join(", ")}</span></span>`;
        return html`<li key=${one.id}>${
          one.id === room.value.id
            ? html`<div class="line" aria-current="true">${said}<span class="row tight"><${Icon} name="room" size=${20}
              />${t("rooms.here")}</span></div>`
            : html`<button class="line whole" type="button" onClick=${tap(() => void open(one.id))}>${said}<span
              class="onward" aria-hidden="true"></span></button>`
        }</li>`;
      })}</ul>
      <p><a class="quiet" href="/join">${t("join.title")}</a></p>
      ${about?.ended && html`<${Forget} about=${about} left=${needs_you.length} on_done=${enter} />`}
      ${about?.role === "owner" && html`<${Rename} key=${`${about.id} ${about.name}`} name=${about.name} />`}
      ${
        signed_in.value
          ? html`<${NewRoom} enter=${enter} />`
          : html`<p class="soft section">${t("rooms.need_link")}
        </p>`
      }
    <//>`;
}

/** @param {RoomHere} one */
function room_said(one) {
  const left = one.unshared && t(one.id === LOCAL ? "rooms.local_holds" : "rooms.unshared", { count: one.unshared });
  const parts = [
    one.ended ? t("rooms.ended") : one.role && t(`role.${one.role}`),
    left,
    one.needs_you && t("sharing.needs_you", { count: one.needs_you }),
    one.photos_unshared && t("rooms.photos", { count: one.photos_unshared }),
  ].filter(Boolean);
  return one.id === LOCAL || one.ended || left || one.needs_you || one.photos_unshared
    ? parts
    : [...parts, t("rooms.shared")];
}

/** @param {{about: NonNullable<ReturnType<FishRoom["about"]>>, left: number, on_done: () => Promise<void>}} props */
function Forget({ about, left, on_done }) {
  if (left) return null;
  const drop = async () => {
    await forget_room(about.id);
    await on_done();
    say(t("rooms.forgotten", { name: about.name }));
  };
  return html`<section class="section"><p>${t("rooms.forget_why")}</p><p><button class="quiet grave" type="button"
    onClick=${tap(() => void drop())}>${t("rooms.forget")}</button></p></section>`;
}

/** @param {{name: string}} props */
function Rename({ name }) {
  const draft = use_draft(`room.name.${room.value.id}`, () => name);
  const { problem, busy, ask } = use_ask();
  const here = room.value;
  const call = async (/** @type {string} */ to) => {
    await rename(here, to);
    forget(`room.name.${here.id}`);
    await here.refresh_role();
  };
  const wanted = draft.value.trim();
  const save = async () => {
    if (await ask(() => call(wanted))) offer_undo(t("rooms.renamed", { name: wanted }), () => call(name));
  };
  return html`
    <section class="section"><${Name} id="rename" label=${t("rooms.rename")} value=${draft.value}
      on_value=${(/** @type {string} */ text) => (draft.value = text)} />
      <button class="quiet" type="button" disabled=${busy.value || !wanted || wanted === name}
        onClick=${tap(() => void save())}>${t("setting.save")}</button>
      <${Problem} text=${problem.value} />
    </section>`;
}

/** @param {{enter: (id?: string) => Promise<void>}} props */
function NewRoom({ enter }) {
  const draft = use_draft("room.new", () => "");
  const { problem, busy, ask } = use_ask();
  const name = draft.value.trim();
  const make = async () => {
    const made = await ask(async () => {
      const id = await make_room(name);
      forget("room.new");
      await enter(id);
    });
    if (!made) return;
    go("/room", { replace: true });
    say(t("rooms.made", { name }));
  };
  return html`
    <section class="section"><h2>${t("rooms.new")}</h2><p class="soft">${t("rooms.new_why")}</p>
      <${Name} id="new-room" label=${t("rooms.name")} value=${draft.value} on_value=${(/** @type {string} */ text) =>
        (draft.value = text)} />
      <button class="quiet" type="button" disabled=${busy.value || !name} onClick=${tap(() => void make())}>
        ${t("rooms.make")}</button>
      <${Problem} text=${problem.value} />
    </section>`;
}

/** @param {{id: string, label: string, value: string, on_value: (text: string) => void}} props */
const Name = ({ id, label, value, on_value }) => html`
  <div class="field"><label for=${id}>${label}</label>
    <input id=${id} type="text" maxlength="60" autocomplete="off" value=${value}
      onInput=${with_text(on_value)} /></div>`;
