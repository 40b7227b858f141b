/** Functions as the host has them: positional, `null` for what is left out, errors thrown in the host's class. */
export const fakes = {
  BOXWIDTH(opening: unknown, clearance: unknown) {
    if (typeof opening !== "number") {
      throw new CustomFunctions.Error(
        CustomFunctions.ErrorCode.invalidValue,
        `opening_width: “${String(opening)}” is no length.`,
      );
    }
    return opening - 2 * ((clearance as number | null) ?? 0.5);
  },
  SLIDELENGTH(depth: number) {
    if (depth < 10) throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "No slide is so short.");
    return Math.floor(depth / 2) * 2;
  },
  /** A plan: one row a drawer, its header row first, with an error cell where a height is missing. */
  PLAN(openings: unknown[][]) {
    return [
      ["Drawer", "Width"],
      ...openings.map(([label, width]) => [
        label,
        typeof width === "number"
          ? width - 1
          : new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, `${String(label)} has no width.`),
      ]),
    ];
  },
  SEEN: (...args: unknown[]) => JSON.stringify(args),
  COUNTDOWN: (rows: number) => Array.from({ length: rows }, (_, i) => [rows - i]),
};
