const DATABASE = "groove-and-reveal";
const STORE = "work";

/** How long the browser's storage may take, in milliseconds: one that is stuck never answers, and writing takes longer. */
const PATIENCE = { readonly: 4_000, readwrite: 20_000, versionchange: 0 };

/**
 * Does one thing to the page's store, wholly or not at all.
 * @param use may ask for several things; the answer to the one that it returns is given
 * @throws where the browser keeps nothing, has no room, or does not answer in time
 */
export function inStore<T>(mode: IDBTransactionMode, use: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  return inTime(PATIENCE[mode], async (isOver) => {
    const database = await openDatabase();
    try {
      if (isOver()) throw new NoAnswer();
      const transaction = database.transaction(STORE, mode);
      const asked = use(transaction.objectStore(STORE));
      // An answer alone does not say that it is written down: a full disk is found out at the end.
      await ended(transaction);
      return asked.result;
    } finally {
      database.close();
    }
  });
}

/** The browser's storage did not answer. */
export class NoAnswer extends Error {
  override readonly name = "NoAnswer";
}

/**
 * Waits no longer than that.
 * @param isOver tells the work whether anybody still waits for it
 */
export function inTime<T>(patience: number, work: (isOver: () => boolean) => Promise<T>): Promise<T> {
  let isOver = false;
  return new Promise<T>((resolve, reject) => {
    const late = setTimeout(() => {
      isOver = true;
      reject(new NoAnswer());
    }, patience);
    work(() => isOver)
      .then(resolve, reject)
      .finally(() => clearTimeout(late));
  });
}

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
    opening.onsuccess = () => {
      const database = opening.result;
      // Another page, of a newer version, may want it.
      database.onversionchange = () => database.close();
      resolve(database);
    };
    opening.onerror = () => reject(opening.error ?? new NoAnswer());
  });
}

const ended = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new NoAnswer());
  });
