// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { createPane, type Pane } from "../../src/taskpane/pane";
import { STANDARDS_HELP } from "../../src/guide/index";
import { HostFault, type StuckSheet } from "../../src/taskpane/host/host";
import { FakeHost } from "./fake-host";
import { GROUPS, GUIDE, openPage, settled, textOf } from "./page";

let pane: Pane;
let host: FakeHost;
beforeEach(() => {
  pane = createPane(openPage(), GROUPS, GUIDE);
  host = new FakeHost();
});
afterEach(() => vi.unstubAllGlobals());

const buttons = () => [...document.querySelectorAll("button")];
const visibleNames = () =>
  [...document.querySelectorAll("#functions .front")].map((front) => front.querySelector(".name")!.textContent);
const foundNames = () =>
  [...document.querySelectorAll("#found .front")].map((front) => front.querySelector(".name")!.textContent);
const found = () => document.querySelector<HTMLElement>("#found")!;

function type(query: string): void {
  const field = document.querySelector<HTMLInputElement>("#query")!;
  field.value = query;
  field.dispatchEvent(new Event("input"));
}

async function insert(formula: string): Promise<void> {
  buttons()
    .find((button) => button.dataset["insert"] === JSON.stringify({ formula }))!
    .click();
  await settled();
}

describe("the pane's function list", () => {
  test("stands before any spreadsheet is found, its buttons waiting", () => {
    expect(visibleNames()).toEqual(["LENGTH", "BOXWIDTH", "BOTTOMWIDTH"]);
    expect(buttons().map((button) => button.disabled)).toEqual([true, true, true]);
    expect(textOf("place")).toBe("Looking for the spreadsheet…");
  });

  test("shows of a function its signature, arguments, result, error and example", () => {
    const front = document.querySelectorAll(".front")[1]!;
    expect(front.querySelector(".signature")!.textContent).toBe("DRAWER.BOXWIDTH(opening_width, [unit])");
    const terms = [...front.querySelectorAll("dt, dd")].map((item) => item.textContent);
    expect(terms).toEqual([
      ...["opening_width", "The opening_width.", "[unit]", "The unit."],
      ...["Result", "What BOXWIDTH gives", "Error", "#VALUE! where it cannot"],
    ]);
    expect(front.querySelector(".examples code")!.textContent).toBe("=DRAWER.BOXWIDTH(24)");
    expect(front.querySelector("td")!.textContent).toBe("23");
  });

  test("gives way to what a search finds, the likeliest first, and counts that", () => {
    type("groove");
    expect(found().hidden).toBe(false);
    expect(foundNames()).toEqual(expect.arrayContaining(["groove depth", "groove offset", "BOTTOMWIDTH"]));
    expect(foundNames()[0]).toBe("groove depth");
    expect(textOf("count")).toBe(`${foundNames().length} found`);
    expect(document.querySelector("#lists")!.classList.contains("searching")).toBe(true);
  });

  test("says so where a search finds nothing, and comes back after Escape", () => {
    type("countertop");
    expect(foundNames()).toEqual([]);
    expect(textOf("count")).toBe("Nothing found");
    expect(textOf("found")).toContain("Nothing here is called “countertop”.");
    document.querySelector("#query")!.dispatchEvent(new KeyboardEvent("keydown", { key: "Escape" }));
    expect(found().hidden).toBe(true);
    expect(document.querySelector("#lists")!.classList.contains("searching")).toBe(false);
    expect([textOf("count"), visibleNames().length]).toEqual(["", 3]);
  });

  test("finds a standard with its meaning and what is usual in inches and in millimeters, to be inserted as two cells", () => {
    type("between fronts");
    const gap = [...document.querySelectorAll("#found .front")].find(
      (front) => front.querySelector(".name")!.textContent === "front gap",
    )!;
    expect(gap.querySelector(".gives")!.textContent).toBe("Between fronts.");
    expect(gap.querySelector(".usual")!.textContent).toBe("Usual: 1/8 in | 3 mm");
    expect([...gap.querySelectorAll<HTMLElement>("button")].map(({ dataset }) => dataset["insert"])).toEqual([
      '{"cells":["front gap","1/8 in"]}',
      '{"cells":["front gap","3 mm"]}',
    ]);
  });

  test("finds words, headings and pages of the guide beside functions and standards, by what others call them too", () => {
    type("handles");
    expect(foundNames()[0]).toBe("pull, standoff");
    type("quantity");
    expect(foundNames()[0]).toBe("Quantity");
    expect(document.querySelector("#found button")!.getAttribute("data-insert")).toBe('{"cells":["Quantity"]}');
    type("cautions");
    expect(document.querySelector("#found a")!.getAttribute("href")).toBe("guide/cautions.html");
  });

  test("has every standard, group by group, a group's once it is opened", () => {
    const groups = [...document.querySelectorAll("#standards > .case > details")];
    expect(document.querySelectorAll("#standards details details")).toHaveLength(0);
    groups.forEach((group) => group.dispatchEvent(new Event("toggle")));
    const names = [...document.querySelectorAll("#standards details details .name")].map((name) => name.textContent);
    expect(names.sort()).toEqual(Object.keys(STANDARDS_HELP).sort());
  });

  test("reads no text as markup", () => {
    const [first] = GROUPS[0]!.functions;
    createPane(openPage(), [{ name: "Lengths", functions: [{ ...first!, description: "<b>Bold</b>" }] }], GUIDE);
    expect(document.querySelector(".gives")!.textContent).toBe("<b>Bold</b>");
    expect(document.querySelector("b")).toBeNull();
  });
});

