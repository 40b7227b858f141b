import { builtFunctions, type CellFunction } from "./built";

/** Parts of a call; a host that hears nothing for 5 s restarts the add-in, so none may take more than 3. */
const SIZES = [10, 100, 300, 1000, 3000];
const EFFORTS = ["quick", "standard", "thorough"];

/**
 * The longest that one call of each function of tables takes, at 10 to 3,000 parts, in seconds of a processor (a
 * host on a busy machine waits longer): jobs of parts all alike,
 * of few sizes and all different, free to turn and not, on one size of sheet and on six with prices.
 */
export function benchLongest(): void {
  const functions = builtFunctions();
  console.log(`seconds of the longest call at ${SIZES.join(", ")} parts:`);
  for (const effort of EFFORTS) {
    for (const name of ["SHEETS", "LAYOUT", "CUTS"])
      print(`${name} ${effort}`, (n) => cutLists(n).map((args) => [...args, "1/8", "", effort]), functions.get(name)!);
    for (const name of ["QUOTE", "PRICE"])
      print(`${name} ${effort}`, (n) => [[job(n), standards(effort), STOCK, RATES]], functions.get(name)!);
    print(`ALTERNATES ${effort}`, (n) => [[job(n), alternates(effort), STOCK, RATES]], functions.get("ALTERNATES")!);
  }
  for (const name of ["PLAN", "PARTS", "PIECES", "HARDWARE", "SETUPS", "MOUNTING", "FIT", "CHECKS"])
    print(name, (n) => [[job(n), standards("quick")]], functions.get(name)!);
  print("WORKING", (n) => [[job(n), "A1", standards("quick")]], functions.get("WORKING")!);
}

function print(what: string, calls: (parts: number) => unknown[][], call: CellFunction): void {
  const longest = SIZES.map((n) =>
    calls(n).reduce((most, args) => {
      const start = process.cpuUsage();
      call(...args);
      const { user, system } = process.cpuUsage(start);
      return Math.max(most, (user + system) / 1e6);
    }, 0),
  );
  console.log(`  ${what.padEnd(24)}${longest.map((seconds) => seconds.toFixed(2).padStart(8)).join("")}`);
}

/** Every call its own numbers, so that no answer is remembered. */
let fresh = 0;

function cutLists(parts: number): unknown[][] {
  const lists = [parts, Math.min(parts, 100), 1].flatMap((kinds) =>
    ["any", "length"].map((grain) => cutList(parts, kinds, grain)),
  );
  return lists.flatMap((list) => [1, 6].map((sizes) => [list, [STOCK[0]!, ...PRICED.slice(0, sizes)]]));
}

function cutList(parts: number, kinds: number, grain: string): unknown[][] {
  fresh++;
  const rows = Array.from({ length: kinds }, (_, k) => [
    (160 + ((k * 53 + fresh) % 320)) / 16,
    (48 + ((k * 37) % 224)) / 16,
    Math.floor(((k + 1) * parts) / kinds) - Math.floor((k * parts) / kinds),
    grain,
  ]);
  return [["Length", "Width", "Qty", "Grain"], ...rows];
}

/** Five parts a drawer, four drawers an opening. */
function job(parts: number): unknown[][] {
  fresh++;
  const openings = Array.from({ length: Math.max(1, Math.round(parts / 20)) }, (_, i) => [
    i === 0 ? "A" : "",
    (256 + ((i * 7 + fresh) % 320)) / 16,
    "26 1/4",
    23.25,
    4,
  ]);
  return [["Opening", "Width", "Height", "Depth", "Drawers"], ...openings];
}

const standards = (effort: string): unknown[][] => [["sheet effort", effort]];
const alternates = (effort: string): unknown[][] => [
  ["", "Thin", "Thick", "Inset"],
  ["sheet effort", effort, "", ""],
  ["side thickness", "1/2", "3/4", "1/2"],
  ["front style", "overlay", "overlay", "inset"],
];
const PRICED = [
  [96, 96, 60],
  [60, 60, 45],
  [48, 48, 33],
  [96, 48, 35],
  [120, 60, 99],
  [48, 36, 20],
];
const STOCK = [["Length", "Width", "Price"], ...PRICED];
const RATES = [
  ["slide price", 18],
  ["pull price", 6],
  ["screw price", 0.06],
];
