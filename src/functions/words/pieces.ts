import type { Piece } from "../../core/drawer";
import type { Rational, Unit } from "../../core/length";
import { len } from "./wording";

/** A piece's label: `C4 left side`, `C4 pull plate 2, copy 1 of 3`. */
export function pieceLabel({ drawer, part, side, number, copy }: Piece): string {
  const words = [drawer, side, part.name.toLowerCase(), number].filter((word) => word !== undefined);
  return `${words.join(" ")}${copy ? `, copy ${copy.number} of ${copy.of}` : ""}`;
}

/** Which of a piece's edges are banded. */
export const edgesWords = (band: Rational | undefined, unit: Unit): string =>
  band ? `all four, ${len(band, unit)}` : "";