describe("the pane beside a spreadsheet", () => {
  beforeEach(() => pane.connect(host));

  test("names the selected cell, and follows the selection", async () => {
    expect(textOf("place")).toBe("Selected cell: Sheet1!B2");
    await host.select("Sheet1!C7");
    expect(textOf("place")).toBe("Selected cell: Sheet1!C7");
  });

  test("writes an example into the selected cell, and says so", async () => {
    await insert("=DRAWER.BOXWIDTH(24)");
    expect(host.cells).toEqual({ "Sheet1!B2": "=DRAWER.BOXWIDTH(24)" });
    expect(textOf("status")).toBe("=DRAWER.BOXWIDTH(24) now stands in Sheet1!B2.");
    expect(document.getElementById("status")!.dataset["kind"]).toBe("done");
  });

  test("leaves a cell that is not empty as it is", async () => {
    host.cells["Sheet1!B2"] = "18 1/16";
    await insert("=DRAWER.BOXWIDTH(24)");
    expect(host.cells).toEqual({ "Sheet1!B2": "18 1/16" });
    expect(textOf("status")).toBe(
      "Sheet1!B2 is not empty and was left as it is. Select an empty cell, then insert again.",
    );
    expect(document.getElementById("status")!.dataset["kind"]).toBe("fault");
  });

  test.each([
    ["editing", "A cell is being edited. Finish it with Enter or Esc, then try again."],
    ["protected", "The cell may not be changed: its sheet is protected, or the workbook is read-only."],
    ["refused", "The spreadsheet did not take it: Something said no."],
  ] as const)("says in plain words what is in the way: %s", async (fault, words) => {
    host.fault = fault;
    await insert("=DRAWER.BOXWIDTH(24)");
    expect(textOf("status")).toBe(words);
    expect(host.cells).toEqual({});
  });

  test("writes a standard and its value side by side, and leaves cells that are not empty as they are", async () => {
    type("front gap");
    const button = document.querySelector<HTMLButtonElement>("#found button")!;
    expect([button.textContent, button.getAttribute("aria-label")]).toEqual(["1/8 in", "Insert front gap, 1/8 in"]);
    button.click();
    await settled();
    expect(host.cells).toEqual({ "Sheet1!B2": "front gap | 1/8 in" });
    expect(textOf("status")).toBe("front gap, 1/8 in now stands in Sheet1!B2.");
    button.click();
    await settled();
    expect(textOf("status")).toContain("is not empty and was left as it is");
  });

  test("labels every button with what it inserts", () => {
    expect(buttons().map((button) => button.textContent)).toEqual(["Insert", "Insert", "Insert"]);
    expect(buttons()[1]!.getAttribute("aria-label")).toBe("Insert =DRAWER.BOXWIDTH(24)");
  });
});

describe("the pane beside a spreadsheet that is busy when it is found", () => {
  afterEach(() => vi.useRealTimers());

  test.each(["editing", "refused"] as const)("follows the selection once that has ended: %s", async (fault) => {
    vi.useFakeTimers();
    host.fault = fault;
    await pane.connect(host);
    await vi.advanceTimersByTimeAsync(20_000);
    expect(textOf("place")).toBe("Select an empty cell, then insert an example.");
    host.fault = undefined;
    await vi.advanceTimersByTimeAsync(fault === "editing" ? 1_000 : 30_000);
    expect(textOf("place")).toBe("Selected cell: Sheet1!B2");
    await host.select("Sheet1!C7");
    expect(textOf("place")).toBe("Selected cell: Sheet1!C7");
    expect(host.listening).toBe(1);
  });

  test("offers to insert all the same", async () => {
    host.fault = "editing";
    await pane.connect(host);
    expect(textOf("place")).toBe("Select an empty cell, then insert an example.");
    host.fault = undefined;
    await insert("=DRAWER.LENGTH(24)");
    expect(host.cells).toEqual({ "Sheet1!B2": "=DRAWER.LENGTH(24)" });
  });
});

