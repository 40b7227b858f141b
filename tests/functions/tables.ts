/** A table of openings with the usual headings, and what comes under them. */
export const openings = (...rows: unknown[][]): unknown[][] => [
  ["Opening", "Width", "Height", "Depth", "Drawers"],
  ...rows,
];

/** One column of a result, by its heading, the header left out. */
export const column = (table: unknown[][], heading: string): unknown[] => {
  const place = table[0]!.indexOf(heading);
  if (place < 0) throw new Error(`There is no heading ${heading}.`);
  return table.slice(1).map((row) => row[place]);
};

/** The message behind an error cell. */
export const messageOf = (cell: unknown): string => {
  const { code, message } = cell as { code: string; message: string };
  return `${code} ${message}`;
};
