import { dadoesOf, isJoined, partsOf, type Drawer, type Part } from "../core/drawer";
import { add, showLength, subtract, total, type Rational } from "../core/length";
import { heightsAtRight, notes, widthsAt } from "./dimensions";
import type { Drawing } from "./drawing";
import { Paper, textRoom } from "./paper";
import { scaleFor, type Scale } from "./scale";

/** What the parts may take of the paper, in millimeters, besides their sizes. */
const ROOM = { length: 72, height: 130 };
/** From one part to the next: its name over it, and its length under it. */
const NAME = textRoom("0").height + 1;

/** One drawer taken apart: every part of it once, flat, as it is cut, with length, width and thickness. */
export function boxApart(drawer: Drawer): Drawing {
  const { opening, label } = drawer;
  const parts = partsOf(drawer);
  const scale = scaleFor(
    [
      ...parts.map(({ length }): [Rational, number] => [length, ROOM.length]),
      [total(parts.map(({ width }) => width)), ROOM.height],
    ],
    opening.unit,
  );
  const paper = new Paper();
  let top = 0;
  for (const part of parts) top = drawPart(paper, scale, drawer, part, top) + 3;
  notes(paper, 0, [
    { text: "Cut sizes, lengths with the grain" },
    { text: `Dashed: grooves${dadoesOf(drawer).length > 0 ? " and dadoes" : ""}` },
    { text: `Scale ${scale.name}`, of: "scale" },
  ]);
  const size = (length: Rational): string => showLength(length, opening.unit);
  const said = parts.map(
    (part) =>
      `${part.name} ${size(part.length)} × ${size(part.width)} × ${size(part.thickness)}, ${piecesOf(part, drawer)}`,
  );
  return paper.finish(`Parts of ${label}`, `Drawer ${label} taken apart: ${said.join("; ")}.`);
}

/** @returns where it ends */
function drawPart(paper: Paper, scale: Scale, drawer: Drawer, part: Part, top: number): number {
  const { opening, label } = drawer;
  const size = (length: Rational): string => showLength(length, opening.unit);
  const of = (what: string): string => `${label} ${part.name} ${what}`;
  const before = `${part.name}, ${piecesOf(part, drawer)}, thick`;
  paper.label(size(part.thickness), 0, top + NAME / 2, { anchor: "start", of: of("Thickness"), before });
  const [long, high] = [scale.of(part.length), scale.of(part.width)];
  // Beside a strip that is lower than its size stands that size all the same.
  const more = Math.max(0, (textRoom("0").height - high) / 2);
  const upper = top + NAME + more;
  const lower = upper + high + more;
  paper.rectangle("visible", 0, upper, long, high, "paper");
  groove(paper, scale, drawer, part, upper + high);
  dadoes(paper, scale, drawer, part, upper + high);
  heightsAtRight(paper, long, long + 4, [{ from: upper, to: upper + high, text: size(part.width), of: of("Width") }]);
  return widthsAt(paper, upper + high, lower + 3, [{ from: 0, to: long, text: size(part.length), of: of("Length") }]);
}

/** The bottom's groove, as it lies on the inner face. */
function groove(paper: Paper, scale: Scale, drawer: Drawer, part: Part, lower: number): void {
  const { name, upright = false } = part;
  const s = drawer.opening.standards;
  const grooved = s["bottom fit"] === "grooved" ? GROOVED : s["bottom fit"] === "under back" ? GROOVED.slice(0, 2) : [];
  const isOwn = name === "Front" && isJoined(s) && s["front grain"] === "horizontal" && grooved.length > 0;
  if (!isOwn && !grooved.includes(name)) return;
  const below = isOwn ? scale.of(subtract(drawer.boxBottom.value, drawer.front.bottom.value)) : 0;
  const from = below + scale.of(s["groove offset"]);
  // The lower edge of an upright piece is drawn at the left.
  for (const at of [from, from + scale.of(s["bottom thickness"])]) hidden(paper, scale, part, lower, at, upright);
}

/** Those of its dividers, on the same face: across a piece from its left end, an upright one from its lower end. */
function dadoes(paper: Paper, scale: Scale, drawer: Drawer, part: Part, lower: number): void {
  const thickness = drawer.opening.standards["divider thickness"];
  const cuts = dadoesOf(drawer).filter(({ name }) => name === part.name);
  for (const edge of cuts.flatMap(({ from }) => from.flatMap((begin) => [begin, add(begin, thickness)])))
    hidden(paper, scale, part, lower, scale.of(edge), !part.upright);
}

/** A line across a part as it is drawn, so far from its left end, or along it, so far from its lower edge. */
function hidden(
  paper: Paper,
  scale: Scale,
  { length, width }: Part,
  lower: number,
  at: number,
  isAcross: boolean,
): void {
  if (isAcross) paper.line("hidden", [at, lower], [at, lower - scale.of(width)]);
  else paper.line("hidden", [0, lower - at], [scale.of(length), lower - at]);
}

const GROOVED: readonly Part["name"][] = ["Side", "Box front", "Box back"];

/** In one copy of the opening. */
function piecesOf({ quantity }: Part, { opening }: Drawer): string {
  const count = quantity / opening.quantity;
  return `${count} ${count === 1 ? "piece" : "pieces"}`;
}
