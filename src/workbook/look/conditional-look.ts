import { contains } from "../address";
import type { Scalar } from "../engine/index";
import type { StyleChange } from "./cell-styles";
import { scaleColor } from "./color-scale";
import type { Condition } from "./conditions";

/** What rules ask of the sheet that they stand on. */
export interface Asked {
  value(row: number, column: number): Scalar;
  /** What a formula gives where it stands so far down and to the right of the cell that it was written for. */
  formula(text: string, row: number, column: number, down: number, right: number): Scalar;
}

/** What a sheet's rules change in each of its cells. Nothing is worked out before it is looked at, and nothing twice. */
export function conditionalLook(conditions: readonly Condition[], asked: Asked): Looked {
  if (conditions.length === 0) return () => undefined;
  const known = new Map<string, StyleChange | undefined>();
  const numbers = new Map<Condition, number[]>();
  const look = (row: number, column: number): StyleChange | undefined => {
    let change: StyleChange | undefined;
    for (const condition of conditions) {
      if (!condition.areas.some((area) => contains(area, row, column))) continue;
      const found = changeOf(condition, row, column);
      if (found) change = together(change, found);
      if (found && condition.stops) break;
    }
    return change;
  };
  const changeOf = (condition: Condition, row: number, column: number): StyleChange | undefined => {
    const { test, scale, areas } = condition;
    if (test) {
      const [{ top, left }] = areas as [Condition["areas"][0]];
      const answer = asked.formula(test.formula, row, column, row - top, column - left);
      return answer === true || (typeof answer === "number" && answer !== 0) ? test.change : undefined;
    }
    const value = asked.value(row, column);
    if (!scale || typeof value !== "number") return undefined;
    if (!numbers.has(condition)) numbers.set(condition, numbersIn(condition, asked));
    const fill = scaleColor(scale, numbers.get(condition)!, value);
    return fill === undefined ? undefined : { fill };
  };
  return (row, column) => {
    const place = `${row} ${column}`;
    if (!known.has(place)) known.set(place, look(row, column));
    return known.get(place);
  };
}

export type Looked = (row: number, column: number) => StyleChange | undefined;

/** What the rule that counts more says, and what it leaves open as the other has it. */
const together = (first: StyleChange | undefined, other: StyleChange): StyleChange => ({
  font: { ...other.font, ...first?.font },
  fill: first?.fill ?? other.fill,
  borders: { ...other.borders, ...first?.borders },
  format: first?.format ?? other.format,
});

/** A scale over whole columns ends where a sheet of this size would. */
const MOST = 100_000;

function numbersIn({ areas }: Condition, asked: Asked): number[] {
  const found: number[] = [];
  let looked = 0;
  for (const { top, left, bottom, right } of areas) {
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right && looked < MOST; column++, looked++) {
        const value = asked.value(row, column);
        if (typeof value === "number") found.push(value);
      }
    }
  }
  return found.sort((a, b) => a - b);
}
