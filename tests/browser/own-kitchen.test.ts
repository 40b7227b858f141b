import type { Locator } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

describe("an own kitchen, from the first sight of the page", () => {
  test("is planned in under five minutes: three cabinets, undermount slides, to plan, cut list, sheets and price", async () => {
    const visit = await desk.visit();
    const person = new Person(visit);

    const { page } = visit;
    const dialog = page.getByRole("dialog", { name: "A job of your own" });
    await person.click(page.getByRole("button", { name: "New job…" }));
    await person.choose(dialog.getByLabel("I have the sizes of"), "cabinets, outside");
    await person.choose(dialog.getByLabel("Slides"), "undermount");
    await person.fill(dialog.getByLabel("Box sides"), "5/8");
    for (const [name, size] of DATA_SHEET) await person.fill(dialog.getByLabel(name), size);
    await person.click(dialog.getByRole("button", { name: "Begin" }));
    await page.getByText("my-job.xlsx").waitFor();
    // The keys go to the sheet by themselves.
    await page.waitForFunction(() => document.querySelector("#grid")!.contains(document.activeElement));

    // The cabinet's width is selected; its name stands before it.
    await person.press("ArrowLeft");
    for (const cabinet of CABINETS) {
      for (const size of cabinet) await person.cell(size, "ArrowRight");
      await person.press("ArrowDown");
      for (const _ of cabinet) await person.press("ArrowLeft");
    }
    await person.sheet("Prices");
    for (const price of ["34", "58", "82", "66"]) await person.cell(price, "Enter");
    await person.goTo("B18");
    await person.cell("62", "Enter");
    await person.goTo("B22");
    for (const price of ["48", "6.50"]) await person.cell(price, "Enter");

    await person.sheet("Plan");
    await expect.poll(async () => (await tableOf(visit)).length).toBe(10);
    const plan = await tableOf(visit);
    expect(plan.map(([drawer]) => drawer)).toEqual([
      ...[1, 2, 3, 4].map((n) => `Sink left${n}`),
      ...["Stove1", "Stove2", "Stove3", "Corner1", "Corner2", "Corner3"],
    ]);
    // The cabinet less two ends of 3/4; less the deduction, and two sides of 5/8. A slide of 22, less the difference.
    const widthOf = (cabinet: number): number => cabinet - 1.5 - 53 / 32 + 1.25;
    expect(plan[0]!.slice(5)).toEqual([widthOf(18), 6, 21.625]);
    expect(plan[4]![5]).toBe(widthOf(33));

    await person.sheet("Checks");
    const checks = await tableOf(visit);
    expect(checks.map(([, level, finding]) => [level, String(finding).split(" ", 5).join(" ")])).toEqual([
      ["doubtful", "The side is given as"],
      ["doubtful", "The bottom is given as"],
      ["doubtful", "The bottom, 1/4 in thick,"],
    ]);

    await person.sheet("Cut list");
    const cuts = await tableOf(visit);
    const counted = (part: string): number =>
      cuts.reduce((sum, row) => sum + (row[0] === part ? Number(row[2]) : 0), 0);
    expect(["Side", "Box front", "Box back", "Bottom", "Front"].map(counted)).toEqual([20, 10, 10, 10, 10]);

    await person.sheet("Sheets");
    const sheets = await tableOf(visit);
    expect(sheets.map(([, thickness]) => thickness)).toEqual([0.25, 0.75, 0.625]);
    expect(sheets.map(([, , , count, , parts]) => [Number(count) > 0, parts])).toEqual(
      [10, 10, 40].map((n) => [true, n]),
    );

    await person.sheet("Quote");
    const quote = await tableOf(visit);
    const amount = (item: RegExp): number => Number(quote.find((row) => item.test(`${row[0]}: ${row[1]}`))![5]);
    // Ten pairs; ten drawers of 40 minutes; every price as it was typed.
    expect(amount(/^Hardware: Undermount slide, 22 in/)).toBe(480);
    expect(amount(/^Labor: Boxes/)).toBeCloseTo((10 * 40 * 62) / 60, 2);
    const bought = sheets.map(([, , , count], i) => Number(count) * [34, 82, 66][i]!);
    expect(sheets.map((row) => row[7])).toEqual(bought);
    // Ten in a hundred on cost, and a quarter of the price.
    const cost = quote.filter(([, item]) => item === "Subtotal").reduce((sum, row) => sum + Number(row[5]), 0);
    expect(cost).toBeGreaterThan(bought.reduce((sum, one) => sum + one));
    expect(Math.abs(amount(/^Total/) - (cost * 1.1) / 0.75)).toBeLessThan(0.05);

    console.log(`An own kitchen: ${person.told()}`);
    expect(person.seconds).toBeLessThan(300);
    expect(visit.faults).toEqual([]);
    await visit.close();
  }, 150_000);
});

