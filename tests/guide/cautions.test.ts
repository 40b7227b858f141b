import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const page = (name: string): string => readFileSync(`src/guide/pages/${name}.md`, "utf8").replace(/\s+/g, " ");

describe("the page of cautions", () => {
  const text = page("cautions");

  /** What woodworking's own rules of safety name, common practice. */
  test.each([
    ["eyes and ears", /[Ee]ye and ear protection/],
    ["dust", /Dust harms lungs.*mask/],
    ["the blade at rest", /Unplug the saw before the blade is touched/],
    ["guard and riving knife", /guard and riving knife on/],
    ["kickback", /kick back/],
    ["push blocks", /[Pp]ush block/],
    ["sled or fence, never both", /never the fence together with them/],
    ["narrow rips", /Narrow rips.*under 3 in \(75 mm\)/],
    ["short pieces", /Short pieces.*under 6 in \(150 mm\)/],
    ["cuts without the guard", /the guard comes off.*the guard goes back on at once/],
    ["the router's feed", /feed against the bit's turning/],
    ["metal before a bit", /nail or staple throws splinters/],
    ["nails", /hands clear of where a nail can come out/],
    ["rags with oil", /Rags with drying oil/],
    ["cabinets that tip", /Tie cabinets to the wall.*Open one at a time\. Keep children off/],
    ["loads", /estimates.*slide's rating from its data sheet/],
    ["wires and pipes", /wires and pipes/],
  ])("names %s", (_, words) => expect(text).toMatch(words));

  test("says who decides, before anything else", () => {
    expect(text.slice(0, 450)).toMatch(/makers' manuals .*your local codes, and licensed practice decide\./);
  });
});

describe("pages whose figures can hurt", () => {
  test.each([
    ["loads", /estimates\..*Anchor tall cabinets.*local codes, >? ?the makers' data and licensed practice decide/],
    ["sheets", /[Gg]uard and riving knife on.*manual and your local codes come first/],
    ["slides", /The slide's own data sheet comes first/],
    ["money", /tax, labor law and the wording of contracts ask your own adviser/],
  ])("%s says so in its first lines", (name, words) => expect(page(name).slice(0, 500)).toMatch(words));
});