describe("the pane beside a workbook with cells that show #NAME?", () => {
  const stuckOn = (name: string, count: number, more: Partial<StuckSheet> = {}): StuckSheet => ({
    name,
    cells: Array.from({ length: count }, (_, row) => ({ row, column: 0, formula: "=DRAWER.LENGTH(24)" })),
    isProtected: false,
    isCutShort: false,
    ...more,
  });
  const wakeButton = () => document.querySelector<HTMLButtonElement>("#stuck button");

  async function connect(sheets: StuckSheet[], wake: (sheet: StuckSheet) => void = () => {}): Promise<void> {
    host.stuck = {
      find: async (names) => (names.has("BOXWIDTH") && !names.has("FOO") ? [...sheets] : []),
      wake: async (sheet) => (wake(sheet), sheet.cells.length),
    };
    await pane.connect(host);
  }

  test("says how many there are and on which sheets, and names those that are protected or too large", async () => {
    await connect([stuckOn("Bench", 3), stuckOn("Prices", 1, { isProtected: true, isCutShort: true })]);
    expect(document.querySelector("#stuck p")!.textContent).toBe(
      "4 cells of this workbook show #NAME?, for the spreadsheet knew no drawer functions yet when it came to them: " +
        "3 on Bench, 1 on Prices. Prices is protected: unprotect it first. Prices is large: there may be more.",
    );
  });

  test("wakes them by one button, all but those on protected sheets, and is silent once none is left", async () => {
    const sheets = [stuckOn("Bench", 3), stuckOn("Prices", 1, { isProtected: true })];
    const woken: string[] = [];
    await connect(sheets, ({ name }) => {
      woken.push(name);
      sheets.splice(0, sheets.length);
    });
    wakeButton()!.click();
    await settled();
    expect(woken).toEqual(["Bench"]);
    expect(textOf("status")).toBe("3 cells are being worked out.");
    expect(document.getElementById("stuck")!.hidden).toBe(true);
  });

  test("says which are left where waking does not help", async () => {
    await connect([stuckOn("Bench", 2)]);
    wakeButton()!.click();
    await settled();
    expect(textOf("status")).toBe(
      "0 cells are being worked out. 2 cells still show #NAME?: look for another name in the formula, or for an array that the cell is part of.",
    );
  });

  test("says in plain words what is in the way, and offers the button again", async () => {
    await connect([stuckOn("Bench", 2)], () => {
      throw new HostFault("editing");
    });
    wakeButton()!.click();
    await settled();
    expect(textOf("status")).toBe("A cell is being edited. Finish it with Enter or Esc, then try again.");
    expect(wakeButton()!.disabled).toBe(false);
  });

  test("offers no button where all are on protected sheets, and says nothing where there are none", async () => {
    await connect([stuckOn("Bench", 1, { isProtected: true })]);
    expect(textOf("stuck")).toMatch(/^1 cell of this workbook shows #NAME\?/);
    expect(wakeButton()).toBeNull();
    await connect([]);
    expect(document.getElementById("stuck")!.hidden).toBe(true);
  });
});

test("the pane says so while the functions are lacking", () => {
  pane.tellLacking(true);
  expect(textOf("trouble")).toContain("The functions have not loaded");
  pane.tellLacking(false);
  expect(textOf("trouble")).toBe("");
});

describe("the pane without a spreadsheet", () => {
  test("says so, and copies instead", async () => {
    const writeText = vi.fn(async () => {});
    vi.stubGlobal("navigator", { clipboard: { writeText } });
    await pane.connect(undefined);
    expect(textOf("place")).toContain("This page is not open in a spreadsheet.");
    expect(buttons().map((button) => [button.textContent, button.disabled])).toEqual(Array(3).fill(["Copy", false]));
    await insert("=DRAWER.LENGTH(24)");
    expect(writeText).toHaveBeenCalledWith("=DRAWER.LENGTH(24)");
    expect(textOf("status")).toBe("=DRAWER.LENGTH(24) is copied.");
  });

  test("says so where the browser forbids to copy", async () => {
    vi.stubGlobal("navigator", { clipboard: { writeText: () => Promise.reject(new Error("no")) } });
    await pane.connect(undefined);
    await insert("=DRAWER.LENGTH(24)");
    expect(textOf("status")).toBe("The browser did not allow copying. Select the formula and copy it by hand.");
  });

  test("copies beside a spreadsheet that does not let panes write", async () => {
    const writeText = vi.fn(async () => {});
    vi.stubGlobal("navigator", { clipboard: { writeText } });
    host.can = { insert: false, tellSelection: false, showNumberFormats: false };
    await pane.connect(host);
    expect(textOf("place")).toContain("does not let the pane write cells");
    await insert("=DRAWER.LENGTH(24)");
    expect(host.cells).toEqual({});
    expect(writeText).toHaveBeenCalledOnce();
  });
});
