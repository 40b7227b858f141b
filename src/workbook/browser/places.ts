import { inTime } from "./database";

/** A place in the store, held as long as the page is open or until it is let go. */
export interface Held {
  letGo(): void;
}

/** Milliseconds; asking costs a few of them. */
const PATIENCE = 2_000;

/** Whether this browser tells its pages apart; where it does not, nobody knows whether a place's page is open still. */
export const tellsPages = (): boolean => "locks" in navigator && Boolean(navigator.locks);

/** Takes a place, unless another open page has it. */
export async function hold(key: string): Promise<Held | undefined> {
  if (!tellsPages()) return undefined;
  return inTime(PATIENCE, (isOver) => asked(key, isOver)).catch(() => undefined);
}

function asked(key: string, isOver: () => boolean): Promise<Held | undefined> {
  return new Promise((resolve, reject) => {
    navigator.locks
      .request(`groove-and-reveal ${key}`, { ifAvailable: true }, (lock) => {
        if (lock === null || isOver()) return resolve(undefined);
        // Held until the page is gone, or lets go.
        return new Promise<void>((letGo) => resolve({ letGo }));
      })
      .catch(reject);
  });
}

const OWN = "work";

/** The place that this tab had before the page was loaded again; where cookies are blocked, the tab remembers nothing. */
export function ownPlace(): string | undefined {
  try {
    return sessionStorage.getItem(OWN) ?? undefined;
  } catch {
    return undefined;
  }
}

export function rememberPlace(key: string): void {
  try {
    sessionStorage.setItem(OWN, key);
  } catch {
    // The next load takes another place, and is offered this one's work.
  }
}
