import { describe, expect, test } from "vitest";
import { LENGTH } from "../../src/functions";
import { origin, reference } from "./reference";

const mm = "mm" as never;

describe(`units, exact by definition (${origin("units")})`, () => {
  const values = reference("units").values as Record<string, string>;

  test.each(["in", "ft"])("1 %s is what the table prints in millimeters", (mark) => {
    const printed = values[mark]!;
    expect(printed).toMatch(/^[\d.]+ mm$/);
    expect(LENGTH(`1 ${mark}`, mm)).toBe(Number.parseFloat(printed));
    expect(LENGTH(printed, mm)).toBe(Number.parseFloat(printed));
    expect(LENGTH(printed)).toBe(LENGTH(`1 ${mark}`));
  });
});
