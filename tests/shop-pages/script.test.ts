import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { POLICY } from "../../src/build/page/server";
import { SCRIPT, SCRIPT_HASH } from "../../src/shop-pages/script";

test("policies allow the script of the shop pages as it is, and no other that stands in a page", () => {
  expect(SCRIPT_HASH).toBe(`sha256-${createHash("sha256").update(SCRIPT).digest("base64")}`);
  expect(POLICY).toContain(`script-src 'self' '${SCRIPT_HASH}';`);
  // It would end the element that it stands in.
  expect(SCRIPT).not.toContain("</");
});
