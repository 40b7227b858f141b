import { handmade, oneSheet, sheetXml } from "../support/handmade";
import { A1, SUM, column, row, strings } from "./file-parts";
import { sheetWith, times, type HostileCase } from "./hostile-case";

/** Files whose cells and elements are none. */
export const UNTRUE_FILES: HostileCase[] = [
  {
    title: "shared texts by numbers that there are none of",
    expect: { A1: 2, B1: "#VALUE!", C1: "#VALUE!", D1: "#VALUE!", E1: "#VALUE!" },
    make: () =>
      strings(
        "<si><t>one</t></si>",
        ["1", "-1", "1e999", "abc"].map((index, i) => `<c r="${column(i + 1)}1" t="s"><v>${index}</v></c>`).join(""),
      ),
  },
  {
    title: "a text of a million characters",
    expect: { A1: "#VALUE!" },
    make: () =>
      oneSheet(
        row(
          `<c r="A1"><f>LEN(B1)</f><v>77</v></c><c r="B1" t="inlineStr"><is><t>${"a".repeat(1_000_000)}</t></is></c>`,
        ),
      ),
  },
  {
    title: "numbers that are none",
    expect: { A1: "#NUM!" },
    make: () =>
      oneSheet(
        row(
          `<c r="A1"><f>SUM(B1:F1)</f><v>77</v></c>${["abc", "1e999", "-1e999", "NaN", "Infinity"].map((text, i) => `<c r="${column(i + 1)}1"><v>${text}</v></c>`).join("")}`,
        ),
      ),
  },
  {
    title: "each number that is none",
    expect: { A1: "#NUM!", A2: "#NUM!", A3: "#NUM!", A4: "#NUM!", A5: "#NUM!" },
    make: () =>
      oneSheet(
        ["abc", "1e999", "NaN", "Infinity", "0x10"]
          .map((text, i) =>
            row(`<c r="A${i + 1}"><f>B${i + 1}+1</f><v>77</v></c><c r="B${i + 1}"><v>${text}</v></c>`, i + 1),
          )
          .join(""),
      ),
  },
  {
    title: "a stored result that is none",
    expect: { A1: 2, B1: "#VALUE!" },
    make: () => oneSheet(row(`${SUM}<c r="B1" t="e"><v>#EVIL!</v></c>`)),
  },
  {
    title: "dates and truths that are none",
    expect: { A1: 2, B1: "#NUM!", C1: "#VALUE!" },
    make: () => oneSheet(row(`${SUM}<c r="B1" t="d"><v>yesterday</v></c><c r="C1" t="b"><v>7</v></c>`)),
  },
  {
    title: "control marks in texts",
    expect: { A1: 5 },
    make: () =>
      oneSheet(
        row('<c r="A1"><f>LEN(B1)</f><v>77</v></c><c r="B1" t="inlineStr"><is><t>_x0000__x0007__x001B_[A</t></is></c>'),
      ),
  },
  {
    title: "control marks in a sheet's name and in a message",
    expect: { A1: "#VALUE!" },
    make: () =>
      handmade({
        sheets: [
          {
            name: "&#x202E;_x001B_[31m",
            xml: sheetXml(
              row('<c r="A1" cm="1"><f t="array" ref="A1">_xldudf_DRAWER_BOXWIDTH("&#x202E;x")</f><v>77</v></c>'),
            ),
          },
        ],
      }),
  },
  {
    title: "marks that XML has not",
    expect: { refused: /not well-formed/ },
    make: () => oneSheet(row(`${SUM}<c r="B1" t="str"><v>&#0;</v></c>`)),
  },
  {
    title: "entities of its own",
    expect: { refused: /document type/ },
    make: () => declared('<!DOCTYPE x [<!ENTITY a "b">]>', "&a;"),
  },
  {
    title: "entities that double",
    expect: { refused: /document type/ },
    make: () =>
      declared(`<!DOCTYPE x [<!ENTITY a0 "lol">${times(40, (i) => `<!ENTITY a${i + 1} "&a${i};&a${i};">`)}]>`, "&a40;"),
  },
  {
    title: "an entity that is a file of the machine",
    expect: { refused: /document type/ },
    make: () => declared('<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/passwd">]>', "&a;"),
  },
  {
    title: "an entity that nobody has declared",
    expect: { refused: /not well-formed/ },
    make: () => declared("", "&evil;"),
  },
  {
    title: "elements 100,000 deep",
    expect: { refused: /inside one another/ },
    make: () => sheetWith(row(SUM), `${"<x>".repeat(100_000)}${"</x>".repeat(100_000)}`),
  },
  {
    title: "an element with 100,000 attributes",
    expect: { refused: /attributes/ },
    make: () => sheetWith(row(SUM), `<x ${times(100_000, (i) => `a${i}="1" `)}/>`),
  },
  {
    title: "a comment of three megabytes",
    expect: A1,
    make: () => sheetWith(row(SUM), `<!--${"a".repeat(3_000_000)}-->`),
  },
  {
    title: "a tag of three megabytes",
    expect: { A1: 2 },
    make: () => sheetWith(row(SUM), `<x a="${"a".repeat(3_000_000)}"/>`),
  },
  {
    title: "an element's name of three megabytes",
    expect: { A1: 2 },
    make: () => sheetWith(row(SUM), `<${"a".repeat(3_000_000)}/>`),
  },
];

/** A declaration before the sheet, and a text in it. */
function declared(declaration: string, inside: string): Uint8Array {
  const xml = sheetXml(row(`${SUM}<c r="B1" t="inlineStr"><is><t>${inside}</t></is></c>`));
  return handmade({ sheets: [{ name: "Bench", xml: xml.replace("<worksheet", `${declaration}<worksheet`) }] });
}
