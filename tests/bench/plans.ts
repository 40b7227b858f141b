import { builtFunctions } from "./built";

/** Whole plans through the built bundle, fresh openings at every call: milliseconds a call. */
export function benchPlans(): void {
  const functions = builtFunctions();
  console.log("milliseconds a call, 4 drawers an opening, fresh openings at every call (median, least, most):");
  const small = time((i) => functions.get("PLAN")!(openings(200, i)), 40);
  const large = time((i) => functions.get("PLAN")!(openings(1000, i)), 12);
  print("PLAN, 200 openings", small);
  print("PLAN, 1,000 openings", large);
  console.log(`  1,000 openings take ${(large.median / small.median).toFixed(1)} times as long as 200`);
  print(
    "PARTS grouped, 200 openings",
    time((i) => functions.get("PARTS")!(openings(200, i)), 40),
  );
  for (const name of ["HARDWARE", "SETUPS", "MOUNTING", "FIT"]) {
    print(
      `${name}, 200 openings`,
      time((i) => functions.get(name)!(openings(200, i)), 20),
    );
  }
  print(
    "CHECKS, 200 openings",
    time((i) => functions.get("CHECKS")!(openings(200, i)), 20),
  );
}

/** Widths that no call before has had, half of them texts. */
const openings = (count: number, call: number): unknown[][] => [
  ["Width", "Height", "Depth", "Drawers"],
  ...Array.from({ length: count }, (_, i) => {
    const sixteenths = 256 + ((i * 7 + call * 13) % 320);
    const width = i % 2 ? sixteenths / 16 : `${Math.floor(sixteenths / 16)} ${1 + (sixteenths % 15)}/16`;
    return [width, "26 1/4", 23.25, 4];
  }),
];

interface Times {
  median: number;
  least: number;
  most: number;
}

function time(work: (i: number) => unknown, runs: number): Times {
  const times = Array.from({ length: runs + 5 }, (_, i) => {
    const start = performance.now();
    work(i);
    return performance.now() - start;
  })
    .slice(5)
    .sort((a, b) => a - b);
  return { median: times[times.length >> 1]!, least: times[0]!, most: times[times.length - 1]! };
}

const print = (name: string, { median, least, most }: Times): void =>
  console.log(`  ${name.padEnd(30)}${[median, least, most].map((ms) => ms.toFixed(1).padStart(8)).join("")}`);
