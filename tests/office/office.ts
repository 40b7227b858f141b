import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import type { Browser, BrowserContext, Locator, Page, Route } from "playwright-core";
import { startBrowser } from "../browser/desk";
import { dist } from "../build/dist";
import type { Answered, Sent, Setup } from "./program/program";

/** The two ways in which the spreadsheet program talks to the platform's runtime. */
export const PROTOCOLS = ["web", "windows"] as const;
export type Protocol = (typeof PROTOCOLS)[number];

/** The requirement sets of a current release. */
const CURRENT = {
  excelapi: "1.20",
  customfunctions: "1.11",
  customfunctionsruntime: "1.5",
  sharedruntime: "1.2",
  richapiruntime: "1.1",
  addincommands: "1.3",
};

export interface Opening extends Partial<Setup> {
  protocol?: Protocol;
  /** Milliseconds that a file is late, by its name. */
  late?: Record<string, number>;
  /** How often a file is not found before it is, by its name. */
  lacking?: Record<string, number>;
}

/** One browser, in which the built add-in is opened under the platform's own runtime, offline. */
export class Office {
  private constructor(private readonly browser: Browser) {}

  static async start(): Promise<Office> {
    built = dist();
    return new Office(await startBrowser());
  }

  /** The add-in as the program opens it; a fresh profile each time. */
  async open({ protocol = "web", late = {}, lacking = {}, ...setup }: Opening = {}): Promise<Session> {
    const context = await this.browser.newContext({ viewport: { width: 360, height: 800 } });
    const page = await context.newPage();
    const session = new Session(context, page, protocol);
    const left = { ...lacking };
    await page.route("**/*", async (route) => {
      const name = new URL(route.request().url()).pathname.split("/").pop()!;
      if (late[name]) await new Promise((done) => setTimeout(done, late[name]));
      if ((left[name] ?? 0) > 0) {
        left[name]!--;
        return route.fulfill({ status: 404, body: "" });
      }
      return serve(route, session.elsewhere);
    });
    await (protocol === "web" ? openOnWeb : openOnWindows)(page, { sets: CURRENT, ...setup });
    return session;
  }

  close(): Promise<void> {
    return this.browser.close();
  }
}

const ADDIN = "https://drawers.example.org/";
/** Of the addresses that the platform's runtime trusts. */
const PROGRAM = "https://excel.officeapps.live.com/program.html";
const LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const OFFICE_JS = fileURLToPath(new URL("../../node_modules/@microsoft/office-js/dist/", import.meta.url));

/** The folder of the built add-in, made once: nothing is to be built anew between one file and the next. */
let built = "";

const TYPES: Record<string, string> = { html: "text/html", js: "text/javascript", css: "text/css", png: "image/png" };

/** The add-in from dist/, the library from its package, and nothing from anywhere else. */
function serve(route: Route, elsewhere: string[]): Promise<void> {
  const { href, pathname } = new URL(route.request().url());
  if (href === PROGRAM) return route.fulfill({ body: "<!doctype html><title>Book</title>", contentType: "text/html" });
  const file = href.startsWith(ADDIN)
    ? `${built}${pathname}`
    : href.startsWith(LIBRARY)
      ? OFFICE_JS + href.slice(LIBRARY.length)
      : undefined;
  if (file === undefined) elsewhere.push(href);
  if (file === undefined || !existsSync(file)) return route.fulfill({ status: 404, body: "" });
  return route.fulfill({
    body: readFileSync(file),
    contentType: TYPES[pathname.split(".").pop()!] ?? "application/octet-stream",
    headers: { "access-control-allow-origin": "*" },
  });
}

async function openOnWeb(page: Page, setup: Setup): Promise<void> {
  await page.goto(PROGRAM);
  await page.addScriptTag({ content: script("web") });
  await page.evaluate(([given, addin]) => window.startProgram(given, addin), [setup, `${ADDIN}taskpane.html`] as const);
}

async function openOnWindows(page: Page, setup: Setup): Promise<void> {
  await page.addInitScript({ content: `window.programSetup = ${JSON.stringify(setup)};\n${script("windows")}` });
  await page.goto(`${ADDIN}taskpane.html`, { waitUntil: "commit" });
}

const scripts = new Map<string, string>();

function script(name: string): string {
  const known = scripts.get(name);
  if (known !== undefined) return known;
  const entry = fileURLToPath(new URL(`program/${name}.ts`, import.meta.url));
  const { outputFiles } = buildSync({ entryPoints: [entry], bundle: true, write: false, format: "iife" });
  scripts.set(name, outputFiles[0]!.text);
  return outputFiles[0]!.text;
}

/** A call as a test writes it: the function's name, its arguments, and what else the program says. */
export type Call = [name: string, values: readonly unknown[], more?: Partial<Sent>];

/** Errors come as objects, values with their type: so the program of today asks. */
const FLAGS = 12;

/** The add-in, open beside a workbook. */
export class Session {
  /** Whatever was asked of another address. */
  readonly elsewhere: string[] = [];
  readonly faults: string[] = [];
  private next = 1;

  constructor(
    private readonly context: BrowserContext,
    readonly page: Page,
    private readonly protocol: Protocol,
  ) {
    page.on("pageerror", (error) => this.faults.push(String(error)));
  }

  /** What stands in the pane; waits for it where it is not there yet. */
  inPane(selector: string, hasText?: string | RegExp): Locator {
    const { page, protocol } = this;
    const found = protocol === "web" ? page.frameLocator("iframe").locator(selector) : page.locator(selector);
    return hasText === undefined ? found : found.filter({ hasText });
  }

  /** Waits until the runtime has told the program that it takes calls; gives the milliseconds that it took. */
  async ready(): Promise<number> {
    await this.page.waitForFunction(() => window.program?.readyAt !== undefined, undefined, { polling: 20 });
    return this.page.evaluate(() => window.program.readyAt!);
  }

  /** Sends calls in one message, as the program does on opening a workbook, and gives what they came to, in order. */
  async call(calls: readonly Call[]): Promise<Answered[]> {
    const sent = calls.map(([name, values, more]) => ({
      id: this.next++,
      name,
      values: values.map(asSent),
      flags: FLAGS,
      address: "[Book.xlsx]Sheet1!A1",
      ...more,
    }));
    await this.page.evaluate((list) => window.sendCalls(list), sent);
    const ids = sent.map(({ id }) => id);
    const here = (list: number[]) => list.every((id) => window.program.results.has(id));
    await this.page.waitForFunction(here, ids, { polling: 20 });
    return this.page.evaluate((list) => list.map((id) => window.program.results.get(id)!), ids);
  }

  async value(name: string, ...values: unknown[]): Promise<unknown> {
    return (await this.call([[name, values]]))[0]!.value;
  }

  close(): Promise<void> {
    return this.context.close();
  }
}

/** Values with a type are sent as their JSON; what was left out, as null. */
function asSent(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asSent);
  if (typeof value === "object" && value !== null) return { value: JSON.stringify(value) };
  return value ?? null;
}
