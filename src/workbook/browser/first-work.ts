import { fetchExample } from "./example/index";
import type { KeptWork } from "./kept";
import { takeShelf, type Shelf } from "./storage";
import type { OpenedBook } from "./worker/messages";
import { beginOpening, type Opening } from "./worker/opening";

/** A workbook that is to be opened, with what was begun for it before. */
export interface BegunWork {
  work: KeptWork;
  /** Its worker. */
  opening?: Opening;
  /** What is shown of it, where that is known before the worker has answered. */
  opened?: OpenedBook;
}

/** What the page opens first. */
export interface FirstWork {
  shelf: Shelf;
  /** Undefined where the example's files did not come. */
  begun: BegunWork | undefined;
}

/** Takes what was kept, with which a worker begins before there is a grid; else the example, which is shown without one. */
export async function takeFirstWork(): Promise<FirstWork> {
  // It is under way while the browser looks for what was kept, which it answers late where it has much else to do.
  const unwanted = new AbortController();
  const example = fetchExample(unwanted.signal).catch(() => undefined);
  const shelf = await takeShelf();
  if (!shelf.work) return { shelf, begun: await example };
  unwanted.abort();
  await shelf.opening().catch(() => undefined);
  return { shelf, begun: { work: shelf.work, opening: beginOpening(shelf.work.bytes, shelf.work.edits) } };
}
