import { WorkerClient } from "./client";
import type { Edits, OpenedBook } from "./messages";

/** A workbook that a worker of its own is opening. */
export interface Opening {
  client: WorkerClient;
  opened: Promise<OpenedBook>;
}

export function beginOpening(bytes: Uint8Array, edits: Edits): Opening {
  const client = new WorkerClient();
  const opened = client.ask("open", { bytes, edits });
  // Whoever waits for it is told; until then nobody may.
  opened.catch(() => undefined);
  return { client, opened };
}
