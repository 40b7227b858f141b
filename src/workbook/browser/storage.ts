import { inStore, NoAnswer } from "./database";
import { aboutKept, isUnsaved, readKept, type KeptWork } from "./kept";
import { hold, ownPlace, rememberPlace, tellsPages, type Held } from "./places";
import { asideOf, isWaiting, leftAt, setAside, type Waiting } from "./waiting";

/** Where this page keeps its work; every open page has a place of its own. */
export interface Shelf {
  /** What is to be opened: the work of this tab, else what a closed page has left. */
  readonly work: KeptWork | undefined;
  /** What is kept besides, and is opened only where somebody says so. */
  readonly waiting: readonly Waiting[];
  /** Why nothing that was kept could be read. */
  readonly trouble: unknown;
  /** @throws where the browser does not keep it; what it kept before stays */
  store(work: KeptWork): Promise<void>;
  /** @returns false where the browser does not keep it */
  keep(work: KeptWork): Promise<boolean>;
  /**
   * Notes that a workbook is about to be opened, so that one which stops the page is not opened by itself again.
   * @param work where it is not the one that this place keeps
   */
  opening(work?: KeptWork): Promise<void>;
  /** It is open, or was refused in words. */
  opened(): Promise<void>;
  /** What this place keeps could not be opened; it waits from now on. */
  refused(words: string): Promise<Waiting>;
}

export async function takeShelf(): Promise<Shelf> {
  try {
    const found = await findPlace();
    rememberPlace(found.key);
    return shelf(found);
  } catch (trouble) {
    // What could not be read is not written over either.
    return shelf({ key: crypto.randomUUID(), stored: undefined, waiting: [], trouble });
  }
}

interface Found {
  key: string;
  stored: unknown;
  waiting: readonly Waiting[];
  trouble?: unknown;
}

async function findPlace(): Promise<Found> {
  const keys = (await inStore("readonly", (store) => store.getAllKeys())).map(String);
  const own = ownPlace();
  const waiting: Waiting[] = [];
  for (const key of keys.filter(isWaiting)) {
    const found = await readAt(key);
    if (found) waiting.push(asideOf(key, found.stored));
  }
  const hasOwn = own !== undefined && (!tellsPages() || (await hold(own)) !== undefined);
  const left = await leftPlaces(new Set(keys.filter((key) => !isWaiting(key)).map(placeOf)), own);
  // Without a place of its own, this page goes on with what a closed one has left.
  const chosen = hasOwn || !tellsPages() ? undefined : left.shift();
  for (const { key, held, stored } of left) {
    held?.letGo();
    if (stored !== undefined && hasUnsaved(stored)) waiting.push(leftAt(key, stored));
  }
  const found = chosen ?? (hasOwn ? await readAt(own) : undefined);
  if (found) return checked(chosen?.key ?? own!, found.stored, waiting);
  const key = crypto.randomUUID();
  await hold(key);
  return checked(key, undefined, waiting);
}

interface Left {
  key: string;
  held: Held | undefined;
  stored: unknown;
}

/** The places that no open page has: those with unsaved work first, and of those the last. */
async function leftPlaces(keys: ReadonlySet<string>, own: string | undefined): Promise<Left[]> {
  const left: Left[] = [];
  for (const key of keys) {
    if (key === own) continue;
    const held = await hold(key);
    if (!held && tellsPages()) continue;
    const found = await readAt(key);
    if (found) left.push({ key, held, stored: found.stored });
    else held?.letGo();
  }
  const rank = ({ stored }: Left): number => (stored !== undefined && hasUnsaved(stored) ? 1 : 0);
  return left.sort((a, b) => rank(b) - rank(a) || aboutKept(b.stored).at - aboutKept(a.stored).at);
}

/** Puts aside what the page stopped at when it was opened, and what has a shape that cannot be read. */
async function checked(key: string, stored: unknown, waiting: readonly Waiting[]): Promise<Found> {
  const mark = (await readAt(openingKey(key)))?.stored;
  if (mark !== undefined) {
    const { work } = mark as { work?: unknown };
    const suspect = work ?? stored;
    const gone = work === undefined ? [key, openingKey(key)] : [openingKey(key)];
    if (suspect === undefined) await remove(openingKey(key));
    else waiting = [...waiting, await setAside(suspect, { reason: "stopped" }, gone)];
    if (work === undefined) return { key, stored: undefined, waiting };
  }
  if (stored === undefined || readKept(stored)) return { key, stored, waiting };
  return { key, stored: undefined, waiting: [...waiting, await setAside(stored, { reason: "unreadable" }, [key])] };
}

function shelf({ key: first, stored, waiting, trouble }: Found): Shelf {
  let key = first;
  /** The writings that this page knows of. One that finds another in its place, as in a copied tab, moves on. */
  const known = new Set([versionOf(stored)]);
  let next: KeptWork | undefined;
  let running: Promise<void> | undefined;

  const write = (work: KeptWork): Promise<unknown> =>
    inStore("readwrite", (store) => {
      const found = store.get(key) as IDBRequest<unknown>;
      found.onsuccess = () => {
        const written = versionOf(found.result);
        if (written !== undefined && !known.has(written)) {
          key = crypto.randomUUID();
          rememberPlace(key);
          void hold(key);
        }
        const version = crypto.randomUUID();
        known.add(version);
        store.put({ ...work, at: Date.now(), version }, key);
      };
      return found;
    });
  const writeAll = async (): Promise<void> => {
    try {
      for (let work = next; work; work = next) {
        next = undefined;
        await write(work);
      }
    } finally {
      running = undefined;
    }
  };
  const store = (work: KeptWork): Promise<void> => {
    next = work;
    return (running ??= writeAll());
  };
  const refused = (words: string): Promise<Waiting> =>
    setAside(stored, { reason: "refused", words }, [key, openingKey(key)]);
  return {
    work: readKept(stored),
    waiting,
    trouble,
    store,
    keep: (work) => store(work).then(yes, no),
    async opening(work) {
      await inStore("readwrite", (store) => store.put(work ? { work, name: work.name } : {}, openingKey(key)));
    },
    async opened() {
      await remove(openingKey(key));
    },
    refused,
  };
}

const yes = (): boolean => true;
const no = (): boolean => false;

const OPENING = "opening ";
const openingKey = (key: string): string => OPENING + key;
const placeOf = (key: string): string => (key.startsWith(OPENING) ? key.slice(OPENING.length) : key);

const remove = (key: string): Promise<unknown> => inStore("readwrite", (store) => store.delete(key));

/** Undefined where the browser cannot give it back; it is left where it is, and so is the rest. */
async function readAt(key: string): Promise<{ stored: unknown } | undefined> {
  try {
    return { stored: await inStore("readonly", (store) => store.get(key) as IDBRequest<unknown>) };
  } catch (error) {
    if (error instanceof NoAnswer) throw error;
    return undefined;
  }
}

/** What cannot be read may well hold what nobody has saved. */
function hasUnsaved(stored: unknown): boolean {
  const work = readKept(stored);
  return work === undefined || isUnsaved(work);
}

function versionOf(stored: unknown): string | undefined {
  const version = (stored as { version?: unknown } | undefined)?.version;
  return typeof version === "string" ? version : undefined;
}
