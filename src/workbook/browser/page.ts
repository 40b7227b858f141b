import { LifecycleService, LifecycleStages } from "@univerjs/core";
import { partsBenchDraft } from "../example/index";
import { FileFault } from "../xlsx/fault";
import type { Host } from "../../taskpane/host/host";
import { allowCellsOnly } from "./commandGuard";
import { showConditions } from "./conditions";
import { download, readFile } from "./files";
import { showFractions } from "./fractions";
import { GridHost } from "./gridHost";
import type { KeptWork } from "./kept";
import { readFractions } from "./lengthEntry";
import { notices } from "./notices";
import { paneFrame } from "./paneFrame";
import { part } from "./part";
import { takeShelf, type Shelf } from "./storage";
import { toolbar } from "./toolbar";
import { createGrid } from "./univer";
import { Work } from "./work";

/** Brings the page to life: grid, pane, toolbar, and the work that was kept from the last visit. */
export async function startPage(): Promise<void> {
  const said = notices(part("notice"));
  const dark = matchMedia("(prefers-color-scheme: dark)");
  let connect: (host: Host) => void = () => undefined;
  const connected = new Promise<Host>((resolve) => (connect = resolve));
  const pane = paneFrame(part("pane"), part("functions"), connected, matchMedia("(min-width: 900px)"));
  const grid = createGrid(part("grid"), dark.matches);
  dark.addEventListener("change", () => grid.api.toggleDarkMode(dark.matches));
  allowCellsOnly(grid, (what) => said.fault(what === "cut" ? NO_CUT : CELLS_ONLY));

  const shelf = await takeShelf();
  const work = new Work(grid, shelf);
  await openFirst(work, shelf);
  // The library makes its services for sheets when the first workbook comes.
  work.typed = readFractions(grid);
  showFractions(grid, () => work.opened);
  showConditions(grid, () => work.opened);
  const host = new GridHost(grid, () => work.opened);
  work.listen(() => {
    part("file-name").textContent = work.name;
    part("file-state").textContent = work.isSaved ? "" : "· changed, not saved";
    host.tell();
    void work.keep().then((kept) => !kept && !work.isSaved && said.fault(NOTHING_KEPT));
  });
  await host.onSelectionChanged(() => showMessage(host, pane.isOpen));
  part("functions").addEventListener("click", () => showMessage(host, pane.isOpen));
  connect(host);

  toolbar(grid, work, {
    open: (file) =>
      openFile(work, file).then(said.done, (error: unknown) =>
        said.fault(`${file.name} was not opened. ${why(error)}`),
      ),
    example: () => work.put(example()),
    save() {
      try {
        download(work.name, work.file());
        work.markSaved();
      } catch (error) {
        said.fault(`The file could not be written. ${why(error)}`);
      }
    },
  });
  await grid.univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered);
  document.body.dataset["ready"] = "yes";
}

const CELLS_ONLY =
  "Only what stands in cells is changed here. Rows, columns, sheets and styles are changed in the spreadsheet program.";
const NO_CUT = "Cells are not cut here, for a cut cell takes its looks along. Copy it, and clear it where it was.";
const NOTHING_KEPT = "This browser keeps nothing from one visit to the next. Save your work as a file.";

const example = (): KeptWork => ({ name: "parts-bench.xlsx", bytes: partsBenchDraft(), edits: [], saved: [] });

async function openFirst(work: Work, shelf: Shelf): Promise<void> {
  const kept = await shelf.read();
  try {
    work.put(kept ?? example());
  } catch {
    // What an older version of the page kept may not be readable any longer.
    await shelf.forget();
    work.put(example());
  }
}

async function openFile(work: Work, file: File): Promise<string> {
  work.put({ name: file.name, bytes: await readFile(file), edits: [], saved: [] });
  return `${file.name} is open.`;
}

const why = (error: unknown): string =>
  error instanceof FileFault
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
