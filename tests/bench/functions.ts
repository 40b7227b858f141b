import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { BUNDLE, builtFunctions, type CellFunction } from "./built";

type Arguments = (i: number) => unknown[];

/** Fresh arguments at every call: the numbers move by 64ths, and every other call brings texts. */
const text = (i: number, whole: number) => `${whole + (i % 40)} ${1 + 2 * (i % 32)}/64`;
const size = (i: number, whole: number) => (i % 2 ? text(i >> 1, whole) : whole + (i % 4096) / 64);
const joints = ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"];

const oneOpening = (i: number) => [
  ["Width", "Height", "Depth", "Drawers"],
  [size(i, 12), 26.25, "23 1/4", 3],
];

const oneCabinet = (i: number) => [
  ["Width", "Height", "Depth", "Columns", "Drawers"],
  [size(i, 24), 34.5, "23 1/4", 1 + (i % 4), 3],
];

const cutList = (i: number) => [
  ["Length", "Width", "Qty"],
  [size(i, 12), 8, 6],
  ["16 1/2", size(i + 7, 3), 4],
];
const SHEET = [
  ["Length", "Width"],
  [96, 48],
];

/** Wide enough for the widest front with upright grain. */
const STOCK = [
  ["Length", "Width", "Price"],
  [96, 96, 60],
];
const RATES = [
  ["slide price", 18.4],
  ["pull price", 6.25],
  ["screw price", 0.06],
  ["markup", 40],
];

const SIDES = [
  ["", "Thin", "Thick"],
  ["side thickness", "1/2", "3/4"],
];

const CALLS: Record<string, Arguments> = {
  LENGTH: (i) => [size(i, 1)],
  TAPE: (i) => [size(i, 1), 32],
  VERSION: () => [],
  BOXWIDTH: (i) => [size(i, 6), i % 3 ? "side-mount" : "7/16"],
  BOXHEIGHT: (i) => [size(i, 6), 0.5, "1/4", 0.125],
  SLIDELENGTH: (i) => [size(i, 12)],
  ENDLENGTH: (i) => [size(i, 6), "15/32", joints[i % 6], "1/4"],
  SIDELENGTH: (i) => [size(i, 6), 0.625, joints[i % 6], "3/8"],
  BOTTOMWIDTH: (i) => [size(i, 6), 0.5, "1/4"],
  BOTTOMDEPTH: (i) => [size(i, 6), "1/2", 0.25, null, i % 3 ? "grooved" : "under back"],
  FRONTHEIGHT: (i) => [size(i, 30), 1 + (i % 9), "1/8"],
  FRONTWIDTH: (i) => [size(i, 30), 1 + (i % 5), 0.125, "1/16", "1/16"],
  FRONTHEIGHTS: (i) => [size(i, 30), [["5 1/2"], ["1 part"], ["2 parts"]], "1/8", 0, 0, "1/16"],
  GRADUATED: (i) => [size(i, 30), 4, "arithmetic", "3/4"],
  OPENINGS: (i) => [oneCabinet(i)],
  PLAN: (i) => [oneOpening(i)],
  PARTS: (i) => [oneOpening(i)],
  PIECES: (i) => [oneOpening(i)],
  WORKING: (i) => [oneOpening(i), "A2"],
  CHECKS: (i) => [oneOpening(i)],
  HARDWARE: (i) => [oneOpening(i)],
  SETUPS: (i) => [oneOpening(i)],
  MOUNTING: (i) => [oneOpening(i)],
  FIT: (i) => [oneOpening(i)],
  SHEETS: (i) => [cutList(i), SHEET, "1/8", 0, "quick"],
  LAYOUT: (i) => [cutList(i + 1), SHEET, "1/8", 0, "quick"],
  CUTS: (i) => [cutList(i + 2), SHEET, "1/8", 0, "quick"],
  QUOTE: (i) => [oneOpening(i), [], STOCK, RATES],
  PRICE: (i) => [oneOpening(i), [], STOCK, RATES, 1 + (i % 5)],
  ALTERNATES: (i) => [oneOpening(i), SIDES, STOCK, RATES],
  EMC: (i) => [i % 2 ? `${60 + (i % 40)} F` : 60 + (i % 40), 5 + (i % 90)],
  MOVEMENT: (i) => [size(i, 6), i % 3 ? "black cherry" : "hard maple", 8, 5 + (i % 20)],
  SAG: (i) => [size(i, 12), 20, "1/4", 30, i % 2 ? "plywood" : 1_200_000, i % 2 ? "held" : "clamped"],
  DRAWERLOAD: (i) => [size(i, 12), 20, i % 2 ? "73 kg/m²" : 20],
  TIPPING: (i) => [120, size(i, 6), [[40], [35]], [[14], [12 + (i % 9)]]],
  GROOVEPASSES: (i) => [0.25 + (i % 16) / 64, "1/8", "3/8", 0.25],
};

/** Calls a second of each function through the built bundle, and the bundle's size. */
export function benchFunctions(): void {
  const gzipped = gzipSync(readFileSync(BUNDLE), { level: 9 }).length;
  console.log(`functions.js, gzipped: ${(gzipped / 1000).toFixed(1)} kB`);
  console.log("calls a second, fresh arguments at every call, half of them texts:");
  for (const [name, call] of builtFunctions()) {
    const args = CALLS[name];
    if (!args) throw new Error(`The bench has no arguments for ${name}.`);
    console.log(`  ${name.padEnd(14)}${Math.round(callsASecond(call, args)).toLocaleString("en").padStart(12)}`);
  }
}

const BATCH = 5_000;

function callsASecond(call: CellFunction, args: Arguments): number {
  let calls = 0;
  let spent = 0n;
  for (let batch = 0; spent < 700_000_000n; batch++) {
    const fresh = Array.from({ length: BATCH }, (_, i) => args(batch * BATCH + i));
    const start = process.hrtime.bigint();
    for (const one of fresh) call(...one);
    // The first batches warm the engine up.
    if (batch < 4) continue;
    spent += process.hrtime.bigint() - start;
    calls += BATCH;
  }
  return calls / (Number(spent) / 1e9);
}
