import { rmSync } from "node:fs";

const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** Does some work, during which a signal that ends the process takes a file with it. */
export async function whileRemovedOnSignal<T>(path: string, work: () => Promise<T>): Promise<T> {
  const listeners = SIGNALS.map((signal) => {
    const end = (): void => {
      stop();
      rmSync(path, { force: true });
      process.kill(process.pid, signal);
    };
    process.on(signal, end);
    return { signal, end };
  });
  const stop = (): void => listeners.forEach(({ signal, end }) => process.off(signal, end));
  try {
    return await work();
  } finally {
    stop();
  }
}
