import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Browser, type BrowserContext, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { Shelf } from "../../src/workbook/browser/storage";
import { launchOptions, startBrowser } from "./desk";
import { serveShelf } from "./shelf-page";

declare global {
  var takeShelf: () => Promise<Shelf>;
  var shelf: Shelf;
}

let browser: Browser;
let server: Awaited<ReturnType<typeof serveShelf>>;
let context: BrowserContext;

beforeAll(async () => {
  [browser, server] = await Promise.all([startBrowser(), serveShelf()]);
});
afterAll(async () => {
  await browser.close();
  await server.close();
});
beforeEach(async () => {
  context = await browser.newContext();
});
afterEach(() => context.close());

/** A tab, with what the browser lacks or does wrong before the page runs. */
async function tab(wrong?: () => void): Promise<Page> {
  const page = await context.newPage();
  if (wrong) await page.addInitScript(wrong);
  await load(page);
  return page;
}

async function load(page: Page): Promise<void> {
  await page.goto(server.address);
  await page.waitForSelector("#ready", { state: "attached" });
}

/** Takes the shelf and tells what is on it. */
const take = (page: Page) =>
  page.evaluate(async () => {
    globalThis.shelf = await takeShelf();
    const { work, waiting, trouble } = globalThis.shelf;
    return {
      name: work?.name,
      edits: work?.edits.length,
      waiting: waiting.map(({ name, why, work }) => [name, why.reason, work !== undefined]),
      trouble: trouble === undefined ? undefined : String((trouble as Error).name),
    };
  });

/** Keeps work of a name, with some edits that are in no file yet. */
const keep = (page: Page, name: string, edits = 1, size = 2) =>
  page.evaluate(
    ([name, edits, size]) => {
      // Whatever can be packed would need less room.
      const bytes = new Uint8Array(size);
      for (let at = 0; at < size; at += 65_536) crypto.getRandomValues(bytes.subarray(at, at + 65_536));
      return globalThis.shelf
        .store({
          name,
          bytes,
          edits: Array.from({ length: edits }, (_, row) => ({ sheet: 0, row, column: 0, content: row })),
          saved: [],
        })
        .then(
          () => "kept",
          (error: Error) => error.name,
        );
    },
    [name, edits, size] as const,
  );

const nothing = { name: undefined, edits: undefined, waiting: [], trouble: undefined };

describe("a page's place", () => {
  test("keeps its work across a reload", async () => {
    const page = await tab();
    expect(await take(page)).toEqual(nothing);
    expect(await keep(page, "a.xlsx")).toBe("kept");
    await load(page);
    expect(await take(page)).toEqual({ ...nothing, name: "a.xlsx", edits: 1 });
  });

  test("goes to the next page when it is closed: unsaved work before saved, and the others wait", async () => {
    const [one, two, three] = [await tab(), await tab(), await tab()];
    for (const page of [one, two, three]) await take(page);
    await keep(one, "first.xlsx");
    await keep(two, "last.xlsx");
    await keep(three, "saved.xlsx", 0);
    for (const page of [one, two, three]) await page.close();
    const next = await tab();
    expect(await take(next)).toEqual({
      ...nothing,
      name: "last.xlsx",
      edits: 1,
      waiting: [["first.xlsx", "left", true]],
    });
    expect(
      await next.evaluate(async () => {
        const [left] = globalThis.shelf.waiting;
        const work = await left!.take();
        await left!.forget();
        return work?.name;
      }),
    ).toBe("first.xlsx");
    expect((await take(await tab())).waiting).toEqual([]);
  });

  test("is not offered to another page while its own is open", async () => {
    const one = await tab();
    await take(one);
    await keep(one, "a.xlsx");
    expect(await take(await tab())).toEqual(nothing);
  });

  test("is left to the page that wrote there, where two have the same one", async () => {
    const withoutLocks = () => Object.defineProperty(navigator, "locks", { value: undefined });
    const one = await tab(withoutLocks);
    await take(one);
    await keep(one, "a.xlsx");
    const copied = await tab(withoutLocks);
    const place = await one.evaluate(() => sessionStorage.getItem("work")!);
    await copied.evaluate((key) => sessionStorage.setItem("work", key), place);
    expect((await take(copied)).name).toBe("a.xlsx");
    await keep(one, "a.xlsx", 2);
    expect(await keep(copied, "b.xlsx")).toBe("kept");
    await load(one);
    expect(await take(one)).toMatchObject({ name: "a.xlsx", edits: 2, waiting: [["b.xlsx", "left", true]] });
  });
});

describe("what cannot be opened", () => {
  test("waits where the page was stopped while it was opened, and is not opened by itself again", async () => {
    const page = await tab();
    await take(page);
    await keep(page, "slow.xlsx");
    await load(page);
    await take(page);
    await page.evaluate(() => globalThis.shelf.opening());
    for (let visit = 0; visit < 2; visit++) {
      await load(page);
      expect(await take(page)).toEqual({ ...nothing, waiting: [["slow.xlsx", "stopped", true]] });
    }
  });

  test("waits too where it was another file, and the work that is kept is opened", async () => {
    const page = await tab();
    await take(page);
    await keep(page, "mine.xlsx");
    await page.evaluate(() =>
      globalThis.shelf.opening({ name: "slow.xlsx", bytes: new Uint8Array([80]), edits: [], saved: [] }),
    );
    await load(page);
    expect(await take(page)).toEqual({
      ...nothing,
      name: "mine.xlsx",
      edits: 1,
      waiting: [["slow.xlsx", "stopped", true]],
    });
  });

  test("waits where its shape is another version's, with its file", async () => {
    const page = await tab();
    await take(page);
    await page.evaluate(() => globalThis.shelf.store({ name: "old.xlsx", bytes: new Uint8Array([80]) } as never));
    await load(page);
    expect(await take(page)).toEqual({ ...nothing, waiting: [["old.xlsx", "unreadable", false]] });
    expect(
      await page.evaluate(() => [...(globalThis.shelf.waiting[0]!.stored as { bytes: Uint8Array }).bytes]),
    ).toEqual([80]);
  });

  test("waits where it was refused, and new work is kept beside it", async () => {
    const page = await tab();
    await take(page);
    await keep(page, "odd.xlsx");
    await load(page);
    await take(page);
    await page.evaluate(() => globalThis.shelf.refused("The file is no .xlsx workbook."));
    await keep(page, "new.xlsx");
    await load(page);
    expect(await take(page)).toEqual({
      ...nothing,
      name: "new.xlsx",
      edits: 1,
      waiting: [["odd.xlsx", "refused", true]],
    });
  });
});