/** An invented slide's, in sizes that are common practice; of its hooks it asks for nothing. */
const DATA_SHEET = [
  ["Undermount deduction", "1 21/32"],
  ["Undermount thickest side", "5/8"],
  ["Undermount space below", "1/2"],
  ["Undermount space above", "1/4"],
  ["Undermount bottom recess", "3/8"],
  ["Undermount depth difference", "3/8"],
  ["Undermount notch width", "none"],
  ["Undermount hook hole", "none"],
] as const;

/** Name, outside width, height and depth, drawers, columns, quantity, toe kick. */
const CABINETS = [
  ["Sink left", "18", "34 1/2", "24", "4", "1", "1", "4"],
  ["Stove", "33", "34 1/2", "24", "3", "1", "1", "4"],
  ["Corner", "24", "34 1/2", "24", "3", "1", "1", "4"],
];

/**
 * A person at the page with nothing but what the screen offers, every step counted.
 *
 * Seconds are reckoned with the keystroke-level model of Card, Moran and Newell (1980), its values from memory: a key
 * 0.28 (an average typist), to point 1.1, to press and let go a mouse button 0.2, a hand from keys to mouse or back 0.4,
 * to think before a step 1.35. The machine's own time is not in it.
 */
class Person {
  clicks = 0;
  keys = 0;
  seconds = 0;
  private isAtMouse = false;

  constructor(private readonly visit: Visit) {}

  async click(control: Locator): Promise<void> {
    this.thinks();
    await this.pointed(control);
  }

  /** Opens the list and takes a word of it. */
  async choose(list: Locator, word: string): Promise<void> {
    this.thinks();
    for (let i = 0; i < 2; i++) this.countClick();
    await this.inSight(list);
    await list.selectOption({ label: word });
  }

  /** Clicks into a field, and types over what stands in it. */
  async fill(field: Locator, text: string): Promise<void> {
    this.thinks();
    await this.pointed(field);
    await this.pressed("Control+A", 2);
    await this.typed(text);
  }

  /** Types over the selected cell. */
  async cell(text: string, then: string): Promise<void> {
    this.thinks();
    await this.typed(text);
    await this.pressed(then);
  }

  press(key: string): Promise<void> {
    return this.pressed(key);
  }

  /** By the box that shows the selected cell's name. */
  async goTo(cell: string): Promise<void> {
    this.thinks();
    await this.pointed(this.visit.page.locator("#grid input").first());
    await this.pressed("Control+A", 2);
    await this.typed(cell);
    await this.pressed("Enter");
    // A person sees where they are before they type.
    await expect.poll(async () => (await this.visit.selection()).address).toMatch(new RegExp(`!${cell}$`));
  }

  async sheet(name: string): Promise<void> {
    const tab = this.visit.page.locator("#grid").getByText(name, { exact: true });
    // A tab out of sight is brought into it by the arrow beside the tabs; two clicks of it pass over all of them.
    if (!(await isInSight(tab))) for (let i = 0; i < 2; i++) this.countClick();
    await this.click(tab);
    await expect.poll(async () => (await this.visit.selection()).address).toMatch(new RegExp(`^'?${name}'?!`));
  }

  told(): string {
    return `${this.clicks} clicks, ${this.keys} keys, ${Math.round(this.seconds)} s of a person's time.`;
  }

  private thinks(): void {
    this.seconds += 1.35;
  }

  private async pointed(control: Locator): Promise<void> {
    await this.inSight(control);
    this.countClick();
    await control.click();
  }

  private async inSight(control: Locator): Promise<void> {
    expect(await control.isVisible(), String(control)).toBe(true);
  }

  private countClick(): void {
    this.clicks++;
    this.seconds += 1.1 + 0.2 + (this.isAtMouse ? 0 : 0.4);
    this.isAtMouse = true;
  }

  private async typed(text: string): Promise<void> {
    await this.visit.page.keyboard.type(text);
    this.countKeys(text.length);
  }

  private async pressed(key: string, count = 1): Promise<void> {
    await this.visit.page.keyboard.press(key);
    this.countKeys(count);
  }

  private countKeys(count: number): void {
    this.keys += count;
    this.seconds += 0.28 * count + (this.isAtMouse ? 0.4 : 0);
    this.isAtMouse = false;
  }
}

const isInSight = (control: Locator): Promise<boolean> =>
  control.evaluate((element) => {
    const { left, right, top } = element.getBoundingClientRect();
    return element.contains(document.elementFromPoint((left + right) / 2, top + 4));
  });

/** The table of the sheet in front, below its headings; read, not done. */
async function tableOf({ page }: Visit): Promise<unknown[][]> {
  const values = await page.evaluate(async () => {
    const host = await window.spreadsheetHost!;
    const [sheet] = (await host.selection()).address.replaceAll("'", "").split("!");
    return host.ranges!.values({ sheet: sheet!, address: "A6:H60", isSpilled: false });
  });
  return (values ?? []).filter((row) => row.some((value) => value !== ""));
}
