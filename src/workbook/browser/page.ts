import { LifecycleService, LifecycleStages } from "@univerjs/core";
import { SheetFault } from "../sheets/sheet-edit";
import { FileFault } from "../xlsx/fault";
import type { Host } from "../../taskpane/host/host";
import { cellName } from "../address";
import { announced } from "./announced";
import { busyLine } from "./busy";
import { allowCellsOnly } from "./command-guard";
import { showConditions } from "./conditions";
import { copySpills } from "./copied-spills";
import { takeDrops } from "./drop";
import { download, readFile } from "./files";
import { takeFirstWork, type BegunWork } from "./first-work";
import { focusGrid } from "./focus-grid";
import { showFractions } from "./fractions";
import { askToFreeze } from "./freeze-dialog";
import { GridHost } from "./grid-host";
import type { KeptWork } from "./kept";
import { boundSelections } from "./large-selections";
import { readEntries } from "./length-entry";
import { shortenLongTexts } from "./long-texts";
import { findKeys, keepKeys } from "./lost-keys";
import { notices } from "./notices";
import { offers } from "./offers";
import { offerWaiting } from "./offer-waiting";
import { openShopPages } from "./open-shop-pages";
import { paneFrame } from "./pane-frame";
import { part } from "./part";
import { printSheets } from "./print/index";
import { keepRoom } from "./room";
import { NoAnswer } from "./database";
import { sheetTabs, whySheetsStay } from "./sheet-tabs";
import { standStill } from "./stand-still";
import { tabMenu } from "./tab-menu";
import { tabNames } from "./tab-names";
import type { Shelf } from "./storage";
import { toolbar, unlessUnsaved } from "./toolbar";
import { createGrid, type Grid } from "./univer";
import type { Waiting } from "./waiting";
import { addSheet } from "./add-sheet";
import { Work } from "./work";
import { Stopped } from "./worker/client";
import { tellAtPointer } from "./pointer-message";
import type { Place } from "./worker/messages";

