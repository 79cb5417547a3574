/**
 * What the phone's database holds, store by store; pwa/data/database.js makes the stores.
 * `sharedAt` and `lastShared` keep their spelling: they are stored under these names on phones.
 */
import type { FieldError } from "../contracts.js";
import type { Store } from "../vendor/idb.js";

export type Role = "owner" | "keeper" | "helper" | "viewer";
/** Fields of a record of any kind, by name. */
export type Fields = Record<string, unknown>;
/** Stamps that lay in the future, as written, with the stamps the server gave instead. */
export type Moved = Record<string, string>;
/** Names one record within a room. */
export interface RecordKey {
  kind: string;
  id: string;
}

/** The states of the outbox's table (pwa/data/outbox.js), as far as they are stored. */
export type EntryState = "waiting" | "sending" | "needs you";

/** One change to one record, as it travels to the server. */
export interface Op extends RecordKey {
  op: string;
  type: "put" | "del" | "restore";
  fields: Fields;
  stamp: string;
  /** The version of the record kind. */
  schema: number;
  moved?: Moved;
}

/** What the outbox and `kept` store of an op. */
interface OpEntry {
  /** The order of writing. */
  n: number;
  room: string;
  /** The keeper who wrote it, null before the phone has joined a room. */
  by: string | null;
  /** When it was written, by the server's clock as far as it was known. */
  at: string;
  /** True for the first op of a record. */
  creates: boolean;
  op: Op;
}

/** An op that the server has not acknowledged. */
export interface Entry extends OpEntry {
  state: EntryState;
  /** Why the server refused it, and the fields at fault. */
  reason?: string;
  errors?: FieldError[];
}

/** An op that the server has acknowledged: it is sent again if the server is restored from an older backup. */
export interface KeptEntry extends OpEntry {
  state?: undefined;
  /** The place of its row on the server. */
  seq: number;
  sharedAt: string;
}

/** A row as the server sends it. */
export interface Row extends RecordKey {
  seq: number;
  fields: Fields;
  stamps: Record<string, string>;
  deleted: string | null;
  restored: string | null;
  made_by: string;
  made_at: string;
  changed_by: string;
  changed_at: string;
  moved?: Moved;
  brought_by?: string;
  brought_at?: string;
}

/** A row of the mirror. */
export interface MirrorRow extends Row {
  room: string;
}

/** A row from before a restore of the server, which may lack it. */
export interface FormerRow extends RecordKey {
  room: string;
  /** The epoch that ended. */
  epoch: string;
  row: Row;
  /** The epoch in which the server took it back. */
  given?: string;
  /** Why the server will not take it back. */
  refused?: string;
}

/** A room this phone is or was in. */
export interface RoomEntry {
  id: string;
  name: string;
  /** Null once the membership has ended. */
  role: Role | null;
  epoch: string;
  /** The last row that was applied. */
  since: number;
  /** The last row of a pull that reached the end. */
  settled: number;
  /** How many rows the mirror holds. */
  count: number;
  /** How often the mirror was begun anew. */
  begun?: number;
  /** How many rows were put aside when the server was last restored. */
  aside?: number;
  /** How many of these the server took in this epoch and the mirror does not hold yet. */
  given?: number;
  /** How many the server holds, while they are pulled for the first time. */
  total?: number;
  /** Names of keepers, by id. */
  people: Record<string, string>;
  ended: boolean;
  problem: string | null;
  lastShared: string | null;
}

export interface PhotoEntry {
  sha256: string;
  room: string;
  type: string;
  bytes: ArrayBuffer;
  state: "waiting" | "shared" | "needs you";
  reason?: string;
}

export interface Keeper {
  id: string;
  name: string;
}

/** What the `device` store holds, by name. */
export interface DeviceEntries {
  identity: { name: "identity"; device: string; key: string | null; keeper: Keeper | null };
  /** The last stamp that this phone gave or saw. */
  clock: { name: "clock"; last: string | null };
  /** What to add to the phone's clock to get the server's. */
  offset: { name: "offset"; ms: number };
  /** The key made for an invite whose answer has not arrived. */
  joining: { name: "joining"; secret: string; key: string };
  /** The room to open next time. */
  "last-room": { name: "last-room"; id: string };
}

export interface DeviceStore
  extends Omit<Store<DeviceEntries[keyof DeviceEntries], keyof DeviceEntries>, "get" | "delete"> {
  get<Name extends keyof DeviceEntries>(name: Name): Promise<DeviceEntries[Name] | undefined>;
  delete(name: keyof DeviceEntries): Promise<void>;
}

export interface Stores {
  rows: Store<MirrorRow, [string, string, string], "tank" | "corrects" | "seq">;
  outbox: Store<Entry, number, "room" | "record" | "op" | "stamp", Omit<Entry, "n">>;
  kept: Store<KeptEntry, string, "room" | "record" | "seq" | "stamp" | "sharedAt">;
  rooms: Store<RoomEntry, string>;
  device: DeviceStore;
  photos: Store<PhotoEntry, [string, string], "state">;
  former: Store<FormerRow, [string, string, string, string]>;
}

export type StoreName = keyof Stores;
/** The stores of one transaction: a function that takes `In<"outbox" | "kept">` uses these and no others. */
export type In<Names extends StoreName> = Pick<Stores, Names>;