describe("a browser that keeps nothing, or cannot say", () => {
  const failing: [string, () => void, string][] = [
    ["has no database", () => Object.defineProperty(window, "indexedDB", { value: undefined }), "TypeError"],
    [
      "forbids the database",
      () =>
        Object.defineProperty(window, "indexedDB", {
          get: () => {
            throw new DOMException("No.", "SecurityError");
          },
        }),
      "SecurityError",
    ],
    [
      "never answers",
      () => {
        IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
      },
      "NoAnswer",
    ],
    [
      "has a newer page's database",
      () => {
        const open = IDBFactory.prototype.open;
        IDBFactory.prototype.open = function (name) {
          const newer = open.call(this, name, 9);
          newer.addEventListener("success", () => newer.result.close());
          return open.call(this, name, 1);
        };
      },
      "VersionError",
    ],
    [
      "has a database without a store",
      () => {
        const open = IDBFactory.prototype.open;
        IDBFactory.prototype.open = function () {
          return open.call(this, "another", 1);
        };
        Object.defineProperty(IDBOpenDBRequest.prototype, "onupgradeneeded", { set: () => undefined });
      },
      "NotFoundError",
    ],
  ];
  test.each(failing)("%s: the page starts all the same, and says which", async (_, wrong, trouble) => {
    const page = await tab(wrong);
    expect(await take(page)).toEqual({ ...nothing, trouble });
    if (trouble !== "NoAnswer") expect(await keep(page, "a.xlsx")).toBe(trouble);
  });

  test("is stuck for a while: what it keeps is neither lost nor written over", async () => {
    const page = await tab();
    await take(page);
    await keep(page, "mine.xlsx");
    await page.addInitScript(() => {
      const open = IDBFactory.prototype.open;
      IDBFactory.prototype.open = function (...args) {
        return performance.now() < 5_000 ? ({} as IDBOpenDBRequest) : open.apply(this, args);
      };
    });
    await load(page);
    expect(await take(page)).toEqual({ ...nothing, trouble: "NoAnswer" });
    await page.waitForFunction(() => performance.now() > 5_000);
    expect(await keep(page, "example.xlsx", 0)).toBe("kept");
    const later = await tab();
    await page.close();
    expect((await take(later)).name).toBe("mine.xlsx");
  });

  test("has no room left: says so, and what it kept before stays", async () => {
    const page = await tab();
    const client = await context.newCDPSession(page);
    const origin = new URL(server.address).origin;
    await client.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1_000_000 });
    await take(page);
    expect(await keep(page, "a.xlsx")).toBe("kept");
    expect(await keep(page, "a.xlsx", 2, 2_000_000)).toBe("QuotaExceededError");
    await client.send("Storage.overrideQuotaForOrigin", { origin });
    await load(page);
    expect(await take(page)).toMatchObject({ name: "a.xlsx", edits: 1 });
  });

  test("tells its pages not apart: what another one left waits, and is not taken", async () => {
    const withoutLocks = () => Object.defineProperty(navigator, "locks", { value: undefined });
    const one = await tab(withoutLocks);
    await take(one);
    await keep(one, "a.xlsx");
    const two = await tab(withoutLocks);
    expect(await take(two)).toEqual({ ...nothing, waiting: [["a.xlsx", "left", true]] });
    await load(one);
    expect((await take(one)).name).toBe("a.xlsx");
  });

  test("has locks that never answer", async () => {
    const page = await tab(() => {
      LockManager.prototype.request = () => new Promise(() => undefined);
    });
    expect(await take(page)).toEqual(nothing);
    expect(await keep(page, "a.xlsx")).toBe("kept");
  });

  test("blocks cookies and site data", async () => {
    const profile = mkdtempSync(join(tmpdir(), "blocked-"));
    mkdirSync(join(profile, "Default"));
    const preferences = { profile: { default_content_setting_values: { cookies: 2 } } };
    writeFileSync(join(profile, "Default", "Preferences"), JSON.stringify(preferences));
    const blocked = await chromium.launchPersistentContext(profile, launchOptions());
    try {
      const page = await blocked.newPage();
      await load(page);
      const reading = page.evaluate(() => {
        try {
          return sessionStorage.length;
        } catch (error) {
          return (error as Error).name;
        }
      });
      expect(await reading).toBe("SecurityError");
      expect(await take(page)).toMatchObject({ ...nothing, trouble: expect.any(String) });
      expect(await keep(page, "a.xlsx")).not.toBe("kept");
    } finally {
      await blocked.close();
      rmSync(profile, { recursive: true, force: true });
    }
  });
});
