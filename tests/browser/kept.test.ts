import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";
import { shopWorkbook } from "./shop-workbook";

let desk: Desk;
let visit: Visit;

beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());
afterEach(async () => {
  expect(visit.faults).toEqual([]);
  await visit.close();
});

/** Changes what is kept on the device, as another version or a stopped page would have left it. */
async function meddle(how: "unreadable" | "stopped" | "broken"): Promise<void> {
  await visit.untilKept();
  await visit.page.evaluate(
    (how) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open("groove-and-reveal");
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("work", "readwrite");
          const store = transaction.objectStore("work");
          const key = sessionStorage.getItem("work")!;
          store.get(key).onsuccess = ({ target }) => {
            const { result } = target as IDBRequest<Record<string, unknown>>;
            if (how === "unreadable") store.put({ ...result, edits: "another shape" }, key);
            if (how === "broken") store.put({ ...result, bytes: new Uint8Array([1, 2, 3]) }, key);
            if (how === "stopped") store.put({}, `opening ${key}`);
          };
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    how,
  );
}

async function reload(): Promise<void> {
  visit.page.once("dialog", (dialog) => dialog.accept());
  await visit.page.reload();
  await visit.ready();
}

const offered = () => visit.page.locator("#offers li p").allTextContents();

test.each([
  ["unreadable", /another version of this page, and not readable here/],
  ["broken", /not opened\. The file is no \.xlsx workbook/],
  ["stopped", /the page stopped the last time/],
] as const)("kept work that is %s waits and is offered at every visit until it is forgotten", async (how, words) => {
  visit = await desk.visit();
  await visit.enter(WIDTH, "21");
  await visit.expectValue(WIDTH, "21");
  await meddle(how);
  for (let times = 0; times < 2; times++) {
    await reload();
    await visit.expectValue(WIDTH, "18");
    expect(await offered()).toEqual([expect.stringMatching(words)]);
  }
  await visit.page.getByRole("button", { name: "Forget it" }).click();
  await visit.page.getByRole("button", { name: "Forget it for good" }).click();
  await expect.poll(offered).toEqual([]);
  await reload();
  expect(await offered()).toEqual([]);
});

test("what stopped the page is opened all the same where somebody says so, and is then this page's work", async () => {
  visit = await desk.visit();
  await visit.enter(WIDTH, "21");
  await visit.expectValue(WIDTH, "21");
  await meddle("stopped");
  await reload();
  await visit.page.getByRole("button", { name: "Open it all the same" }).click();
  await visit.expectValue(WIDTH, "21");
  await expect.poll(offered).toEqual([]);
  await reload();
  await visit.expectValue(WIDTH, "21");
});

/** Holds files over the page, or the pane, and lets them go. */
const drop = (names: string[], bytes: Uint8Array, where: "page" | "pane" = "page") =>
  visit.page.evaluate(
    ([names, bytes, where]) => {
      const target =
        where === "page" ? window : document.querySelector<HTMLIFrameElement>("#pane iframe")!.contentWindow!;
      const dataTransfer = new DataTransfer();
      for (const name of names) dataTransfer.items.add(new File([new Uint8Array(bytes)], name));
      const events = ["dragenter", "dragover", "drop"].map(
        (type) => new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }),
      );
      return events.map((event) => !target.document.body.dispatchEvent(event));
    },
    [names, [...bytes], where] as const,
  );

test("a file that is dropped onto grid or pane is opened as the button opens it, and never gone to", async () => {
  visit = await desk.visit();
  const file = await shopWorkbook();
  expect(await drop(["shop.xlsx"], file)).toEqual([true, true, true]);
  await visit.page.getByText("shop.xlsx is open.").waitFor();
  expect(await drop(["list.txt"], new Uint8Array([49]), "pane")).toEqual([true, true, true]);
  await visit.page.getByText("list.txt was not opened. The file is no .xlsx workbook.").waitFor();
  await drop(["a.xlsx", "b.xlsx"], file);
  await visit.page.getByText(/Several files were dropped/).waitFor();
  await visit.enter("A2", "30");
  await visit.expectValue("B2", 29);
  await drop(["other.xlsx"], file);
  await visit.page.getByRole("button", { name: "Stay here" }).click();
  await visit.expectValue("A2", 30);
  expect(await visit.page.textContent("#file-name")).toBe("shop.xlsx");
});

test("what is typed while a file is read makes way for it only where somebody says so", async () => {
  visit = await desk.visit();
  await visit.page.evaluate(() => {
    const read = File.prototype.arrayBuffer;
    File.prototype.arrayBuffer = async function () {
      await new Promise<void>((resolve) => ((window as unknown as { goOn: () => void }).goOn = resolve));
      return read.call(this);
    };
  });
  await visit.open("shop.xlsx", await shopWorkbook());
  await visit.enter(WIDTH, "21");
  await visit.expectValue(WIDTH, "21");
  await visit.page.evaluate(() => (window as unknown as { goOn: () => void }).goOn());
  await visit.page.getByRole("button", { name: "Stay here" }).click();
  await visit.page.getByText("parts-bench.xlsx is still open.").waitFor();
  await visit.expectValue(WIDTH, "21");
});
