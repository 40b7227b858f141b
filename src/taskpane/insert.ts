import type { Host } from "./host/host";
import { writtenAs, type Inserted } from "./inserts";
import { faultMessage, MESSAGES } from "./messages";

/** What came of an attempt, to be shown. */
export interface Outcome {
  ok: boolean;
  text: string;
}

/** Puts something in at the selected cell if there is room: what is inserted must never cost anybody their own work. */
export async function insert(host: Host, what: Inserted): Promise<Outcome> {
  try {
    if ("cells" in what) return await insertCells(host, what);
    const { address, formula: held, value } = await host.selection();
    if (held !== "" || value !== "") return { ok: false, text: MESSAGES.occupied(address) };
    await host.insertFormula(what.formula);
    return { ok: true, text: MESSAGES.inserted(what.formula, address) };
  } catch (thrown) {
    return { ok: false, text: faultMessage(thrown) };
  }
}

async function insertCells(host: Host, what: Extract<Inserted, { cells: unknown }>): Promise<Outcome> {
  const { address, wasFree } = await host.insertCells(what.cells);
  if (!wasFree) return { ok: false, text: MESSAGES.occupied(address) };
  return { ok: true, text: MESSAGES.inserted(writtenAs(what), address) };
}

/** Where there is no cell to write to, it can be copied. */
export async function copy(what: Inserted): Promise<Outcome> {
  try {
    await navigator.clipboard.writeText("formula" in what ? what.formula : what.cells.join("\t"));
    return { ok: true, text: MESSAGES.copied(writtenAs(what)) };
  } catch {
    return { ok: false, text: MESSAGES.notCopied };
  }
}
