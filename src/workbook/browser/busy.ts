/** Milliseconds that a person waits without wondering. */
const UNNOTICED = 500;

/** Milliseconds after which work is ended without being asked. */
const MOST = { short: 20_000, long: 60_000, endless: undefined };

export type Patience = keyof typeof MOST;

/** The page's line for work that goes on beside it, with a button that ends it. */
export interface Busy {
  /**
   * Says so where the work takes longer than a moment.
   * @param what is being done, without an end to the sentence
   * @param stop ends the work, which then fails
   */
  during<T>(what: string, work: Promise<T>, stop: (tookTooLong: boolean) => void, patience: Patience): Promise<T>;
}

/** @param gone told when the line has gone, and the keys perhaps with it */
export function busyLine(line: HTMLElement, gone: () => void): Busy {
  const text = line.querySelector("p")!;
  const going = new Set<{ what: string; stop(tookTooLong: boolean): void }>();
  const show = (): void => {
    const [first] = going;
    const hadKeys = line.contains(document.activeElement);
    line.hidden = !first;
    text.textContent = first ? `${first.what}…` : "";
    if (hadKeys && !first) gone();
  };
  line.querySelector("button")!.addEventListener("click", () => going.forEach(({ stop }) => stop(false)));
  return {
    async during(what, work, stop, patience) {
      const task = { what, stop };
      const noticed = setTimeout(() => {
        going.add(task);
        show();
      }, UNNOTICED);
      const most = MOST[patience];
      const ended = most === undefined ? undefined : setTimeout(() => stop(true), most);
      try {
        return await work;
      } finally {
        clearTimeout(noticed);
        clearTimeout(ended);
        going.delete(task);
        show();
      }
    },
  };
}
