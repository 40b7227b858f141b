import { describe, expect, test } from "vitest";
import { PARTS, PLAN, PRICE, QUOTE, SHEETS } from "../../src/functions";
import { computedByLibreOffice, type Value } from "../libreoffice";
import { PARTS_BENCH } from "../worked/plans";
import { quoteSheet, type QuoteJob, type SheetStock } from "./quote-sheet";

const RATES = {
  "labor rate": 64.5,
  "box minutes": 47,
  "front minutes": 19,
  "fitting minutes": 26,
  "slide price": 18.45,
  "pull price": 6.35,
  "screw price": 0.065,
  "box finish price": 0.87,
  "front finish price": 1.95,
  overhead: 12.5,
  tax: 7.25,
  "extra delivery": 60,
  "extra measuring": 45.5,
};
const SHEET_PRICES = [
  [0.25, 31.95],
  [0.5, 57.45],
  [0.75, 83.85],
] as const;

interface Case extends Pick<QuoteJob, "boards" | "charge" | "gain" | "taxOn"> {
  name: string;
  standards: unknown[][];
  more: Record<string, number>;
}

const CASES: Case[] = [
  {
    name: "a parts bench at a margin, whole sheets, tax on the price",
    standards: [],
    more: { margin: 31.5 },
    charge: "whole",
    gain: "margin",
    taxOn: "all",
  },
  {
    name: "the bench with banded fronts of solid cherry at a markup, sheets as used, tax on materials, a discount",
    standards: [
      ["front material", "Cherry"],
      ["edge band", "1/32"],
    ],
    more: { markup: 42, "edge band price": 0.83, "extra loyal client": -35.25 },
    boards: { material: "Cherry", price: 9.65, waste: 17.5 },
    charge: "used",
    gain: "markup",
    taxOn: "materials",
  },
];

/** The tables of ours, and the same job for the native sheet. */
function tables({ standards, more, boards, charge, gain, taxOn }: Case) {
  const openings = PARTS_BENCH.openings;
  const all = [...PARTS_BENCH.standards, ...standards];
  const stock: Value[][] = [
    ["Material", "Thickness", "Length", "Width", "Price", "Sold by", "Waste"],
    ...SHEET_PRICES.map(([thickness, price]) => ["Plywood", thickness, 96, 48, price, "", ""]),
    ...(boards ? [[boards.material, "", "", "", boards.price, "board foot", boards.waste]] : []),
  ];
  const counted = SHEETS(PARTS(openings, all), stock, "1/8", 0, "quick" as never);
  const sheets = SHEET_PRICES.map(([thickness, price]): SheetStock => {
    const row = counted.find((each) => each[0] === "Plywood" && each[1] === thickness);
    return { thickness, length: 96, width: 48, price, count: (row?.[3] as number | undefined) ?? 0 };
  });
  const rates = { ...RATES, ...more };
  const job: QuoteJob = {
    plan: PLAN(openings, all).slice(1) as Value[][],
    parts: PARTS(openings, all, false).slice(1) as Value[][],
    openBacks: ["C"],
    sheets,
    ...(boards && { boards }),
    rates,
    charge,
    gain,
    taxOn,
  };
  const ours = [...Object.entries(rates), ["charge sheets", charge], ["tax on", taxOn]];
  return { args: [openings, all, stock, ours] as const, job };
}

describe("the same quote as native formulas, computed by LibreOffice, is equal to the cent", () => {
  test.each(CASES)("$name", async (kind) => {
    const { args, job } = tables(kind);
    const { rows, first } = quoteSheet(job);
    const native = (await computedByLibreOffice(rows)).slice(first);
    // Without subtotals, and without what has no rate.
    const ours = QUOTE(...args)
      .slice(1)
      .filter(([, item, , , , amount]) => item !== "Subtotal" && amount !== "");
    expect(ours.map(([section]) => section)).toEqual(native.map(([section]) => section));
    expect(ours.length).toBeGreaterThan(15);
    ours.forEach(([section, item, quantity, , rate, amount], i) => {
      const [, , nativeQuantity, nativeRate, nativeAmount] = native[i]!;
      const where = `${String(section)} ${String(item)}: ${String(amount)} and ${String(nativeAmount)}`;
      expect(Math.round((nativeAmount as number) * 1e6) / 1e6, where).toBe(amount);
      if (quantity === "") return;
      expect(Math.abs((quantity as number) - (nativeQuantity as number)), where).toBeLessThan(1e-9);
      expect(Math.abs((rate as number) - (nativeRate as number)), where).toBeLessThan(1e-9);
    });
    expect(PRICE(...args)).toBe(ours.at(-1)![5]);
  });
});
