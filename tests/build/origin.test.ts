import { describe, expect, test } from "vitest";
import { addinOrigin, DEVELOPMENT_ORIGIN, PLACEHOLDER_ORIGIN } from "../../src/build/origin";

describe("addinOrigin(ADDIN_ORIGIN, production)", () => {
  test("is the address that was asked for, with a slash at its end", () => {
    expect(addinOrigin("https://example.org/drawers/", true)).toBe("https://example.org/drawers/");
    expect(addinOrigin(" https://example.org/drawers ", true)).toBe("https://example.org/drawers/");
    expect(addinOrigin("https://example.org", true)).toBe("https://example.org/");
  });

  test("is a reserved address that leads nowhere where none was asked for", () => {
    expect(addinOrigin(undefined, true)).toBe(PLACEHOLDER_ORIGIN);
    expect(addinOrigin("", true)).toBe(PLACEHOLDER_ORIGIN);
    expect(new URL(PLACEHOLDER_ORIGIN).hostname).toMatch(/\.example$/);
  });

  test("is this machine in development, whatever was asked for", () => {
    expect(addinOrigin("https://example.org/", false)).toBe(DEVELOPMENT_ORIGIN);
  });

  test.each([
    ["drawers", "which is no address"],
    ["http://example.org/", "over https only"],
    ["https://localhost:3000/", "others cannot reach"],
    ["https://127.0.0.1/", "others cannot reach"],
    ["https://[::1]/", "others cannot reach"],
    ["https://example.org/?a=1", "Leave out all but host and path"],
    ["https://example.org/#a", "Leave out all but host and path"],
    ["https://me@example.org/", "Leave out all but host and path"],
  ])("refuses %s", (asked, message) => {
    expect(() => addinOrigin(asked, true)).toThrow(message);
  });
});
