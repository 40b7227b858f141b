import "../../host";
import type { Answers, Kind, Questions, Reply } from "../../../src/workbook/browser/worker/messages";
import { openDesk, type Visit } from "../../browser/desk";
import { bundled } from "../bundled";
import { editedCells, told, type Edited } from "./cases";

/**
 * Milliseconds of one edit after another: taken in, worked out, and what is other told. In the page's own worker, where
 * edits are made, from the question to its answer; and the same code in Node, whose V8 is older.
 */
export async function benchEdits(): Promise<void> {
  console.log("milliseconds of an edit: median (first, least to most) of the others; target");
  const desk = await openDesk();
  try {
    const visit = await desk.visit();
    await visit.page.waitForTimeout(QUIET);
    console.log(
      `in the page's worker, ${await visit.page.evaluate(() => navigator.userAgent.match(/Chrome\/\d+/)![0])}:`,
    );
    await visit.page.evaluate(startWorker);
    for (const edited of editedCells()) console.log(told(edited, await times(visit, edited)));
  } finally {
    await desk.close();
  }
  console.log(`in Node ${process.version}:`);
  await bundled(new URL("child.ts", import.meta.url), (run) => console.log(run().trimEnd()));
}

/** Milliseconds until a page that has just been opened has done all that it does by itself. */
const QUIET = 3_000;

declare global {
  interface Window {
    /** Asks the bench's worker. */
    askWorker<K extends Kind>(kind: K, question: Questions[K]): Promise<Answers[K]>;
  }
}

/** Runs in the page: one worker more, the same as the page's own, for all workbooks. */
function startWorker(): void {
  const worker = new Worker("worker.js", { type: "module" });
  window.askWorker = (kind, question) =>
    new Promise((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<Reply>) =>
        "answer" in data ? resolve(data.answer as never) : reject(new Error(data.fault.message));
      worker.postMessage({ number: 1, kind, question });
    });
}

const times = (visit: Visit, { bytes, ...edited }: Edited): Promise<number[]> =>
  visit.page.evaluate(timedEdits, { ...edited, file: Buffer.from(bytes).toString("base64") });

/** Runs in the page. */
async function timedEdits({ what, file, cell, contents }: Omit<Edited, "bytes"> & { file: string }): Promise<number[]> {
  const bytes = Uint8Array.from(atob(file), (character) => character.charCodeAt(0));
  const { sheets } = await window.askWorker("open", { bytes, edits: [] });
  const times: number[] = [];
  for (const content of contents) {
    const start = performance.now();
    const { difference } = await window.askWorker("put", { edits: [{ sheet: sheets[0]!.id, ...cell, content }] });
    times.push(performance.now() - start);
    if (times.length > 1 && difference.values.set.size === 0) throw new Error(`Nothing follows from ${what}.`);
  }
  return times;
}
