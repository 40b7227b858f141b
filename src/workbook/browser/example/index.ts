import type { KeptWork } from "../kept";
import type { OpenedBook } from "../worker/messages";
import { EXAMPLE_FILE, EXAMPLE_OPENED } from "./names";
import { fromText } from "./text";

/**
 * The example and what is shown of it, which was worked out when the page was built.
 * @throws TypeError where the files do not come
 */
export async function fetchExample(): Promise<{ work: KeptWork; opened: OpenedBook }> {
  const [bytes, opened] = await Promise.all([
    fetched(EXAMPLE_FILE).then((answer) => answer.arrayBuffer()),
    fetched(EXAMPLE_OPENED).then((answer) => answer.text()),
  ]);
  return {
    work: { name: EXAMPLE_FILE, bytes: new Uint8Array(bytes), edits: [], saved: [] },
    opened: fromText(opened),
  };
}

async function fetched(name: string): Promise<Response> {
  const answer = await fetch(name);
  if (!answer.ok) throw new TypeError(`${name}: ${answer.status}`);
  return answer;
}
