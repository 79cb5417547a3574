/** A record as the screens and the advice see it: its fields, with who made and changed it and how far it is shared. */
import type { RecordFields, RecordKind } from "./records.js";

export interface Meta {
  state: "waiting" | "sending" | "shared" | "needs you";
  /** A keeper's id; null where it was written before the phone joined a room. */
  made_by: string | null;
  /** ISO 8601, UTC. */
  made_at: string;
  changed_by: string | null;
  changed_at: string;
  /** Who brought the row back after a restore of the server, if anyone did. */
  brought_by?: string;
  brought_at?: string;
}

export type View<K extends RecordKind = RecordKind> = K extends RecordKind
  ? RecordFields[K] & { id: string; kind: K; meta: Meta }
  : never;

/** What reads records: the open fish room, or ui/state/live.js, which draws anew when they change. */
export interface Records {
  all<K extends RecordKind>(kind: K): View<K>[];
  get<K extends RecordKind>(kind: K, id: string | undefined): View<K> | null;
  /** One tank's, oldest first; the same array until one of them changes. Without it, `all` is sorted. */
  of?<K extends RecordKind>(kind: K, tank_id: string): readonly View<K>[];
}

/** The open fish room, which also knows what records said before they were corrected. */
export interface RecordsAndEarlier extends Records {
  earlier<K extends RecordKind>(kind: K, id: string): View<K>[];
}

export type Tank = View<"tank">;
export type Reading = View<"reading">;
