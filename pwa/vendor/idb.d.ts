/** What pwa/data uses of idb, typed loosely: stores, indexes and cursors are the standard's, with promises. */
export function openDB(
  name: string,
  version: number,
  callbacks?: {
    upgrade?: (db: any, from: number, to: number | null, transaction: any, event: any) => void;
    blocked?: () => void;
    blocking?: () => void;
    terminated?: () => void;
  },
): Promise<any>;
