import type { Piece } from "../../core/drawer";
import { equal, type Unit } from "../../core/length";
import { len } from "./wording";

/** A piece's label: `C4 left side`, `C4 pull plate 2, copy 1 of 3`. */
export function pieceLabel({ drawer, part, side, number, copy }: Piece): string {
  const words = [drawer, side, part.name.toLowerCase(), number].filter((word) => word !== undefined);
  return `${words.join(" ")}${copy ? `, copy ${copy.number} of ${copy.of}` : ""}`;
}

/** Which of a piece's edges are banded. */
export function edgesWords(bands: Piece["bands"], unit: Unit): string {
  const [first, ...others] = bands;
  if (others.length === 3 && others.every(({ thickness }) => equal(thickness, first!.thickness)))
    return `all four, ${len(first!.thickness, unit)}`;
  return bands.map(({ edge, thickness }) => `${edge} ${len(thickness, unit)}`).join(", ");
}
