import type { Host } from "./host/host";
import { faultMessage, MESSAGES } from "./messages";

/** What came of an attempt, to be shown. */
export interface Outcome {
  ok: boolean;
  text: string;
}

/** Writes a formula into the selected cell if that is empty: an example must never cost anybody their own work. */
export async function insertExample(host: Host, formula: string): Promise<Outcome> {
  try {
    const { address, formula: held, value } = await host.selection();
    if (held !== "" || value !== "") return { ok: false, text: MESSAGES.occupied(address) };
    await host.insertFormula(formula);
    return { ok: true, text: MESSAGES.inserted(formula, address) };
  } catch (thrown) {
    return { ok: false, text: faultMessage(thrown) };
  }
}

/** Where there is no cell to write to, an example can be copied. */
export async function copyExample(formula: string): Promise<Outcome> {
  try {
    await navigator.clipboard.writeText(formula);
    return { ok: true, text: MESSAGES.copied(formula) };
  } catch {
    return { ok: false, text: MESSAGES.notCopied };
  }
}
