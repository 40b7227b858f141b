import { readFileSync } from "node:fs";
import {
  chromium,
  type Browser,
  type BrowserContextOptions,
  type Dialog,
  type FrameLocator,
  type Page,
} from "playwright-core";
import { buildPage } from "../../src/build/page/build";
import { servePage, type PageServer } from "../../src/build/page/server";
import { SERVED } from "../setup/pages";
import { WIDTH } from "./bench";
import type { Selection } from "../../src/taskpane/host/host";

const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Milliseconds. */
const PATIENCE = 15_000;

/** One server and one browser; every visit is a fresh profile. */
export interface Desk {
  readonly address: string;
  /** @param before what is done before the page is loaded */
  visit(options?: BrowserContextOptions, before?: (visit: Visit) => Promise<unknown>): Promise<Visit>;
  close(): Promise<void>;
}

/**
 * @param start the module that starts the page and lets tests inside, where it is not the page's own
 * @param serving how else the page is served
 */
export async function openDesk(start?: string, serving = startServer(start)): Promise<Desk> {
  const [server, browser] = await Promise.all([serving, startBrowser()]);
  return {
    address: server.address,
    visit: async (options = {}, before) => {
      const context = await browser.newContext({
        viewport: { width: 1280, height: 800 },
        acceptDownloads: true,
        permissions: ["clipboard-read", "clipboard-write"],
        ...options,
      });
      const visit = new Visit(await context.newPage(), server.address);
      await before?.(visit);
      await visit.load();
      if (start !== undefined) await visit.page.waitForFunction(() => window.inside);
      return visit;
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

/** What the run has built and serves already, see `tests/setup/pages.ts`; else a page of one's own. */
async function startServer(start?: string): Promise<PageServer> {
  const served = JSON.parse(process.env[SERVED] ?? "{}") as Record<string, string>;
  const address = served[start ?? ""];
  return address === undefined ? servePage(await buildPage(start), 0) : { address, close: async () => {} };
}

export const launchOptions = () => ({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ARGUMENTS,
});

export const startBrowser = (): Promise<Browser> => chromium.launch(launchOptions());

/** The page in one tab, and a person's hands on it. */
export class Visit {
  /** Whatever the page asked for from another origin, and whatever went wrong in it. */
  readonly elsewhere: string[] = [];
  readonly faults: string[] = [];

  constructor(
    readonly page: Page,
    private readonly address: string,
  ) {
    page.on("request", (request) => {
      const url = request.url();
      if (!url.startsWith(address) && !/^(data|blob):/.test(url)) this.elsewhere.push(url);
    });
    page.on("pageerror", (error) => this.faults.push(String(error)));
    page.on("console", (message) => message.type() === "error" && this.faults.push(message.text()));
  }

  async load(): Promise<void> {
    await this.page.goto(this.address);
    await this.ready();
  }

  /** Grid and pane; the pane comes last. */
  async ready(): Promise<void> {
    await this.page.waitForSelector("body[data-ready]");
    await this.pane
      .locator("#place")
      .getByText(/^Selected cell/)
      .waitFor({ state: "attached" });
  }

  /** What was changed is kept a moment after it is shown. */
  async untilKept(): Promise<void> {
    await this.page.waitForFunction(
      () =>
        document.querySelector("#file-state")!.textContent!.includes("changed") &&
        document.body.dataset["keeping"] === undefined,
    );
  }

  /** Leaves the page, where changes are kept and in no file, and comes back. */
  async reload(): Promise<void> {
    await this.untilKept();
    const agree = (dialog: Dialog): void => void dialog.accept();
    this.page.once("dialog", agree);
    await this.page.reload();
    this.page.off("dialog", agree);
    await this.ready();
  }

  /** Opens the example anew, and the pane; faster than a fresh page. */
  async startOver(): Promise<void> {
    const { page } = this;
    await page.evaluate(() =>
      document.querySelector<HTMLIFrameElement>("#pane iframe")!.contentWindow!.location.reload(),
    );
    await page.keyboard.press("Escape");
    await page.click("#example");
    const leave = page.getByRole("button", { name: "Go on without saving" });
    if (await leave.isVisible()) await leave.click();
    await page.waitForFunction(
      () =>
        !document.querySelector<HTMLElement>("#desk")!.inert &&
        document.querySelector("#file-state")!.textContent === "",
    );
    await this.pane.getByText(`Selected cell: Job!${WIDTH}`).waitFor();
  }

  get pane(): FrameLocator {
    return this.page.frameLocator("#pane iframe");
  }

  /** The selected cell, as the pane is told. */
  selection(): Promise<Selection> {
    return this.page.evaluate(() => window.spreadsheetHost!.then((host) => host.selection()));
  }

  async sheet(name: string): Promise<void> {
    await this.page.locator("#grid").getByText(name, { exact: true }).click();
    await this.until(({ address }) => address.split("!")[0]!.replaceAll("'", "") === name, `the sheet ${name}`);
  }

  async goTo(cell: string): Promise<void> {
    const box = this.page.locator("#grid input").first();
    await box.click();
    await box.fill(cell);
    await box.press("Enter");
    await this.until(({ address }) => address.endsWith(`!${cell}`), `the cell ${cell}`);
  }

  /** Types over a cell. */
  async enter(cell: string, text: string): Promise<void> {
    await this.goTo(cell);
    await this.page.keyboard.type(text);
    await this.page.keyboard.press("Enter");
    await this.until(({ address }) => !address.endsWith(`!${cell}`), `the cell after ${cell}`);
  }

  async at(cell: string): Promise<Selection> {
    await this.goTo(cell);
    return this.selection();
  }

  /** Waits until a cell holds a value. */
  async expectValue(cell: string, value: unknown): Promise<void> {
    await this.goTo(cell);
    await this.until((selection) => selection.value === value, `${cell} to be ${JSON.stringify(value)}`);
  }

  /** Waits until a cell of any sheet, such as `Plan!F6`, holds a value; what is selected stays so. */
  async expectAt(place: string, value: unknown): Promise<void> {
    const [sheet, address] = place.split("!") as [string, string];
    const found = () =>
      this.page.evaluate(
        async ([sheet, address]) => {
          const host = await window.spreadsheetHost!;
          return (await host.ranges!.values({ sheet, address, isSpilled: false }))?.[0]?.[0];
        },
        [sheet, address] as const,
      );
    const last = performance.now() + PATIENCE;
    for (;;) {
      const now = await found();
      if (now === value) return;
      if (performance.now() > last)
        throw new Error(`Waited in vain for ${place} to be ${String(value)}: ${String(now)}`);
      await this.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
    }
  }

  /** Looks at the selected cell, picture after picture, until it is as wanted. */
  private async until(isSo: (selection: Selection) => boolean, wanted: string): Promise<void> {
    const last = performance.now() + PATIENCE;
    for (;;) {
      const selection = await this.selection();
      if (isSo(selection)) return;
      if (performance.now() > last) throw new Error(`Waited in vain for ${wanted}: ${JSON.stringify(selection)}`);
      await this.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
    }
  }

  async open(name: string, bytes: Uint8Array): Promise<void> {
    await this.page.setInputFiles("#chooser", {
      name,
      mimeType: "application/octet-stream",
      buffer: Buffer.from(bytes),
    });
  }

  /** Saves, and gives the file that the browser stored. */
  async save(): Promise<{ name: string; bytes: Uint8Array }> {
    const [download] = await Promise.all([this.page.waitForEvent("download"), this.page.click("#save")]);
    return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(await download.path())) };
  }

  /** The same person opens the page in one more tab. */
  async another(): Promise<Visit> {
    const visit = new Visit(await this.page.context().newPage(), this.address);
    await visit.load();
    return visit;
  }

  close(): Promise<void> {
    return this.page.context().close();
  }
}
