import { isInside, overlap, type Drawing } from "../../src/drawing";

/** Labels that overlap each other or leave their paper, in words. */
export function clashes({ labels, box }: Drawing): string[] {
  const found: string[] = [];
  labels.forEach((label, i) => {
    if (!isInside(label.box, box)) found.push(`${label.text} leaves the paper`);
    for (const other of labels.slice(i + 1)) {
      if (overlap(label.box, other.box)) found.push(`${label.text} overlaps ${other.text}`);
    }
  });
  return found;
}
