import { divide, keyOf, ratio, roundUp, subtract, times, total } from "../../length";
import { groupsOf } from "../groups";
import type { Item } from "./item";

/** How many packs hold what is sold in them: one size of a kind goes into one, whatever it is for, but not two ratings. */
export const packsFor = (items: readonly Item[]): Item[] =>
  groupsOf(
    items.filter(({ pack }) => pack),
    ({ name, size, rating, pack }) => [name, size && keyOf(size), rating, pack].join("|"),
  ).map((alike): Item => {
    const { name, size, rating, pack } = alike[0]!;
    const needed = total(alike.map(({ quantity }) => quantity));
    const quantity = roundUp(divide(needed, ratio(pack!)), ratio(1));
    const left = subtract(times(pack!, quantity), needed);
    return {
      name,
      ...(size && { size }),
      ...(rating && { rating }),
      quantity,
      unit: "pack",
      purpose: "packs",
      pack: pack!,
      left,
    };
  });
