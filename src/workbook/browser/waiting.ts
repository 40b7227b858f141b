import { inStore } from "./database";
import { aboutKept, readKept, type KeptWork } from "./kept";
import { hold, tellsPages } from "./places";

/** Kept work that is not opened by itself, and not forgotten unless somebody says so. */
export interface Waiting {
  readonly name: string;
  /** When it was last kept, in milliseconds since 1970; 0 where that is not known. */
  readonly at: number;
  readonly why: Why;
  /** Undefined where it has a shape that this version of the page cannot read. */
  readonly work: KeptWork | undefined;
  readonly stored: unknown;
  /** The work as it is now; undefined where another page has it. */
  take(): Promise<KeptWork | undefined>;
  /** Deletes it, once it is kept elsewhere or nobody wants it. */
  forget(): Promise<void>;
}

/**
 * Why it waits: the page stopped while it was opened; its shape cannot be read; a page that is closed has left it; or
 * the words that told why it could not be opened.
 */
export type Why = { reason: "stopped" | "unreadable" | "left" } | { reason: "refused"; words: string };

/** What an entry for something set aside is called. */
const ASIDE = "aside ";
export const isWaiting = (key: string): boolean => key.startsWith(ASIDE);

/** Something that was set aside in an earlier visit. */
export function asideOf(key: string, entry: unknown): Waiting {
  const { why, stored } = entry as { why: Why; stored: unknown };
  return waiting(key, why, stored);
}

/** What a closed page has left in its place. */
export const leftAt = (key: string, stored: unknown): Waiting => waiting(key, { reason: "left" }, stored);

/**
 * Sets something aside.
 * @param gone where it was kept until now; it is moved, so that it is never in no place
 */
export async function setAside(stored: unknown, why: Why, gone: readonly string[]): Promise<Waiting> {
  const key = ASIDE + crypto.randomUUID();
  await inStore("readwrite", (store) => {
    for (const place of gone) store.delete(place);
    return store.put({ why, stored }, key);
  });
  return waiting(key, why, stored);
}

function waiting(key: string, why: Why, stored: unknown): Waiting {
  const { name, at } = aboutKept(stored);
  return {
    name,
    at,
    why,
    stored,
    work: readKept(stored),
    async take() {
      if (why.reason !== "left") return readKept(stored);
      if (tellsPages() && !(await hold(key))) return undefined;
      return readKept(await inStore("readonly", (store) => store.get(key) as IDBRequest<unknown>));
    },
    async forget() {
      await inStore("readwrite", (store) => store.delete(key));
    },
  };
}
