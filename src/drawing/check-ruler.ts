import { LETTERS, Paper } from "./paper";
import type { Drawing } from "./drawing";

/** A ruler in both units, to lay a real one on: what is printed full size is only right where this is. */
export function checkRuler(): Drawing {
  const paper = new Paper();
  const inches = 4 * 25.4;
  paper.line("visible", [0, 0], [inches, 0]);
  for (let eighth = 0; eighth <= 32; eighth++) {
    paper.line("thin", [eighth * 3.175, 0], [eighth * 3.175, -(eighth % 8 === 0 ? 5 : eighth % 4 === 0 ? 3.5 : 2)]);
  }
  for (let tick = 0; tick <= 20; tick++) paper.line("thin", [tick * 5, 0], [tick * 5, tick % 2 === 0 ? 4 : 2]);
  paper.label("4 in", inches + 1.5, -2.5, { anchor: "start", size: LETTERS.small, of: "ruler" });
  paper.label("100 mm", inches + 1.5, 2.5, { anchor: "start", size: LETTERS.small, of: "ruler" });
  return paper.finish(
    "Check ruler",
    "A ruler of 4 inches and 100 millimeters, true where the page is printed at its size.",
  );
}
