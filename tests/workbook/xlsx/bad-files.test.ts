import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { FileFault, recalculate } from "../../../src/workbook";
import { oneSheet, parts, zip } from "../support/handmade";

const good = oneSheet('<row r="1"><c r="A1"><f>1+1</f></c></row>');

/** The good file with some parts changed. */
function altered(change: (files: Record<string, string>) => void): Uint8Array {
  const files = parts(good);
  change(files);
  return zip(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
}

function ole(text: string): Uint8Array {
  const wide = [...text].flatMap((character) => [character.charCodeAt(0), 0]);
  return Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Array<number>(500).fill(0), ...wide]);
}

/** A field of the archive's directory record of a part, overwritten. */
function withField(name: string, field: number, bytes: number[]): Uint8Array {
  const file = good.slice();
  const text = new TextDecoder("latin1").decode(file);
  const record = text.lastIndexOf(name) - 46;
  file.set(bytes, record + field);
  return file;
}

const SHEET = "xl/worksheets/sheet1.xml";
const sheetWith = (text: string) => altered((files) => void (files[SHEET] = text));

describe("a file that is not usable is refused in one line", () => {
  it.each<[string, Uint8Array, RegExp]>([
    ["an empty file", new Uint8Array(), /^The file is empty\.$/],
    ["a text", strToU8("Part,Width\nSide,20\n"), /^The file is no \.xlsx workbook\.$/],
    ["an old .xls", ole("Workbook"), /old \.xls workbook, or encrypted/],
    ["an encrypted file", ole("EncryptedPackage"), /^The file is encrypted; save it without a password first\.$/],
    ["a file cut short", good.subarray(0, good.length - 30), /no workbook, or it is damaged or cut short/],
    ["a file cut to its start", good.subarray(0, 60), /damaged or cut short/],
    [
      "an archive of something else",
      zip({ "readme.txt": strToU8("hello") }),
      /part \[Content_Types\]\.xml is missing|no \.xlsx workbook/,
    ],
    [
      "an .ods",
      zip({ mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"), "content.xml": strToU8("<a/>") }),
      /OpenDocument/,
    ],
    [
      "an .xlsb",
      altered((files) => {
        files["[Content_Types].xml"] = files["[Content_Types].xml"]!.replace(
          "vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
          "vnd.ms-excel.sheet.binary.macroEnabled.main",
        );
      }),
      /binary \.xlsb/,
    ],
    [
      "a document of text",
      altered((files) => {
        files["[Content_Types].xml"] = files["[Content_Types].xml"]!.replace(
          "spreadsheetml.sheet.main",
          "wordprocessingml.document.main",
        );
      }),
      /no \.xlsx workbook/,
    ],
    [
      "a part that is missing",
      altered((files) => void delete files[SHEET]),
      /its part xl\/worksheets\/sheet1\.xml is missing/,
    ],
    [
      "a sheet that is not linked",
      altered((files) => {
        files["xl/_rels/workbook.xml.rels"] = files["xl/_rels/workbook.xml.rels"]!.replace('Id="sheet1"', 'Id="other"');
      }),
      /lists the sheet “Bench”, which it does not contain/,
    ],
    [
      "a workbook without sheets",
      altered((files) => {
        files["xl/workbook.xml"] = files["xl/workbook.xml"]!.replace(/<sheet .*?\/>/, "");
      }),
      /has no sheets/,
    ],
    ["broken XML", sheetWith("<worksheet><sheetData></worksheet>"), /sheet1\.xml is not well-formed/],
    ["a document type", sheetWith('<!DOCTYPE worksheet [<!ENTITY a "b">]><worksheet/>'), /declares a document type/],
    ["an unknown entity", sheetWith("<worksheet>&bomb;</worksheet>"), /not well-formed/],
    [
      "rows out of order",
      sheetWith('<worksheet><sheetData><row r="2"/><row r="1"/></sheetData></worksheet>'),
      /row 1 out of order/,
    ],
    [
      "cells out of order",
      sheetWith('<worksheet><sheetData><row r="1"><c r="B1"/><c r="A1"/></row></sheetData></worksheet>'),
      /cell A1 out of order/,
    ],
    ["a part that says it unpacks to too much", withField(SHEET, 24, [0, 0, 0, 0x40]), /unpacks to too much/],
    ["a part that unpacks to more than it says", withField(SHEET, 24, [10, 0, 0, 0]), /unpacks to more than it says/],
    ["a part whose checksum is wrong", withField(SHEET, 16, [1, 2, 3, 4]), /does not unpack to what it should/],
    ["an encrypted part", withField(SHEET, 8, [1, 0]), /is encrypted/],
    ["an unknown packing", withField(SHEET, 10, [99, 0]), /packed in a way that is not read/],
  ])("%s", (_, bytes, message) => {
    expect(() => recalculate(bytes, { functions: {} })).toThrow(FileFault);
    expect(() => recalculate(bytes, { functions: {} })).toThrow(message);
  });

  it("a part that is not UTF-8", () => {
    const files = unzipSync(good);
    files[SHEET] = Uint8Array.from([...files[SHEET]!.subarray(0, -12), 0xff, 0xfe]);
    expect(() => recalculate(zipSync(files), { functions: {} })).toThrow(/is not UTF-8 text/);
  });

  it("an archive whose parts are too many", () => {
    const many = Object.fromEntries(Array.from({ length: 10_001 }, (_, i) => [`p${i}`, new Uint8Array()]));
    expect(() => recalculate(zipSync(many, { level: 0 }), { functions: {} })).toThrow(/holds 10001 parts/);
  });

  it("a bomb: a small part of a hundred million zeros", () => {
    const bomb = zipSync({ ...unzipSync(good), "xl/media/zeros.bin": new Uint8Array(100_000_000) }, { level: 9 });
    expect(bomb.length).toBeLessThan(200_000);
    expect(() => recalculate(bomb, { functions: {} })).toThrow(/unpacks to too much/);
  });
});
