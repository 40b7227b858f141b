import { HostFault } from "./host/host";

/**
 * Does what a host may be too busy for, again and again until it is done.
 * @param onBusy is told of every attempt that failed
 * @returns after the first attempt
 */
export async function patiently(work: () => Promise<void>, onBusy: () => void): Promise<void> {
  const attempt = async (pause: number): Promise<void> => {
    try {
      await work();
    } catch (thrown) {
      onBusy();
      const next = thrown instanceof HostFault && thrown.code === "editing" ? WHILE_EDITING : 2 * pause;
      setTimeout(() => void attempt(next), Math.min(next, LONGEST));
    }
  };
  await attempt(WHILE_EDITING);
}

/** Milliseconds until the host is asked again: soon where a person is typing, for that ends. */
const WHILE_EDITING = 1_000;
const LONGEST = 30_000;
