/**
 * Writes a part of a text anew between its two markers, and leaves all else as it is.
 * @param text holds `<!-- name -->` and `<!-- /name -->`, once each and in this order
 */
export function withPart(text: string, name: string, part: string): string {
  const [start, end] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
  const [before, rest, ...more] = text.split(start);
  const [, after, ...others] = (rest ?? "").split(end);
  if (after === undefined || more.length > 0 || others.length > 0) {
    throw new Error(`The ${name} belong between one ${start} and one ${end} after it.`);
  }
  return `${before}${start}\n${part}${end}${after}`;
}

/** A Markdown table; a cell's lines stay one. */
export const markdownTable = (rows: readonly (readonly string[])[]): string => {
  const [head, ...body] = rows.map((cells) => `| ${cells.map(cell).join(" | ")} |\n`.replace(/\|\s+(?=\|)/g, "| "));
  return `${head}|${"---|".repeat(rows[0]!.length)}\n${body.join("")}`;
};

const cell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");
