import { bundled } from "../bundled";

/** Milliseconds of one edit after another in the page's worker: taken in, worked out, and what is other told. */
export const benchEdits = (): Promise<void> =>
  bundled(new URL("child.ts", import.meta.url), (run) => console.log(run().trimEnd()));
