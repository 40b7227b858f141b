import type { KeptWork } from "../kept";
import type { OpenedBook } from "../worker/messages";
import { EXAMPLE_FILE, EXAMPLE_OPENED } from "./names";
import { fromText } from "./text";

/**
 * The example and what is shown of it, which was worked out when the page was built.
 * @param unwanted ends the fetching
 * @throws TypeError where the files do not come, DOMException where they were unwanted
 */
export async function fetchExample(unwanted: AbortSignal): Promise<{ work: KeptWork; opened: OpenedBook }> {
  const [bytes, opened] = await Promise.all([
    fetched(EXAMPLE_FILE, unwanted).then((answer) => answer.arrayBuffer()),
    fetched(EXAMPLE_OPENED, unwanted).then((answer) => answer.text()),
  ]);
  return {
    work: { name: EXAMPLE_FILE, bytes: new Uint8Array(bytes), edits: [], saved: [] },
    opened: fromText(opened),
  };
}

async function fetched(name: string, signal: AbortSignal): Promise<Response> {
  const answer = await fetch(name, { signal });
  if (!answer.ok) throw new TypeError(`${name}: ${answer.status}`);
  return answer;
}
