import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPlainXml } from "../../../src/workbook/xlsx/plain-xml";
import { readXml } from "../../../src/workbook/xlsx/xml";
import type { Handlers, Tag } from "../../../src/workbook/xlsx/xml-handlers";
import { partsBenchFile } from "../support/parts-bench";
import { parts } from "../support/handmade";

/** A comment behind the last element changes no place, and is left to the library. */
const BY_THE_LIBRARY = "<!---->";

describe("a part that is written plainly is read as the library reads it", () => {
  it("every part of the example", () => {
    for (const [name, text] of Object.entries(parts(partsBenchFile()))) {
      expect(isPlain(text), name).toBe(true);
      expect(told(text)).toEqual(told(text + BY_THE_LIBRARY));
    }
  });

  it("elements, attributes, texts, entities and line ends as chance has them", () => {
    let plain = 0;
    fc.assert(
      fc.property(DOCUMENT, (text) => {
        if (isPlain(text)) plain++;
        expect(told(text)).toEqual(told(text + BY_THE_LIBRARY));
      }),
      { seed: 19, numRuns: 500 },
    );
    expect(plain).toBeGreaterThan(200);
  });

  it.each([
    "",
    "<a>",
    "<a></b>",
    "<a/><b/>",
    "text<a/>",
    "<a/>text",
    "<a b='1'/>",
    '<a b="1" b="2"/>',
    '<a b="1"c="2"/>',
    '<a b="<"/>',
    '<a b="1\n2"/>',
    "<a b/>",
    "<a>&nbsp;</a>",
    "<a>& </a>",
    "<a>]]></a>",
    "<a>\u0001</a>",
    "<a>\ufffe</a>",
    "<a><!-- --></a>",
    "<a><![CDATA[x]]></a>",
    "<a><?x y?></a>",
    "<!DOCTYPE a><a/>",
    "<1/>",
    "<a:/>",
    "<a:b:c/>",
    "<a / >",
    "< a/>",
    "<a></ a>",
    '<?xml version="1.1"?><a/>',
    `${"<a>".repeat(300)}${"</a>".repeat(300)}`,
  ])("what is not plain is left to the library: %.40j", (text) => {
    expect(isPlain(text)).toBe(false);
  });
});

const isPlain = (text: string): boolean => readPlainXml(text, {});

/** All that is told of a part's elements, texts put together as they may come in pieces; or the fault. */
function told(text: string): unknown {
  const all: unknown[] = [];
  let pending = "";
  let depth = 0;
  const flush = (): void => {
    if (pending !== "") all.push(pending);
    pending = "";
  };
  const handlers: Handlers = {
    open: (tag: Tag) => {
      flush();
      depth++;
      all.push({ ...tag, attributes: { ...tag.attributes } });
    },
    close: (...end) => {
      flush();
      depth--;
      all.push(end);
    },
    text: (found) => (pending += depth > 0 ? found : ""),
  };
  try {
    readXml(text, "part.xml", handlers);
  } catch (error) {
    return String(error);
  }
  flush();
  return all;
}

const NAME = fc.oneof(
  { weight: 40, arbitrary: fc.constantFrom("a", "row", "c", "x:c", "x14ac:dyDescent", "f-1.b_2") },
  { weight: 1, arbitrary: fc.constantFrom("é", "_a", "a:b:c") },
);
const TEXT = fc
  .array(
    fc.oneof(
      { weight: 40, arbitrary: fc.constantFrom("a", "ü", " ", "&amp;", "&lt;", "&quot;", ">", "'", "]", "1") },
      { weight: 1, arbitrary: fc.constantFrom("&#10;", "\r\n", "\n", "😀") },
    ),
    { maxLength: 6 },
  )
  .map((pieces) => pieces.join(""));
const ATTRIBUTES = fc
  .uniqueArray(fc.tuple(NAME, TEXT), { maxLength: 3, selector: ([name]) => name })
  .map((all) => all.map(([name, value]) => ` ${name}="${value}"`).join(""));
const { element: ELEMENT } = fc.letrec<{ element: string; content: string }>((tie) => ({
  element: fc
    .tuple(NAME, ATTRIBUTES, fc.constantFrom("", " ", "\n"), tie("content"), fc.boolean())
    .map(([name, attributes, space, content, closes]) =>
      closes ? `<${name}${attributes}${space}/>` : `<${name}${attributes}${space}>${content}</${name}${space}>`,
    ),
  content: fc
    .array(fc.oneof({ depthSize: "small" }, TEXT, tie("element")), { maxLength: 4 })
    .map((pieces) => pieces.join("")),
}));
const DOCUMENT = fc
  .tuple(fc.constantFrom("", '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n', "\n"), ELEMENT)
  .map((both) => both.join(""));
