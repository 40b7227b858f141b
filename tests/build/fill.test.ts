import { describe, expect, test } from "vitest";
import { fill } from "../../src/build/fill";

describe("fill(template, values)", () => {
  test("fills every place of a name, not the first alone", () => {
    expect(fill("{{a}} {{b}} {{a}}", { a: "1", b: "2" })).toBe("1 2 1");
  });

  test("writes what markup would misread as entities", () => {
    expect(fill("{{a}}", { a: `<"&"$&` })).toBe("&lt;&quot;&amp;&quot;$&amp;");
  });

  test("refuses a place without a value, and a value without a place", () => {
    expect(() => fill("{{a}}", {})).toThrow("asks for {{a}}, which has no value");
    expect(() => fill("", { a: "1" })).toThrow("no place for a");
  });
});
