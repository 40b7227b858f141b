import { download } from "./files";
import type { KeptWork } from "./kept";
import type { Offers } from "./offers";
import type { Waiting } from "./waiting";

/**
 * Offers kept work that is not opened by itself: to open it, to store its file, or to forget it.
 * @param open opens it in place of what is open, after asking about that; false where it was not opened
 */
export function offerWaiting(
  offered: Offers,
  waiting: Waiting,
  open: (work: KeptWork) => Promise<boolean>,
  refuse: (words: string) => void,
): void {
  const { name, why } = waiting;
  const openIt = async (): Promise<boolean> => {
    const work = await waiting.take();
    if (!work) {
      refuse(`${name} is open in another tab.`);
      return false;
    }
    if (!(await open(work))) return false;
    await waiting.forget();
    return true;
  };
  const label = why.reason === "stopped" ? "Open it all the same" : why.reason === "refused" ? "Try again" : "Open it";
  offered.add(`${name}: ${reasonOf(waiting)}`, [
    ...(waiting.work ? [{ label, go: openIt }] : []),
    { label: "Save it as a file", go: () => (storeFiles(waiting), false) },
    { label: "Forget it", sure: "Forget it for good", go: () => waiting.forget().then(() => true) },
  ]);
}

function reasonOf({ why, work }: Waiting): string {
  if (why.reason === "refused") return `kept on this device, and not opened. ${why.words}`.trim();
  return {
    stopped: "kept on this device, and not opened, for the page stopped the last time while it was being opened.",
    left: "kept on this device from an earlier visit, with changes that are in no file.",
    unreadable: work
      ? "kept on this device by another version of this page."
      : "kept on this device by another version of this page, and not readable here.",
  }[why.reason];
}

/**
 * The file as it was opened, and beside it what was changed since: to put the one into the other would be to open it,
 * which is what went wrong.
 */
function storeFiles({ name, stored, work }: Waiting): void {
  const { bytes } = stored as { bytes?: unknown };
  if (bytes instanceof Uint8Array) download(name, bytes);
  const rest = work ? work.edits : { ...(stored as object), bytes: undefined };
  if (work?.edits.length === 0) return;
  download(`${name} changes.json`, new TextEncoder().encode(JSON.stringify(rest, undefined, 1)));
}
