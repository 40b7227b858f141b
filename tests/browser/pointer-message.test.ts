import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openDesk, type Desk } from "./desk";

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

describe.each(["light", "dark"] as const)("where the pointer rests on a cell in %s colors", (colorScheme) => {
  test("the message of its error stands beside it, and goes when the pointer does", { timeout: 120_000 }, async () => {
    const visit = await desk.visit({ colorScheme });
    const tip = visit.page.locator("#pointer-message");
    // Below the plan; cells that are typed into take a formula for a text.
    await visit.sheet("Plan");
    await visit.enter("D20", "=DRAWER.BOXWIDTH(24, -1)");
    await visit.goTo("A18");
    const canvas = (await visit.page.locator('canvas[id^="univer-sheet-main"]').boundingBox())!;
    // The cell is looked for: which rows are in sight depends on the window.
    let found = false;
    for (let y = canvas.y + canvas.height - 30; y > canvas.y + 30 && !found; y -= 12) {
      await visit.page.mouse.move(canvas.x + 350, y);
      found = await tip
        .waitFor({ timeout: 700 })
        .then(() => true)
        .catch(() => false);
    }
    expect(found).toBe(true);
    expect(await tip.textContent()).toBe("#VALUE! slide is -1 in. It must be 0 or more.");
    expect(await tip.getAttribute("role")).toBe("tooltip");

    await visit.page.waitForTimeout(500);
    expect(await visit.page.getByText("Error in value").count()).toBe(0);
    await visit.page.keyboard.press("ArrowDown");
    expect(await tip.isHidden()).toBe(true);
    await visit.close();
  });
});
