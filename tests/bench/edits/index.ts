import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundled } from "../bundled";

/** Milliseconds of one edit after another in the page's worker: taken in, worked out, and what is other told. */
export async function benchEdits(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "edits-"));
  try {
    const run = await bundled(new URL("child.ts", import.meta.url), folder);
    console.log(run().trimEnd());
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