/** Brings the page to life: grid, pane, toolbar, and the work that was kept from the last visit. */
export async function startPage(first = takeFirstWork()): Promise<{ grid: Grid; work: Work }> {
  const said = notices(part("notice"), () => focusGrid(grid));
  const dark = matchMedia("(prefers-color-scheme: dark)");
  let connect: (host: Host) => void = () => undefined;
  const connected = new Promise<Host>((resolve) => (connect = resolve));
  const pane = paneFrame(part("pane"), part("functions"), connected, matchMedia("(min-width: 900px)"));
  const grid = createGrid(part("grid"), dark.matches);
  dark.addEventListener("change", () => grid.api.toggleDarkMode(dark.matches));
  const tabs = sheetTabs(
    grid,
    () => work.opened,
    standStill(grid),
    (error) => said.fault(whySheetsStay(error, why)),
  );
  tabMenu(grid, tabs);
  tabNames(tabs, (id) => work.opened.book.sheet(id)?.name ?? "");
  allowCellsOnly(grid, tabs, (what) => said.fault(what === "cut" ? NO_CUT : CELLS_ONLY));
  keepRoom(grid, said.fault);
  keepKeys(grid, part("pane").querySelector("iframe")!);

  const { shelf, begun } = await first;
  const busy = busyLine(part("busy"), () => focusGrid(grid));
  part("busy").addEventListener("click", () => focusGrid(grid));
  const work = new Work(grid, shelf, busy, {
    onTakenBack: (cells, reason) => said.fault(takenBack(cells, reason)),
    onLeftBehind: () => said.fault(LEFT_BEHIND),
  });
  const refused = await openFirst(grid, work, shelf, begun);
  // The library makes its services for sheets when the first workbook comes.
  work.typed = readEntries(grid, () => work.opened);
  boundSelections(grid, said.fault);
  copySpills(grid, () => work.opened);
  showFractions(grid, () => work.opened);
  shortenLongTexts(grid, said.fault);
  showConditions(grid, () => work.opened);
  const host = new GridHost(
    grid,
    () => work.opened,
    () => part("new").click(),
    () => part("freeze").click(),
    (name, rows) => addSheet(grid, tabs, work.opened, work.typed, name, rows),
    (make) =>
      whileShut(grid, async () =>
        work.put({ name: work.name, bytes: await make(), edits: [], saved: [], isAhead: true }),
      ),
  );
  let keeping = 0;
  work.listen(() => {
    part("file-name").textContent = work.name;
    part("file-state").textContent = work.isSaved ? "" : "· changed, not saved";
    host.tell();
    document.body.dataset["keeping"] = String(++keeping);
    void work.keep().then((kept) => {
      if (--keeping === 0) delete document.body.dataset["keeping"];
      if (!kept && !work.isSaved) said.fault(NOTHING_KEPT);
    });
  });
  await host.onSelectionChanged(() => showMessage(host, pane.isOpen));
  await host.onSelectionChanged(announced(part("cell")));
  part("functions").addEventListener("click", () => showMessage(host, pane.isOpen));
  tellAtPointer(grid, part("grid"), part("pointer-message"), (sheet, row, column) => host.readAt(sheet, row, column));
  connect(host);

  toolbar(grid, work, {
    open: (file) =>
      openFile(grid, work, shelf, file).then(said.done, (error: unknown) =>
        said.fault(`${file.name} was not opened. ${why(error)}`),
      ),
    example: () =>
      example()
        .then((laidOut) => put(grid, work, laidOut))
        .catch((error: unknown) => said.fault(`The example was not opened. ${why(error)}`)),
    begin: () => {
      const failed = (error: unknown): void => said.fault(`The job was not begun. ${why(error)}`);
      later().then(
        ({ askForJob, ownJob }) =>
          askForJob(part("new-job"), (choices) => void put(grid, work, ownJob(choices)).catch(failed)),
        failed,
      );
    },
    print: () =>
      printSheets(work.opened, work.name, openSheet(grid), (error) => said.fault(`Nothing was printed. ${why(error)}`)),
    freeze: () =>
      askToFreeze(work.opened, work.name, openSheet(grid), said.done, (error) =>
        said.fault(`The copy was not written. ${why(error)}`),
      ),
    shopPages: () =>
      openShopPages(work).then(
        (refused) => refused !== undefined && said.fault(refused),
        (error: unknown) => said.fault(`The shop pages were not made. ${why(error)}`),
      ),
    save: () =>
      work
        .save((bytes) => download(work.name, bytes))
        .catch((error: unknown) => said.fault(`The file was not written. ${why(error)}`)),
  });
  const openDropped = (file: File): void =>
    void openFile(grid, work, shelf, file).then(said.done, (error: unknown) =>
      said.fault(`${file.name} was not opened. ${why(error)}`),
    );
  takeDrops(part("pane").querySelector("iframe")!, part("drop"), {
    open: (file) => unlessUnsaved(work, () => openDropped(file)),
    refuse: said.fault,
  });
  const offered = offers(part("offers"), () => findKeys(grid));
  for (const waiting of refused ? [...shelf.waiting, refused] : shelf.waiting)
    offerWaiting(
      offered,
      waiting,
      (kept) =>
        new Promise((resolve) =>
          unlessUnsaved(
            work,
            async () => {
              try {
                await shelf.opening(kept).catch(() => undefined);
                await put(grid, work, kept);
                resolve(await work.keep());
              } catch (error) {
                said.fault(`${kept.name} was not opened. ${why(error)}`);
                resolve(false);
              } finally {
                await shelf.opened().catch(() => undefined);
              }
            },
            () => resolve(false),
          ),
        ),
      said.fault,
    );
  if (shelf.trouble !== undefined) said.fault(troubleOf(shelf.trouble));
  await grid.univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered);
  // The example may have been there before what has the keys in the grid.
  findKeys(grid);
  document.body.dataset["ready"] = "yes";
  performance.mark("ready");
  work.opened.book.wake();
  pane.load();
  later().then(
    ({ explainNativeFunctions }) => explainNativeFunctions(grid),
    () => undefined,
  );
  await shelf.opened().catch(() => undefined);
  return { grid, work };
}

/** The sheet that is open, by its id. */
const openSheet = ({ api }: Grid): string => api.getActiveWorkbook()?.getActiveSheet().getSheetId() ?? "";

