import type { Write } from "../size";
import type { Drawer, PlannedOpening } from "../plan/plan";
import { toDouble, type Rational } from "../../length";
import type { BottomFit } from "../words";
import { balanceOf, type Tilt } from "./balance";
import { carriedBy } from "./load";
import { acrossFront, MOST_MOVING, movingOf } from "./moving";
import { ratingFor } from "./rating";
import { saggingOf } from "./sagging";

/** A row of a drawer's workings that is no length, or no exact one. */
interface Estimate {
  name: string;
  value: number;
  how: (write: Write) => string;
}

/** What a drawer carries, weighs and asks for, each with how it is reckoned: estimates, all of them. */
export function estimatesOf(drawer: Drawer): Estimate[] {
  const { standards: s, unit } = drawer.opening;
  const { load, how, box, total } = carriedBy(drawer);
  const weight = unit === "in" ? "lb" : "kg";
  const needs = s.slide === "wood runner" ? undefined : ratingFor(total, unit);
  const sagging = saggingOf(drawer);
  const rows: Estimate[] = [
    { name: `Load, ${weight}`, value: load, how },
    { name: `Drawer's own weight, ${weight}`, value: box, how: () => "its pieces by size and density, front with it" },
    ...(needs === undefined
      ? []
      : [
          {
            name: `Slide rating needed, ${weight}`,
            value: needs,
            how: () => `the least that slides are sold in for load and drawer, ${Number(total.toFixed(1))}`,
          },
        ]),
    ...(sagging?.sag === undefined
      ? []
      : [
          {
            name: "Bottom sags",
            value: sagging.sag,
            how: (write: Write) =>
              `bottom ${write(sagging.thickness)} thick, ${HELD[s["bottom fit"]]}, under the load (an estimate); 1/${Math.round(1 / s["sag limit"])} of the span ${write(sagging.span)} is ${Number(sagging.limit.toFixed(3))}`,
          },
        ]),
    ...movements(drawer),
  ];
  return rows.map(toTwelveDigits);
}

/** The sag is reckoned of a plate that rests on all four edges. */
const HELD: Record<BottomFit, string> = {
  grooved: "held in grooves all round",
  "under back": "held in grooves on three sides and screwed to the back, reckoned as held all round",
  applied: "fastened all round",
};

/** Engines differ in the last digits of their exponentials. */
const toTwelveDigits = (row: Estimate): Estimate => ({ ...row, value: Number(row.value.toPrecision(12)) });

/** Whether the drawer's cabinet stands with it out, and with all: where its weight is told, and something can tip it. */
export function balanceRows(cabinet: readonly PlannedOpening[], drawer: Drawer): Estimate[] {
  const balance = balanceOf(cabinet);
  if (!balance) return [];
  const own = balance.each.find((each) => each.drawer === drawer)!.one;
  const row = (name: string, { holds, tips, ratio }: Tilt): Estimate[] =>
    tips === 0
      ? []
      : [
          {
            name,
            value: ratio,
            how: () =>
              `what holds, ${Number(holds.toFixed(1))}, over what tips, ${Number(tips.toFixed(1))}, about the tipping line (an estimate); at 1 or less it tips`,
          },
        ];
  return [...row("Balance, this drawer out", own), ...row("Balance, all drawers out", balance.all)].map(toTwelveDigits);
}

/** How far what is of solid wood moves across its grain over a year. */
function movements({ opening: { standards: s }, front, stock }: Drawer): Estimate[] {
  const pieces: [name: string, material: string, across: Rational][] = [
    ["Bottom moves", s["bottom material"], stock.bottomDepth.value],
    ["Front moves", s["front material"], acrossFront({ front, standards: s })],
  ];
  return pieces.flatMap(([name, material, across]) => {
    const moving = movingOf(material, across, s, MOST_MOVING);
    if (!moving) return [];
    const { wood, share, moisture, low, high, range } = moving;
    return {
      name,
      value: toDouble(range),
      how: (write: Write) =>
        `${write(across)} across its grain × ${toDouble(share)} × ${Number(toDouble(moisture).toFixed(2))} % of moisture between air of ${low} and ${high} % humidity, ${wood}, flat sawn (an estimate)`,
    };
  });
}
