import { keyOf } from "../length";
import type { Problem } from "./problem";

/** All that an answer depends on; what parts and stock are called does not matter to it. */
export function keyOfProblem({ parts, stock, kerf, trim }: Problem): string {
  const groups = new Map<string, number>();
  const numberOf = (group: string): number => {
    if (!groups.has(group)) groups.set(group, groups.size);
    return groups.get(group)!;
  };
  return [
    keyOf(kerf),
    keyOf(trim),
    ...stock.map((row) =>
      [keyOf(row.length), keyOf(row.width), row.price && keyOf(row.price), row.available, row.grain].join(" "),
    ),
    "",
    ...parts.map(({ quantity, length, width, grain, grainGroup, grainRow, grainGap, grainLine, lineGap, from, lies }) =>
      [
        [quantity, keyOf(length), keyOf(width), grain],
        [grainGroup === undefined ? "" : numberOf(grainGroup), grainRow, grainLine, from],
        [grainGap, lineGap].map((gap) => (gap ? keyOf(gap) : "")),
        lies ? ["at", lies.sheet, keyOf(lies.fromLeft), keyOf(lies.fromBottom), lies.turned] : [],
      ]
        .flat()
        .join(" "),
    ),
  ].join(";");
}