const CELLS_ONLY =
  "Only what stands in cells is changed here, and which sheets there are. Rows, columns and styles are changed in the spreadsheet program.";
const NO_CUT = "Cells are not cut here, for a cut cell takes its looks along. Copy it, and clear it where it was.";
const LEFT_BEHIND = "What was changed last is shown, but neither worked out nor kept. The next change tries it again.";
const NOTHING_KEPT = "This browser keeps nothing from one visit to the next. Save your work as a file.";

const later = (): Promise<typeof import("./later")> => import("./later");

const example = (): Promise<KeptWork> => later().then(({ example }) => example());

/** @returns what was kept and could not be opened; it waits, and the example is open in its place */
async function openFirst(
  grid: Grid,
  work: Work,
  shelf: Shelf,
  begun: BegunWork | undefined,
): Promise<Waiting | undefined> {
  try {
    await whileShut(grid, async () => (begun ? work.putBegun(begun) : work.put(await example())));
    return undefined;
  } catch (error) {
    if (!shelf.work) throw error;
    const refused = await shelf.refused(why(error)).catch(() => undefined);
    await put(grid, work, await example());
    return refused;
  }
}

async function openFile(grid: Grid, work: Work, shelf: Shelf, file: File): Promise<string> {
  const bytes = await readFile(file);
  // Something may have been typed while the file was read.
  if (
    !(await new Promise<boolean>((go) =>
      unlessUnsaved(
        work,
        () => go(true),
        () => go(false),
      ),
    ))
  )
    return `${work.name} is still open.`;
  const opened = { name: file.name, bytes, edits: [], saved: [] };
  try {
    await shelf.opening(opened).catch(() => undefined);
    await put(grid, work, opened);
  } finally {
    await shelf.opened().catch(() => undefined);
  }
  const { mended, unshown } = work.opened.book;
  return [`${file.name} is open.${mendedIn(mended)}`, ...unshown].join(" ");
}

const put = (grid: Grid, work: Work, kept: KeptWork): Promise<void> => whileShut(grid, () => work.put(kept));

/** Nothing is typed into a workbook that is about to make way; the keys then go to the one that has come. */
async function whileShut(grid: Grid, open: () => Promise<void>): Promise<void> {
  const shut = (isShut: boolean): void => ["desk", "tools"].forEach((id) => (part(id).inert = isShut));
  // A frame that is shut may hold the keys all the same.
  (document.activeElement as HTMLElement | null)?.blur();
  shut(true);
  try {
    await open();
  } finally {
    shut(false);
    findKeys(grid);
  }
}

function takenBack(cells: readonly Place[], reason: unknown): string {
  const [first, ...others] = [...new Set(cells.map(({ row, column }) => cellName(row, column)))];
  const what = others.length === 0 ? first! : `${first!} and ${others.length} more`;
  return `What was put into ${what} was taken back. ${why(reason)}`;
}

/** What was mended stands in the page; in the file, once it is saved. */
function mendedIn(count: number): string {
  if (count === 0) return "";
  const [calls, are] = count === 1 ? ["1 call of a function", "is"] : [`${count} calls of functions`, "are"];
  return ` ${calls} that the spreadsheet program had not resolved ${are} worked out, and ${are} saved in the form that it resolves.`;
}

const troubleOf = (trouble: unknown): string =>
  trouble instanceof NoAnswer
    ? "The browser's storage does not answer. What an earlier visit kept is not shown, and may be there when the page is loaded again."
    : NOTHING_KEPT;

const why = (error: unknown): string =>
  error instanceof FileFault || error instanceof SheetFault || error instanceof Stopped
    ? error.message
    : error instanceof Error
      ? `${error.name}: ${error.message}`
      : String(error);

/** Where the pane is closed, the page itself says what is wrong in the selected cell. */
function showMessage(host: GridHost, paneIsOpen: boolean): void {
  const { message, value } = host.read();
  const line = part("message");
  line.hidden = message === undefined || paneIsOpen;
  line.textContent = message === undefined ? "" : `${String(value)} ${message}`;
}
