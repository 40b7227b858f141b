import { readKept, type KeptWork } from "./kept";

const DATABASE = "groove-and-reveal";
const STORE = "work";

/** Where this page keeps its work; every open page has a place of its own. */
export interface Shelf {
  /** The work that was kept there; undefined where there is none that can be read, or the browser keeps nothing. */
  read(): Promise<KeptWork | undefined>;
  /** @returns false where the browser keeps nothing (private windows, no room left) */
  keep(work: KeptWork): Promise<boolean>;
  forget(): Promise<void>;
}

/** Takes the place that this page had before it was loaded again, else one that a closed page has left, else a new one. */
export async function takeShelf(): Promise<Shelf> {
  const left = await inStore("readonly", (store) => store.getAllKeys()).catch(() => []);
  const own = sessionStorage.getItem(STORE);
  const key = await firstFree([...(own ? [own] : []), ...left.map(String), crypto.randomUUID()]);
  sessionStorage.setItem(STORE, key);
  return {
    read: () => inStore("readonly", (store) => store.get(key) as IDBRequest<unknown>).then(readKept, () => undefined),
    keep: (work) => inStore("readwrite", (store) => store.put(work, key)).then(yes, no),
    forget: () => inStore("readwrite", (store) => store.delete(key)).catch(() => undefined),
  };
}

const yes = (): boolean => true;
const no = (): boolean => false;

/** A place is taken as long as the page that took it is open. */
async function firstFree(keys: readonly string[]): Promise<string> {
  for (const key of keys) if (await isTaken(key)) return key;
  return keys.at(-1)!;
}

const isTaken = (key: string): Promise<boolean> =>
  new Promise((resolve) => {
    void navigator.locks.request(`${DATABASE} ${key}`, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      // Held until the page is gone.
      return lock === null ? undefined : new Promise(() => undefined);
    });
  });

async function inStore<T>(mode: IDBTransactionMode, use: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const database = await request(openDatabase());
  try {
    return await request(use(database.transaction(STORE, mode).objectStore(STORE)));
  } finally {
    database.close();
  }
}

function openDatabase(): IDBOpenDBRequest {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
  return opening;
}

const request = <T>(asked: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error("The browser's storage did not answer."));
  });
