import type { KeyRow } from "./asides";
import { textRoom, type Paper } from "./paper";

/** What the letters in a drawing stand for, a line each: letter, size, name, which may be long. */
export function key(paper: Paper, rows: readonly KeyRow[], x: number, room: number): void {
  const { height, width: space } = textRoom("0");
  const letters = Math.max(...rows.map(({ letter }) => textRoom(letter).width)) + space;
  const sizes = Math.max(...rows.map(({ size }) => textRoom(size).width)) + space;
  let y = paper.box.bottom + height;
  for (const { letter, size, name, of } of rows) {
    paper.label(letter, x, y, { anchor: "start" });
    paper.label(size, x + letters, y, { anchor: "start", of });
    paper.label(name, x + letters + sizes, y, { anchor: "start", room: Math.max(30, room - letters - sizes) });
    y += height;
  }
}
