import { total, type Rational } from "../../length";
import { plus, sum, type Size } from "../size";
import { isFramed, isUnread, widthOf, type Opening, type WithStandards } from "../opening";
import { endStileOf, partitionRightOf, stileRightOf } from "./face";
import type { PlannedOpening } from "./plan";

/** What stands at each end of a cabinet: its end, or the stile before it. */
export const endOf = (of: WithStandards): Rational =>
  isFramed(of) ? endStileOf(of) : of.standards["cabinet thickness"]!;

/** What stands to the right of an opening where another follows. */
export const betweenOf = (of: WithStandards): Rational => (isFramed(of) ? stileRightOf(of) : partitionRightOf(of));

/** What lies over the openings, and under them. */
export const levelOf = (of: WithStandards): Rational =>
  of.standards[isFramed(of) ? "rail width" : "cabinet thickness"]!;

/**
 * The outside of an opening's cabinet: the width where it can be told from the openings, height and depth where toe kick
 * and back are known. Stiles that nobody named may be of any width, and so may openings that cannot be read.
 */
export function outsideOf({ cabinet, opening }: PlannedOpening): [name: string, size: Size][] {
  const { openings } = cabinet;
  const { carcase, standards: s } = opening;
  const framed = isFramed(opening);
  const unknown = openings.some(isUnread) || (framed && !carcase && s["stile width"] === undefined);
  const [end, between, level] = framed
    ? ["end stile", "stiles between", "rail width"]
    : ["cabinet thickness", "partitions", "cabinet thickness"];
  const width = (): Size =>
    sum(
      plus(end!, endOf(opening), 2),
      plus("openings", total(openings.map(widthOf))),
      plus(between!, total(openings.slice(0, -1).map(betweenOf))),
    );
  return [
    ...(unknown ? [] : [["Cabinet outside width", width()] as [string, Size]]),
    ...(carcase ? heightAndDepth(opening, carcase, level!) : []),
  ];
}

const heightAndDepth = (
  { least, ...opening }: Opening,
  { toeKick, back, backInset }: NonNullable<Opening["carcase"]>,
  level: string,
): [string, Size][] => [
  [
    "Cabinet outside height",
    sum(plus("opening height", least.height), plus(level, levelOf(opening), 2), plus("toe kick", toeKick)),
  ],
  [
    "Cabinet outside depth",
    sum(plus("opening depth", least.depth), plus("back thickness", back), plus("back inset", backInset)),
  ],
];
