/**
 * What pwa/data uses of idb: the standard's stores, indexes and cursors, with promises.
 * A database is typed by its stores: `{name: Store<value, key, index names, what may be added>}`.
 */
export type Query = IDBValidKey | IDBKeyRange;

/** A cursor; it is null when there is nothing further. */
export interface Cursor<Key> {
  readonly key: IDBValidKey;
  readonly primaryKey: Key;
  delete(): Promise<void>;
  continue(): Promise<Cursor<Key> | null>;
}

export interface Index<Value, Key> {
  get(query: Query): Promise<Value | undefined>;
  getKey(query: Query): Promise<Key | undefined>;
  getAll(query?: Query | null, count?: number): Promise<Value[]>;
  getAllKeys(query?: Query | null, count?: number): Promise<Key[]>;
  count(query?: Query | null): Promise<number>;
  openCursor(query?: Query | null, direction?: IDBCursorDirection): Promise<Cursor<Key> | null>;
  openKeyCursor(query?: Query | null, direction?: IDBCursorDirection): Promise<Cursor<Key> | null>;
}

export interface Store<Value, Key, IndexName extends string = never, Added = Value> extends Index<Value, Key> {
  index(name: IndexName): Index<Value, Key>;
  add(value: Added): Promise<Key>;
  put(value: Value): Promise<Key>;
  delete(query: Query): Promise<void>;
  clear(): Promise<void>;
}

export interface Transaction<Stores> {
  readonly done: Promise<void>;
  readonly error: DOMException | null;
  objectStore<Name extends keyof Stores>(name: Name): Stores[Name];
  abort(): void;
}

export interface Connection<Stores> {
  transaction<Name extends keyof Stores>(
    names: readonly Name[],
    mode: IDBTransactionMode,
    options?: IDBTransactionOptions,
  ): Transaction<Pick<Stores, Name>>;
  close(): void;
}

/** The database while its version is raised: the standard's own interface. */
export interface Upgraded {
  createObjectStore(name: string, options?: IDBObjectStoreParameters): UpgradedStore;
}
export interface UpgradedStore {
  createIndex(name: string, path: string | string[], options?: IDBIndexParameters): unknown;
}
export interface UpgradeTransaction {
  objectStore(name: string): UpgradedStore;
}

export function openDB<Stores>(
  name: string,
  version: number,
  callbacks?: {
    upgrade?: (db: Upgraded, from: number, to: number | null, transaction: UpgradeTransaction) => void;
    blocked?: () => void;
    blocking?: () => void;
    terminated?: () => void;
  },
): Promise<Connection<Stores>>;
