import "../../../src/workbook/browser/styles";
import { startPage } from "../../../src/workbook/browser/page";
import { disagreement, structure, type Started } from "./agreement";
import { tryTheLaw } from "./law";
import { edgeOf, undrawn, shown } from "./looking";
import { registered, tryAmid, tryCommand, tryMutation, type How } from "./gate";

/** The page as it is, with what the tests do inside of it within reach. */
function inside(started: Started) {
  return {
    disagreement: () => disagreement(started),
    registered: () => registered(started),
    tryMutations: (ids: readonly string[]) => each(ids, (id) => tryMutation(started, id)),
    tryCommands: (ids: readonly string[]) => each(ids, (id) => tryCommand(started, id)),
    tryAmid: (ids: readonly string[], how: How) => each(ids, (id) => tryAmid(started, id, how)),
    tryTheLaw: (bytes: readonly number[], how: Parameters<typeof tryTheLaw>[2]) =>
      tryTheLaw(started, new Uint8Array(bytes), how),
    shown: (range: string) => shown(started, range),
    undrawn: () => undrawn(started),
    edgeOf: (row: number, column: number) => edgeOf(started, row, column),
    structure: () => structure(started),
    open: (bytes: readonly number[], name: string) =>
      started.work.put({ name, bytes: new Uint8Array(bytes), edits: [], saved: [] }),
  };
}

declare global {
  interface Window {
    inside?: ReturnType<typeof inside>;
  }
}

async function each<T>(ids: readonly string[], run: (id: string) => Promise<T>): Promise<(T & { id: string })[]> {
  const all: (T & { id: string })[] = [];
  for (const id of ids) all.push({ id, ...(await run(id)) });
  return all;
}

void startPage().then((started) => (window.inside = inside(started)));
